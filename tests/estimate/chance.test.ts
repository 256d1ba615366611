import { describe, expect, it } from 'vitest';
import { chance, triangular } from '../../src/estimate/chance';

// Park and Miller (1988): x becomes 16807 x modulo 2^31 - 1, for x from 1 to 2^31 - 2.
const M = 2 ** 31 - 1;

describe('numbers of chance', () => {
  it.each([
    // The first number is 16807 x / M; of x = M - 1 it is (M - 16807) / M.
    ['0 starts at 1', 0, 16807 / M],
    ['1 starts at 2', 1, (2 * 16807) / M],
    ['the last seed of the round starts at M - 1', M - 2, (M - 16807) / M],
    ['the next one starts at 1 again', M - 1, 16807 / M],
    ['-1 starts at M - 1', -1, (M - 16807) / M],
    ['a fraction counts as its whole part', 1.9, (2 * 16807) / M],
  ])('seed: %s', (_, seed, first) => {
    expect(chance(seed)()).toBe(first);
  });

  it('come to what the paper prints: from 1, the 10,000th is 1043618065', () => {
    const next = chance(0);
    for (let drawn = 1; drawn < 10_000; drawn++) next();
    expect(Math.round(next() * M)).toBe(1043618065);
  });
});

it('the value below which a share of a triangle lies', () => {
  // Over 40, 50, 80: to the bend a quarter of the area, 10^2 / (10 * 40); half of it at 80 - sqrt(0.5 * 40 * 30).
  expect(triangular(0.25, 40, 50, 80)).toBeCloseTo(50, 12);
  expect(triangular(0, 40, 50, 80)).toBe(40);
  expect(triangular(1, 40, 50, 80)).toBe(80);
  expect(triangular(0.5, 40, 50, 80)).toBeCloseTo(80 - Math.sqrt(600), 12);
  expect(triangular(0.7, 50, 50, 50)).toBe(50);
});
