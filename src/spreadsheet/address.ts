/** A block of cells; rows and columns count from 1. */
export interface Area {
  /** Only for the type: a block that counts from 0 is another one. */
  readonly countsFrom?: 1;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

const CELL = /^\$?([A-Z]{1,3})\$?(\d{1,7})$/i;
const LETTERS = 26;
const A = 64;
/** The last row of a sheet. */
export const LAST_ROW = 1_048_576;
/** The last column of a sheet, XFD. */
export const LAST_COLUMN = 16_384;

/**
 * The letters of a column.
 * @param column its number, from 1
 * @returns for example `AA` for 27
 */
export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / LETTERS)) {
    letters = String.fromCharCode(A + 1 + ((rest - 1) % LETTERS)) + letters;
  }
  return letters;
}

/**
 * The number of a column.
 * @param letters for example `AA`
 * @returns its number, from 1
 */
export function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = number * LETTERS + letter.charCodeAt(0) - A;
  return number;
}

/**
 * Reads an address without a sheet.
 * @param address for example `$B$2:D9` or `B2`
 * @returns the block, or undefined where it is no address of cells
 */
export function parseAddress(address: string): Area | undefined {
  const [first = '', second = first, ...more] = address.split(':');
  const from = CELL.exec(first);
  const to = CELL.exec(second);
  if (!from?.[1] || !to?.[1] || more.length > 0) return undefined;
  const columns = [columnNumber(from[1]), columnNumber(to[1])];
  const rows = [Number(from[2]), Number(to[2])];
  const area = {
    top: Math.min(...rows),
    left: Math.min(...columns),
    bottom: Math.max(...rows),
    right: Math.max(...columns),
  };
  return area.top >= 1 && area.bottom <= LAST_ROW && area.right <= LAST_COLUMN ? area : undefined;
}

/**
 * The address of a cell.
 * @param row from 1
 * @param column from 1
 * @returns for example `B2`
 */
export function cellAddress(row: number, column: number): string {
  return columnLetters(column) + String(row);
}

/**
 * The address of a block.
 * @param area the block
 * @returns for example `B2:D9`, or `B2` for a single cell
 */
export function areaAddress({ top, left, bottom, right }: Area): string {
  const first = cellAddress(top, left);
  const last = cellAddress(bottom, right);
  return first === last ? first : `${first}:${last}`;
}

/**
 * Whether two blocks have a cell in common.
 * @param one a block
 * @param other a block
 * @returns true where they overlap
 */
export function meet(one: Area, other: Area): boolean {
  return (
    one.top <= other.bottom && one.bottom >= other.top && one.left <= other.right && one.right >= other.left
  );
}
