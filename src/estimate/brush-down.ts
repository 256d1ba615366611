import { constants } from '../rules/constants';
import type { RowRecord } from '../trace/recorder';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import { hoursOf, type Crew } from './crew';

/**
 * Labor-hours of brushing a row of masonry down each day, where the row says that it is priced here. What is only
 * protected is never brushed, and a row that is masked and left unwashed is out of scope.
 * @param row the wall row
 * @param rate m2 per labor-hour
 * @param crew the crew in force
 * @param rec takes down the line; `Area#` and `Openings#` have been taken down
 * @returns labor-hours
 */
export function brushHours(row: WallRow, rate: number, crew: Crew, rec?: RowRecord): number {
  const { masonry } = row.material;
  const left = row.mask === 'only';
  if (!row.brushPriced || !masonry || left) {
    const why = !row.brushPriced ? 'noBrushing' : left ? 'leftOut' : 'onlyProtected';
    rec?.nothing('brushHours#', 'laborHours', why);
    return 0;
  }
  const hours = hoursOf((netArea(row) / rate) * constants.minPerHour.value, crew);
  rec?.line('brushDown', hours);
  return hours;
}
