import { describe, expect, it } from 'vitest';
import { readFactors } from '../../../src/rules/read-factors';
import { placeOf, readSource, readWallSource, referenceText } from '../../../taskpane/shared/wall-source';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

const workbook = new MemoryWorkbook({
  sheets: { Walls: [['Wall'], ['W-1']], Other: [['', 'crew', 3]] },
  tables: [{ name: 'Walls', sheet: 'Walls', address: 'A1:A2' }],
});

describe('a reference as a formula has it', () => {
  it.each([
    [{ table: 'Walls' }, 'Walls[#All]'],
    [{ sheet: 'Walls', address: 'A1:F20' }, 'Walls!$A$1:$F$20'],
    [{ sheet: 'My walls', address: 'B3' }, "'My walls'!$B$3"],
    [{ sheet: "Bob's", address: 'A1:B2' }, "'Bob''s'!$A$1:$B$2"],
    [{ sheet: 'A1', address: 'A1' }, "'A1'!$A$1"],
    [{ sheet: 'RC', address: 'A1' }, "'RC'!$A$1"],
    [{ sheet: '2026', address: 'A1' }, "'2026'!$A$1"],
    [{ sheet: 'Mauerwerk_Süd', address: 'A1' }, 'Mauerwerk_Süd!$A$1'],
  ])('%j is %s', (reference, text) => {
    expect(referenceText(reference)).toBe(text);
  });
});

it('a source is read where it stands; what it has not is null', async () => {
  const factors = { sheet: 'Other', address: 'B1:C1' };
  expect(await readSource(workbook, { walls: { table: 'Walls' }, factors })).toEqual({
    walls: [['Wall'], ['W-1']],
    factors: [['crew', 3]],
    headings: null,
  });
});

it('the number of a percent cell comes with its format, so that 0.1 shown as 10% is 10%', async () => {
  const percents = new MemoryWorkbook({
    sheets: {
      Walls: [['Wall'], ['W-1']],
      Factors: [
        ['Factor', 'Value'],
        ['price.overhead', 0.1],
        ['price.profit', 5],
        ['working.share', 0.6],
      ],
    },
    tables: [{ name: 'Factors', sheet: 'Factors', address: 'A1:B4' }],
    formats: { 'Factors!B2': '0%', 'Factors!B4': '0.0%' },
  });
  const { factors } = await readSource(percents, {
    walls: { sheet: 'Walls', address: 'A1:A2' },
    factors: { table: 'Factors' },
  });
  const inForce = readFactors(factors);
  expect(inForce.value('price.overhead')).toBe(0.1);
  expect(inForce.value('price.profit')).toBe(0.05);
  expect(inForce.value('working.share')).toBe(0.6);
});

it('a table is found where it stands', async () => {
  expect(await placeOf(workbook, { table: 'walls' })).toEqual({ sheet: 'Walls', address: 'A1:A2' });
  expect(await placeOf(workbook, { sheet: 'Other', address: 'A1' })).toEqual({
    sheet: 'Other',
    address: 'A1',
  });
  await expect(placeOf(workbook, { table: 'Gone' })).rejects.toThrow('There is no table Gone');
});

describe('a source that was kept', () => {
  it('comes back the same', () => {
    const source = { walls: { sheet: 'S', address: 'A1:B2' }, headings: { table: 'H' } };
    expect(readWallSource(JSON.stringify(source))).toEqual(source);
  });

  it.each([
    '',
    'null',
    '{}',
    '{"walls":{}}',
    '{"walls":{"table":"W"},"factors":7}',
    '{"walls":{"sheet":"S"}}',
  ])('is refused where it is none: %s', (text) => {
    expect(() => readWallSource(text)).toThrow();
  });
});
