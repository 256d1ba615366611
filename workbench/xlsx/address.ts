import * as core from '../../src/spreadsheet/address';
import { BadFile } from './bad-file';

/** Rows that a sheet can have. */
export const SHEET_ROWS = core.LAST_ROW;
/** Columns that a sheet can have. */
export const SHEET_COLUMNS = core.LAST_COLUMN;

/** A rectangle of cells, counted from 0, both ends included. */
export interface Area {
  /** Only for the type: a block that counts from 1, as the core has it, is another one. */
  readonly countsFrom?: 0;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/**
 * The letters of a column.
 * @param column counted from 0
 * @returns for example `A` for 0, `AA` for 26
 */
export function columnLetters(column: number): string {
  return core.columnLetters(column + 1);
}

/**
 * The number of a column.
 * @param letters for example `AA`
 * @returns counted from 0
 */
export function columnNumber(letters: string): number {
  return core.columnNumber(letters) - 1;
}

/**
 * The address of a cell.
 * @param row counted from 0
 * @param column counted from 0
 * @returns for example `B3`
 */
export function cellAddress(row: number, column: number): string {
  return core.cellAddress(row + 1, column + 1);
}

/**
 * Reads an address or a range.
 * @param text for example `B3` or `$A$1:C9`
 * @returns the rectangle
 * @throws {BadFile} where the text is neither, or beyond the end of a sheet
 */
export function parseArea(text: string): Area {
  const area = core.parseAddress(text);
  if (!area) throw new BadFile(`"${text}" is not a cell or a range. Accepted: A1 to XFD1048576.`);
  return fromZero(area);
}

/**
 * A block as the core has it, counted from 0.
 * @param area counted from 1
 * @returns the same cells
 */
export function fromZero({ top, left, bottom, right }: core.Area): Area {
  return { top: top - 1, left: left - 1, bottom: bottom - 1, right: right - 1 };
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
