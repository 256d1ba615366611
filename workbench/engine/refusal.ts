import type { BookCell } from '../xlsx/book';
import { isCellError, type CellError } from '../xlsx/cell-value';

/** Why a formula is not handed to the engine. */
export interface Refusal {
  readonly error: CellError;
  /** Whether the formula is wrong in itself, and not only out of the engine's reach. */
  readonly wrong: boolean;
}

/**
 * Whether a cell was saved with a good value.
 * @param cell the cell
 * @returns false for an error too
 */
export function hasCachedValue(cell: BookCell): boolean {
  return cell.value !== null && !isCellError(cell.value);
}
