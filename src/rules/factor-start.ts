import { comparable, type Cell } from '../quantity/cell';

/** What stands beside a factor that keeps its starting value: some hosts hand a blank cell over as 0. */
export const START = 'start';

/**
 * Whether a cell beside a factor leaves it at its starting value.
 * @param cell the cell
 * @returns true for a blank one and for the word `start`
 */
export function isStart(cell: Cell): boolean {
  return cell.type === 'blank' || (cell.type === 'text' && comparable(cell.value) === START);
}
