import type {
  BaselineOffset,
  BorderStyleTypes,
  HorizontalAlign,
  Nullable,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/presets';

// The page's numbers stand here by value: importing the enumerations would import the spreadsheet.

/** Lines of a border, in the file's words. */
export const BORDER_LINES: ReadonlyMap<string, BorderStyleTypes> = new Map<string, BorderStyleTypes>([
  ['thin', 1],
  ['hair', 2],
  ['dotted', 3],
  ['dashed', 4],
  ['dashDot', 5],
  ['dashDotDot', 6],
  ['double', 7],
  ['medium', 8],
  ['mediumDashed', 9],
  ['mediumDashDot', 10],
  ['mediumDashDotDot', 11],
  ['slantDashDot', 12],
  ['thick', 13],
]);

/** Where text stands across the cell, in the file's words. */
export const ACROSS: ReadonlyMap<string, HorizontalAlign> = new Map<string, HorizontalAlign>([
  ['left', 1],
  ['center', 2],
  ['right', 3],
  ['justify', 4],
  ['distributed', 6],
]);

/** Where text stands down the cell, in the file's words. */
export const DOWN: ReadonlyMap<string, VerticalAlign> = new Map<string, VerticalAlign>([
  ['top', 1],
  ['center', 2],
  ['bottom', 3],
]);

/** Raised and lowered text, in the file's words. */
export const RAISED: ReadonlyMap<string, BaselineOffset> = new Map<string, BaselineOffset>([
  ['subscript', 2],
  ['superscript', 3],
]);

/** Text that goes on in the next line of its cell. */
export const WRAPPED: WrapStrategy = 3;

/** Pixels of one step of indent: about three spaces of the standard font (assumption). */
export const INDENT = 9;

/** Room that the page leaves around a text, in pixels. */
export const PADDING = { t: 0, b: 2, l: 2, r: 2 } as const;

/**
 * Looks a word up by its number.
 * @param words words with their numbers
 * @param number the number
 * @returns the word, or undefined
 */
export function wordOf<T extends number>(
  words: ReadonlyMap<string, T>,
  number: Nullable<T>,
): string | undefined {
  for (const [word, each] of words) if (each === number) return word;
  return undefined;
}
