import type { CellError, CellValue } from '../xlsx/cell-value';
import type { BundledFunction, ParameterMetadata } from './bundle';
import { HostError } from './host-error';

/** A number with the format of its cell, as a host hands over what it knows of both. */
export interface FormattedNumber {
  readonly basicValue: number;
  readonly numberFormat: string;
}

/** What one cell hands to a function. */
export type Handed = CellValue | FormattedNumber;

/** What a formula hands to a function: a value, a range of values, or nothing where the argument is left out. */
export type Argument = Handed | Handed[][] | undefined;

/** What came of a call. */
export interface Outcome {
  /** The arguments as the function got them. */
  readonly args: readonly unknown[];
  readonly result: CellValue | CellValue[][];
}

function valueError(message: string): CellError {
  return { error: '#VALUE!', message };
}

function handOver(value: Handed): unknown {
  if (value === null) return '';
  return isError(value) ? value.error : value;
}

function isError(value: Handed): value is CellError {
  return typeof value === 'object' && value !== null && 'error' in value;
}

function shape(
  argument: Argument,
  parameter: ParameterMetadata,
  takesErrors: boolean,
): { value: unknown } | CellError {
  if (argument === undefined) {
    return parameter.optional ? { value: null } : valueError(`The argument ${parameter.name} is missing.`);
  }
  // Only an argument of any type takes an error.
  const handsErrors = takesErrors && (parameter.type ?? 'any') === 'any';
  if (parameter.dimensionality === 'matrix') {
    const rows = Array.isArray(argument) ? argument : [[argument]];
    const error = handsErrors ? undefined : rows.flat().find(isError);
    if (error) return error;
    return { value: rows.map((row) => row.map(handOver)) };
  }
  const [[only] = []] = Array.isArray(argument) ? argument : [[argument]];
  if (Array.isArray(argument) && (argument.length !== 1 || argument[0]?.length !== 1)) {
    return valueError(
      `The argument ${parameter.name} is a range of several cells. Accepted: one value or one cell.`,
    );
  }
  if (!handsErrors && only !== undefined && isError(only)) return only;
  return { value: handOver(only ?? null) };
}

function shapeAll(
  { metadata, takesErrors }: BundledFunction,
  given: readonly Argument[],
): unknown[] | CellError {
  const { parameters } = metadata;
  if (given.length > parameters.length) {
    return valueError(
      `${metadata.name} takes ${String(parameters.length)} arguments at most, here are ${String(given.length)}.`,
    );
  }
  const args: unknown[] = [];
  for (const [index, parameter] of parameters.entries()) {
    const shaped = shape(given[index], parameter, takesErrors);
    if ('error' in shaped) return shaped;
    args.push(shaped.value);
  }
  return args;
}

function errorOf(thrown: unknown): CellError {
  if (thrown instanceof HostError) return { error: thrown.code, message: thrown.message };
  const message =
    thrown !== null && typeof thrown === 'object' && 'message' in thrown
      ? String(thrown.message)
      : String(thrown);
  return valueError(message);
}

function cellOf(value: unknown): CellValue {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') {
    return Number.isFinite(value)
      ? value
      : { error: '#NUM!', message: `The result is ${String(value)}, not a number a cell can hold.` };
  }
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (value instanceof HostError) return errorOf(value);
  // A formatted value carries the plain one along for hosts that show no formats.
  if (typeof value === 'object' && 'basicValue' in value) return cellOf(value.basicValue);
  if (typeof value === 'object' && 'then' in value)
    return valueError('A function that answers later is not run here.');
  return valueError('The result is of a kind that a cell cannot hold.');
}

function gridOf(rows: readonly unknown[]): CellValue | CellValue[][] {
  const lines = rows.map((row) => (Array.isArray(row) ? row.map(cellOf) : [cellOf(row)]));
  const width = Math.max(0, ...lines.map((line) => line.length));
  if (width === 0) return { error: '#CALC!', message: 'The result is an empty array.' };
  return lines.map((line) => Array.from({ length: width }, (_, index) => line[index] ?? ''));
}

/**
 * Calls a worksheet function as the host does.
 * @param called the function
 * @param given the arguments of the formula, undefined where one is left out
 * @returns its result, an error in place of anything thrown
 */
export function callFunction(called: BundledFunction, given: readonly Argument[]): Outcome {
  const args = shapeAll(called, given);
  if ('error' in args) return { args: [], result: args };
  try {
    const result = called.run(...args);
    return { args, result: Array.isArray(result) ? gridOf(result) : cellOf(result) };
  } catch (thrown) {
    return { args, result: errorOf(thrown) };
  }
}
