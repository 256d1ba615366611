import { netArea } from './net-area';
import type { WallRow } from './wall-row';

/**
 * Whether a row is masonry that is covered while its zone is washed, and washed afterwards.
 * @param row the wall row
 * @returns true where it is
 */
export function isWashedLater(row: WallRow): boolean {
  return row.mask === 'yes' && row.material.masonry && netArea(row) > 0;
}
