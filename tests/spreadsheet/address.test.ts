import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaAddress,
  cellAddress,
  columnLetters,
  columnNumber,
  parseAddress,
} from '../../src/spreadsheet/address';

describe('columns', () => {
  it.each([
    [1, 'A'],
    [26, 'Z'],
    [27, 'AA'],
    [52, 'AZ'],
    [53, 'BA'],
    [702, 'ZZ'],
    [703, 'AAA'],
    [16384, 'XFD'],
  ])('column %i is %s', (number, letters) => {
    expect(columnLetters(number)).toBe(letters);
    expect(columnNumber(letters)).toBe(number);
  });
});

describe('addresses', () => {
  it('are read with and without $, corners in any order', () => {
    expect(parseAddress('$B$2:D9')).toEqual({ top: 2, left: 2, bottom: 9, right: 4 });
    expect(parseAddress('D9:B2')).toEqual({ top: 2, left: 2, bottom: 9, right: 4 });
    expect(parseAddress('c7')).toEqual({ top: 7, left: 3, bottom: 7, right: 3 });
  });

  it.each(['', 'A', '7', 'A0', 'XFE1', 'A1048577', 'A1:B2:C3', 'Walls', 'A1 B2'])('%j is none', (text) => {
    expect(parseAddress(text)).toBeUndefined();
  });

  it('are written as they are read', () => {
    const place = fc.tuple(fc.integer({ min: 1, max: 1048576 }), fc.integer({ min: 1, max: 16384 }));
    fc.assert(
      fc.property(place, place, ([row, column], [row2, column2]) => {
        const address = `${cellAddress(row, column)}:${cellAddress(row2, column2)}`;
        const area = parseAddress(address);
        expect(area).toEqual({
          top: Math.min(row, row2),
          bottom: Math.max(row, row2),
          left: Math.min(column, column2),
          right: Math.max(column, column2),
        });
        expect(area && parseAddress(areaAddress(area))).toEqual(area);
      }),
    );
  });
});
