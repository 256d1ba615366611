import type { ICellData, Nullable } from '@univerjs/presets';
import type { CellContent } from '../../../taskpane/workbook/port';
import { areaAddress, cellAddress, type Area } from '../../xlsx/address';
import { errorCode } from '../../../src/spreadsheet/cell-error';
import type { CellValue } from '../../xlsx/cell-value';
import { valueParts } from '../../xlsx/write-cells';
import { encodeEscapes, encodeXml } from '../../xlsx/xml';

/** What is to stand in a cell of the file. */
export interface FiledCell {
  readonly row: number;
  readonly column: number;
  readonly format: number;
  readonly value: CellValue;
  /** Without `=`, as files have it. */
  readonly formula?: string;
  /** Whether a formula of another cell fills it. */
  readonly filled?: boolean;
  /** What an array formula fills. */
  readonly array?: Area;
  /** The mark of an array that grows and shrinks; without it the array keeps its size. */
  readonly dynamic?: number;
}

const STRING = 1;
const NUMBER = 2;
const BOOLEAN = 3;
const TEXT = 4;

/**
 * A value as the spills have it.
 * @param content an error as its text
 * @returns the value; a cell that is filled holds at least an empty text
 */
export function valueOf(content: CellContent): CellValue {
  const error = typeof content === 'string' ? errorCode(content) : undefined;
  return error === undefined ? content : { error };
}

/**
 * The value of a cell of the page.
 * @param cell the cell
 * @returns the value; null where it is blank
 */
export function shownValueOf(cell: Nullable<ICellData>): CellValue {
  const written = cell?.p?.body?.dataStream;
  if (written !== undefined) return written.replace(/\r\n$/, '').replace(/\r\n?/g, '\n') || null;
  const value = cell?.v;
  if (value === undefined || value === null) return null;
  if (cell?.t === TEXT) return String(value);
  if (cell?.t === BOOLEAN || typeof value === 'boolean') return value === true || Number(value) === 1;
  if (cell?.t === NUMBER && typeof value === 'string' && value.trim() !== '') {
    const number = Number(value);
    return Number.isFinite(number) ? number : value;
  }
  if (value === '') return '';
  // The page gives errors the type of a text too.
  return valueOf(cell?.t === STRING ? String(value) : value);
}

function inside(cell: FiledCell, prefix: string): { type: string | undefined; inner: string } {
  const { value, formula, filled, array } = cell;
  if (formula === undefined && !filled && typeof value === 'string') {
    const text = `<${prefix}t xml:space="preserve">${encodeXml(encodeEscapes(value))}</${prefix}t>`;
    return { type: 'inlineStr', inner: `<${prefix}is>${text}</${prefix}is>` };
  }
  const { type, text } = valueParts(value);
  const attributes = array ? ` t="array" ref="${areaAddress(array)}"` : '';
  const code =
    formula === undefined
      ? ''
      : `<${prefix}f${attributes}>${encodeXml(formula).replace(/&quot;/g, '"')}</${prefix}f>`;
  return { type, inner: code + (text === undefined ? '' : `<${prefix}v>${text}</${prefix}v>`) };
}

/**
 * The XML of a cell.
 * @param cell what is to stand in it
 * @param prefix prefix of the sheet's elements, with its colon, or nothing
 * @returns the element; nothing where the cell is blank and plain
 */
export function cellXml(cell: FiledCell, prefix: string): string {
  const { type, inner } = inside(cell, prefix);
  const attributes =
    ` r="${cellAddress(cell.row, cell.column)}"` +
    (cell.format > 0 ? ` s="${cell.format}"` : '') +
    (cell.dynamic === undefined ? '' : ` cm="${cell.dynamic}"`) +
    (type === undefined || inner === '' ? '' : ` t="${type}"`);
  return inner ? `<${prefix}c${attributes}>${inner}</${prefix}c>` : `<${prefix}c${attributes}/>`;
}
