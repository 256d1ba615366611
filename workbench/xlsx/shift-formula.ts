import { columnLetters, columnNumber } from './address';
import { rewriteCode } from './formula-text';

const REFERENCE =
  /(?<![\w.$])(?:(\$?)([A-Za-z]{1,3})(\$?)(\d{1,7})(?![\w.(])|(\$?)([A-Za-z]{1,3}):(\$?)([A-Za-z]{1,3})(?![\w.($])|(\$?)(\d{1,7}):(\$?)(\d{1,7})(?![\w.($]))/g;

/**
 * Moves the relative references of a formula, as filling it down or right does.
 * @param formula the formula without `=`
 * @param rows rows down
 * @param columns columns to the right
 * @returns the formula for the other cell
 */
export function shiftFormula(formula: string, rows: number, columns: number): string {
  const moveColumn = (fixed: string, letters: string): string =>
    fixed ? fixed + letters : columnLetters(columnNumber(letters) + columns);
  const moveRow = (fixed: string, row: string): string => (fixed ? fixed + row : String(Number(row) + rows));
  return rewriteCode(formula, (code) =>
    code.replace(REFERENCE, (...found: (string | undefined)[]) => {
      const [, c1, col, r1, row, c2, from, c3, to, r2, top, r3, bottom] = found;
      if (col !== undefined) return moveColumn(c1 ?? '', col) + moveRow(r1 ?? '', row ?? '');
      if (from !== undefined) return `${moveColumn(c2 ?? '', from)}:${moveColumn(c3 ?? '', to ?? '')}`;
      return `${moveRow(r2 ?? '', top ?? '')}:${moveRow(r3 ?? '', bottom ?? '')}`;
    }),
  );
}
