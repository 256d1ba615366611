import { expect, expectTypeOf, it } from 'vitest';
import { parseAddress, type Area as CoreArea } from '../../src/spreadsheet/address';
import { areaAddress, parseArea, type Area as FileArea } from '../../workbench/xlsx/address';

it('a block that counts from 0 is no block that counts from 1', () => {
  expectTypeOf<FileArea>().not.toExtend<CoreArea>();
  expectTypeOf<CoreArea>().not.toExtend<FileArea>();
  expect(parseAddress('B3:C9')).toEqual({ top: 3, left: 2, bottom: 9, right: 3 });
  expect(parseArea('B3:C9')).toEqual({ top: 2, left: 1, bottom: 8, right: 2 });
  expect(areaAddress(parseArea('$B$3:C9'))).toBe('B3:C9');
});

it.each(['XFE1', 'A0', 'A1048577', 'A1:XFE2', 'Walls'])('%s is no cell', (text) => {
  expect(parseAddress(text)).toBeUndefined();
  expect(() => parseArea(text)).toThrow(`"${text}" is not a cell or a range.`);
});
