import { describe, expect, it } from 'vitest';
import { costText, differenceText, quantityText } from '../../../taskpane/decisions/number-text';
import { priceText } from '../../../taskpane/shared/price-text';

// NIST SP 811 (2008), appendix B.8.
const LITRES_IN_GALLON = 3.785411784;

/** The digits alone, since the marks between them are those of the user's own way of writing. */
const digits = (text: string): string => text.replace(/\D/g, '');

describe('numbers of the decisions', () => {
  it('a price has its cents, rounded once', () => {
    expect(digits(priceText(1234.5))).toBe('123450');
    expect(digits(priceText(0.126))).toBe('013');
  });

  it('a quantity has the unit of the system, a price and hours under their heading none', () => {
    expect(quantityText(2 * LITRES_IN_GALLON, 'volume', 'US')).toBe('2 gal');
    expect(quantityText(2, 'volume', 'SI')).toBe('2 L');
    expect(quantityText(30.68, 'laborHours', 'US')).toBe('30.7 labor-hours');
    expect(costText(30.68, 'laborHours')).toBe('30.7');
    expect(digits(costText(30.68, 'money'))).toBe('3068');
  });

  it('a difference has its sign', () => {
    expect(differenceText(2 * LITRES_IN_GALLON, 'volume', 'US')).toBe('+2 gal');
    expect(differenceText(-2, 'volume', 'SI')).toBe('−2 L');
    expect(differenceText(-12, 'money', 'US')).toMatch(/^−12\D00$/);
  });

  it('what sums leave over is no change', () => {
    expect(differenceText(0.1 + 0.2 - 0.3, 'laborHours', 'US')).toBe('no change');
    expect(differenceText(0.004, 'money', 'US')).toBe('no change');
    expect(differenceText(0.006, 'money', 'US')).toMatch(/^\+0\D01$/);
  });

  it('where there is no number it is said', () => {
    for (const text of [
      priceText(NaN),
      quantityText(NaN, 'volume', 'US'),
      costText(NaN, 'laborHours'),
      differenceText(NaN, 'money', 'US'),
    ]) {
      expect(text).toBe('no value');
    }
  });
});
