import { BadFile } from './bad-file';

/** Rows and columns that a sheet can have. */
export const SHEET_ROWS = 1_048_576;
export const SHEET_COLUMNS = 16_384;

/** A rectangle of cells, counted from 0, both ends included. */
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

const CELL = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})$/;

/**
 * The letters of a column.
 * @param column counted from 0
 * @returns for example `A` for 0, `AA` for 26
 */
export function columnLetters(column: number): string {
  let rest = column;
  let letters = '';
  do {
    letters = String.fromCharCode(65 + (rest % 26)) + letters;
    rest = Math.floor(rest / 26) - 1;
  } while (rest >= 0);
  return letters;
}

/**
 * The number of a column.
 * @param letters for example `AA`
 * @returns counted from 0
 */
export function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}

/**
 * The address of a cell.
 * @param row counted from 0
 * @param column counted from 0
 * @returns for example `B3`
 */
export function cellAddress(row: number, column: number): string {
  return columnLetters(column) + String(row + 1);
}

/**
 * Reads an address or a range.
 * @param text for example `B3` or `$A$1:C9`
 * @returns the rectangle
 * @throws {BadFile} where the text is neither, or beyond the end of a sheet
 */
export function parseArea(text: string): Area {
  const [first = '', last = first] = text.split(':');
  const from = CELL.exec(first);
  const to = CELL.exec(last);
  if (!from || !to) {
    throw new BadFile(`"${text}" is not a cell or a range. Accepted: an address like B3 or A1:C9.`);
  }
  const rows = [Number(from[2]) - 1, Number(to[2]) - 1];
  const columns = [columnNumber(from[1] ?? ''), columnNumber(to[1] ?? '')];
  const area = {
    top: Math.min(...rows),
    left: Math.min(...columns),
    bottom: Math.max(...rows),
    right: Math.max(...columns),
  };
  if (area.top < 0 || area.bottom >= SHEET_ROWS || area.right >= SHEET_COLUMNS) {
    throw new BadFile(`"${text}" is beyond the end of a sheet. Accepted: A1 to XFD1048576.`);
  }
  return area;
}

/**
 * The address of a rectangle.
 * @param area the rectangle
 * @returns for example `A1:C9`, or `A1` for one cell
 */
export function areaAddress(area: Area): string {
  const first = cellAddress(area.top, area.left);
  const last = cellAddress(area.bottom, area.right);
  return first === last ? first : `${first}:${last}`;
}

/**
 * How many cells a rectangle has.
 * @param area the rectangle
 * @returns rows times columns
 */
export function cellsIn({ top, left, bottom, right }: Area): number {
  return (bottom - top + 1) * (right - left + 1);
}

/**
 * Whether a cell lies in a rectangle.
 * @param area the rectangle
 * @param row counted from 0
 * @param column counted from 0
 * @returns true inside
 */
export function contains(area: Area, row: number, column: number): boolean {
  return row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
}
