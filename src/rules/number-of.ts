import type { Cell } from '../quantity/cell';

/**
 * The number of a cell beside a factor id. A blank reads as 0: the host does not tell the two apart.
 * @param cell the cell
 * @returns the number, or undefined where it holds none
 */
export function numberOf(cell: Cell): number | undefined {
  if (cell.type === 'blank') return 0;
  return cell.type === 'number' ? cell.value : undefined;
}
