// What a workbook may hold and still be worked on here. Kind of each: assumption, several times what the largest bid
// that was made for the tests needs; how much memory and time they allow is in docs/how-it-is-tested.md.

/** Bytes of a file. */
export const MOST_FILE_BYTES = 64 * 1024 * 1024;
/** Parts of a file. */
export const MOST_PARTS = 10_000;
/** Bytes of one part, unpacked. */
export const MOST_PART_BYTES = 128 * 1024 * 1024;
/** Bytes of all parts together, unpacked. */
export const MOST_BYTES = 256 * 1024 * 1024;
/** Bytes of a part that is read as a whole tree: everything but the cells and texts of sheets. */
export const MOST_TREE_BYTES = 16 * 1024 * 1024;
/** Levels of elements within elements. */
export const MOST_LEVELS = 200;
/** Rows and cells of a workbook together. */
export const MOST_CELLS = 1_000_000;
/** Cells that one array formula may fill. */
export const MOST_ARRAY_CELLS = 1_048_576;
/** Cells that one formula may read; of whole columns and rows, which end with what is there, only those in use. */
export const MOST_READ_CELLS = 5_000_000;

const whole = new Intl.NumberFormat('en-US');

/**
 * A number of bytes in words.
 * @param bytes how many
 * @returns for example `128 MB`
 */
export function megabytes(bytes: number): string {
  return `${whole.format(Math.ceil(bytes / 1024 / 1024))} MB`;
}

/**
 * A whole number in words.
 * @param number the number
 * @returns for example `1,048,576`
 */
export function counted(number: number): string {
  return whole.format(number);
}
