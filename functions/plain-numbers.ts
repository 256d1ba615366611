import { evaporation, timeToDry } from '../src/estimate/drying';
import { fanWidth, nozzleFlow, reactionForce } from '../src/estimate/nozzle';
import { largestPatch } from '../src/estimate/patch';
import { describe, readCell } from '../src/quantity/cell';
import { badInput, nothingHere } from '../src/quantity/problem';
import { show, take, unitOf, type Kind, type System } from '../src/quantity/systems';
import { factors as factorTable, type FactorId } from '../src/rules/factors';
import { readFactors } from '../src/rules/read-factors';
import { readChoice } from './arguments';
import type { CellValue, Run } from './worksheet-function';

interface NumberArgument {
  readonly name: string;
  readonly kind: Kind;
  /** The factor whose accepted range holds, and whose starting value is taken where the argument is left out. */
  readonly factor: FactorId;
  readonly optional?: boolean;
  /** What is taken in place of the starting value where the argument is left out. */
  readonly leftOut?: number;
  /** The argument is a fraction where the factor is shown in per cent. */
  readonly fraction?: boolean;
}

const starting = readFactors(null);

function readNumber(raw: unknown, argument: NumberArgument, system: System): number {
  const cell = readCell(raw);
  if (cell.type === 'blank' && argument.optional === true) {
    return argument.leftOut ?? starting.value(argument.factor);
  }
  const row = factorTable.find(({ id }) => id === argument.factor);
  const percent = argument.fraction === true;
  const shown = (value: number) =>
    percent
      ? value / 100
      : Number(show(take(value, row?.kind ?? argument.kind, 'US'), argument.kind, system).toPrecision(4));
  const value = cell.type === 'number' ? cell.value : NaN;
  const base = percent ? value : take(value, argument.kind, system);
  const inRange = percent
    ? base >= 0 && base <= 1
    : show(base, argument.kind, system) >= shown(row?.least ?? 0);
  const positive = row !== undefined && 'positive' in row;
  if (!(inRange && Number.isFinite(base) && (!positive || base > 0))) {
    const unit = percent ? '' : ` ${unitOf(argument.kind, system)}`;
    const from = positive ? 'more than 0' : `${shown(row?.least ?? 0)} or more`;
    throw badInput(
      `The ${argument.name} cannot be ${describe(cell)}. Accepted: a number${unit.replace(' 1', '')}, ${percent ? 'from 0 to 1' : from}.`,
    );
  }
  return base;
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
  return lines.map(({ label, value, kind }) => [label, show(value, kind, system), unitOf(kind, system)]);
}

function runPlain(numbers: readonly NumberArgument[], work: (values: readonly number[]) => Line[]): Run {
  return (args) => {
    const system = readUnits(args[numbers.length]);
    const values = numbers.map((argument, index) => readNumber(args[index], argument, system));
    return linesOut(work(values), system);
  };
}

/** The largest area that is washed in one go. */
export const runPatch = runPlain(
  [
    {
      name: 'applyRate',
      kind: 'areaPerMinute',
      factor: 'rate.apply',
    },
    {
      name: 'rinseRate',
      kind: 'areaPerMinute',
      factor: 'rate.rinse',
    },
    { name: 'leastDwell', kind: 'minutes', factor: 'dwell.least' },
    { name: 'mostDwell', kind: 'minutes', factor: 'dwell.most' },
    {
      name: 'timeToDry',
      kind: 'minutes',
      factor: 'dwell.most',
      optional: true,
      leftOut: Infinity,
    },
  ],
  ([apply = NaN, rinse = NaN, least = NaN, most = NaN, dries = NaN]) => {
    const patch = largestPatch(apply, rinse, least, Math.min(most, dries));
    if (patch === undefined) {
      throw nothingHere(
        'No contact window: no area stays between the least dwell and the most dwell or the time to dry.',
      );
    }
    return [
      { label: 'Patch', value: patch.area, kind: 'area' },
      { label: 'Wait', value: patch.wait, kind: 'minutes' },
      { label: 'Contact at the first point', value: patch.firstContact, kind: 'minutes' },
      { label: 'Contact at the last point', value: patch.lastContact, kind: 'minutes' },
    ];
  },
);

/** What a nozzle gives. */
export const runNozzle = runPlain(
  [
    { name: 'number', kind: 'count', factor: 'nozzle.number' },
    {
      name: 'pressure',
      kind: 'pressure',
      factor: 'nozzle.pressure',
    },
    {
      name: 'angle',
      kind: 'angle',
      factor: 'nozzle.angle',
      optional: true,
    },
    {
      name: 'distance',
      kind: 'shortLength',
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
      kind: 'temperature',
      factor: 'weather.air',
    },
    {
      name: 'surface',
      kind: 'temperature',
      factor: 'weather.surface',
    },
    {
      name: 'humidity',
      kind: 'ratio',
      factor: 'weather.humidity',
      fraction: true,
    },
    { name: 'wind', kind: 'windSpeed', factor: 'weather.wind' },
    {
      name: 'film',
      kind: 'filmThickness',
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
