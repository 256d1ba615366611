import { describe, expect, it } from 'vitest';
import { wholeStyle } from '../../../../workbench/page/files/read-sheet';

// In a file a cell with a format takes nothing from its row and column; where it has no fill, a table's stripes show.
describe('the whole look of a cell', () => {
  const own = { ff: 'Calibri', fs: 11, ht: 1 };

  it('undoes what a row or a column has and it has not', () => {
    const whole = wholeStyle(own, [{ ff: 'Calibri', bg: { rgb: '#FF0000' }, bl: 1 }, { ht: 3 }]);
    expect(whole).toEqual({ ...own, bg: null, bl: 0 });
  });

  it('leaves open what no row and no column has', () => {
    expect(wholeStyle(own, [{ ff: 'Calibri', fs: 11, ht: 2 }])).toEqual(own);
    expect(wholeStyle(own, [])).toEqual(own);
  });
});
