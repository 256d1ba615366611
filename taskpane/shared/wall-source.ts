import { quotedSheet } from '../../src/spreadsheet/sheet-name';
import { areaAddress, parseAddress } from '../../src/spreadsheet/address';
import type { CellContent, Place, WorkbookPort } from '../workbook/port';

/** Cells that formulas refer to: a table by its name, or a range. */
export type Reference = { readonly table: string } | Place;

/** Where the walls, the factors and the map of headings stand in this workbook. */
export interface WallSource {
  readonly walls: Reference;
  readonly factors?: Reference;
  /** Two columns, our column and the heading here; where the headings are not ours. */
  readonly headings?: Reference;
}

/** A number with the format of its cell: `readCell` of the core tells a percent by it. */
export interface FormattedNumber {
  readonly basicValue: number;
  readonly numberFormat: string;
}

/** What a cell of the factors holds. */
export type FactorContent = CellContent | FormattedNumber;

/** The ranges of a source as the worksheet functions take them; null where there is none. */
export interface SourceRanges {
  readonly walls: CellContent[][];
  readonly factors: FactorContent[][] | null;
  readonly headings: CellContent[][] | null;
}

const PLAIN_SHEET = /^[\p{L}_][\p{L}\p{N}_]*$/u;
const LIKE_AN_ADDRESS = /^([A-Z]{1,3}\d+|R\d*C\d*|R|C)$/i;

/**
 * A source that was kept in the workbook.
 * @param text the text that was kept
 * @returns the source
 * @throws {Error} where the text is none of ours
 */
export function readWallSource(text: string): WallSource {
  const { walls, factors, headings } = JSON.parse(text) as Record<string, unknown>;
  return {
    walls: checkedReference(walls),
    ...(factors === undefined ? {} : { factors: checkedReference(factors) }),
    ...(headings === undefined ? {} : { headings: checkedReference(headings) }),
  };
}

function checkedReference(kept: unknown): Reference {
  const { table, sheet, address } = (kept ?? {}) as Record<string, unknown>;
  if (typeof table === 'string') return { table };
  if (typeof sheet === 'string' && typeof address === 'string') return { sheet, address };
  throw new Error('This is neither a table nor a range.');
}

/**
 * The values of a reference.
 * @param port the workbook
 * @param reference a table or a range
 * @returns its rows, headings first
 */
export function readReference(port: WorkbookPort, reference: Reference): Promise<CellContent[][]> {
  return 'table' in reference ? port.readTable(reference.table) : port.readRange(reference);
}

/**
 * The rows of the factors. A number of a cell that shows a percent comes with its format: 0.1 is 10 there, and
 * 1.2 is 120.
 * @param port the workbook
 * @param reference a table or a range
 * @returns its rows, headings first
 */
export async function readFactorRange(port: WorkbookPort, reference: Reference): Promise<FactorContent[][]> {
  const rows = await readReference(port, reference);
  if (!rows.some((row) => row.some((content) => typeof content === 'number'))) return rows;
  const formats = await port.readFormats(await placeOf(port, reference));
  return rows.map((row, down) =>
    row.map((content, across): FactorContent => {
      const numberFormat = formats[down]?.[across] ?? '';
      const isPercent = typeof content === 'number' && numberFormat.includes('%');
      return isPercent ? { basicValue: content, numberFormat } : content;
    }),
  );
}

/**
 * The cells of a reference.
 * @param port the workbook
 * @param reference a table or a range
 * @returns where they are
 * @throws {Error} where the table is not there
 */
export async function placeOf(port: WorkbookPort, reference: Reference): Promise<Place> {
  if (!('table' in reference)) return reference;
  const wanted = reference.table.toLowerCase();
  const found = (await port.tables()).find(({ name }) => name.toLowerCase() === wanted);
  if (!found) throw new Error(`There is no table ${reference.table} in this workbook.`);
  return { sheet: found.sheet, address: found.address };
}

/**
 * The ranges of a source, ready to be handed to the core.
 * @param port the workbook
 * @param source where they stand
 * @returns the rows of each
 */
export async function readSource(port: WorkbookPort, source: WallSource): Promise<SourceRanges> {
  const { walls, factors, headings } = source;
  return {
    walls: await readReference(port, walls),
    factors: factors ? await readFactorRange(port, factors) : null,
    headings: headings ? await readReference(port, headings) : null,
  };
}

/**
 * A reference as a formula has it.
 * @param reference a table or a range
 * @returns for example `Walls[#All]` or `'My walls'!$A$1:$F$20`
 */
export function referenceText(reference: Reference): string {
  if ('table' in reference) return `${reference.table}[#All]`;
  return `${sheetText(reference.sheet)}!${fixed(reference.address)}`;
}

function sheetText(sheet: string): string {
  const plain = PLAIN_SHEET.test(sheet) && !LIKE_AN_ADDRESS.test(sheet);
  return plain ? sheet : quotedSheet(sheet);
}

function fixed(address: string): string {
  const area = parseAddress(address);
  return (area ? areaAddress(area) : address).replace(/([A-Z]+)(\d+)/gi, '$$$1$$$2');
}
