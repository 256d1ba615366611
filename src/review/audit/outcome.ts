import { errorCode } from '../../spreadsheet/cell-error';
import type { Problem } from '../../quantity/problem';
import type { Shown } from './audited-book';
import type { SheetPlace } from './references';

/** A cell error with what is known about it. */
export interface ErrorValue {
  readonly error: string;
  readonly message: string;
  /** What could not be read, where that is known. */
  readonly problem?: Problem;
  /** The cell that could not be read, where that is known. */
  readonly cause?: SheetPlace;
}

/** One value of a formula. */
export type Value = Shown | ErrorValue;

/** What a formula gives: a value, or rows of values. */
export type Outcome = Value | readonly (readonly Value[])[];

/**
 * Whether a value is an error.
 * @param value a value
 * @returns true for an error
 */
export function isError(value: Value): value is ErrorValue {
  return typeof value === 'object';
}

/**
 * Whether an outcome fills several cells.
 * @param outcome of a formula
 * @returns true for rows
 */
export function isRows(outcome: Outcome): outcome is readonly (readonly Value[])[] {
  return Array.isArray(outcome);
}

/**
 * A cell's content as a value: the text of an error becomes an error.
 * @param shown what the cell shows
 * @returns the value
 */
export function valueOf(shown: Shown): Value {
  const error = typeof shown === 'string' ? errorCode(shown) : undefined;
  return error === undefined ? shown : { error, message: '' };
}

/**
 * Whether a cell shows an error.
 * @param shown what the cell shows
 * @returns true for `#VALUE!` and the like
 */
export function isErrorText(shown: Shown): boolean {
  return typeof shown === 'string' && errorCode(shown) !== undefined;
}
