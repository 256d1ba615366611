import { actualsHeadings } from '../actuals/read-actuals';
import type { SecondClean } from './inspection';

const TASK = 'reclean';

/**
 * Second cleans as recorded work: headings and rows that a table of actuals takes as they are.
 * @param zone name of the zone
 * @param cleans its second cleans
 * @param dayOf the day of a time, as year-month-day where the user is
 * @returns headings and a row for each
 */
export function secondCleanEntries(
  zone: string,
  cleans: readonly SecondClean[],
  dayOf: (time: string) => string,
): (string | number)[][] {
  return [
    [...actualsHeadings],
    ...cleans.map(({ wall, hours, why, who, when }) => {
      const cells: Readonly<Record<string, string | number>> = {
        Date: dayOf(when),
        Zone: zone,
        Wall: wall,
        Task: TASK,
        Hours: hours,
        Note: `Second clean, ${who}: ${why}`,
      };
      return actualsHeadings.map((heading) => cells[heading] ?? '');
    }),
  ];
}
