import fc from 'fast-check';
import { expect } from 'vitest';
import type { JobEstimate } from '../../src/estimate/schedule';
import { accessKinds } from '../../src/rules/access-kinds';
import { factors as factorTable } from '../../src/rules/factors';
import { materials } from '../../src/rules/materials';
import { mortarTypes } from '../../src/rules/mortars';
import { residues } from '../../src/rules/residues';
import { estimateOf, type Lines, type MadeRow } from '../core/made';

/** How many jobs a property is tried on; more are asked for by hand. */
export const RUNS = Number(process.env['PROPERTY_RUNS'] ?? 200);

/** What rounding may add up to. */
export const RELATIVE = 1e-9;

const between = (least: number, most: number): fc.Arbitrary<number> =>
  fc.noBias(fc.nat(1e6)).map((part) => least + ((most - least) * part) / 1e6);

/** As often small as large. */
const scaled = (least: number, most: number): fc.Arbitrary<number> =>
  between(Math.log(least), Math.log(most)).map((power) => Number(Math.exp(power).toPrecision(6)));

const sometimes = <T>(value: fc.Arbitrary<T>, otherwise: T, weight = 1): fc.Arbitrary<T> =>
  fc.oneof({ weight: 2, arbitrary: fc.constant(otherwise) }, { weight, arbitrary: value });

/** A row with something to wash. */
export const madeRow: fc.Arbitrary<MadeRow> = fc
  .record({
    zone: fc.constantFrom('North', 'North', 'Court'),
    level: fc.nat(4),
    material: fc.constantFrom(...materials.map(({ name }) => name)),
    net: scaled(1, 20000),
    height: sometimes(scaled(1, 60), 0, 3),
    openShare: sometimes(between(0, 0.9), 0),
    openingPerimeter: sometimes(between(0, 500), 0),
    fixtures: fc.nat(6),
    mortar: sometimes(fc.constantFrom(...mortarTypes), undefined, 4),
    residue: sometimes(fc.constantFrom(...residues), undefined, 6),
    brushed: sometimes(fc.boolean(), false),
    mask: fc.constantFrom('no', 'no', 'no', 'no', 'never', 'yes', 'yes', 'only'),
    access: sometimes(fc.constantFrom(...accessKinds), undefined),
    suction: sometimes(scaled(0.1, 100), 0),
    receives: sometimes(fc.constant('North'), ''),
  })
  .map(({ net, openShare, openingPerimeter, ...rest }): MadeRow => {
    const area = net / (1 - openShare);
    return {
      ...rest,
      area,
      openings: area * openShare,
      openingPerimeter: openShare > 0 ? openingPerimeter : 0,
      receives: rest.zone === 'Court' ? rest.receives : '',
    };
  });

/** A job of 1 to 6 rows in one or two zones. */
export const rows: fc.Arbitrary<MadeRow[]> = fc
  .array(madeRow, { minLength: 1, maxLength: 6 })
  .map((made) =>
    made.some(({ zone }) => zone === 'North') ? made : made.map((row) => ({ ...row, receives: '' })),
  );

/** Factors that a user may well set, each about its starting value, in US units. */
const scaledFactors = [
  'working.share',
  'shift',
  'setup.perDay',
  'setup.zone',
  'mobilize.hours',
  'protect.hours',
  'sample.hours',
  'reclean.share',
  'scrub.least',
  'scrub.full',
  'mortar.effortExponent',
  'rate.scrape.light',
  'rate.scrape.moderate',
  'rate.scrape.heavy',
  'rate.brush',
  'rate.apply',
  'rinse.perArea',
  'patch.least',
  'patch.most',
  'patch.change',
  'prewet.fieldShare',
  'prewet.capacity',
  'prewet.passContact',
  'prewet.runoffPerPass',
  'rate.wet',
  'rate.below',
  'below.interval',
  'below.water',
  'nozzle.number',
  'nozzle.pressure',
  'access.dropWidth',
  'access.lift',
  'access.ground',
  'access.move',
  'access.groundMove',
  'rate.maskOn',
  'rate.maskOff',
  'rate.glass',
  'fixture.cover',
  'cleaner.coverage',
  'cleaner.dilution.1',
  'cleaner.dilution.2',
  'cleaner.dilution.3',
  'weather.surface',
  'weather.air',
  'weather.wind',
  'weather.film',
  'weather.mist',
  'runoff.captured',
  'dwell.least',
  'dwell.most',
  'price.water',
  'price.cleaner.2',
  'price.equipment',
  'price.overhead',
] as const;

const counts = fc.record(
  {
    'team.size': fc.integer({ min: 1, max: 6 }),
    teams: fc.integer({ min: 1, max: 4 }),
    'cleaner.applications': fc.integer({ min: 1, max: 3 }),
    'cleaner.mostApplications': fc.integer({ min: 3, max: 20 }),
    'prewet.leastPasses': fc.nat(4),
    'prewet.mostPasses': fc.integer({ min: 0, max: 12 }),
    scaffold: fc.constantFrom('yes', 'no'),
    'access.kind': fc.constantFrom(...accessKinds),
  },
  { requiredKeys: [] },
);

const amounts = fc.record(
  Object.fromEntries(
    scaledFactors.map((id) => {
      const row = factorTable.find((each) => each.id === id);
      if (row === undefined) throw new Error(`There is no factor ${id}.`);
      const start = row.value === 0 ? 5 : row.value;
      return [
        id,
        scaled(0.3, 3).map((by) =>
          Number(Math.min(Math.max(start * by, row.least), row.most).toPrecision(5)),
        ),
      ];
    }),
  ),
  { requiredKeys: [] },
);

/** A valid set of factors, a price of labor among them. */
export const ownFactors: fc.Arbitrary<Lines> = fc
  .tuple(counts, fc.oneof({ weight: 1, arbitrary: fc.constant({}) }, { weight: 3, arbitrary: amounts }))
  .map(([whole, own]) => {
    const given = new Map<string, number | string>([
      ['price.labor', 40],
      ...Object.entries(whole as Record<string, number | string>),
      ...Object.entries(own as Record<string, number>),
    ]);
    inOrder(given, 'dwell.least', 'dwell.most');
    inOrder(given, 'patch.least', 'patch.most');
    inOrder(given, 'access.groundMove', 'access.move');
    if (given.has('setup.perDay')) given.set('setup.perDay', Math.min(2, Number(given.get('setup.perDay'))));
    return [...given];
  });

/** Values that must not be the wrong way round change places. */
function inOrder(given: Map<string, number | string>, less: string, more: string): void {
  const [a, b] = [valueIn(given, less), valueIn(given, more)];
  if (a <= b) return;
  given.set(less, b);
  given.set(more, a);
}

function valueIn(given: ReadonlyMap<string, number | string>, id: string): number {
  return Number(given.get(id) ?? factorTable.find((row) => row.id === id)?.value);
}

/** The value of a factor that lines give, or its starting value. */
export function valueOf(lines: Lines, id: string): number {
  return valueIn(new Map(lines), id);
}

/** The lines with some values in place of what they give. */
export function withFactors(lines: Lines, own: Readonly<Record<string, number | string>>): Lines {
  return [...lines.filter(([id]) => !(id in own)), ...Object.entries(own)];
}

/** Labor-hours; without end where a wall cannot be washed so. */
export function hoursOf(estimate: JobEstimate): number {
  const { laborHours } = estimate.totals;
  return Number.isNaN(laborHours) ? Infinity : laborHours;
}

/** Labor-hours of a job. */
export function hours(made: readonly MadeRow[], lines: Lines): number {
  return hoursOf(estimateOf(made, lines));
}

/** Expects a number not to be above another, but for the rounding of the last digits. */
export function expectNoMore(ours: number, theirs: number, what: string): void {
  if (!(ours <= theirs * (1 + RELATIVE) + 1e-12))
    expect.fail(`${what}: ${String(ours)} is more than ${String(theirs)}`);
}

/** Expects two numbers to be one but for the rounding of the last digits. */
export function expectSame(ours: number, theirs: number, what: string, relative = RELATIVE): void {
  if (Object.is(ours, theirs)) return;
  const scale = Math.max(Math.abs(ours), Math.abs(theirs), 1e-6);
  if (!(Math.abs(ours - theirs) <= relative * scale))
    expect.fail(`${what}: ${String(ours)} is not ${String(theirs)}`);
}

/** The most that a factor accepts, in US units. */
export function mostOf(id: string): number {
  return factorTable.find((row) => row.id === id)?.most ?? NaN;
}
