import type { Block, CellContent, Formula } from './port';

// What the host would take for a formula, a number, a date, a truth value or an error, had a user typed it.
// Also where the words or signs of another language or width are read: Jan 5, CHF 5, ＝1.
const WOULD_BE_TAKEN_FOR_SOMETHING =
  /^(['=+\-@#.,(\p{Sc}\p{N}\s＝＋－＠＃（]|(true|false)$|[\p{L}]{3,9}\.?[\s\-/]*\p{N})/iu;

/**
 * Rows as the host takes them for writing: a text stays the text that it is, whatever it looks like.
 * @param rows values and formulas
 * @returns rows of equal length
 */
export function hostRows(rows: Block['rows']): CellContent[][] {
  const width = Math.max(1, ...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, place) => hostCell(row[place] ?? '')));
}

/**
 * A value or a formula as the host takes it for writing.
 * @param content a value, or a formula
 * @returns the formula, or the value as the text, number or truth value that it is
 */
export function hostCell(content: CellContent | Formula): CellContent {
  if (typeof content === 'object') return content.formula;
  return typeof content === 'string' && WOULD_BE_TAKEN_FOR_SOMETHING.test(content) ? `'${content}` : content;
}
