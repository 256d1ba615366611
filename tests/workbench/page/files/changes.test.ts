import type { IWorksheetData } from '@univerjs/presets';
import { beforeAll, describe, expect, it } from 'vitest';
import { partText as keptText } from '../../../../taskpane/workbook/part-xml';
import { openWorkbook } from '../../../../workbench/page/files/open-workbook';
import { saveWorkbook } from '../../../../workbench/page/files/save-workbook';
import type { OpenedWorkbook, ShownWorkbook } from '../../../../workbench/page/files/shown-workbook';
import { openArchive, partText } from '../../../../workbench/xlsx/archive';
import { readBook } from '../../../../workbench/xlsx/read-book';
import { relationships } from '../../../../workbench/xlsx/parts';
import { foreignFile } from './foreign-file';
import { readWithExceljs } from './read-with-exceljs';

let bytes: Uint8Array;
let opened: OpenedWorkbook;

beforeAll(async () => {
  bytes = await foreignFile();
  opened = await openWorkbook(bytes);
});

/** A copy of the workbook to change, and its sheets by name. */
function copy(): { shown: ShownWorkbook; sheet: (name: string) => Partial<IWorksheetData> } {
  const shown = structuredClone<ShownWorkbook>(opened);
  return {
    shown,
    sheet: (name) => {
      const found = Object.values(shown.snapshot.sheets).find((each) => each.name === name);
      if (!found) throw new Error(`no sheet ${name}`);
      return found;
    },
  };
}

function styleIdAt(sheet: Partial<IWorksheetData>, row: number, column: number): string {
  const id = sheet.cellData?.[row]?.[column]?.s;
  return typeof id === 'string' ? id : '';
}

function without<T>(record: Readonly<Record<string, T>>, keys: readonly string[]): Record<string, T> {
  return Object.fromEntries(Object.entries(record).filter(([key]) => !keys.includes(key)));
}

function set(sheet: Partial<IWorksheetData>, row: number, column: number, cell: object): void {
  const rows = (sheet.cellData ??= {});
  (rows[row] ??= {})[column] = cell;
}

const NEW_SHEET: Partial<IWorksheetData> = {
  id: 'made-on-the-page',
  name: 'Added',
  defaultColumnWidth: 88,
  defaultRowHeight: 24,
  columnData: { 1: { w: 210 } },
  mergeData: [{ startRow: 8, startColumn: 0, endRow: 8, endColumn: 1 }],
  freeze: { xSplit: 0, ySplit: 1, startRow: 1, startColumn: -1 },
  tabColor: '#123456',
  cellData: {
    0: { 0: { v: 'Wall', t: 1 }, 1: { v: 'Area', t: 1 }, 2: { v: 2026, t: 2 }, 3: {} },
    1: { 0: { v: 'W1', t: 1 }, 1: { v: 12.5, t: 2 }, 2: { f: '=[@Area]*2', v: 25, t: 2 }, 3: { v: 1, t: 3 } },
    8: { 0: { v: 'below', t: 1, s: { bl: 1, n: { pattern: '0.000' } } } },
  },
};

function withAddedSheet(): ShownWorkbook {
  const { shown } = copy();
  shown.snapshot.sheets['made-on-the-page'] = structuredClone(NEW_SHEET);
  shown.snapshot.sheetOrder.splice(1, 0, 'made-on-the-page');
  return {
    ...shown,
    tables: [...shown.tables, { name: 'Faces', sheet: 'Added', address: 'A1:D2', totals: false }],
  };
}

describe('a sheet added on the page', () => {
  it('is in the file at its place, with its table, cells and looks', async () => {
    const { bytes: saved } = await saveWorkbook(withAddedSheet(), bytes);
    const book = readBook(openArchive(saved));
    expect(book.sheets.map(({ name }) => name)).toEqual([
      'Take-off',
      'Added',
      'Looks',
      'Lines',
      'Kept for later',
    ]);
    const table = book.tables.find(({ name }) => name === 'Faces');
    // Headings are texts, and none is blank.
    expect(table?.columns).toEqual(['Wall', 'Area', '2026', 'Column4']);
    expect(table?.area).toEqual({ top: 0, left: 0, bottom: 1, right: 3 });
    const workbook = await readWithExceljs(saved);
    const sheet = workbook.getWorksheet('Added');
    expect(['A1', 'B1', 'C1', 'D1'].map((address) => sheet?.getCell(address).value)).toEqual(table?.columns);
    expect(sheet?.getCell('C2').formula).toBe('Faces[[#This Row],[Area]]*2');
    expect(sheet?.getCell('C2').result).toBe(25);
    expect(sheet?.getCell('D2').value).toBe(true);
    expect(sheet?.getCell('A9').style.font?.bold).toBe(true);
    expect(sheet?.getCell('A9').numFmt).toBe('0.000');
    expect(sheet?.getCell('B9').master.address).toBe('A9');
    // 210 pixels of 7 a character.
    expect(sheet?.getColumn(2).width).toBe(30);
    expect(sheet?.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
    expect(sheet?.properties.tabColor.argb).toBe('FF123456');
    expect(workbook.getWorksheet('Looks')?.pageSetup.printArea).toBe('A1:B9');
  });

  it('opens again with what was on it', async () => {
    const again = await openWorkbook((await saveWorkbook(withAddedSheet(), bytes)).bytes);
    expect(again.tables.map(({ name }) => name).sort()).toEqual(['Faces', 'Lines']);
    const sheet = Object.values(again.snapshot.sheets).find(({ name }) => name === 'Added');
    expect(sheet?.cellData?.[1]?.[1]).toEqual({ v: 12.5, t: 2 });
    expect(sheet?.columnData?.[1]?.w).toBe(210);
    expect([sheet?.defaultColumnWidth, sheet?.defaultRowHeight]).toEqual([88, 24]);
    expect(sheet?.freeze).toEqual(NEW_SHEET.freeze);
    expect(sheet?.mergeData).toEqual(NEW_SHEET.mergeData);
  });
});

describe('a sheet renamed on the page', () => {
  it('is known by its new name wherever the file speaks of it', async () => {
    const { shown, sheet } = copy();
    sheet('Take-off').name = 'Walls, all';
    sheet('Looks').name = 'Sight';
    const renamed = {
      ...shown,
      names: [{ name: 'Texts', refersTo: "='Walls, all'!$A$1:$A$9" }],
      spills: shown.spills.map((spill) => ({ ...spill, sheet: 'Walls, all' })),
    };
    const { bytes: saved, lost } = await saveWorkbook(renamed, bytes);
    expect(lost).toEqual([]);
    const names = readBook(openArchive(saved)).names.map(({ name, formula, sheet: of }) => [
      name,
      formula,
      of,
    ]);
    expect(names).toContainEqual(['Texts', "'Walls, all'!$A$1:$A$9", undefined]);
    expect(names).toContainEqual(['_xlnm.Print_Area', "'Sight'!$A1:$B9", 'Sight']);
    const rules = partText(openArchive(saved), 'xl/worksheets/sheet2.xml');
    expect(/<formula>([^<]*)</.exec(rules)?.[1]).toBe("'Walls, all'!$A$10&lt;0");
  });
});

describe('a sheet deleted on the page', () => {
  it('is gone with its table and its names, and nothing else is', async () => {
    const { shown } = copy();
    const [, looks = '', lines = ''] = shown.snapshot.sheetOrder;
    shown.snapshot.sheetOrder = shown.snapshot.sheetOrder.filter((id) => id !== lines && id !== looks);
    shown.snapshot.sheets = without(shown.snapshot.sheets, [lines, looks]);
    const { bytes: saved, lost } = await saveWorkbook({ ...shown, tables: [] }, bytes);
    const archive = openArchive(saved);
    const book = readBook(archive);
    expect(book.sheets.map(({ name }) => name)).toEqual(['Take-off', 'Kept for later']);
    expect(book.tables).toEqual([]);
    expect(book.names.map(({ name }) => name)).toEqual(['Texts']);
    expect([...archive.keys()].filter((path) => /tables\/.+|sheet[23]/.test(path))).toEqual([]);
    expect(partText(archive, '[Content_Types].xml')).not.toMatch(/tables|sheet[23]\.xml/);
    expect(lost).toEqual(['conditional formats', 'validation of entries']);
    expect((await readWithExceljs(saved)).worksheets).toHaveLength(2);
  });
});

describe('cells changed on the page', () => {
  it('have their new contents and looks in the file, and the others their own', async () => {
    const { shown, sheet } = copy();
    const takeOff = sheet('Take-off');
    set(takeOff, 0, 0, { v: 'changed', t: 1 });
    set(takeOff, 6, 0, { p: { id: 'd', documentStyle: {}, body: { dataStream: 'typed\rtext\r\n' } } });
    set(takeOff, 9, 0, { v: 7, t: 2, s: { bl: 1, bg: { rgb: 'rgb(255, 238, 204)' } } });
    set(takeOff, 19, 25, { f: '=XLOOKUP(1,A:A,B:B)&"x"', v: 'x', t: 1 });
    set(takeOff, 20, 0, { f: '=1/0', v: '#DIV/0!', t: 1 });
    delete takeOff.cellData?.[3]?.[0];
    const looks = sheet('Looks');
    const style = { ...shown.snapshot.styles[styleIdAt(looks, 1, 1)], it: 0, ht: 2 };
    set(looks, 1, 1, { v: 1234.5, t: 2, s: style });
    const { bytes: saved } = await saveWorkbook(shown, bytes);
    const workbook = await readWithExceljs(saved);
    const cell = (address: string) => workbook.getWorksheet('Take-off')?.getCell(address);
    expect(cell('A1')?.value).toBe('changed');
    expect(cell('A7')?.value).toBe('typed\ntext');
    expect(cell('A10')?.value).toBe(7);
    expect(cell('A10')?.style.font).toMatchObject({ bold: true, name: 'Calibri', size: 11 });
    expect(cell('A10')?.style.fill).toMatchObject({ pattern: 'solid', fgColor: { argb: 'FFFFEECC' } });
    expect(cell('A4')?.value).toBeNull();
    expect(cell('Z20')?.formula).toBe('_xlfn.XLOOKUP(1,A:A,B:B)&"x"');
    expect(cell('A21')?.result).toEqual({ error: '#DIV/0!' });
    const changed = workbook.getWorksheet('Looks')?.getCell('B2');
    expect(changed?.style.font).toMatchObject({
      bold: true,
      underline: true,
      size: 14,
      color: { argb: 'FFC00000' },
    });
    expect(changed?.style.font?.italic).toBeUndefined();
    expect(changed?.style.alignment).toEqual({
      horizontal: 'center',
      vertical: 'top',
      wrapText: true,
      textRotation: 45,
    });
    expect(changed?.style.border?.top).toEqual({ style: 'double', color: { argb: 'FF0000FF' } });
    expect(changed?.numFmt).toBe('#,##0.00 "ft2"');
    // A look that was not touched is still that of the theme, and its cell is still not locked.
    const untouched = workbook.getWorksheet('Looks')?.getCell('B3');
    expect(untouched?.style.font?.color).toEqual({ theme: 4 });
    expect(untouched?.style.protection).toMatchObject({ locked: false });
  });

  it('that take their formula from another cell have it as their own', async () => {
    const { shown, sheet } = copy();
    set(sheet('Take-off'), 14, 0, { f: '=B1*$B$2', si: 'q', v: 1, t: 2 });
    set(sheet('Take-off'), 16, 2, { si: 'q', v: 2, t: 2 });
    const cells = readBook(openArchive((await saveWorkbook(shown, bytes)).bytes)).sheets[0]?.cells;
    expect(cells?.get('C17')?.formula).toBe('D3*$B$2');
    expect(cells?.get('C17')?.value).toBe(2);
  });

  it('keep the widths, heights and looks of columns and rows that were changed', async () => {
    const { shown, sheet } = copy();
    const looks = sheet('Looks');
    looks.columnData = { ...looks.columnData, 1: { w: 70 }, 2: { w: 63 }, 7: { hd: 1 }, 8: { s: { it: 1 } } };
    looks.rowData = { ...looks.rowData, 2: { h: 60, ia: 0 }, 6: {}, 11: { hd: 1 } };
    looks.freeze = { xSplit: 0, ySplit: 0, startRow: -1, startColumn: -1 };
    looks.mergeData = [];
    looks.showGridlines = 1;
    looks.hidden = 1;
    const saved = (await readWithExceljs((await saveWorkbook(shown, bytes)).bytes)).getWorksheet('Looks');
    expect([2, 3, 5].map((column) => saved?.getColumn(column).width)).toEqual([10, 9, 9]);
    expect([3, 8].map((column) => saved?.getColumn(column).hidden)).toEqual([false, true]);
    expect(saved?.getColumn(5).style.font?.bold).toBe(true);
    expect(saved?.getColumn(9).style.font?.italic).toBe(true);
    expect([saved?.getRow(3).height, saved?.getRow(7).hidden, saved?.getRow(12).hidden]).toEqual([
      45,
      false,
      true,
    ]);
    expect(saved?.views[0]).toMatchObject({ state: 'normal', showGridLines: true });
    expect(saved?.getCell('D5').isMerged).toBe(false);
    expect(saved?.state).toBe('hidden');
  });
});

describe('a table changed on the page', () => {
  it('has its new area and headings, and keeps its look and total', async () => {
    const { shown, sheet } = copy();
    set(sheet('Lines'), 1, 1, { v: 'Item', t: 1 });
    set(sheet('Lines'), 1, 3, { v: 'Note', t: 1 });
    const tables = [{ name: 'Lines', sheet: 'Lines', address: 'B2:D5', totals: true }];
    const archive = openArchive((await saveWorkbook({ ...shown, tables }, bytes)).bytes);
    expect(readBook(archive).tables[0]).toMatchObject({
      columns: ['Item', 'Amount', 'Note'],
      area: { top: 1, left: 1, bottom: 4, right: 3 },
      totalsRows: 1,
    });
    const xml = partText(archive, 'xl/tables/table1.xml');
    expect(xml).toContain('totalsRowFunction="sum"');
    expect(xml).toContain('TableStyleMedium4');
    // The filter leaves the totals row out (ECMA-376 Part 1, 18.5.1.2).
    expect(xml).toMatch(/<autoFilter [^>]*ref="B2:D4"/);
  });
});

describe('what a formula fills', () => {
  it('stands in the file beside the formula, which is marked as one that grows and shrinks', async () => {
    const { shown, sheet } = copy();
    set(sheet('Take-off'), 30, 0, { f: '=WASH.SCHEDULE(Walls[#All])', v: 'Zone', t: 1 });
    set(sheet('Take-off'), 40, 0, { f: '=WASH.CHECKS(A1)', v: '#VALUE!', t: 1 });
    set(sheet('Take-off'), 41, 0, { f: '=UNIQUE(A1)', v: 1, t: 2 });
    const spill = {
      sheet: 'Take-off',
      address: 'A31:B32',
      values: [
        ['Zone', ''],
        ['#N/A', false],
      ],
    };
    const { bytes: saved } = await saveWorkbook(
      { ...shown, spills: [...shown.spills, spill] },
      bytes,
      new Set(['CHECKS']),
    );
    const archive = openArchive(saved);
    const xml = partText(archive, 'xl/worksheets/sheet1.xml');
    expect(xml).toContain(
      '<c r="A31" cm="1" t="str"><f t="array" ref="A31:B32">_xldudf_WASH_SCHEDULE(Walls[#All])</f><v>Zone</v></c>',
    );
    expect(xml).toContain('<c r="A32" t="e"><v>#N/A</v></c><c r="B32" t="b"><v>0</v></c>');
    expect(xml).toMatch(/<c r="A41" cm="1" t="e"><f t="array" ref="A41">/);
    expect(xml).toMatch(/<c r="A42" cm="1"><f t="array" ref="A42">_xlfn\.UNIQUE/);
    // An array formula that was of fixed size stays so.
    expect(xml).toContain('<c r="E1"><f t="array" ref="E1:F2">');
    expect(partText(archive, 'xl/metadata.xml')).toContain('XLDAPR');
    const again = await openWorkbook(saved);
    expect(again.spills).toContainEqual(spill);
  });
});

describe('names', () => {
  it('are added, changed and taken away', async () => {
    const { shown } = copy();
    const names = [
      { name: 'Rate', refersTo: '=0.25' },
      { name: 'Here', sheet: 'Lines', refersTo: '=Lines!$B$2' },
      { name: 'Faces', refersTo: '=FILTER(Lines!$B$3:$B$4,Lines!$C$3:$C$4>20)' },
    ];
    const { bytes: saved } = await saveWorkbook({ ...shown, names }, bytes);
    expect((await openWorkbook(saved)).names).toEqual(names);
    expect(readBook(openArchive(saved)).names).toContainEqual({
      name: 'Faces',
      formula: '_xlfn._xlws.FILTER(Lines!$B$3:$B$4,Lines!$C$3:$C$4>20)',
    });
  });
});

describe('texts kept in the workbook', () => {
  const text = '{"steps":["50 % done","<b>&amp;\'\n"]}';

  it('are kept in parts of their own and read back', async () => {
    const first = await saveWorkbook({ ...opened, parts: { steps: text } }, bytes);
    const again = await openWorkbook(first.bytes);
    expect(again.parts).toEqual({ steps: text });
    const second = await saveWorkbook({ ...again, parts: { steps: 'more', source: 'a' } }, first.bytes);
    expect((await openWorkbook(second.bytes)).parts).toEqual({ steps: 'more', source: 'a' });
    const archive = openArchive(second.bytes);
    const kept = relationships(archive, 'xl/workbook.xml').filter(({ kind }) => kind === 'customXml');
    expect(kept.map(({ target }) => keptText(partText(archive, target)))).toEqual(['more', 'a']);
    // ECMA-376 Part 1, 15.2.5 and 22.5.2: each has a part beside it with its id and vocabulary.
    for (const { target } of kept) {
      const [properties] = relationships(archive, target);
      expect(properties?.kind).toBe('customXmlProps');
      expect(partText(archive, properties?.target ?? '')).toMatch(/ds:itemID="\{[0-9A-F-]{36}\}"/);
      expect(partText(archive, '[Content_Types].xml')).toContain(`PartName="/${properties?.target ?? ''}"`);
    }
  });

  it('stay where the page has none', async () => {
    const first = await saveWorkbook({ ...opened, parts: { formulas: text } }, bytes);
    const second = await saveWorkbook({ ...opened, parts: {} }, first.bytes);
    expect((await openWorkbook(second.bytes)).parts).toEqual({ formulas: text });
  });
});

describe('a workbook without a file', () => {
  it('is made anew', async () => {
    const { bytes: saved, lost } = await saveWorkbook({
      snapshot: {
        ...opened.snapshot,
        styles: {},
        sheetOrder: ['only'],
        sheets: { only: { ...NEW_SHEET, id: 'only' } },
      },
      tables: [],
      names: [],
      spills: [],
      parts: { source: 'kept' },
    });
    expect(lost).toEqual([]);
    const sheet = (await readWithExceljs(saved)).getWorksheet('Added');
    expect(sheet?.getCell('B2').value).toBe(12.5);
    expect(sheet?.getCell('A9').numFmt).toBe('0.000');
    expect((await openWorkbook(saved)).parts).toEqual({ source: 'kept' });
  });
});
