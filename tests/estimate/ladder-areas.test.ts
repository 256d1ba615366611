import { expect, it } from 'vitest';
import { maskOptions } from '../../src/estimate/options';
import { zonesOf } from '../../src/walls/zones';
import { factorsOf, wallRow, type MadeRow } from '../core/made';

const ladder = (mask: 'no' | 'never') => {
  const rows: MadeRow[] = [
    { wall: 'A', area: 100, openings: 10, residue: 'heavy' },
    { wall: 'B', area: 50, openings: 20, material: 'Limestone', mask },
    { wall: 'C', area: 30, openings: 5, material: 'Marble' },
  ];
  const factors = factorsOf();
  const zones = zonesOf(rows.map((row, index) => wallRow(row, index, factors)));
  const [lines = []] = maskOptions(zones, zones, factors);
  return lines;
};
const names = (rows: readonly { wall: string }[]): string => rows.map(({ wall }) => wall).join('');

it('each class masks what may not meet it, and every line washes the same area', () => {
  // Marble takes clear water alone, limestone detergent.
  expect(ladder('no').map((line) => line.class)).toEqual([undefined, 0, 1, 2, 3]);
  expect(ladder('no').map((line) => names(line.masked))).toEqual(['', '', 'C', 'BC', 'BC']);
  for (const { estimate } of ladder('no'))
    expect(estimate?.totals.washedArea).toBeCloseTo((90 + 30 + 25) * 0.09290304, 9);
});

it('a class that cannot be allowed masks nothing and has no estimate', () => {
  for (const option of ladder('never').slice(3))
    expect(option).toMatchObject({
      masked: [],
      estimate: undefined,
      reason: 'cannot be masked: B (Limestone)',
      cheapest: false,
    });
});
