import { describe, expect, it } from 'vitest';
import { alternateTable, ownRows } from '../../../taskpane/decisions/alternate-rows';
import { holdsAlternates } from '../../../taskpane/shared/holds-alternates';

const WALLS = [
  ['Wall', 'Zone', 'Material', 'Area', 'Mortar'],
  ['F-1', 'Front', 'Red clay brick', 800, 'N'],
  ['F-2', 'Front', 'Limestone', 60, 'N'],
];
const RANGES = { walls: WALLS, factors: null, headings: null };
const HEAD = ['Alternate', 'Wall', 'Column', 'Value'];

describe('rows of alternates', () => {
  it('knows a table by its four columns, in any order and spelling', () => {
    expect(holdsAlternates({ headings: ['value', 'Note', 'COLUMN', 'Wall', 'Alternate'] })).toBe(true);
    expect(holdsAlternates({ headings: ['Alternate', 'Wall', 'Value'] })).toBe(false);
  });

  it('writes a row for each cell that is set, blank where nothing is', () => {
    const rows = alternateTable([
      {
        name: 'Rinse kept off',
        notes: [],
        edits: [
          { of: 'wall', wall: 'F-1', column: 'receives', value: '' },
          { of: 'factor', id: 'price.labor', value: 60 },
        ],
      },
    ]);
    expect(rows).toEqual([
      HEAD,
      ['Rinse kept off', 'F-1', 'Receives', ''],
      ['Rinse kept off', '', 'price.labor', 60],
    ]);
  });

  it('lays the rows of an own alternate out as the table has its columns, a number as a number', () => {
    const own = { name: ' Less brick ', walls: ['F-1'], column: 'area', value: '700' } as const;
    expect(ownRows(own, [['Value', 'Note', 'Wall', 'Alternate', 'Column']], RANGES)).toEqual([
      [700, '', 'F-1', 'Less brick', 'Area'],
    ]);
  });

  it('refuses what a cell would refuse, and a cell that the alternate has set already', () => {
    const own = { name: 'Weaker', walls: ['F-1'], column: 'mortar', value: 'X' } as const;
    expect(() => ownRows(own, [HEAD], RANGES)).toThrow(/"X"/);
    const table = [HEAD, ['Weaker', 'F-1', 'Mortar', 'O']];
    expect(() => ownRows({ ...own, value: 'M' }, table, RANGES)).toThrow(/second time/);
  });
});
