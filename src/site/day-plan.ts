import type { ZoneEstimate } from '../estimate/schedule';
import { constants } from '../rules/constants';

/** What is done in one zone on one working day. */
export interface DayPart {
  /** Working day of the job, from 1. */
  readonly day: number;
  readonly zone: ZoneEstimate;
  /** Share of the day that the zone takes, at most 1. */
  readonly ofDay: number;
  /** Share of the zone that is done. */
  readonly ofZone: number;
  /** Whether the zone begins, and whether it ends. */
  readonly first: boolean;
  readonly last: boolean;
}

/**
 * Lays the zones on working days: in their order, each begun as soon as the one before is done, and every day filled to
 * the end of its shift. Work may stop at the end of a shift and go on the next day, so that no day is longer.
 * @param zones the estimates of the job, in order; one without numbers takes no day
 * @returns the parts in the order of the work
 */
export function dayPlan(zones: readonly ZoneEstimate[]): DayPart[] {
  const guard = constants.guard.value;
  const parts: DayPart[] = [];
  let done = 0;
  for (const zone of zones) {
    const { days } = zone.totals;
    if (Number.isNaN(days)) continue;
    let left = days;
    do {
      const day = Math.floor(done + guard) + 1;
      const room = day - done;
      const isLast = left <= room + guard;
      const ofDay = isLast ? left : room;
      parts.push({
        day,
        zone,
        ofDay,
        ofZone: days > 0 ? ofDay / days : 1,
        first: left === days,
        last: isLast,
      });
      done = isLast ? done + left : day;
      left = isLast ? 0 : left - room;
    } while (left > 0);
  }
  return parts;
}
