import { describe, expect, it } from 'vitest';
import { readCell } from '../../src/quantity/cell';
import { dayIn } from '../../src/quantity/day';

const day = (raw: unknown): number | undefined => dayIn(readCell(raw));
// The spreadsheet counts 25,569 for the day from which the platform counts milliseconds.
const counted = (year: number, month: number, date: number): number =>
  Date.UTC(year, month - 1, date) / 86_400_000 + 25_569;

describe('a day', () => {
  it.each([
    [2026, 2, 2],
    [2024, 2, 29],
    [2000, 2, 29],
    [2000, 12, 31],
    [1999, 12, 31],
    [2100, 3, 1],
    [1969, 7, 4],
  ])('of %d, %d, %d is counted as the spreadsheet does', (year, month, date) => {
    expect(day(`${String(year)}-${String(month)}-${String(date)}`)).toBe(counted(year, month, date));
  });

  it.each([
    '2026-02-03',
    '2026-2-3',
    '2026-02-03T07:30:00',
    '2026-02-03 07:30',
    'Feb 3, 2026',
    'Feb. 3, 2026',
    'February 3 2026',
    'february 3rd, 2026',
    '3 Feb 2026',
    '3-Feb-2026',
    '3. February 2026',
  ])('is the text %j', (text) => {
    expect(day(text)).toBe(counted(2026, 2, 3));
  });

  it('is a number, and a number shown as a date', () => {
    expect(day(46056.5)).toBe(46056.5);
    expect(
      day({ type: 'FormattedNumber', basicType: 'Double', basicValue: 46056, numberFormat: 'm/d/yy' }),
    ).toBe(46056);
  });

  it.each([
    '2/3/2026',
    '3.2.2026',
    '3-Feb-26',
    '2026-02-30',
    '2025-02-29',
    '2100-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-04-31',
    '2026-02-00',
    'Fob 3, 2026',
    '2026-02-03T23:30:00.000Z',
    'soon',
    '',
    true,
    null,
  ])('is not %j', (raw) => {
    expect(day(raw)).toBeUndefined();
  });
});
