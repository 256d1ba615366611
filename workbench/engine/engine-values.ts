import type { BaseValueObject } from '@univerjs/preset-sheets-node-core';
import type { ICellData, Nullable } from '@univerjs/presets';
import { errorCode } from '../../src/spreadsheet/cell-error';
import { isCellError, type CellError, type CellValue } from '../xlsx/cell-value';
import type { Argument, FormattedNumber, Handed } from './call';
import {
  ArrayValueObject,
  BooleanValueObject,
  CellValueType,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from '#univer';

const ENGINE_ERRORS: Readonly<Record<string, CellError>> = {
  '#CYCLE!': { error: '#REF!', message: 'The formula depends on its own result.' },
  '#ERROR!': { error: '#VALUE!', message: 'The formula cannot be read.' },
};

const ENGINE_KINDS = Object.values(ErrorType);

function errorFrom(code: string): CellError {
  return ENGINE_ERRORS[code] ?? { error: errorCode(code) ?? code };
}

/**
 * A cell value as the engine keeps it.
 * @param value what the cell holds
 * @returns the engine's cell
 */
export function toCellData(value: CellValue): ICellData {
  if (value === null) return {};
  if (isCellError(value)) return { v: value.error, t: CellValueType.STRING };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === 'number' ? CellValueType.NUMBER : CellValueType.STRING };
}

/**
 * A value as a cell of the engine holds it.
 * @param cell the engine's cell
 * @returns the value; null where the cell is empty
 */
export function fromCellData(cell: Nullable<ICellData>): CellValue {
  if (!cell) return null;
  const value = cell.v;
  if (value === undefined || value === null) return null;
  if (cell.t === CellValueType.BOOLEAN) return value === 1 || value === true;
  if (typeof value === 'string' && (errorCode(value) !== undefined || value in ENGINE_ERRORS))
    return errorFrom(value);
  return value;
}

function fromScalar(value: Nullable<BaseValueObject>): CellValue {
  if (!value || value.isNull()) return null;
  return value.isError() ? errorFrom(String(value.getValue())) : value.getValue();
}

// The engine hands the same range to many formulas.
const GRIDS = new WeakMap<object, CellValue[][]>();

/**
 * An argument of a formula.
 * @param value as the engine hands it over
 * @returns the value or range, undefined where the argument was left out
 */
export function toArgument(value: BaseValueObject): CellValue | CellValue[][] | undefined {
  if (value instanceof ArrayValueObject) {
    const known = GRIDS.get(value);
    if (known) return known;
    const width = value.getColumnCount();
    const grid = value
      .getArrayValue()
      .map((row) => Array.from({ length: width }, (_, column) => fromScalar(row[column])));
    GRIDS.set(value, grid);
    return grid;
  }
  return value.isNull() ? undefined : fromScalar(value);
}

// Likewise, with formats. The same number is one object, so that a range that is handed over again is known again.
const FORMATTED = new WeakMap<object, Handed[][]>();
const NUMBERS = new Map<string, FormattedNumber>();

/** The number format of a cell that shows a percent; row and column from 0. */
export type PercentAt = (sheetId: string, row: number, column: number) => string | undefined;

/**
 * An argument of a formula, a number of a percent cell with its format: a file tells what a host keeps to itself.
 * @param value as the engine hands it over
 * @param percentAt tells which cells show a percent
 * @returns the value or range, undefined where the argument was left out
 */
export function toFormattedArgument(value: BaseValueObject, percentAt: PercentAt): Argument {
  const plain = toArgument(value);
  if (!(value instanceof ArrayValueObject) || !Array.isArray(plain)) return plain;
  const [sheet, top, left] = [value.getSheetId(), value.getCurrentRow(), value.getCurrentColumn()];
  // What a formula made stands in no cell.
  if (top < 0 || left < 0) return plain;
  const known = FORMATTED.get(value);
  if (known) return known;
  const grid = plain.map((row, down) =>
    row.map((cell, across) =>
      typeof cell === 'number' ? formatted(cell, percentAt(sheet, top + down, left + across)) : cell,
    ),
  );
  FORMATTED.set(value, grid);
  return grid;
}

function formatted(value: number, pattern: string | undefined): number | FormattedNumber {
  if (pattern === undefined) return value;
  const key = `${String(value)} ${pattern}`;
  const number = NUMBERS.get(key) ?? { basicValue: value, numberFormat: pattern };
  NUMBERS.set(key, number);
  return number;
}

function toScalar(value: CellValue): BaseValueObject {
  if (value === null) return StringValueObject.create('');
  if (isCellError(value)) {
    const { error } = value;
    return ErrorValueObject.create(ENGINE_KINDS.find((kind) => kind.valueOf() === error) ?? ErrorType.VALUE);
  }
  if (typeof value === 'number') return NumberValueObject.create(value);
  if (typeof value === 'boolean') return BooleanValueObject.create(value);
  // A text of digits must stay a text, so the general factory is no use.
  return StringValueObject.create(value);
}

/**
 * A function's result for the engine.
 * @param result a value or a grid of values
 * @returns the engine's value
 */
export function toEngine(result: CellValue | CellValue[][]): BaseValueObject {
  if (!Array.isArray(result)) return toScalar(result);
  return ArrayValueObject.create({
    calculateValueList: result.map((row) => row.map(toScalar)),
    rowCount: result.length,
    columnCount: result[0]?.length ?? 0,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}
