import { errorCode } from '../spreadsheet/cell-error';

/** What a worksheet cell holds, told apart as far as the host lets a function see it. */
export type Cell =
  | { readonly type: 'blank' }
  /** `percent`: the cell shows it as a percent, 0.1 as 10%. */
  | { readonly type: 'number'; readonly value: number; readonly percent?: true }
  | { readonly type: 'text'; readonly value: string }
  | { readonly type: 'boolean'; readonly value: boolean }
  | { readonly type: 'number as text'; readonly value: string }
  | { readonly type: 'date'; readonly value: string }
  | { readonly type: 'error'; readonly value: string }
  | { readonly type: 'unknown'; readonly value: string };

const BLANK: Cell = { type: 'blank' };
const NUMBER_TEXT =
  /^[-+(]?\s*\p{Sc}?\s*(\d{1,3}([.,'’\u00a0\u202f ]\d{3})+|\d+)?([.,]\d*)?(e[-+]?\d+)?\s*[%)]?$/iu;
const DATE_TEXT = /^(\d{4}-\d{1,2}-\d{1,2}([T ].*)?|\d{1,2}[./-]\d{1,2}[./-]\d{2,4})$/;
const DATE_FORMAT = /[yd]/i;

/**
 * Tells what a cell holds. A formatted value or an error may arrive as an object with its basic value.
 * @param raw the cell as the host hands it over
 * @returns the cell, sorted
 */
export function readCell(raw: unknown): Cell {
  switch (typeof raw) {
    case 'number':
      return Number.isFinite(raw) ? { type: 'number', value: raw } : { type: 'unknown', value: String(raw) };
    case 'boolean':
      return { type: 'boolean', value: raw };
    case 'string':
      return readText(raw);
    case 'undefined':
      return BLANK;
    case 'object':
      return raw === null ? BLANK : readEntity(raw);
    default:
      return { type: 'unknown', value: typeof raw };
  }
}

function readText(raw: string): Cell {
  const value = raw.trim();
  if (value === '') return BLANK;
  if (errorCode(value) !== undefined) return { type: 'error', value };
  if (DATE_TEXT.test(value)) return { type: 'date', value };
  if (/\d/.test(value) && NUMBER_TEXT.test(value)) return { type: 'number as text', value };
  return { type: 'text', value };
}

function readEntity(raw: object): Cell {
  if ('toISOString' in raw) return { type: 'date', value: JSON.stringify(raw).replace(/"/g, '') };
  const entity = raw as {
    type?: unknown;
    basicType?: unknown;
    basicValue?: unknown;
    numberFormat?: unknown;
    code?: unknown;
  };
  if (entity.type === 'Error' || entity.basicType === 'Error') {
    return { type: 'error', value: typeof entity.basicValue === 'string' ? entity.basicValue : '#VALUE!' };
  }
  if (raw instanceof Error)
    return { type: 'error', value: typeof entity.code === 'string' ? entity.code : '#VALUE!' };
  if (entity.basicValue === undefined || typeof entity.basicValue === 'object') {
    return { type: 'unknown', value: 'a value that is not a number or a text' };
  }
  const basic = readCell(entity.basicValue);
  const format = typeof entity.numberFormat === 'string' ? entity.numberFormat : '';
  // Literal text, colours and escapes in a number format may hold the letters d and y.
  const codes = format.replace(/"[^"]*"|\[[^\]]*\]|\\./g, '');
  if (basic.type !== 'number') return basic;
  if (DATE_FORMAT.test(codes)) return { type: 'date', value: String(basic.value) };
  return codes.includes('%') ? { ...basic, percent: true } : basic;
}

/**
 * Whether a cell counts as blank where 0 means nothing: the host hands a blank over as 0, "" or null.
 * @param cell the cell
 * @returns true for a blank or a 0
 */
export function isBlankOrZero(cell: Cell): boolean {
  return cell.type === 'blank' || (cell.type === 'number' && cell.value === 0);
}

/**
 * A cell as an error message names it.
 * @param cell the cell
 * @returns for example `"12,5" (a number stored as text)`
 */
export function describe(cell: Cell): string {
  if (cell.type === 'blank') return 'a blank cell';
  const value = String(cell.value);
  switch (cell.type) {
    case 'text':
      return `"${value}"`;
    case 'boolean':
      return value.toUpperCase();
    case 'number as text':
      return `"${value}" (a number stored as text)`;
    case 'date':
      return `"${value}" (a date)`;
    case 'error':
      return `the error ${value}`;
    case 'number':
      return cell.percent ? `${String(percentShown(cell.value))}% (a percent cell)` : value;
    default:
      return value;
  }
}

/**
 * A share of 1 as a percent cell shows it.
 * @param share the number that the cell holds
 * @returns the percent, without the last digits that the multiplication touches: 7 for 0.07
 */
export function percentShown(share: number): number {
  return Number((share * 100).toPrecision(15));
}

/**
 * A name as it is compared: case, spacing and the form of its letters do not count.
 * @param text a heading, a material, a zone, a factor id
 * @returns the text to compare by
 */
export function comparable(text: string): string {
  // Letters beyond ASCII alone have more than one form.
  const inOneForm = /[^ -~]/.test(text) ? text.normalize('NFKC') : text;
  return inOneForm.toLowerCase().replace(/\s+/g, '');
}
