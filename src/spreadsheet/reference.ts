import { LAST_COLUMN, LAST_ROW, columnNumber, parseAddress, type Area } from './address';
import { unquotedSheet } from './sheet-name';

/** A reference or a name of a formula, taken apart. */
export interface ReferenceParts {
  /** The sheet that it names; undefined where it names none. */
  readonly sheet: string | undefined;
  /** What stands behind the sheet: an address, or a name. */
  readonly rest: string;
}

const COLUMNS = /^\$?([A-Z]{1,3}):\$?([A-Z]{1,3})$/i;
const ROWS = /^\$?(\d{1,7}):\$?(\d{1,7})$/;

/**
 * Takes the sheet off a reference or a name.
 * @param text a piece of a formula, for example `'My walls'!$A$1:B9` or `Bid!Rate`
 * @returns its parts
 */
export function referenceParts(text: string): ReferenceParts {
  const end = text.lastIndexOf('!');
  if (end < 0) return { sheet: undefined, rest: text };
  const sheet = text.slice(0, end);
  return { sheet: sheet.startsWith("'") ? unquotedSheet(sheet) : sheet, rest: text.slice(end + 1) };
}

/**
 * The cells of an address.
 * @param address without a sheet: a cell, a block, whole columns or rows
 * @returns the cells, undefined where it is no address
 */
export function referencedArea(address: string): Area | undefined {
  const [, from, to] = COLUMNS.exec(address) ?? [];
  if (from !== undefined && to !== undefined) {
    const columns = [columnNumber(from), columnNumber(to)];
    return { top: 1, bottom: LAST_ROW, left: Math.min(...columns), right: Math.max(...columns) };
  }
  const rows = (ROWS.exec(address) ?? []).slice(1).map(Number);
  if (rows.length === 0) return parseAddress(address);
  return { left: 1, right: LAST_COLUMN, top: Math.min(...rows), bottom: Math.max(...rows) };
}

/**
 * Whether an address takes whole columns or rows.
 * @param address without a sheet
 * @returns true for `A:C` and `2:2`
 */
export function isOpenEnded(address: string): boolean {
  return COLUMNS.test(address) || ROWS.test(address);
}
