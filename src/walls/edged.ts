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
  if (side === 0) return { ...kind, height: metres(0) };
  // Divided twice, since the square of a very long side is no number any more.
  return { ...kind, height: metres(side * (1 + Math.sqrt(Math.max(0, 1 - kind.area / side / side)))) };
}
