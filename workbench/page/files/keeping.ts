import type { ICellData, Nullable } from '@univerjs/presets';
import { readsOf } from '../../engine/formula-reads';
import { cellsIn } from '../../xlsx/address';
import type { BookCell } from '../../xlsx/book';
import { MOST_READ_CELLS } from '../../xlsx/limits';
import { isCellError } from '../../xlsx/cell-value';
import { washdownCalls } from '../../engine/washdown-names';

/**
 * When a formula of the file keeps the value that it was saved with: where its functions are not known here, where it
 * also would spill though its file says that it gives one value, or always.
 */
export type Keeping = 'unknown' | 'single' | 'always';

const KEPT = 'keeps';

/** What asks for something outside of the cells: the file, the machine, a service, another workbook. */
const OUTSIDE = /(?<![\w.])(?:CELL|INFO|RTD|WEBSERVICE|STOCKHISTORY|GETPIVOTDATA|CUBE[A-Z]+)\s*\(|\[\d+\]/i;

/**
 * Whether a formula names more cells than can be taken in hand. Whole columns and rows end where the sheet does.
 * @param formula the formula
 * @returns true where working it out would freeze the page
 */
export function asksForTooMuch(formula: string): boolean {
  if (!formula.includes(':')) return false;
  return readsOf(formula, '').reads.some(({ area, open }) => !open && cellsIn(area) > MOST_READ_CELLS);
}

/**
 * When a cell of a file keeps its value.
 * @param cell the cell
 * @param always whether the page is known not to work it out
 * @returns what goes with the cell; nothing for ours and for cells without a good value
 */
export function keepingFor(cell: BookCell, always: boolean): Pick<ICellData, 'custom'> {
  const { formula, value, array, dataTable } = cell;
  if (formula === undefined || dataTable || value === null || isCellError(value)) return {};
  if (washdownCalls(formula).length > 0) return {};
  const isOutOfReach = always || OUTSIDE.test(formula) || asksForTooMuch(formula);
  const keeps: Keeping = isOutOfReach ? 'always' : array ? 'unknown' : 'single';
  return { custom: { [KEPT]: keeps } };
}

/**
 * When a cell of the page keeps its value.
 * @param cell the cell
 * @returns undefined where it does not
 */
export function keepingOf(cell: Nullable<ICellData>): Keeping | undefined {
  return cell?.custom?.[KEPT] as Keeping | undefined;
}
