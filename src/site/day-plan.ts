import type { Quantities } from '../estimate/quantities';
import type { ZoneEstimate } from '../estimate/schedule';
import { constants } from '../rules/constants';
import type { WallRow } from '../walls/wall-row';
import { wallsInOrder, type WallWork } from './walls-in-order';

/** What is done in one zone on one working day. */
export interface DayPart {
  /** Working day of the job, from 1. */
  readonly day: number;
  readonly zone: ZoneEstimate;
  /** Share of the zone that is done. */
  readonly ofZone: number;
  /** The walls that are worked on, in the order of the work. */
  readonly walls: readonly WallRow[];
  /** What of a quantity of the zone falls on that part: the walls bring theirs, the rest is shared by the hours. */
  readonly share: (quantity: (of: Readonly<Quantities>) => number) => number;
  /** Whether the zone begins, and whether it ends. */
  readonly first: boolean;
  readonly last: boolean;
}

/**
 * Lays the zones on working days: in their order, each begun as soon as the one before is done, and every day filled to
 * the end of its shift. Work may stop at the end of a shift and go on the next day, so that no day is longer. Within a
 * zone the walls follow one another, from the top down, each for the share of the hours that the estimate gives it.
 * @param zones the estimates of the job, in order; one without numbers takes no day
 * @param quantitiesOf the quantities of a row of those zones
 * @returns the parts in the order of the work
 */
export function dayPlan(
  zones: readonly ZoneEstimate[],
  quantitiesOf: (row: WallRow) => Readonly<Quantities>,
): DayPart[] {
  const guard = constants.guard.value;
  const parts: DayPart[] = [];
  let done = 0;
  for (const zone of zones) {
    const { days } = zone.totals;
    if (Number.isNaN(days)) continue;
    const walls = wallsInOrder(zone.zone.rows, quantitiesOf);
    let left = days;
    do {
      const day = Math.floor(done + guard) + 1;
      const room = day - done;
      const isLast = left <= room + guard;
      const ofDay = isLast ? left : room;
      const from = days > 0 ? (days - left) / days : 0;
      const to = isLast ? 1 : from + ofDay / days;
      const worked = walls.filter((wall) => isWithin(wall, from, to));
      parts.push({
        day,
        zone,
        ofZone: days > 0 ? ofDay / days : 1,
        walls: worked.map(({ row }) => row),
        share: (quantity) => shareOf(zone, walls, quantity, from, to),
        first: left === days,
        last: isLast,
      });
      done = isLast ? done + left : day;
      left = isLast ? 0 : left - room;
    } while (left > 0);
  }
  return parts;
}

/** A wall that takes no time is done with the one before it. */
function isWithin(wall: WallWork, from: number, to: number): boolean {
  const guard = constants.guard.value;
  if (wall.to - wall.from <= guard) return wall.from >= from - guard && (wall.from < to - guard || to >= 1);
  return overlap(wall, from, to) > guard;
}

function shareOf(
  { totals }: ZoneEstimate,
  walls: readonly WallWork[],
  quantity: (of: Readonly<Quantities>) => number,
  from: number,
  to: number,
): number {
  let worked = 0;
  let rest = quantity(totals);
  for (const wall of walls) {
    const length = wall.to - wall.from;
    if (length <= 0) continue;
    worked += (quantity(wall.quantities) * overlap(wall, from, to)) / length;
    rest -= quantity(wall.quantities);
  }
  return worked + rest * (to - from);
}

function overlap(wall: WallWork, from: number, to: number): number {
  return Math.max(0, Math.min(wall.to, to) - Math.max(wall.from, from));
}
