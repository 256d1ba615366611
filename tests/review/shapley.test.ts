import { describe, expect, it } from 'vitest';
import { nothing, type Reached } from '../../src/review/changes/changing-job';
import { shapleyExact, shapleySampled, type Game, type Part } from '../../src/review/changes/shapley';

const COUNT = 7;
const own = [5, -3, 8, 0, 2.5, 1, -7];
const TRIPLE = 12;

/** Own values, a value for every pair that is made, the product of their numbers, and one for three together. */
function game(triple: number): Game {
  return {
    at: (made): Reached => {
      const list = [...made];
      const pairs = list.flatMap((one, place) => list.slice(place + 1).map((other) => one * other));
      const price =
        list.reduce((sum, change) => sum + (own[change] ?? NaN), 0) +
        pairs.reduce((sum, value) => sum + value, 0) +
        ([1, 2, 4].every((change) => made.has(change)) ? triple : 0);
      return { sums: { ...nothing(), price }, without: new Map(), classes: new Map() };
    },
  };
}

/** By symmetry a pair shares its value in halves, and three theirs in thirds. */
function byHand(triple: number): number[] {
  const all = Array.from({ length: COUNT }, (_, index) => index);
  return all.map((change) => {
    const pairs = all.reduce((sum, other) => sum + (other === change ? 0 : (change * other) / 2), 0);
    return (own[change] ?? NaN) + pairs + ([1, 2, 4].includes(change) ? triple / 3 : 0);
  });
}

function result(steps: Generator<undefined, Part[]>): { parts: Part[]; count: number } {
  let count = 0;
  for (;;) {
    const step = steps.next();
    if (step.done) return { parts: step.value, count };
    count += 1;
  }
}

describe('the parts of changes that act together', () => {
  it('are exact over every subset, a step each', () => {
    const { parts, count } = result(shapleyExact(COUNT, game(TRIPLE)));
    expect(count).toBe(2 ** COUNT);
    parts.forEach(({ mean, error }, change) => {
      expect(mean.price).toBeCloseTo(byHand(TRIPLE)[change] ?? NaN, 9);
      expect(error.price).toBe(0);
    });
  });

  it('are exact over any order and its reversal where they act in pairs alone', () => {
    const { parts } = result(shapleySampled(COUNT, game(0), 3, 5));
    parts.forEach(({ mean, error }, change) => {
      expect(mean.price).toBeCloseTo(byHand(0)[change] ?? NaN, 9);
      expect(error.price).toBeCloseTo(0, 6);
    });
  });

  it('are near over drawn orders where three act together, and the error says how near', () => {
    const { parts, count } = result(shapleySampled(COUNT, game(TRIPLE), 50, 1));
    expect(count).toBe(50 * 2 * COUNT);
    parts.forEach(({ mean, error }, change) => {
      const far = Math.abs(mean.price - (byHand(TRIPLE)[change] ?? NaN));
      expect(far).toBeLessThanOrEqual(4 * error.price + 1e-9);
    });
    // A pair of orders gives one of the three 0, 6 or 12 of the 12: its mean over 50 pairs is off by less than 1.
    expect(parts[1]?.error.price).toBeGreaterThan(0.1);
    expect(parts[1]?.error.price).toBeLessThan(1);
    expect(parts[3]?.error.price).toBeCloseTo(0, 6);
    expect(parts.reduce((sum, { mean }) => sum + mean.price, 0)).toBeCloseTo(
      game(TRIPLE).at(new Set(own.keys())).sums.price,
      9,
    );
  });

  it('are the same for the same seed, and others for another', () => {
    const drawn = (seed: number) => result(shapleySampled(COUNT, game(TRIPLE), 5, seed)).parts;
    expect(drawn(1)).toEqual(drawn(1));
    expect(drawn(1)).not.toEqual(drawn(2));
  });

  it('of no change are none', () => {
    expect(result(shapleyExact(0, game(TRIPLE))).parts).toEqual([]);
  });
});
