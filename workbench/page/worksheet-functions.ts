import type { BaseValueObject } from '@univerjs/preset-sheets-node-core';
import type { Bundle, BundledFunction } from '../engine/bundle';
import { callFunction } from '../engine/call';
import { toArgument, toEngine } from '../engine/engine-values';
import { Single, SINGLE } from '../engine/single';
import { isCellError } from '../xlsx/cell-value';
import { BaseFunction } from '#univer';

/** Why the cells in error are in error, by sheet id and cell; rows and columns count from 0. */
export class Reasons {
  readonly #messages = new Map<string, string>();

  /**
   * Takes down how a call ended.
   * @param sheet id of the sheet
   * @param row row of the cell
   * @param column column of the cell
   * @param message the reason, or undefined where there is no error
   */
  take(sheet: string, row: number, column: number, message: string | undefined): void {
    const key = `${sheet}\n${String(row)}\n${String(column)}`;
    if (message === undefined) this.#messages.delete(key);
    else this.#messages.set(key, message);
  }

  /**
   * The reason of a cell's error.
   * @param sheet id of the sheet
   * @param row row of the cell
   * @param column column of the cell
   * @returns the message, or undefined where none was given
   */
  of(sheet: string, row: number, column: number): string | undefined {
    return this.#messages.get(`${sheet}\n${String(row)}\n${String(column)}`);
  }
}

/**
 * The built functions as the spreadsheet takes them.
 * @param bundle the functions
 * @param reasons takes down why a call ended in an error
 * @returns a class and a name for each, `WASH.` before it
 */
export function engineFunctions(bundle: Bundle, reasons: Reasons): (readonly [unknown, string])[] {
  class WorksheetFunction extends BaseFunction {
    override calculate(...variants: BaseValueObject[]): BaseValueObject {
      const called = bundle.get(String(this.name).slice('WASH.'.length));
      if (!called) throw new Error(`${String(this.name)} is not in the bundle.`);
      const { result } = callFunction(called, variants.map(toArgument));
      const single = Array.isArray(result) ? result[0]?.[0] : result;
      const message = single !== undefined && isCellError(single) ? single.message : undefined;
      reasons.take(this.subUnitId ?? '', this.row, this.column, message);
      return toEngine(result);
    }
  }
  return [
    ...[...bundle.keys()].map((id) => [WorksheetFunction, `WASH.${id}`] as const),
    [Single, SINGLE] as const,
  ];
}

/**
 * What the spreadsheet says of the functions while one is typed.
 * @param bundle the functions
 * @param functionType the group in which the spreadsheet lists them
 * @returns a description for each
 */
export function functionDescriptions<T>(bundle: Bundle, functionType: T) {
  return [...bundle.values()].map(({ metadata }: BundledFunction) => ({
    functionName: `WASH.${metadata.name}`,
    functionType,
    description: metadata.description ?? '',
    abstract: metadata.description ?? '',
    functionParameter: metadata.parameters.map(({ name, description, optional }) => ({
      name,
      detail: description ?? '',
      example: '',
      require: optional === true ? (0 as const) : (1 as const),
      repeat: 0 as const,
    })),
  }));
}
