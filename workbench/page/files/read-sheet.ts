import type { Document, Element } from '@xmldom/xmldom';
import type {
  ICellData,
  IColumnData,
  IFreeze,
  IRange,
  IRowData,
  IStyleData,
  IWorksheetData,
} from '@univerjs/presets';
import type { CellContent } from '../../../taskpane/workbook/port';
import { areaAddress, cellAddress, contains, parseArea, type Area } from '../../xlsx/address';
import type { BookCell } from '../../xlsx/book';
import { errorCode } from '../../../src/spreadsheet/cell-error';
import { isCellError, type CellValue } from '../../xlsx/cell-value';
import { attribute, scanSheet, type ScannedSheet } from '../../xlsx/sheet-scan';
import { elements, parseXml } from '../../xlsx/xml';
import { colourOf, type Palette } from './colour';
import { typedFormula } from './formula-form';
import { keepingFor } from './keeping';
import { heightInPixels, widthInPixels } from './measure';
import { showsDate } from '../../xlsx/number-formats';
import { children } from './read-looks';
import type { ShownSpill } from './shown-workbook';

/** A sheet as the file has it. */
export interface FiledSheet {
  readonly id: string;
  readonly name: string;
  readonly hidden: boolean;
  /** Its part without the cells, and where they stand in it. */
  readonly frame: Document;
  readonly scan: ScannedSheet;
  readonly cells: ReadonlyMap<string, BookCell>;
  /** Areas of its tables. */
  readonly tables: readonly Area[];
  /** Whether the page is known not to work a formula out. */
  readonly isKept?: (formula: string) => boolean;
}

/** What is the same for all sheets of a file. */
export interface FiledBook {
  readonly styles: readonly IStyleData[];
  readonly palette: Palette;
  readonly date1904: boolean;
}

/** A sheet as it is shown. */
export interface ReadSheet {
  readonly data: Partial<IWorksheetData>;
  readonly spills: readonly ShownSpill[];
  /** Cell formats of which the cells need the whole look. */
  readonly whole: ReadonlySet<number>;
}

/** Days from the first day of the one calendar of serial numbers to that of the other (ECMA-376 Part 1, 18.17.4.1). */
export const DAYS_FROM_1900_TO_1904 = 1462;

// Room to work in, beyond what the sheet holds.
const LEAST_ROWS = 1000;
const LEAST_COLUMNS = 80;
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 20;
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

// Widths and heights where the file says none: those of a spreadsheet with its standard font.
const COLUMN_WIDTH = 64;
const ROW_HEIGHT = 15;

const STRING = 1;
const NUMBER = 2;
const BOOLEAN = 3;
const TEXT = 4;

/**
 * Texts that might be taken for something else when they are read once more: what starts like a formula, and whatever
 * is short and has a digit, since a place may read it as a number, a day or a price.
 */
const READS_AS_ANOTHER = /^(?:\s*[=+\-@'＝＋－＠].*|\s*(?:true|false)\s*|(?=.*\p{N}).{1,40})$/isu;

/**
 * The name under which the page keeps a cell format of the file.
 * @param number the format
 * @returns for example `x3`
 */
export function styleId(number: number): string {
  return `x${number}`;
}

/**
 * The name under which the page keeps the whole look of a cell format, for cells in rows and columns that have looks
 * of their own.
 * @param number the format
 * @returns for example `w3`
 */
export function wholeStyleId(number: number): string {
  return `w${number}`;
}

// What a look comes to where it says nothing.
const NOTHING: IStyleData = {
  ...{ bl: 0, it: 0, ul: { s: 0 }, st: { s: 0 }, va: null, cl: null },
  ...{ bg: null, bd: null, n: null, tr: null, ht: null, vt: null, tb: null, pd: null },
};

/**
 * A look that leaves nothing to the row and column: in a file a cell takes after neither. What neither of them has is
 * left open, so that a table's stripes show.
 * @param style the look
 * @param behind the looks that rows and columns have
 * @returns the same, with what it does not have of theirs said too
 */
export function wholeStyle(style: IStyleData, behind: readonly IStyleData[]): IStyleData {
  const theirs = new Set(behind.flatMap((look) => Object.keys(look)));
  return { ...Object.fromEntries(Object.entries(NOTHING).filter(([key]) => theirs.has(key))), ...style };
}

/**
 * A sheet's XML without its cells.
 * @param xml the text of the part
 * @param path the part, for the error
 * @returns the rest, and where the cells stand
 * @throws {BadFile} where it cannot be read
 */
export function sheetFrame(xml: string, path: string): { frame: Document; scan: ScannedSheet } {
  const scan = scanSheet(xml, path);
  const empty = `<${scan.prefix}sheetData/>`;
  return { scan, frame: parseXml(xml.slice(0, scan.start) + empty + xml.slice(scan.end), path) };
}

/**
 * Whether an attribute is on.
 * @param value its text
 * @returns false where it is not there
 */
export function isTrue(value: string | null | undefined): boolean {
  return value === '1' || value === 'true';
}

/**
 * A value as the pane and the spills have it.
 * @param value as the file has it
 * @returns an error as its text, '' for a blank
 */
export function contentOf(value: CellValue): CellContent {
  if (value === null) return '';
  return isCellError(value) ? value.error : value;
}

function valueData(value: CellValue): ICellData {
  if (value === null) return {};
  if (isCellError(value)) return { v: value.error, t: STRING };
  if (typeof value === 'number') return { v: value, t: NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: BOOLEAN };
  const another = READS_AS_ANOTHER.test(value) || errorCode(value) !== undefined;
  return { v: value, t: another ? TEXT : STRING };
}

function pane(view: Element | undefined): IFreeze | undefined {
  const [split] = children(view, 'pane');
  if (!split || !(split.getAttribute('state') ?? '').startsWith('frozen')) return undefined;
  const xSplit = Number(split.getAttribute('xSplit') ?? 0);
  const ySplit = Number(split.getAttribute('ySplit') ?? 0);
  const top = view?.getAttribute('topLeftCell');
  const from = top ? parseArea(top) : { top: 0, left: 0 };
  return {
    xSplit,
    ySplit,
    startRow: ySplit > 0 ? from.top + ySplit : -1,
    startColumn: xSplit > 0 ? from.left + xSplit : -1,
  };
}

function range(area: Area): IRange {
  return { startRow: area.top, startColumn: area.left, endRow: area.bottom, endColumn: area.right };
}

function spillsOf(sheet: FiledSheet): { area: Area; spill: ShownSpill }[] {
  const found: { area: Area; spill: ShownSpill }[] = [];
  for (const { array: area } of sheet.cells.values()) {
    if (!area) continue;
    const values: CellContent[][] = [];
    for (let row = area.top; row <= area.bottom; row += 1) {
      const line: CellContent[] = [];
      for (let column = area.left; column <= area.right; column += 1) {
        line.push(contentOf(sheet.cells.get(cellAddress(row, column))?.value ?? null));
      }
      values.push(line);
    }
    found.push({ area, spill: { sheet: sheet.name, address: areaAddress(area), values } });
  }
  return found;
}

function columnsOf(frame: Document, count: number): Record<number, Partial<IColumnData>> {
  const columns: Record<number, Partial<IColumnData>> = {};
  for (const element of elements(frame, 'col')) {
    const last = Math.min(count, Number(element.getAttribute('max')));
    const width = element.getAttribute('width');
    const style = Number(element.getAttribute('style') ?? 0);
    for (let column = Number(element.getAttribute('min')) - 1; column < last; column += 1) {
      columns[column] = {
        ...(width === null ? {} : { w: widthInPixels(Number(width)) }),
        ...(isTrue(element.getAttribute('hidden')) ? { hd: 1 } : {}),
        ...(style > 0 ? { s: styleId(style) } : {}),
      };
    }
  }
  return columns;
}

function rowData(attributes: string): Partial<IRowData> | undefined {
  const height = attribute(attributes, 'ht');
  const style = isTrue(attribute(attributes, 'customFormat')) ? Number(attribute(attributes, 's') ?? 0) : 0;
  const data: Partial<IRowData> = {
    ...(height === undefined ? {} : { h: heightInPixels(Number(height)) }),
    // A height that was set is kept; any other follows the text.
    ...(height !== undefined && isTrue(attribute(attributes, 'customHeight')) ? { ia: 0 } : {}),
    ...(isTrue(attribute(attributes, 'hidden')) ? { hd: 1 } : {}),
    ...(style > 0 ? { s: styleId(style) } : {}),
  };
  return Object.keys(data).length > 0 ? data : undefined;
}

function shownValue(value: CellValue, style: IStyleData | undefined, book: FiledBook): CellValue {
  const isDay = book.date1904 && typeof value === 'number' && showsDate(style?.n?.pattern);
  return isDay ? value + DAYS_FROM_1900_TO_1904 : value;
}

function cellData(
  cell: BookCell | undefined,
  style: IStyleData | undefined,
  book: FiledBook,
  filledFromElsewhere: boolean,
  isKept: (formula: string) => boolean,
): ICellData {
  if (!cell || filledFromElsewhere) return {};
  const value = valueData(shownValue(cell.value, style, book));
  if (cell.formula === undefined || cell.dataTable) return value;
  return { f: typedFormula(cell.formula), ...value, ...keepingFor(cell, isKept(cell.formula)) };
}

/**
 * Reads a sheet.
 * @param sheet as the file has it
 * @param book what is the same for all sheets
 * @returns as it is shown
 */
export function readSheet(sheet: FiledSheet, book: FiledBook): ReadSheet {
  const { frame, scan } = sheet;
  const spills = spillsOf(sheet);
  const merges = elements(frame, 'mergeCell').map((each) => parseArea(each.getAttribute('ref') ?? ''));
  const areas = [...spills.map(({ area }) => area), ...merges, ...sheet.tables];
  let lastRow = areas.reduce((most, area) => Math.max(most, area.bottom), 0);
  let lastColumn = areas.reduce((most, area) => Math.max(most, area.right), 0);
  for (const row of scan.rows) {
    lastRow = Math.max(lastRow, row.row);
    for (const { column } of row.cells) lastColumn = Math.max(lastColumn, column);
  }
  const columnCount = Math.min(MOST_COLUMNS, Math.max(LEAST_COLUMNS, lastColumn + 1 + SPARE_COLUMNS));
  const columns = columnsOf(frame, columnCount);
  const rows: Record<number, Partial<IRowData>> = {};
  const cells: Record<number, Record<number, ICellData>> = {};
  const whole = new Set<number>();
  for (const { row, attributes, cells: scanned } of scan.rows) {
    const data = rowData(attributes);
    if (data) rows[row] = data;
    for (const { column, attributes: own } of scanned) {
      const format = Number(attribute(own, 's') ?? 0);
      const address = cellAddress(row, column);
      const elsewhere = spills.some(
        ({ area }) => contains(area, row, column) && (area.top !== row || area.left !== column),
      );
      const shown = cellData(
        sheet.cells.get(address),
        book.styles[format],
        book,
        elsewhere,
        sheet.isKept ?? (() => false),
      );
      if (rows[row]?.s || columns[column]?.s) {
        shown.s = wholeStyleId(format);
        whole.add(format);
      } else if (format > 0) shown.s = styleId(format);
      if (Object.keys(shown).length > 0) (cells[row] ??= {})[column] = shown;
    }
  }
  const [format] = elements(frame, 'sheetFormatPr');
  const [view] = elements(frame, 'sheetView');
  const width = format?.getAttribute('defaultColWidth');
  const freeze = pane(view);
  const tab = colourOf(elements(frame, 'tabColor')[0], book.palette);
  return {
    spills: spills.map(({ spill }) => spill),
    whole,
    data: {
      id: sheet.id,
      name: sheet.name,
      hidden: sheet.hidden ? 1 : 0,
      ...(tab === undefined ? {} : { tabColor: tab }),
      ...(freeze ? { freeze } : {}),
      rowCount: Math.min(MOST_ROWS, Math.max(LEAST_ROWS, lastRow + 1 + SPARE_ROWS)),
      columnCount,
      defaultColumnWidth: width ? widthInPixels(Number(width)) : COLUMN_WIDTH,
      defaultRowHeight: heightInPixels(Number(format?.getAttribute('defaultRowHeight') ?? ROW_HEIGHT)),
      showGridlines: view?.getAttribute('showGridLines') === '0' ? 0 : 1,
      rightToLeft: isTrue(view?.getAttribute('rightToLeft')) ? 1 : 0,
      mergeData: merges.map(range),
      cellData: cells,
      rowData: rows,
      columnData: columns,
      defaultStyle: book.styles[0] ?? null,
    },
  };
}
