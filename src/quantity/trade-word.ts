import { comparable } from './cell';

/** British spellings that American bids also meet, each with the American one. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/colour/g, 'color'],
  [/aluminium/g, 'aluminum'],
  [/galvanis/g, 'galvaniz'],
  [/anodis/g, 'anodiz'],
  [/grey/g, 'gray'],
  [/mould/g, 'mold'],
  [/neutralis/g, 'neutraliz'],
  [/labour/g, 'labor'],
];

/**
 * A name in the form in which two are compared: case, spacing, hyphens and British spelling do not count.
 * @param name what was typed
 * @returns the form to compare by
 */
export function tradeWord(name: string): string {
  let word = comparable(name).replace(/[-\u2010-\u2015]/g, '');
  for (const [british, american] of spellings) word = word.replace(british, american);
  return word;
}
