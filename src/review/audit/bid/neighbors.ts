import type { SheetPlace } from '../references';
import type { Step, Ways } from './ways';

/** A direction on a sheet. */
export interface Way {
  readonly row: number;
  readonly column: number;
}

/** Down, up, to the right and to the left. */
export const directions: readonly Way[] = [
  { row: 1, column: 0 },
  { row: -1, column: 0 },
  { row: 0, column: 1 },
  { row: 0, column: -1 },
];

// Beyond this many cells a row or column is something else.
const FARTHEST = 20;

/**
 * The nearest formula in a direction, over typed numbers and blanks.
 * @param ways the formulas of the workbook
 * @param from the cell to start from
 * @param way the direction
 * @returns the formula; undefined where there is none near
 */
export function nearestFormula(ways: Ways, from: SheetPlace, way: Way): Step | undefined {
  for (let distance = 1; distance <= FARTHEST; distance++) {
    const place = stepped(from, way, distance);
    if (place.row < 1 || place.column < 1) return undefined;
    const step = ways.at(place);
    if (step) return step;
  }
  return undefined;
}

/**
 * A cell so far away.
 * @param from the cell to start from
 * @param way the direction
 * @param distance how many cells
 * @returns the cell
 */
export function stepped(from: SheetPlace, way: Way, distance: number): SheetPlace {
  return {
    sheet: from.sheet,
    row: from.row + way.row * distance,
    column: from.column + way.column * distance,
  };
}
