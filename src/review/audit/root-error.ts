import { NotFollowed } from '../../spreadsheet/not-followed';
import type { AuditedBook } from './audited-book';
import { readsOf } from './bid/reads';
import { isError, isErrorText, isRows, type Outcome } from './outcome';
import type { SheetPlace } from './references';
import { callsWashdown } from './washdown-calls';

/** Where the error of a cell starts. */
export interface RootError {
  /** The cell whose Washdown formula is in error. */
  readonly at: SheetPlace;
  /** Why. */
  readonly message: string;
  /** The cell of the input that is to blame, where that is known. */
  readonly cause?: SheetPlace;
}

/**
 * Follows the error that a cell shows back to the Washdown formula that it comes from.
 * @param book the workbook
 * @param start the cell
 * @param work works a formula out
 * @returns the first such formula; undefined where the cell shows no error, or no Washdown formula is behind it
 */
export function rootError(
  book: AuditedBook,
  start: SheetPlace,
  work: (formula: string, at: SheetPlace) => Outcome,
): RootError | undefined {
  const seen = new Set<string>();
  const open = [start];
  for (let at = open.shift(); at !== undefined; at = open.shift()) {
    const { sheet, row, column } = at;
    const key = `${sheet}!${String(row)},${String(column)}`;
    const formula = book.formula(sheet, row, column);
    if (seen.has(key) || formula === undefined || !isErrorText(book.value(sheet, row, column))) continue;
    seen.add(key);
    if (callsWashdown(formula)) {
      const root = errorOf(formula, at, work);
      if (root) return root;
    }
    for (const area of readsOf(book, formula, at).areas) {
      book.rows(area).forEach((line, down) => {
        line.forEach((value, across) => {
          if (isErrorText(value))
            open.push({ sheet: area.sheet, row: area.top + down, column: area.left + across });
        });
      });
    }
  }
  return undefined;
}

function errorOf(
  formula: string,
  at: SheetPlace,
  work: (formula: string, at: SheetPlace) => Outcome,
): RootError | undefined {
  try {
    const outcome = work(formula, at);
    const error = (isRows(outcome) ? outcome.flat() : [outcome]).find(isError);
    return (
      (error &&
        error.message !== '' && { at, message: error.message, ...(error.cause && { cause: error.cause }) }) ||
      undefined
    );
  } catch (error) {
    if (error instanceof NotFollowed) return undefined;
    throw error;
  }
}
