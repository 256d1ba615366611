// Width of a digit of the standard font, in pixels (Calibri 11; ECMA-376 Part 1, 18.3.1.13).
const DIGIT = 7;
const PARTS = 256;
const POINTS_TO_PIXELS = 96 / 72;

/**
 * A column's width on the page.
 * @param characters as the file has it
 * @returns in pixels
 */
export function widthInPixels(characters: number): number {
  return Math.trunc(((PARTS * characters + Math.trunc(PARTS / 2 / DIGIT)) / PARTS) * DIGIT);
}

/**
 * A column's width in a file.
 * @param pixels on the page
 * @returns in characters
 */
export function widthInCharacters(pixels: number): number {
  return Math.trunc((pixels / DIGIT) * PARTS) / PARTS;
}

/**
 * A row's height on the page.
 * @param points as the file has it
 * @returns in pixels
 */
export function heightInPixels(points: number): number {
  return Math.round(points * POINTS_TO_PIXELS);
}

/**
 * A row's height in a file.
 * @param pixels on the page
 * @returns in points
 */
export function heightInPoints(pixels: number): number {
  return pixels / POINTS_TO_PIXELS;
}
