import { expect, it } from 'vitest';
import { shownAmount, shownNumber, tidy } from '../../src/quantity/shown-number';
import { statedNumber } from '../../src/site/bid/stated-number';

it('a number keeps its first digits, small or large', () => {
  expect(tidy(12345.678, 3)).toBe(12300);
  expect(tidy(0.00123456, 3)).toBe(0.00123);
  expect(tidy(-2.00049, 4)).toBe(-2);
});

it('what the conversion of units touches is not shown', () => {
  // 100 ft2 are 9.290304 m2, by the foot of 0.3048 m.
  expect(shownNumber(9.290304, 'area', 'US', 12)).toBe('100');
  expect(shownAmount(9.290304, 'area', 'SI', 3)).toBe('9.29 m²');
});

it('a bid states whole numbers, and one decimal below ten', () => {
  expect([12345.6, 10.4, 9.94, 0.04].map(statedNumber)).toEqual([12346, 10, 9.9, 0]);
});
