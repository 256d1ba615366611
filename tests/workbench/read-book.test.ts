import { describe, expect, it } from 'vitest';
import { readBook } from '../../workbench/xlsx/read-book';
import { moveFormula } from '../../src/spreadsheet/move-formula';
import type { BookCell } from '../../workbench/xlsx/book';
import { rawArchive, WALLS } from './raw-workbook';

function cellsOf(rows: string, strings: string[] = []): ReadonlyMap<string, BookCell> {
  const [sheet] = readBook(rawArchive([{ name: 'S', rows }], '', strings)).sheets;
  return sheet?.cells ?? new Map<string, BookCell>();
}

describe('reading a workbook', () => {
  it('reads each kind of value', () => {
    const cells = cellsOf(
      '<row r="1"><c r="A1"><v>1.5</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="b"><v>1</v></c><c r="D1" t="e"><v>#N/A</v></c>' +
        '<c r="E1" t="str"><f>"a"&amp;"b"</f><v>a&lt;b_x000D_</v></c><c r="F1" t="inlineStr"><is><r><t>in</t></r><r><t>line</t></r></is></c><c r="G1" s="3"/></row>',
      ['zero', 'Red &amp; brown'],
    );
    expect([...cells].map(([address, { value }]) => [address, value])).toEqual([
      ['A1', 1.5],
      ['B1', 'Red & brown'],
      ['C1', true],
      ['D1', { error: '#N/A' }],
      ['E1', 'a<b\r'],
      ['F1', 'inline'],
    ]);
    expect(cells.get('E1')?.formula).toBe('"a"&"b"');
  });

  it('keeps a formula that was never calculated', () => {
    const cells = cellsOf('<row r="2"><c r="B2"><f>WASH.WATER(A1)</f></c></row>');
    expect(cells.get('B2')).toMatchObject({ value: null, formula: 'WASH.WATER(A1)', row: 1, column: 1 });
  });

  it('counts along where a cell or row names no address', () => {
    const cells = cellsOf(
      '<row><c><v>1</v></c><c r="D1"><v>2</v></c><c><v>3</v></c></row><row><c><v>4</v></c></row>',
    );
    expect([...cells.keys()]).toEqual(['A1', 'D1', 'E1', 'A2']);
  });

  it('moves a shared formula to its cells', () => {
    const cells = cellsOf(
      '<row r="1"><c r="C1"><f t="shared" ref="C1:D2" si="0">A1+$B1&amp;"A1"</f></c><c r="D1"><f t="shared" si="0"/></c></row>' +
        '<row r="2"><c r="D2"><f t="shared" si="0"/></c></row>',
    );
    expect(cells.get('D1')?.formula).toBe('B1+$B1&"A1"');
    expect(cells.get('D2')?.formula).toBe('B2+$B2&"A1"');
  });

  it('reads tables and names with their sheet', () => {
    const names =
      '<definedNames><definedName name="Crew" localSheetId="0">Walls!$C$2</definedName></definedNames>';
    const book = readBook(rawArchive([WALLS], names));
    expect(book.tables).toEqual([
      {
        name: 'Walls',
        sheet: 'Walls',
        area: { top: 0, left: 0, bottom: 3, right: 2 },
        columns: ['Wall', 'Zone', 'Area'],
        headerRows: 1,
        totalsRows: 0,
      },
    ]);
    expect(book.names).toEqual([{ name: 'Crew', formula: 'Walls!$C$2', sheet: 'Walls' }]);
  });

  it('reads names of elements with a prefix', () => {
    const parts = new Map(rawArchive([{ name: 'S', rows: '' }]));
    const xml =
      '<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row r="1"><x:c r="A1"><x:f>1+1</x:f><x:v>2</x:v></x:c></x:row></x:sheetData></x:worksheet>';
    parts.set('xl/worksheets/sheet1.xml', new TextEncoder().encode(xml));
    expect(readBook(parts).sheets[0]?.cells.get('A1')).toMatchObject({ value: 2, formula: '1+1' });
  });
});

describe('moving a formula', () => {
  it.each([
    ['A1+$A1+A$1+$A$1', 'B3+$A3+B$1+$A$1'],
    ['SUM(A:B)+SUM(2:3)', 'SUM(B:C)+SUM(4:5)'],
    ["LOG10(A1)+'Q1'!A1+Z9", "LOG10(B3)+'Q1'!B3+AA11"],
    ['Walls[A1]&"A1"', 'Walls[A1]&"A1"'],
  ])('%s, two down and one right', (from, to) => {
    expect(moveFormula(from, { row: 1, column: 1 }, { row: 3, column: 2 })).toBe(to);
  });
});
