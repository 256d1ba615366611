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
    const [, ...us] = starterRanges(readFactors([['price.labor', 60]]));
    // The starting values of the table of factors, by hand: 18, 300 and 108 ft2 per labor-hour, 10 ft2/min, 0.6 gal/ft2.
    expect(us.map((row) => row.slice(0, 5))).toEqual([
      ['scrub.full', 13.5, 18, 22.5, 'ft²/labor-h'],
      ['rate.scrape.moderate', 225, 300, 375, 'ft²/labor-h'],
      ['rate.apply', 7.5, 10, 12.5, 'ft²/min'],
      ['rinse.perArea', 0.45, 0.6, 0.75, 'gal/ft²'],
      ['rate.maskOn', 81, 108, 135, 'ft²/labor-h'],
      ['price.labor', 45, 60, 75, 'money/labor-h'],
    ]);
    // 1 ft2 = 0.09290304 m2, NIST SP 811.
    const apply = starterRanges(readFactors([['units', 'SI']])).find(([id]) => id === 'rate.apply');
    expect(apply?.slice(1, 5)).toEqual([0.696773, 0.92903, 1.16129, 'm²/min']);
  });

  it('start with ranges that can be read, also at the end of what is accepted and without a price', () => {
    const atTheEnd = readFactors([['rate.apply', 1000]]);
    const rows = starterRanges(atTheEnd);
    expect(rows.map(([id]) => id)).not.toContain('price.labor');
    const apply = readRanges(rangeColumns(rows), 'US').find(({ id }) => id === 'rate.apply');
    expect(apply?.high).toBe(apply?.likely);
  });
});
