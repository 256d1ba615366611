import { evaporation, timeToDry } from '../src/estimate/drying';
import { fanWidth, nozzleFlow, reactionForce } from '../src/estimate/nozzle';
import { largestPatch } from '../src/estimate/largest-patch';
import { describe, percentShown, readCell, type Cell } from '../src/quantity/cell';
import { badInput, nothingHere } from '../src/quantity/problem';
import { shownUnit } from '../src/quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../src/quantity/systems';
import { readFactorValue, type Accepted } from '../src/rules/factor-value';
import { factorRow } from '../src/rules/factor-row';
import type { FactorId } from '../src/rules/factors';
import { readFactors, UNITS } from '../src/rules/read-factors';
import { readChoice } from './arguments';
import type { Run } from './worksheet-function';

/** How a number is read that is an argument of its own. */
interface NumberArgument {
  /** Unit, kind and accepted range. */
  readonly accepts: Accepted;
  /** What holds where it is left out; without it the number is needed. */
  readonly leftOut?: number;
  /** The argument is a fraction where the factor is shown in percent. */
  readonly fraction?: true;
}

type Numbers = Readonly<Record<string, NumberArgument>>;
type ReadNumbers<Of extends Numbers> = { readonly [Name in keyof Of]: number };

const starting = readFactors(null);

/** Accepted as a factor is. */
function like(id: FactorId): NumberArgument {
  return { accepts: factorRow(id) };
}

/** Accepted as a factor is, whose starting value holds where it is left out. */
function orStart(id: FactorId): NumberArgument {
  return { ...like(id), leftOut: starting.value(id) };
}

/** Accepted as a factor is, but without a most; left out, there is no limit. */
function orNoLimit(id: FactorId): NumberArgument {
  return { accepts: { ...like(id).accepts, most: Infinity }, leftOut: Infinity };
}

function readNumber(
  raw: unknown,
  name: string,
  { accepts, leftOut, fraction }: NumberArgument,
  system: System,
): number {
  const cell = readCell(raw);
  if (cell.type === 'blank' && leftOut !== undefined) return leftOut;
  const scaled: Cell =
    fraction && cell.type === 'number'
      ? { type: 'number as text', value: `${String(percentShown(cell.value))}%` }
      : cell;
  const read = readFactorValue(scaled, accepts, system);
  if ('value' in read) return read.value;
  throw badInput(
    `The ${name} cannot be ${describe(cell)}. Accepted: ${fraction ? 'a number from 0 to 1' : read.accepted}.`,
  );
}

interface Line {
  readonly label: string;
  readonly value: number;
  readonly kind: Kind;
}

/** A function of plain numbers and the units that they are in. */
interface PlainFunction {
  /** Its arguments in order. */
  readonly takes: readonly string[];
  readonly run: Run;
}

/**
 * A function of plain numbers, whose arguments are declared once: they are read by name, wherever they stand.
 * @param before the arguments before the units
 * @param after those behind them
 * @param work what it gives, in base units
 * @returns the function
 */
function ofNumbers<Before extends Numbers, After extends Numbers>(
  before: Before,
  after: After,
  work: (numbers: ReadNumbers<Before & After>) => readonly Line[],
): PlainFunction {
  const declared = { ...before, ...after };
  const takes = [...Object.keys(before), UNITS, ...Object.keys(after)];
  return {
    takes,
    run: (args) => {
      const system = readChoice(args[takes.indexOf(UNITS)], UNITS, ['US', 'SI'] as const) ?? 'US';
      const read = Object.entries(declared).map(
        ([name, argument]) => [name, readNumber(args[takes.indexOf(name)], name, argument, system)] as const,
      );
      // Each of the names that were declared has its number.
      const lines = work(Object.fromEntries(read) as ReadNumbers<Before & After>);
      return lines.map(({ label, value, kind }) => [
        label,
        show(value, kind, system),
        shownUnit(unitOf(kind, system)),
      ]);
    },
  };
}

// min/ft2: no stronger bound than one of sense.
const MOST_SCRUB = 1000;

/** The largest area that is washed at one time. */
const patch = ofNumbers(
  {
    applyRate: like('rate.apply'),
    rinseRate: like('rate.apply'),
    leastDwell: like('dwell.least'),
    mostDwell: like('dwell.most'),
    timeToDry: orNoLimit('dwell.most'),
  },
  {
    scrub: { accepts: { unit: 'min/ft2', kind: 'minutesPerArea', least: 0, most: MOST_SCRUB }, leftOut: 0 },
    leastPatch: { ...like('patch.least'), leftOut: 0 },
    mostPatch: { ...like('patch.most'), leftOut: Infinity },
  },
  ({ applyRate, rinseRate, leastDwell, mostDwell, timeToDry, ...limits }) => {
    const largest = largestPatch({
      ...limits,
      apply: applyRate,
      rinse: rinseRate,
      leastDwell,
      mostDwell: Math.min(mostDwell, timeToDry),
    });
    if (largest === undefined)
      throw nothingHere('No contact window: no such area stays within the dwell and the time to dry.');
    return [
      { label: 'Patch', value: largest.area, kind: 'area' },
      { label: 'Wait', value: largest.wait, kind: 'minutes' },
      { label: 'Contact at the first point', value: largest.firstContact, kind: 'minutes' },
      { label: 'Contact at the last point', value: largest.lastContact, kind: 'minutes' },
    ];
  },
);

/** What a nozzle gives. */
const nozzle = ofNumbers(
  {
    number: like('nozzle.number'),
    pressure: like('nozzle.pressure'),
    angle: orStart('nozzle.angle'),
    distance: orStart('nozzle.distance'),
  },
  {},
  ({ number, pressure, angle, distance }) => {
    const flow = nozzleFlow(number, pressure);
    return [
      { label: 'Flow', value: flow, kind: 'flow' },
      { label: 'Fan width', value: fanWidth(distance, angle), kind: 'shortLength' },
      { label: 'Reaction force', value: reactionForce(flow, pressure), kind: 'force' },
    ];
  },
);

/** How soon a film dries. */
const drying = ofNumbers(
  {
    air: like('weather.air'),
    surface: like('weather.surface'),
    humidity: { ...like('weather.humidity'), fraction: true },
    wind: like('weather.wind'),
    film: orStart('weather.film'),
  },
  {},
  ({ film, ...weather }) => {
    const rate = evaporation(weather);
    if (rate === 0) throw nothingHere('Nothing evaporates in this weather: the film does not dry.');
    return [
      { label: 'Evaporation', value: rate, kind: 'evaporation' },
      {
        label: 'Time to dry',
        value: timeToDry(film, starting.value('water.density'), rate),
        kind: 'minutes',
      },
    ];
  },
);

/** The functions of plain numbers, by name. */
export const plainFunctions = { PATCH: patch, NOZZLE: nozzle, DRYING: drying } as const;
