import type { Kind } from '../src/quantity/systems';

/** A value that a function puts into a cell; an error is a value here, so that it hides no neighbour. */
export type CellValue = number | string | boolean | CellError;

/** A cell error with its message. */
export interface CellError {
  readonly error: '#VALUE!' | '#N/A';
  readonly message: string;
}

/** One argument of a worksheet function. */
export interface Parameter {
  readonly name: string;
  readonly description: string;
  readonly type: 'any' | 'number' | 'string';
  readonly dimensionality: 'matrix' | 'scalar';
  readonly optional: boolean;
  /** The words that it takes, where it takes no others. */
  readonly choices?: readonly string[];
}

/** What the host, the README and the pane's help say of a worksheet function. */
export interface FunctionEntry {
  /** Name within the namespace, also its id; never changed once shipped. */
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly Parameter[];
  readonly result: 'scalar' | 'matrix';
  /** What a scalar result measures; `text` where it is none. */
  readonly unit: Kind | 'text';
  /** The rule in words. */
  readonly rule: string;
  /** A formula that a user can type. */
  readonly example: string;
}

/**
 * Works out what a function gives, from its arguments in order, an omitted one null or undefined; throws a
 * WashdownError where there is no result.
 */
export type Run = (args: readonly unknown[]) => CellValue | CellValue[][];

/** A worksheet function: what is said of it, and what it does. */
export interface WorksheetFunction extends FunctionEntry {
  readonly run: Run;
}

/**
 * Whether a value is an error.
 * @param value a cell value
 * @returns true for an error
 */
export function isCellError(value: CellValue): value is CellError {
  return typeof value === 'object';
}
