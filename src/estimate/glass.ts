import { constants } from '../rules/constants';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { hoursOf, type Crew } from './crew';

/**
 * Labor-hours of the final clean of the glass of a row: its openings, or all of a row of glass.
 * @param row the wall row
 * @param rate m2 per labor-hour
 * @param crew the crew in force
 * @param rec takes down the lines; `Area#` and `Openings#` have been taken down
 * @returns labor-hours
 */
export function glassHours(row: WallRow, rate: number, crew: Crew, rec?: RowRecord): number {
  const isGlass = row.material.group === 'glass';
  const left = row.mask === 'only';
  const area = left ? 0 : isGlass ? row.area : row.openings;
  const hours = hoursOf((area / rate) * constants.minPerHour.value, crew);
  if (rec) {
    const surface = isGlass ? 'Area#' : 'Openings#';
    if (left) rec.nothing('glassHours#', 'laborHours', 'leftOut');
    else rec.line('glass', hours, { surface });
  }
  return hours;
}
