import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { readGroups, readWalls } from '../../src/walls/read-walls';
import { readZones } from '../../src/walls/read-zones';
import { refusal } from '../functions/call';

const factorsWith = (washDate?: number) =>
  readFactors([['units', 'SI'], ...(washDate === undefined ? [] : [['wash.date', washDate]])]);
// 2026-03-02 as the spreadsheet counts: 46,023 on 2026-01-01, and 31 and 28 days and one more.
const WASH = 46083;

const laid = (age: unknown): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Age'],
  ['South', 'Limestone', 10, age],
];
const ageOf = (age: unknown, washDate?: number): number | undefined =>
  readWalls(laid(age), factorsWith(washDate))[0]?.age;
const refused = (age: unknown, washDate?: number): string =>
  refusal(() => readWalls(laid(age), factorsWith(washDate))).message;
const shownAsDate = (basicValue: number): unknown => ({
  type: 'FormattedNumber',
  basicType: 'Double',
  basicValue,
  numberFormat: 'yyyy-mm-dd',
});

describe('an age', () => {
  it('up to 19,999 is days, with a date of the wash and without', () => {
    for (const washDate of [undefined, WASH]) {
      expect(ageOf(28, washDate)).toBe(28);
      expect(ageOf(19999, washDate)).toBe(19999);
      expect(ageOf('', washDate)).toBe(0);
    }
  });

  it('from 20,000 is the date it was laid, counted to the wash', () => {
    // Laid on 2026-02-02: 28 days to 2026-03-02.
    expect(ageOf(46055, WASH)).toBe(28);
    // At a time of that day.
    expect(ageOf(46055.75, WASH)).toBe(28);
    expect(ageOf(20000, WASH)).toBe(26083);
    expect(ageOf(shownAsDate(46055), WASH)).toBe(28);
  });

  it('that is a date is read so by kinds and zones too', () => {
    expect(readZones(laid(46055), factorsWith(WASH))[0]?.rows[0]?.age).toBe(28);
    expect(readGroups(laid(46055), factorsWith(WASH))).toHaveLength(1);
    expect(refusal(() => readZones(laid(46055), factorsWith())).message).toContain('wash.date');
  });

  it('that is a date needs the date of the wash', () => {
    for (const date of [46055, shownAsDate(46055)])
      expect(refused(date)).toBe(
        'Row 2 (South), column Age: 46055 (a date) cannot be used. Accepted: a number of days from 0 to 19999; a date only where the factor wash.date says up to when it is counted.',
      );
  });

  it.each([46083, 46084])('must lie before the wash: %d does not', (date) => {
    expect(refused(date, WASH)).toBe(
      `Row 2 (South), column Age: ${String(date)} (a date) cannot be used. Accepted: a number of days from 0 to 19999, or a date before the wash.date, 46083.`,
    );
  });

  it.each<[unknown, string]>([
    [19999.5, '19999.5'],
    ['46055', '"46055" (a number stored as text)'],
    [shownAsDate(28), '"28" (a date)'],
    [true, 'TRUE'],
  ])('of %j is refused', (age, seen) => {
    expect(refused(age, WASH)).toBe(
      `Row 2 (South), column Age: ${seen} cannot be used. Accepted: a number of days from 0 to 19999, or a date.`,
    );
  });
});
