import { expect, it } from 'vitest';
import { amount, factorAmount, rounded, siteAmount } from '../../src/site/amount';
import { readFactors } from '../../src/rules/read-factors';

it('rounds to three digits below a hundred and to whole numbers above', () => {
  expect([4.4449, 0.04444, 18.37, 99.96, 123.4, 1236.4].map(rounded)).toEqual([
    '4.44',
    '0.0444',
    '18.4',
    '100',
    '123',
    '1236',
  ]);
});

it('shows the unit of the system, in the singular where it is one', () => {
  expect(amount(0.09290304 * 40, 'area', 'US')).toBe('40 ft²');
  expect(amount(40, 'area', 'SI')).toBe('40 m²');
  expect(amount(1, 'days', 'US')).toBe('1 day');
  expect(amount(7, 'days', 'US')).toBe('7 days');
  expect(amount(40, 'angle', 'SI')).toBe('40°');
  expect(amount(3, 'count', 'SI')).toBe('3');
});

it('tells less than a gallon or a liter in what it is measured with', () => {
  // A gallon is 3.785412 L and has 128 fluid ounces.
  expect(siteAmount(3.785412 / 4, 'volume', 'US')).toBe('0.25 gal = 32 fl oz');
  expect(siteAmount(0.035, 'volume', 'SI')).toBe('0.035 L = 35 mL');
  expect(siteAmount(3.785412 * 2, 'volume', 'US')).toBe('2 gal');
  expect(siteAmount(1, 'volume', 'SI')).toBe('1 L');
  expect(siteAmount(0, 'volume', 'SI')).toBe('0 L');
  expect(siteAmount(0.09290304 / 2, 'area', 'US')).toBe('0.5 ft²');
});

it('shows a factor in the system of the workbook', () => {
  expect(factorAmount('nozzle.pressure', readFactors(null))).toBe('400 psi');
  // 400 psi * 6.894757 kPa
  expect(factorAmount('nozzle.pressure', readFactors([['units', 'SI']]))).toBe('2758 kPa');
  expect(factorAmount('limit.air', readFactors(null))).toBe('40 °F');
});
