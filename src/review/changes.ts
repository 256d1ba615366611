import { KnownJob } from '../alternates/known-job';
import { zonesOf } from '../walls/zones';
import type { FactorsInForce } from '../rules/read-factors';
import type { WallRow } from '../walls/wall-row';
import { ChangingJob, minus, nothing, type Difference, type Reached } from './changes/changing-job';
import { changesOf, type OneChange } from './changes/one-change';
import { shapleyExact, shapleySampled } from './changes/shapley';

export { measured, type Difference } from './changes/changing-job';

/** Up to so many changes every subset is worked out; beyond, orders are drawn. */
const MOST_EXACT = 10;
const PAIRS_OF_ORDERS = 50;
const SEED = 1;

/** One thing that changed between two states, and its part in the difference. */
export interface Change {
  readonly wall: string;
  readonly type: OneChange['type'];
  /** What changed in words, for example `Material: Red clay brick -> Limestone`. */
  readonly what: string;
  /** The zones concerned with their class in the former state and with this change alone, for example `North 2 -> 1`. */
  readonly classes: string;
  readonly difference: Difference;
  /** Standard error of the difference where orders were drawn; 0 where it is exact. */
  readonly error: Difference;
}

/** What changed between two states, and the whole difference. */
export interface ChangesBetween {
  /** By wall, then by column. */
  readonly changes: readonly Change[];
  readonly whole: Difference;
  /** Whether every subset was worked out; otherwise the parts are means over drawn orders. */
  readonly exact: boolean;
}

/**
 * What changed between two states of the walls, and the part of each change in the difference: what it does on average
 * over every order in which the changes can be made (Shapley value). The parts add up to the whole, and do not know
 * the order of the rows. Up to 10 changes are worked out exactly; beyond, the mean is over 50 seeded orders and their
 * reversals, with its standard error (Castro, Gomez, Tejada 2009). Between the two states a row may receive rinse from
 * a zone that is gone or not there yet; it gets none then.
 * @param before the former rows
 * @param after the latter rows
 * @param factors the factors in force
 * @returns the changes by wall and column, and the whole difference
 * @throws {WashdownError} when either state's rinse leads nowhere or in a circle
 */
export function changesBetween(
  before: readonly WallRow[],
  after: readonly WallRow[],
  factors: FactorsInForce,
): ChangesBetween {
  const steps = changeSteps(before, after, factors);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/**
 * The same changes, step by step, for a caller that does other things in between.
 * @param before the former rows
 * @param after the latter rows
 * @param factors the factors in force
 * @yields after each state that is worked out
 * @returns the changes, and the whole difference
 * @throws {WashdownError} when either state's rinse leads nowhere or in a circle
 */
export function* changeSteps(
  before: readonly WallRow[],
  after: readonly WallRow[],
  factors: FactorsInForce,
): Generator<undefined, ChangesBetween> {
  for (const state of [before, after]) zonesOf(state);
  const { changes, rowsWith } = changesOf(before, after, factors);
  const job = new ChangingJob(new KnownJob(factors), rowsWith);
  const { length } = changes;
  const exact = length <= MOST_EXACT;
  const parts = yield* exact ? shapleyExact(length, job) : shapleySampled(length, job, PAIRS_OF_ORDERS, SEED);
  const start = job.at(new Set());
  return {
    changes: changes.map(({ wall, type, what, zones }, index) => {
      const part = parts[index] ?? { mean: nothing(), error: nothing() };
      return {
        wall,
        type,
        what,
        classes: classesMoved(start, job.at(new Set([index])), zones),
        difference: part.mean,
        error: part.error,
      };
    }),
    whole: minus(job.at(new Set(changes.keys())), start),
    exact,
  };
}

function classesMoved(from: Reached, to: Reached, touched: readonly string[]): string {
  const of = (name: string, { classes }: Reached): string => classes.get(name) ?? 'none';
  const names = new Set([...from.classes.keys(), ...to.classes.keys()]);
  return [...names]
    .filter((name) => touched.includes(name) || of(name, from) !== of(name, to))
    .map((name) => `${name} ${of(name, from)} -> ${of(name, to)}`)
    .join(', ');
}
