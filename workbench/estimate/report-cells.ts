import type { FormulaResult, RecordedCall } from '../engine/recalculate';
import { readableFormula, soleCall } from '../engine/washdown-names';
import { cellAddress } from '../xlsx/address';
import { isCellError, type CellValue } from '../xlsx/cell-value';

/** A value as JSON has it; an error inside a grid is its code. */
export type PlainValue = number | string | boolean | null;

/** A Washdown cell as it is reported. */
export interface ReportCell {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
  readonly value?: PlainValue | PlainValue[][];
  readonly error?: string;
  readonly message?: string;
  readonly unit: string;
}

/** Names the unit of what a function gives. */
export type UnitOf = (id: string, args: readonly unknown[]) => string;

function plain(value: CellValue): PlainValue {
  return isCellError(value) ? value.error : value;
}

function unitFor(formula: string, calls: readonly RecordedCall[], unitOf: UnitOf): string {
  const id = soleCall(formula);
  const call = [...calls].reverse().find((each) => each.id === id);
  if (id === undefined || !call) return '';
  try {
    return unitOf(id, call.args);
  } catch {
    // Arguments that the function refused tell no unit either.
    return '';
  }
}

/**
 * A recalculated cell as it is reported.
 * @param found the formula and its result
 * @param unitOf names the unit of a function's result
 * @returns value or error, formula in its readable form, unit
 */
export function reportCell(found: FormulaResult, unitOf: UnitOf): ReportCell {
  const { sheet, row, column, formula, result, calls } = found;
  const where = { sheet, cell: cellAddress(row, column), formula: `=${readableFormula(formula)}` };
  const unit = unitFor(formula, calls, unitOf);
  if (Array.isArray(result)) return { ...where, value: result.map((line) => line.map(plain)), unit };
  if (!isCellError(result)) return { ...where, value: result, unit };
  return { ...where, error: result.error, ...(result.message ? { message: result.message } : {}), unit };
}

/**
 * A cell that keeps its old value, as it is reported.
 * @param found the formula
 * @returns where it stands, and the formula in its readable form
 */
export function leftCell({ sheet, row, column, formula }: FormulaResult): {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
} {
  return { sheet, cell: cellAddress(row, column), formula: `=${readableFormula(formula)}` };
}
