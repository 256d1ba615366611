import { metres } from '../quantity/quantities';
import type { WallRow } from './wall-row';

/**
 * One rectangle with the area and the edge of all rows of a masked kind: its edge is 2 (area / height + height), solved
 * for the height. What is masked goes with area and edge alone.
 * @param kind rows of a kind put together; of a masked one the perimeter is the edge of its rows
 * @returns the rectangle; the kind itself where it is not masked
 */
export function edged(kind: WallRow): WallRow {
  if (!kind.masked) return kind;
  const side = kind.openingPerimeter / 4;
  return { ...kind, height: metres(side + Math.sqrt(Math.max(0, side ** 2 - kind.area))) };
}
