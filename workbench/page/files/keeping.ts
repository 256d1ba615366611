import type { ICellData, Nullable } from '@univerjs/presets';
import { readsOf } from '../../engine/formula-reads';
import { cellsIn } from '../../xlsx/address';
import type { BookCell } from '../../xlsx/book';
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
// Half of a whole sheet; the spreadsheet would take every cell of it in hand.
const MOST_READ = 100_000_000;

/**
 * Whether a formula names most of a sheet.
 * @param formula the formula
 * @returns true where working it out would take every cell of the sheet in hand
 */
export function asksForTooMuch(formula: string): boolean {
  if (!formula.includes(':')) return false;
  return readsOf(formula, '').reads.some(({ area }) => cellsIn(area) > MOST_READ);
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
