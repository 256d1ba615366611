import type { Quantities } from '../estimate/quantities';
import type { WallRow } from '../walls/wall-row';
import { isWashedLater } from '../walls/washed-later';
import { levelsOf } from './levels';

/** What a wall takes of the work in its zone. */
export interface WallWork {
  readonly row: WallRow;
  /** Share of the zone's hours that are worked when it is begun, and when it is done; 0 to 1. */
  readonly from: number;
  readonly to: number;
  readonly quantities: Readonly<Quantities>;
}

/**
 * The walls of a zone in the order of the work: what is only covered, then what is washed from the top down, then the
 * masonry that was covered. Each takes the share of the zone's labor-hours that the estimate gives it.
 * @param rows the rows of the zone
 * @param quantitiesOf the quantities of a row
 * @returns the walls, one after the other
 */
export function wallsInOrder(
  rows: readonly WallRow[],
  quantitiesOf: (row: WallRow) => Readonly<Quantities>,
): WallWork[] {
  const fromTheTop = levelsOf(rows).flatMap((level) => level.rows);
  const turn = (row: WallRow): number => (isWashedLater(row) ? 2 : row.masked ? 0 : 1);
  const ordered = [0, 1, 2].flatMap((now) => fromTheTop.filter((row) => turn(row) === now));
  const all = ordered.reduce((sum, row) => sum + quantitiesOf(row).laborHours, 0);
  let done = 0;
  return ordered.map((row) => {
    const quantities = quantitiesOf(row);
    const from = all > 0 ? done / all : 0;
    done += quantities.laborHours;
    return { row, from, to: all > 0 ? done / all : 1, quantities };
  });
}
