// ECMA-376 Part 1, 18.8.30: what a file means by these numbers without saying it.
const BUILT_IN: Readonly<Record<number, string>> = {
  1: '0',
  2: '0.00',
  3: '#,##0',
  4: '#,##0.00',
  9: '0%',
  10: '0.00%',
  11: '0.00E+00',
  12: '# ?/?',
  13: '# ??/??',
  // The standard says mm-dd-yy; spreadsheets show the short date of the place, here that of the United States.
  14: 'm/d/yyyy',
  15: 'd-mmm-yy',
  16: 'd-mmm',
  17: 'mmm-yy',
  18: 'h:mm AM/PM',
  19: 'h:mm:ss AM/PM',
  20: 'h:mm',
  21: 'h:mm:ss',
  22: 'm/d/yy h:mm',
  37: '#,##0 ;(#,##0)',
  38: '#,##0 ;[Red](#,##0)',
  39: '#,##0.00;(#,##0.00)',
  40: '#,##0.00;[Red](#,##0.00)',
  45: 'mm:ss',
  46: '[h]:mm:ss',
  47: 'mmss.0',
  48: '##0.0E+0',
  49: '@',
};

/** The first number that a file may give to a format of its own. */
export const FIRST_OWN_FORMAT = 164;

/**
 * The pattern of a number format.
 * @param id its number in the file
 * @param own the file's own formats by number
 * @returns the pattern; undefined for the general one
 */
export function formatPattern(id: number, own: ReadonlyMap<number, string>): string | undefined {
  const pattern = own.get(id) ?? BUILT_IN[id];
  return pattern?.toLowerCase() === 'general' ? undefined : pattern;
}

/**
 * The number under which a file has a pattern without saying it.
 * @param pattern for example `0.00`
 * @returns its number, or undefined
 */
export function builtInFormat(pattern: string): number | undefined {
  const found = Object.entries(BUILT_IN).find(([, each]) => each === pattern)?.[0];
  return found === undefined ? undefined : Number(found);
}

const QUOTED = /"[^"]*"|\[[^\]]*\]|\\./g;

/**
 * Whether a format shows a day; one that shows only the time of day does not count.
 * @param pattern the format
 * @returns true for example for `d-mmm-yy`
 */
export function showsDate(pattern: string | undefined): boolean {
  return pattern !== undefined && /[dy]|mmm/i.test(pattern.replace(QUOTED, ''));
}
