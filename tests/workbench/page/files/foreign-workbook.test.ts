import type { ICellData, IStyleData, IWorksheetData, Nullable } from '@univerjs/presets';
import { beforeAll, describe, expect, it } from 'vitest';
import { openWorkbook } from '../../../../workbench/page/files/open-workbook';
import { saveWorkbook } from '../../../../workbench/page/files/save-workbook';
import type { OpenedWorkbook } from '../../../../workbench/page/files/shown-workbook';
import { openArchive } from '../../../../workbench/xlsx/archive';
import { readBook } from '../../../../workbench/xlsx/read-book';
import { foreignFile } from './foreign-file';
import { readWithExceljs, workbookFacts } from './read-with-exceljs';
import { throughSpreadsheet } from './through-spreadsheet';

let bytes: Uint8Array;
let opened: OpenedWorkbook;

function sheetOf(workbook: OpenedWorkbook, name: string): Partial<IWorksheetData> {
  const found = Object.values(workbook.snapshot.sheets).find((sheet) => sheet.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
}

function cell(name: string, row: number, column: number): ICellData | undefined {
  return sheetOf(opened, name).cellData?.[row]?.[column];
}

function look(name: string, row: number, column: number): Nullable<IStyleData> {
  const id = cell(name, row, column)?.s;
  return typeof id === 'string' ? opened.snapshot.styles[id] : id;
}

beforeAll(async () => {
  bytes = await foreignFile();
  opened = await openWorkbook(bytes);
});

describe('a workbook of another program, opened', () => {
  it('keeps texts that look like something else as texts', () => {
    expect(cell('Take-off', 1, 0)).toEqual({ v: '=1+1', t: 4 });
    expect(cell('Take-off', 2, 0)).toEqual({ v: '007', t: 4 });
    expect(cell('Take-off', 10, 0)).toEqual({ v: '#N/A', t: 4 });
    expect(cell('Take-off', 6, 0)).toEqual({ v: 'two looks', t: 1 });
    expect(cell('Take-off', 7, 0)?.v).toBe('drawing');
    expect(cell('Take-off', 8, 0)?.v).toBe('  two lines\nand <signs> & "quotes"  ');
  });

  it('keeps TRUE, errors and days', () => {
    expect(cell('Take-off', 3, 0)).toEqual({ v: 1, t: 3 });
    expect(cell('Take-off', 4, 0)).toEqual({ v: '#N/A', t: 1 });
    // 1 January 2000 is day 36526; 26 years of 365 days, 7 leap days and 4 days later is 5 January 2026.
    expect(cell('Take-off', 5, 0)).toMatchObject({ v: 36526 + 26 * 365 + 7 + 4, t: 2 });
    expect(look('Take-off', 5, 0)?.n?.pattern).toBe('d-mmm-yy');
  });

  it('has each formula as it is typed, with the value that it was saved with', () => {
    expect(['=A10*2', '=A11*2', '=A12*2', '=A13*2']).toEqual(
      [0, 1, 2, 3].map((row) => cell('Take-off', row, 2)?.f),
    );
    expect(cell('Take-off', 4, 2)).toEqual({
      f: '=CONCAT(A1,"_xlfn.CONCAT(")',
      v: 'plain_xlfn.CONCAT(',
      // Whatever the page cannot work out keeps the value of the file.
      custom: { keeps: 'single' },
      t: 1,
    });
    expect(cell('Take-off', 5, 2)).toEqual({ f: '=NA()', v: '#N/A', t: 1 });
    expect(cell('Take-off', 6, 2)).toEqual({ f: '=A4', v: 1, t: 3, custom: { keeps: 'single' } });
    expect(cell('Take-off', 7, 2)).toEqual({ f: '=1+1' });
  });

  it('leaves the cells that an array formula fills to the formula', () => {
    expect(cell('Take-off', 0, 4)).toEqual({
      f: '=SEQUENCE(2,2)',
      v: 1,
      t: 2,
      custom: { keeps: 'unknown' },
    });
    expect(cell('Take-off', 1, 5)).toBeUndefined();
    expect(opened.spills).toEqual([
      {
        sheet: 'Take-off',
        address: 'E1:F2',
        values: [
          [1, 2],
          [3, 4],
        ],
      },
    ]);
  });

  it('shows the looks', () => {
    expect(look('Looks', 1, 1)).toEqual({
      ff: 'Arial',
      fs: 14,
      bl: 1,
      it: 1,
      ul: { s: 1 },
      cl: { rgb: '#C00000' },
      bg: { rgb: '#FFEECC' },
      bd: { t: { s: 7, cl: { rgb: '#0000FF' } }, l: { s: 1, cl: { rgb: '#112233' } } },
      ht: 3,
      vt: 1,
      tb: 3,
      // Text that rises is turned against the clock.
      tr: { a: -45 },
      n: { pattern: '#,##0.00 "ft2"' },
    });
    // Accent 1 of the theme that the library writes.
    expect(look('Looks', 2, 1)?.cl?.rgb).toBe('#4F81BD');
    expect(look('Looks', 5, 4)?.bl).toBe(1);
    expect(look('Looks', 6, 4)?.bl).toBe(0);
  });

  it('shows the sheets, columns and rows as they are', () => {
    const looks = sheetOf(opened, 'Looks');
    // ECMA-376 Part 1, 18.3.1.13: 20 characters of 7 pixels.
    expect(looks.columnData?.[1]?.w).toBe(140);
    expect(looks.columnData?.[2]?.hd).toBe(1);
    // 30 points of 1/72 inch are 40 pixels of 1/96 inch.
    expect(looks.rowData?.[2]).toEqual({ h: 40, ia: 0 });
    expect(looks.rowData?.[6]?.hd).toBe(1);
    expect(looks.mergeData).toEqual([{ startRow: 3, startColumn: 2, endRow: 4, endColumn: 3 }]);
    expect(looks.freeze).toEqual({ xSplit: 2, ySplit: 1, startRow: 1, startColumn: 2 });
    expect(looks.showGridlines).toBe(0);
    expect(sheetOf(opened, 'Take-off').tabColor).toBe('#00AA55');
    expect(sheetOf(opened, 'Kept for later').hidden).toBe(1);
    expect(opened.snapshot.sheetOrder.map((id) => opened.snapshot.sheets[id]?.name)).toEqual([
      'Take-off',
      'Looks',
      'Lines',
      'Kept for later',
    ]);
  });

  it('has its tables and names', () => {
    expect(opened.tables).toEqual([{ name: 'Lines', sheet: 'Lines', address: 'B2:C5', totals: true }]);
    expect(opened.names).toEqual([{ name: 'Texts', refersTo: "='Take-off'!$A$1:$A$9" }]);
  });

  it('says what it does not show', () => {
    expect(opened.notShown).toEqual([
      'conditional formats',
      'formats within a text',
      'hyperlinks',
      'validation of entries',
    ]);
  });
});

describe('a workbook of another program, saved', () => {
  it('is the same to two readers', async () => {
    const { bytes: saved, lost } = await saveWorkbook(throughSpreadsheet(opened), bytes);
    expect(lost).toEqual([]);
    const [before, after] = [readBook(openArchive(bytes)), readBook(openArchive(saved))];
    // A shared formula stands on its own now.
    const plain = (book: typeof before): unknown =>
      book.sheets.map(({ name, cells }) => [
        name,
        [...cells].map(([address, { value, formula, array }]) => [address, value, formula, array]),
      ]);
    expect(plain(after)).toEqual(plain(before));
    expect(after.tables).toEqual(before.tables);
    const byName = (book: typeof before): unknown =>
      book.names.toSorted((a, b) => a.name.localeCompare(b.name));
    expect(byName(after)).toEqual(byName(before));
    const sheets = (facts: unknown): unknown[] => facts as unknown[];
    const [one, other] = [await readWithExceljs(bytes), await readWithExceljs(saved)].map((workbook) =>
      sheets(workbookFacts(workbook)),
    );
    expect(other?.slice(1)).toEqual(one?.slice(1));
  });

  it('keeps what the page does not show of texts', async () => {
    const sheet = (await readWithExceljs((await saveWorkbook(opened, bytes)).bytes)).getWorksheet('Take-off');
    expect(sheet?.getCell('A7').value).toEqual({
      richText: [{ text: 'two ' }, { text: 'looks', font: { bold: true } }],
    });
    expect(sheet?.getCell('A8').value).toMatchObject({ hyperlink: 'https://example.invalid/drawing' });
    expect(sheet?.getCell('A2').value).toBe('=1+1');
    expect(sheet?.getCell('A3').value).toBe('007');
    expect(sheet?.getCell('A6').value).toEqual(new Date(Date.UTC(2026, 0, 5)));
  });

  it('opens again as it was', async () => {
    expect(await openWorkbook((await saveWorkbook(opened, bytes)).bytes)).toEqual(opened);
  });
});

describe('a workbook whose days are counted from 1904', () => {
  it('shows the same day, and saves it as it was', async () => {
    const from1904 = await foreignFile(true);
    const shown = await openWorkbook(from1904);
    expect(sheetOf(shown, 'Take-off').cellData?.[5]?.[0]?.v).toBe(36526 + 26 * 365 + 7 + 4);
    expect(sheetOf(shown, 'Take-off').cellData?.[9]?.[0]?.v).toBe(-0.1);
    const { bytes: saved } = await saveWorkbook(shown, from1904);
    const workbook = await readWithExceljs(saved);
    expect(workbook.properties.date1904).toBe(true);
    expect(workbook.getWorksheet('Take-off')?.getCell('A6').value).toEqual(new Date(Date.UTC(2026, 0, 5)));
  });
});
