import { describe, expect, it } from 'vitest';
import { readFactors } from '../../../src/rules/read-factors';
import { readRanges } from '../../../src/rules/read-ranges';
import { holdsRanges, rangeColumns, starterRanges } from '../../../taskpane/decisions/range-tables';

describe('tables of ranges', () => {
  it('have four columns, in any order, with others between them', () => {
    expect(holdsRanges({ headings: ['High', 'Note', ' factor', 'LOW', 'Likely'] })).toBe(true);
    expect(holdsRanges({ headings: ['Factor', 'Low', 'High'] })).toBe(false);
    expect(
      rangeColumns([
        ['High', 'Note', 'Factor', 'Low', 'Likely'],
        [10, 'x', 'rate.rinse', 6, 8],
      ]),
    ).toEqual([
      ['Factor', 'Low', 'Likely', 'High'],
      ['rate.rinse', 6, 8, 10],
    ]);
    expect(rangeColumns([['Factor', 'Value']])).toEqual([]);
    expect(rangeColumns([])).toEqual([]);
  });

  it('start with a quarter either way of the values in force, in the units of the user', () => {
    const [, ...us] = starterRanges(readFactors([['price.labour', 60]]));
    // The starting values of the table of factors, by hand: 10 and 8 ft2/min, 150, 200 and 60 ft2/h.
    expect(us.map((row) => row.slice(0, 5))).toEqual([
      ['rate.apply', 7.5, 10, 12.5, 'ft²/min'],
      ['rate.rinse', 6, 8, 10, 'ft²/min'],
      ['rate.scrape.moderate', 150, 200, 250, 'ft²/crew-h'],
      ['rate.scrub', 45, 60, 75, 'ft²/crew-h'],
      ['rate.maskOn', 112.5, 150, 187.5, 'ft²/crew-h'],
      ['price.labour', 45, 60, 75, 'money/crew-h'],
    ]);
    // 1 ft2 = 0.09290304 m2, NIST SP 811.
    const [, apply] = starterRanges(readFactors([['units', 'SI']]));
    expect(apply?.slice(1, 5)).toEqual([0.696773, 0.92903, 1.16129, 'm²/min']);
  });

  it('start with ranges that can be read, also at the end of what is accepted and without a price', () => {
    const atTheEnd = readFactors([['rate.apply', 1000]]);
    const rows = starterRanges(atTheEnd);
    expect(rows.map(([id]) => id)).not.toContain('price.labour');
    const [apply] = readRanges(rangeColumns(rows), 'US');
    expect(apply?.high).toBe(apply?.likely);
  });
});
