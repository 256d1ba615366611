import { comparable, describe, isBlankOrZero, readCell } from '../src/quantity/cell';
import { didYouMean } from '../src/quantity/did-you-mean';
import { ended, badInput } from '../src/quantity/problem';
import { estimateJob, estimateOfZones, type JobEstimate, type RowTaker } from '../src/estimate/schedule';
import { readFactors, type FactorsInForce } from '../src/rules/read-factors';
import type { Recorder } from '../src/trace/recorder';
import { remembering } from './remembering';
import { readZones } from '../src/walls/read-zones';
import { selectZones, type Zone } from '../src/walls/zones';

/** The question that the arguments ask. */
export interface Question {
  readonly factors: FactorsInForce;
  /** The zones asked for. */
  readonly zones: readonly Zone[];
  /** All zones: what belongs to the job is shared out over them. */
  readonly job: readonly Zone[];
  /** The estimate of all zones, once it is worked out. */
  readonly whole: { estimate?: JobEstimate };
}

const factorsOf = remembering(readFactors);
const questionsOf = remembering((factors: FactorsInForce, headings: unknown, walls: unknown) => ({
  zones: readZones(walls, factors, headings),
  whole: {},
  byName: new Map<string, Question>(),
}));

/**
 * Reads walls, zone, factors and headings. What was read last is remembered: formulas ask the same walls for many
 * zones and quantities.
 * @param walls headed range
 * @param zone name of a zone, or empty
 * @param factors two-column range, or empty
 * @param headings two-column range, or empty
 * @returns the factors in force and the zones asked for
 * @throws {WashdownError} naming what cannot be read
 */
export function readQuestion(walls: unknown, zone: unknown, factors: unknown, headings: unknown): Question {
  const inForce = factorsOf(factors);
  const { zones, byName, whole } = questionsOf(inForce, headings, walls);
  const name = readName(zone, 'zone');
  const question = byName.get(name) ?? {
    factors: inForce,
    zones: selectZones(zones, name),
    job: zones,
    whole,
  };
  byName.set(name, question);
  return question;
}

/**
 * Works out the estimate, once for each question where nothing else is wanted.
 * @param question factors and zones
 * @param options what else is wanted
 * @param options.rec takes down the lines
 * @param options.takeRow takes the quantities of each row
 * @returns the estimate of the zones asked for
 */
export function answer(
  { factors, zones, job, whole }: Question,
  options?: { rec?: Recorder; takeRow?: RowTaker },
): JobEstimate {
  if (options) return estimateJob(job, factors, { ...options, wanted: zones });
  const all = (whole.estimate ??= estimateJob(job, factors));
  return zones === job ? all : estimateOfZones(all, zones);
}

/**
 * A scalar argument that is a name; a range of one cell counts as its cell.
 * @param raw the argument
 * @param what its name in messages
 * @returns the name, empty where none is given
 * @throws {WashdownError} where it is not a text or a number
 */
export function readName(raw: unknown, what: string): string {
  let single = raw;
  while (Array.isArray(single) && single.length === 1) single = (single as unknown[])[0];
  if (Array.isArray(single)) throw badInput(`The ${what} must be one cell, not a range.`);
  const cell = readCell(single);
  if (isBlankOrZero(cell)) return '';
  if (cell.type === 'error' || cell.type === 'unknown' || cell.type === 'blank' || cell.type === 'boolean') {
    throw badInput(`The ${what} cannot be ${describe(cell)}. Accepted: a name, or empty.`);
  }
  return String(cell.value);
}

/**
 * One of a list of choices.
 * @param raw the argument
 * @param what its name in messages
 * @param choices what is accepted
 * @returns the choice, or undefined where none is given
 * @throws {WashdownError} where it is none of them
 */
export function readChoice<C extends string>(
  raw: unknown,
  what: string,
  choices: readonly C[],
): C | undefined {
  const name = readName(raw, what);
  if (name === '') return undefined;
  const found = choices.find((choice) => unhyphened(choice) === unhyphened(name));
  if (found === undefined) {
    const accepted = `${choices.join(', ')}, or empty for the whole${didYouMean(name, choices, 1)}`;
    throw badInput(`The ${what} "${name}" is not known. Accepted: ${ended(accepted)}`);
  }
  return found;
}

function unhyphened(name: string): string {
  return comparable(name).replace(/-/g, '');
}
