import type { Kind } from '../../quantity/systems';

/** The parts of a bid page, in the order in which they stand. */
export const pageParts = [
  'Scope',
  'Quantities',
  'Included',
  'Not included',
  'Alternates',
  'Clarifications',
  'Price',
] as const;

/** A line of a bid page. */
export interface PageLine {
  readonly part: (typeof pageParts)[number];
  readonly text: string;
  /** The number beside it, in the base unit; undefined where the line is a sentence alone. */
  readonly amount?: { readonly value: number; readonly kind: Kind };
}

// So many characters of a wide type still fit the column of a sheet that prints upright.
const WIDTH = 70;

/**
 * Cuts a sentence between words, so that each piece fits a line of the page.
 * @param text the sentence
 * @returns its pieces in order
 */
export function cutToLines(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= WIDTH)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
