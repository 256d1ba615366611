import { describe, expect, it } from 'vitest';
import { chance } from '../../src/estimate/chance';

// The generator of Park and Miller takes x to 16807 x modulo 2^31 - 1, for x from 1 to 2^31 - 2.
const M = 2 ** 31 - 1;

describe('numbers of chance', () => {
  it.each([
    // The first number is 16807 x / M; of x = M - 1 it is (M - 16807) / M.
    ['0 starts at 1', 0, 16807 / M],
    ['1 starts at 2', 1, (2 * 16807) / M],
    ['the last seed of the round starts at M - 1', M - 2, (M - 16807) / M],
    ['the next one starts at 1 again', M - 1, 16807 / M],
    ['two rounds on starts at 1 too', 2 * (M - 1), 16807 / M],
    ['-1 starts at M - 1', -1, (M - 16807) / M],
    ['a fraction counts as its whole part', 1.9, (2 * 16807) / M],
  ])('seed: %s', (_, seed, first) => {
    expect(chance(seed)()).toBe(first);
  });
});
