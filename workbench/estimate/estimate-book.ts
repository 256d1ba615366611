import type { Bundle } from '../engine/bundle';
import { recalculate, type FormulaResult } from '../engine/recalculate';
import { soleCall, storedForm, washdownCalls } from '../engine/washdown-names';
import type { Archive } from '../xlsx/archive';
import { BadFile } from '../xlsx/bad-file';
import { readBook } from '../xlsx/read-book';
import { writeValues, type NewValue } from '../xlsx/write-values';

/** A recalculated workbook. */
export interface Estimate {
  /** Every Washdown formula, in the order of the workbook. */
  readonly washdown: readonly FormulaResult[];
  /** The file with the values beside its formulas. */
  readonly archive: Archive;
}

function spills(result: FormulaResult, bundle: Bundle): boolean {
  const id = soleCall(result.formula);
  return id !== undefined && bundle.get(id)?.metadata.result?.dimensionality === 'matrix';
}

function newValue(result: FormulaResult, bundle: Bundle): NewValue {
  return {
    sheet: result.sheet,
    row: result.row,
    column: result.column,
    value: result.result,
    formula: storedForm(result.formula),
    spills: spills(result, bundle),
  };
}

/**
 * Recalculates the Washdown formulas of a workbook.
 * @param archive the file
 * @param bundle the built functions
 * @param fill whether ordinary formulas that were never calculated get a value as well
 * @returns their results, and the file with them
 * @throws {BadFile} where the file is no workbook or has no Washdown formula
 */
export async function estimateBook(archive: Archive, bundle: Bundle, fill = false): Promise<Estimate> {
  const book = readBook(archive);
  const any = book.sheets.some((sheet) =>
    [...sheet.cells.values()].some(
      ({ formula }) => formula !== undefined && washdownCalls(formula).length > 0,
    ),
  );
  if (!any) {
    throw new BadFile('The workbook has no Washdown formula: no cell calls a function such as WASH.WATER.');
  }
  const results = await recalculate(book, bundle, fill);
  const washdown = results.filter(({ formula }) => washdownCalls(formula).length > 0);
  const ordinary = results.filter(
    ({ formula, supported }) => fill && supported && washdownCalls(formula).length === 0,
  );
  // A cell that cannot be calculated here keeps the value that another program gave it.
  const values = [...washdown.filter(({ supported }) => supported), ...ordinary];
  return {
    washdown,
    archive: writeValues(
      archive,
      book,
      values.map((each) => newValue(each, bundle)),
    ),
  };
}
