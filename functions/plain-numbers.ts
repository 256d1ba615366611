import { evaporation, timeToDry } from '../src/estimate/drying';
import { fanWidth, nozzleFlow, reactionForce } from '../src/estimate/nozzle';
import { largestPatch } from '../src/estimate/largest-patch';
import { describe, percentShown, readCell, type Cell } from '../src/quantity/cell';
import { badInput, nothingHere } from '../src/quantity/problem';
import { shownUnit } from '../src/quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../src/quantity/systems';
import { readFactorValue } from '../src/rules/factor-value';
import { factors as factorTable, type Factor, type FactorId } from '../src/rules/factors';
import { readFactors } from '../src/rules/read-factors';
import { readChoice } from './arguments';
import type { CellValue, Run } from './worksheet-function';

interface NumberArgument {
  readonly name: string;
  /** The factor whose kind and accepted range hold, and whose starting value is taken where the argument is left out. */
  readonly factor: FactorId;
  readonly optional?: boolean;
  /** The argument is a fraction where the factor is shown in per cent. */
  readonly fraction?: boolean;
  /** No most holds, and left out it is no limit. */
  readonly unlimited?: boolean;
}

const starting = readFactors(null);

function readNumber(raw: unknown, argument: NumberArgument, system: System): number {
  const cell = readCell(raw);
  const { name, factor, optional, fraction, unlimited } = argument;
  if (cell.type === 'blank' && optional) return unlimited ? Infinity : starting.value(factor);
  // The id comes from the table.
  const row = factorTable.find(({ id }) => id === factor) as Factor;
  const scaled: Cell =
    fraction && cell.type === 'number'
      ? { type: 'number as text', value: `${String(percentShown(cell.value))}%` }
      : cell;
  const read = readFactorValue(scaled, unlimited ? { ...row, most: Infinity } : row, system);
  if ('value' in read) return read.value;
  throw badInput(
    `The ${name} cannot be ${describe(cell)}. Accepted: ${fraction ? 'a number from 0 to 1' : read.accepted}.`,
  );
}

function readUnits(raw: unknown): System {
  return readChoice(raw, 'units', ['US', 'SI'] as const) ?? 'US';
}

interface Line {
  readonly label: string;
  readonly value: number;
  readonly kind: Kind;
}

function linesOut(lines: readonly Line[], system: System): CellValue[][] {
  return lines.map(({ label, value, kind }) => [
    label,
    show(value, kind, system),
    shownUnit(unitOf(kind, system)),
  ]);
}

function runPlain(numbers: readonly NumberArgument[], work: (values: readonly number[]) => Line[]): Run {
  return (args) => {
    const system = readUnits(args[numbers.length]);
    const values = numbers.map((argument, index) => readNumber(args[index], argument, system));
    return linesOut(work(values), system);
  };
}

/** The largest area that is washed at one time. */
export const runPatch: Run = (args) => {
  const [apply, rinse, least, most, dries, units, scrub, leastPatch, mostPatch] = args;
  const system = readUnits(units);
  const number = (raw: unknown, argument: NumberArgument): number => readNumber(raw, argument, system);
  const mostDwell = number(most, { name: 'mostDwell', factor: 'dwell.most' });
  const timeToDry = number(dries, {
    name: 'timeToDry',
    factor: 'dwell.most',
    optional: true,
    unlimited: true,
  });
  const patch = largestPatch({
    apply: number(apply, { name: 'applyRate', factor: 'rate.apply' }),
    rinse: number(rinse, { name: 'rinseRate', factor: 'rate.apply' }),
    leastDwell: number(least, { name: 'leastDwell', factor: 'dwell.least' }),
    mostDwell: Math.min(mostDwell, timeToDry),
    scrub: readScrub(scrub, system),
    leastPatch: leftOut(leastPatch) ? 0 : number(leastPatch, { name: 'leastPatch', factor: 'patch.least' }),
    mostPatch: leftOut(mostPatch) ? Infinity : number(mostPatch, { name: 'mostPatch', factor: 'patch.most' }),
  });
  if (patch === undefined) {
    throw nothingHere('No contact window: no such area stays within the dwell and the time to dry.');
  }
  return linesOut(
    [
      { label: 'Patch', value: patch.area, kind: 'area' },
      { label: 'Wait', value: patch.wait, kind: 'minutes' },
      { label: 'Contact at the first point', value: patch.firstContact, kind: 'minutes' },
      { label: 'Contact at the last point', value: patch.lastContact, kind: 'minutes' },
    ],
    system,
  );
};

function leftOut(raw: unknown): boolean {
  return readCell(raw).type === 'blank';
}

const MOST_SCRUB = 1000;

/** Scrubbing of the whole team on an area: min/ft2 or min/m2. */
function readScrub(raw: unknown, system: System): number {
  const accepts = { unit: 'min/ft2', kind: 'minutesPerArea', least: 0, most: MOST_SCRUB } as const;
  const cell = readCell(raw);
  const read = readFactorValue(cell, accepts, system);
  if ('value' in read) return read.value;
  throw badInput(`The scrub cannot be ${describe(cell)}. Accepted: ${read.accepted}.`);
}

/** What a nozzle gives. */
export const runNozzle = runPlain(
  [
    { name: 'number', factor: 'nozzle.number' },
    {
      name: 'pressure',
      factor: 'nozzle.pressure',
    },
    {
      name: 'angle',
      factor: 'nozzle.angle',
      optional: true,
    },
    {
      name: 'distance',
      factor: 'nozzle.distance',
      optional: true,
    },
  ],
  ([number = NaN, pressure = NaN, angle = NaN, distance = NaN]) => {
    const flow = nozzleFlow(number, pressure);
    return [
      { label: 'Flow', value: flow, kind: 'flow' },
      { label: 'Fan width', value: fanWidth(distance, angle), kind: 'shortLength' },
      { label: 'Reaction force', value: reactionForce(flow, pressure), kind: 'force' },
    ];
  },
);

/** How soon a film dries. */
export const runDrying = runPlain(
  [
    {
      name: 'air',
      factor: 'weather.air',
    },
    {
      name: 'surface',
      factor: 'weather.surface',
    },
    {
      name: 'humidity',
      factor: 'weather.humidity',
      fraction: true,
    },
    { name: 'wind', factor: 'weather.wind' },
    {
      name: 'film',
      factor: 'weather.film',
      optional: true,
    },
  ],
  ([air = NaN, surface = NaN, humidity = NaN, wind = NaN, film = NaN]) => {
    const rate = evaporation({ air, surface, humidity, wind });
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
