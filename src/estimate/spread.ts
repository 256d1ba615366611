import { factors as table, type Factor, type FactorId } from '../rules/factors';
import type { FactorRange } from '../rules/read-ranges';
import type { FactorsInForce } from '../rules/read-factors';
import { rowsAlike } from '../walls/rows-alike';
import type { Zone } from '../walls/zones';
import { chance, triangular } from './chance';
import { estimateJob } from './schedule';

/** A quantity as a range. */
export interface Spread {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** What the ranges of the factors do to a quantity; NaN where a draw has no such number. */
export interface QuantitySpread {
  /** Every factor at the end that gives less, at its likely value, and at the end that gives more. */
  readonly threePoint: Spread;
  /** A tenth of the draws lies below low, half below likely, a tenth above high. */
  readonly drawn: Spread;
  readonly mean: number;
}

/** What one factor moves when it goes from end to end with the others at their likely values. */
export interface FactorSwing extends Spread {
  readonly id: FactorId;
}

/** The result of the draws. */
export interface SpreadResult {
  readonly laborHours: QuantitySpread;
  readonly price: QuantitySpread;
  /** By what they move, most first. */
  readonly swings: readonly FactorSwing[];
}

type Measure = 'laborHours' | 'price';
type Totals = Readonly<Record<Measure, number>>;
const LOW_SHARE = 0.1;
const HALF = 0.5;
const HIGH_SHARE = 0.9;

/** How many of the draws are made. */
export interface SpreadProgress {
  readonly done: number;
  readonly total: number;
}

/** How to draw. */
export interface SpreadOptions {
  readonly draws: number;
  /** A whole number. */
  readonly seed: number;
  /** What the factors are ranked by. */
  readonly rankBy: Measure;
}

/**
 * Labor-hours and price as ranges: three points, and seeded draws from triangular distributions. The same seed gives
 * the same draws.
 * @param zones the zones
 * @param factors the factors in force; a factor with a range is taken from its range
 * @param ranges the factors' ranges, in base units
 * @param options how to draw
 * @returns the ranges, and the factors ranked
 */
export function spreadOf(
  zones: readonly Zone[],
  factors: FactorsInForce,
  ranges: readonly FactorRange[],
  options: SpreadOptions,
): SpreadResult {
  const steps = spreadSteps(zones, factors, ranges, options);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/**
 * The same ranges, step by step, for a caller that does other things in between.
 * @param zones the zones
 * @param factors the factors in force; a factor with a range is taken from its range
 * @param ranges the factors' ranges, in base units
 * @param options how to draw
 * @yields how many draws are made, after each estimate of the job
 * @returns the ranges, and the factors ranked
 */
export function* spreadSteps(
  zones: readonly Zone[],
  factors: FactorsInForce,
  ranges: readonly FactorRange[],
  { draws, seed, rankBy }: SpreadOptions,
): Generator<SpreadProgress, SpreadResult> {
  const condensed = zones.map((zone): Zone => ({
    name: zone.name,
    rows: rowsAlike(zone.rows),
    below: zone.below,
  }));
  const at = (values: readonly number[]): Totals => {
    const own = new Map(ranges.map(({ id }, index) => [id, values[index] ?? NaN]));
    const value = (id: FactorId): number => own.get(id) ?? factors.value(id);
    const { laborHours, price } = estimateJob(condensed, { ...factors, value }).totals;
    return { laborHours, price };
  };
  const likely = ranges.map((range) => range.likely);
  const middle = at(likely);
  const ends: { low: Totals; high: Totals }[] = [];
  for (const [index, range] of ranges.entries()) {
    ends.push({ low: at(likely.with(index, range.low)), high: at(likely.with(index, range.high)) });
    yield { done: 0, total: draws };
  }
  const drawn = yield* draw(ranges, draws, seed, at);
  const spread = (measure: Measure): QuantitySpread => {
    const end = (more: boolean): number =>
      at(
        ranges.map((range, index) => {
          const { low, high } = ends[index] ?? { low: middle, high: middle };
          return high[measure] > low[measure] === more ? range.high : range.low;
        }),
      )[measure];
    const sorted = drawn[measure].sort();
    return {
      threePoint: { low: end(false), likely: middle[measure], high: end(true) },
      drawn: {
        low: quantile(sorted, LOW_SHARE),
        likely: quantile(sorted, HALF),
        high: quantile(sorted, HIGH_SHARE),
      },
      mean: sorted.reduce((sum, value) => sum + value, 0) / sorted.length,
    };
  };
  const swings = ranges.map(({ id }, index) => ({
    id,
    low: ends[index]?.low[rankBy] ?? NaN,
    likely: middle[rankBy],
    high: ends[index]?.high[rankBy] ?? NaN,
  }));
  return { laborHours: spread('laborHours'), price: spread('price'), swings: swings.sort(mostMovedFirst) };
}

function* draw(
  ranges: readonly FactorRange[],
  draws: number,
  seed: number,
  at: (values: readonly number[]) => Totals,
): Generator<SpreadProgress, Record<Measure, Float64Array>> {
  const next = chance(seed);
  const whole = ranges.map(({ id }) => table.some((row: Factor) => row.id === id && row.whole));
  const drawn = { laborHours: new Float64Array(draws), price: new Float64Array(draws) };
  for (let index = 0; index < draws; index++) {
    const totals = at(
      ranges.map(({ low, likely, high }, place) => {
        const value = triangular(next(), low, likely, high);
        return whole[place] ? Math.round(value) : value;
      }),
    );
    drawn.laborHours[index] = totals.laborHours;
    drawn.price[index] = totals.price;
    yield { done: index + 1, total: draws };
  }
  return drawn;
}

/** A factor with an end at which there is no number moves it the most. */
function mostMovedFirst(a: Spread, b: Spread): number {
  const size = ({ low, high }: Spread): number =>
    Number.isNaN(high - low) ? Number.MAX_VALUE : Math.abs(high - low);
  return size(b) - size(a);
}

/** Between two draws the value is taken in proportion. Where a draw has no number, which stand last, nothing is told. */
function quantile(sorted: Float64Array, share: number): number {
  if (Number.isNaN(sorted.at(-1))) return NaN;
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? NaN;
  const above = sorted[Math.ceil(place)] ?? NaN;
  return below + (above - below) * (place - Math.floor(place));
}
