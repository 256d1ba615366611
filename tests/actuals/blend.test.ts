import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { blend, type Beliefs } from '../../src/actuals/blend';
import { outliersOf } from '../../src/actuals/outliers';
import { upperTenth } from '../../src/actuals/student';
import { chance } from '../../src/estimate/chance';
import { factors } from '../../src/rules/factors';

const M2_PER_FT2 = 0.09290304;
const start = (id: string): number => factors.find((row) => row.id === id)?.value ?? NaN;
const beliefs: Beliefs = {
  prior: start('rates.prior'),
  degrees: start('rates.degrees'),
  spread: start('rates.spread'),
  areaHalf: start('rates.areaHalf') * M2_PER_FT2,
};
const entry = (areaFt2: number, unitTime: number) => ({ area: areaFt2 * M2_PER_FT2, unitTime });

describe("Student's t", () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 9, 12, 19, 26, 50, 106, 1006])(
    'of %i degrees is that of a library',
    (degrees) => {
      expect(upperTenth(degrees)).toBeCloseTo(jStat.studentt.inv(0.9, degrees), 6);
    },
  );

  it('is that of the printed tables', () => {
    // Any table of Student's t, one tail of 0.10: 1, 6, 9 and 30 degrees of freedom.
    expect([1, 6, 9, 30].map((degrees) => upperTenth(degrees).toFixed(3))).toEqual([
      '3.078',
      '1.440',
      '1.383',
      '1.310',
    ]);
  });
});

describe('a unit time in force, blended with entries', () => {
  it('of 2, 12 and 22.5 net hours on 100, 400 and 900 ft2', () => {
    // Weights 100/200, 400/500 and 900/1000 are 2.2 in all: 2.2 / (4 + 2.2).
    const { unitTime, low, high, weight } = blend(
      1 / 60,
      [entry(100, 2 / 100), entry(400, 12 / 400), entry(900, 22.5 / 900)],
      beliefs,
    );
    expect(unitTime).toBeCloseTo(0.0198293, 7);
    expect(low).toBeCloseTo(0.0159693, 7);
    expect(high).toBeCloseTo(0.0246224, 7);
    expect(weight).toBeCloseTo(0.354839, 6);
  });

  it('is the one in force, with its own range, without an entry', () => {
    const { unitTime, low, high, weight } = blend(1 / 60, [], beliefs);
    expect(unitTime).toBeCloseTo(1 / 60, 12);
    expect(weight).toBe(0);
    // t(0.9; 6) of a printed table is 1.440, the spread 0.4 and the worth 4 entries.
    expect(high * 60).toBeCloseTo(Math.exp((1.44 * 0.4) / 2), 3);
    expect(low * high).toBeCloseTo(unitTime ** 2, 12);
  });

  it('is hardly moved by one entry of twice the time, and nearly set by twenty', () => {
    const twice = (entries: number): number =>
      blend(
        1,
        Array.from({ length: entries }, () => entry(900, 2)),
        beliefs,
      ).unitTime;
    expect(twice(1)).toBeLessThan(1.25);
    expect(twice(20)).toBeGreaterThan(1.75);
    expect(twice(20)).toBeLessThan(2.1);
  });

  it('hears a large area more than a small one', () => {
    const of = (area: number): number => blend(1, [entry(area, 2)], beliefs).unitTime;
    expect(of(10)).toBeLessThan(of(100));
    expect(of(100)).toBeLessThan(of(1000));
  });

  it('does not know the unit of time, nor the order of entries', () => {
    const entries = [entry(100, 0.02), entry(400, 0.03), entry(900, 0.025)];
    const minutes = entries.map((each) => ({ ...each, unitTime: each.unitTime * 60 }));
    const [one, other] = [blend(1 / 60, entries, beliefs), blend(1, [...minutes].reverse(), beliefs)];
    expect(other.unitTime).toBeCloseTo(one.unitTime * 60, 12);
    expect(other.low).toBeCloseTo(one.low * 60, 12);
  });

  const TRIALS = 1000;
  const normal = (draw: () => number): number => jStat.normal.inv(draw(), 0, 1);
  /** Draws entries of 400 ft2 about a mean of the logarithm, and blends them with a rate in force of 1. */
  function trial(draw: () => number, entries: number, mean: number, variance: number) {
    const weight = 400 / 500;
    const shown = Array.from({ length: entries }, () =>
      entry(400, Math.exp(mean + normal(draw) * Math.sqrt(variance / weight))),
    );
    const truth = Math.exp(mean + variance / 2);
    const blended = blend(1, shown, beliefs);
    return { held: blended.low <= truth && truth <= blended.high, off: blended.unitTime / truth - 1 };
  }

  it.each([1, 3, 5, 10, 20])(
    'holds the truth in its 80%% range, after %i entries drawn as believed',
    (entries) => {
      const draw = chance(20_000 + entries);
      let held = 0;
      for (let index = 0; index < TRIALS; index += 1) {
        const variance =
          (beliefs.degrees * beliefs.spread ** 2) / jStat.chisquare.inv(draw(), beliefs.degrees);
        const mean = -(beliefs.spread ** 2) / 2 + normal(draw) * Math.sqrt(variance / beliefs.prior);
        if (trial(draw, entries, mean, variance).held) held += 1;
      }
      expect(held / TRIALS).toBeGreaterThan(0.75);
      expect(held / TRIALS).toBeLessThan(0.85);
    },
  );

  it('comes nearer to a truth of twice the prior with more entries; how near is reported', () => {
    const report = [1, 3, 5, 10, 20].map((entries) => {
      const draw = chance(30_000 + entries);
      const variance = beliefs.spread ** 2;
      const runs = Array.from({ length: TRIALS }, () =>
        trial(draw, entries, Math.log(2) - variance / 2, variance),
      );
      return {
        entries,
        coverage: runs.filter(({ held }) => held).length / TRIALS,
        bias: runs.reduce((sum, { off }) => sum + off, 0) / TRIALS,
      };
    });
    console.info('truth twice the prior', JSON.stringify(report));
    const biases = report.map(({ bias }) => Math.abs(bias));
    expect(biases).toEqual([...biases].sort((a, b) => b - a));
  });
});

describe('outliers', () => {
  const named = (...values: readonly number[]) => values.map((value) => ({ value }));

  it('are entries far beyond the middle half, on either side', () => {
    // Logarithms to base 2: 0, 1, 1, 2, 2, 3; the middle half is 1 to 2, the fences -0.5 and 3.5.
    expect(outliersOf(named(1, 2, 2, 4, 4, 8))).toEqual([]);
    expect(outliersOf(named(2, 2, 4, 4, 64))).toEqual(named(64));
    expect(outliersOf(named(64, 64, 32, 32, 1))).toEqual(named(1));
  });

  it('are none among fewer than four, or among equals', () => {
    expect(outliersOf(named(1, 1, 100))).toEqual([]);
    expect(outliersOf(named(3, 3, 3, 3, 3))).toEqual([]);
  });
});
