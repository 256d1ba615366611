import { laborHours, type LaborHours } from '../quantity/quantities';
import { constants } from '../rules/constants';
import type { Recorder } from '../trace/recorder';
import { hoursOf, type Crew } from './crew';

/**
 * Labor-hours of brushing a row down each day, where the row says that it is priced here.
 * @param area its net area, m2
 * @param priced whether it is in this bid
 * @param rate m2 a labor-hour
 * @param crew the crew in force
 * @param rec takes down the line; `Area#` and `Openings#` have been taken down
 * @returns labor-hours
 */
export function brushHours(
  area: number,
  priced: boolean,
  rate: number,
  crew: Crew,
  rec?: Recorder,
): LaborHours {
  if (!priced) {
    rec?.line('brushHours#', '0', 0, 'laborHours', 'noBrushing');
    return laborHours(0);
  }
  const hours = hoursOf((area / rate) * constants.minPerHour.value, crew);
  const expression = '(Area# - Openings#) / rate_brush / working_share';
  rec?.line('brushHours#', expression, hours, 'laborHours', 'brushDown');
  return hours;
}
