import { tidy } from '../../quantity/shown-number';
import type { AuditedBook, Shown } from './audited-book';
import { isError, isErrorText, isRows, type Outcome, type Value } from './outcome';
import type { SheetPlace } from './references';

// Some writers keep 15 digits of a number; a real difference is larger.
const TOLERANCE = 1e-9;
const DIGITS_SHOWN = 10;

/** A cell that does not show what its formula gives. */
export interface Difference extends SheetPlace {
  readonly shown: Shown;
  readonly expected: Value;
}

/**
 * Whether a cell shows a value.
 * @param shown what it shows
 * @param expected the value
 * @returns true where the two are the same but for digits that files do not keep
 */
export function agrees(shown: Shown, expected: Value): boolean {
  if (isError(expected)) return shown === expected.error;
  if (typeof shown === 'number' && typeof expected === 'number') {
    return Math.abs(shown - expected) <= TOLERANCE * Math.max(Math.abs(shown), Math.abs(expected));
  }
  return shown === expected;
}

/**
 * The cells of a formula that do not show what it gives.
 * @param book the workbook
 * @param at where the formula stands
 * @param outcome what it gives
 * @returns the differences, row by row
 */
export function differencesOf(book: AuditedBook, at: SheetPlace, outcome: Outcome): Difference[] {
  const rows = isRows(outcome) ? outcome : [[outcome]];
  return rows.flatMap((line, down) =>
    line.flatMap((expected, across) => {
      const place = { sheet: at.sheet, row: at.row + down, column: at.column + across };
      const shown = book.value(place.sheet, place.row, place.column);
      return agrees(shown, expected) ? [] : [{ ...place, shown, expected }];
    }),
  );
}

/**
 * A value in a sentence.
 * @param value what a cell shows or a formula gives
 * @returns for example `12.5`, `"Library south"` or `nothing`
 */
export function said(value: Value): string {
  if (isError(value)) return value.message === '' ? value.error : `${value.error} (${value.message})`;
  if (typeof value === 'number') return String(tidy(value, DIGITS_SHOWN));
  if (typeof value === 'boolean') return String(value).toUpperCase();
  if (isErrorText(value)) return value;
  return value === '' ? 'nothing' : `"${value}"`;
}
