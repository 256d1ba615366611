import type { Bundle } from '../engine/bundle';
import { dependentsOf, type FormulaNode } from '../engine/dependents';
import { placeKey } from '../engine/engine';
import { recalculate, type FormulaResult } from '../engine/recalculate';
import { withoutSpillReferences } from '../engine/spill-references';
import { soleCall, storedForm, washdownCalls } from '../engine/washdown-names';
import { cellAddress } from '../xlsx/address';
import type { Archive } from '../xlsx/archive';
import { BadFile } from '../xlsx/bad-file';
import type { Book, BookCell } from '../xlsx/book';
import { asCalculated } from '../xlsx/calculation-settings';
import { isCellError, type CellValue } from '../xlsx/cell-value';
import { readBook } from '../xlsx/read-book';
import { writeValues, type NewValue } from '../xlsx/write-values';
import { Ours } from './ours';

/** A recalculated workbook. */
export interface Estimate {
  /** Every Washdown formula, in the order of the workbook. */
  readonly washdown: readonly FormulaResult[];
  /** Ordinary formulas that depend on those and cannot be worked out here: they keep the value that they had. */
  readonly left: readonly FormulaResult[];
  /** Whether a spreadsheet that opens the file works everything out anew, since some formulas have no value. */
  readonly recalculates: boolean;
  /** The file with the values beside its formulas. */
  readonly archive: Archive;
  /** What needs the add-in, for a copy that does without. */
  readonly needing: readonly FormulaResult[];
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

function nodeOf({ sheet, row, column, plain, result }: FormulaResult): FormulaNode {
  const grid = Array.isArray(result) ? result : [[result]];
  return { sheet, row, column, plain, height: grid.length, width: grid[0]?.length ?? 1 };
}

function keyOf({ sheet, row, column }: Pick<FormulaResult, 'sheet' | 'row' | 'column'>): string {
  return placeKey(sheet, cellAddress(row, column));
}

function cellsOf(book: Book): ReadonlyMap<string, BookCell> {
  return new Map(
    book.sheets.flatMap(({ name, cells }) =>
      [...cells].map(([address, cell]) => [placeKey(name, address), cell] as const),
    ),
  );
}

// Some writers keep 15 digits of a number.
const TOLERANCE = 1e-12;

function shows(cell: BookCell | undefined, result: CellValue): boolean {
  const value = cell?.value ?? null;
  if (typeof value === 'number' && typeof result === 'number') {
    return Math.abs(value - result) <= TOLERANCE * Math.max(Math.abs(value), Math.abs(result));
  }
  if (isCellError(value) && isCellError(result)) return value.error === result.error;
  return value === result;
}

/**
 * Recalculates the Washdown formulas of a workbook and the ordinary formulas that depend on them.
 * @param archive the file
 * @param bundle the built functions
 * @param fill whether other formulas that were never calculated get a value as well
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
  const cells = cellsOf(book);
  const ours = new Ours(book.names);
  const nodes = results.map(nodeOf);
  const formulas = new Map(results.map((result) => [keyOf(result), result]));
  const formulaAt = (node: FormulaNode): string => formulas.get(keyOf(node))?.formula ?? '';
  const reached = dependentsOf(nodes, (node) => ours.uses(formulaAt(node)));

  // A formula that the file keeps as one of a single cell may only fill that cell.
  const fillsMore = (result: FormulaResult['result']): boolean =>
    Array.isArray(result) || (isCellError(result) && result.error === '#SPILL!');
  const unfit = (each: FormulaResult): boolean =>
    !each.supported || (fillsMore(each.result) && cells.get(keyOf(each))?.array === undefined);
  const ordinary = results.filter(({ formula }) => washdownCalls(formula).length === 0);
  const lost = new Set(ordinary.filter((each) => reached.has(keyOf(each)) && unfit(each)).map(keyOf));
  const behind = dependentsOf(nodes, (node) => lost.has(keyOf(node)));
  const left = ordinary.filter((each) => reached.has(keyOf(each)) && behind.has(keyOf(each)));

  const written = ordinary.filter((each) => {
    const key = keyOf(each);
    if (unfit(each) || behind.has(key)) return false;
    if (!reached.has(key) && !fill) return false;
    return Array.isArray(each.result) || !shows(cells.get(key), each.result);
  });
  // A cell that cannot be calculated here keeps the value that another program gave it.
  const values = [...washdown.filter(({ supported }) => supported), ...written];
  const done = writeValues(
    archive,
    book,
    values.map((each) => newValue(each, bundle)),
  );
  const settled = new Set(values.map(keyOf));
  const recalculates =
    left.length > 0 ||
    [...cells].some(
      ([key, { formula, value }]) => formula !== undefined && value === null && !settled.has(key),
    );
  return {
    washdown,
    left,
    recalculates,
    archive: recalculates ? done : asCalculated(done),
    needing: results.filter((each) => needs(each, ours, reached)),
  };
}

/** A reference to a spill as a whole finds none where there are plain values in its place. */
function needs(each: FormulaResult, ours: Ours, reached: ReadonlySet<string>): boolean {
  if (ours.uses(each.formula)) return true;
  const withoutSpills = withoutSpillReferences(each.formula, each.sheet, () => undefined);
  return withoutSpills !== each.formula && reached.has(keyOf(each));
}
