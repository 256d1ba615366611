import type { WallRow } from '../walls/wall-row';
import type { ZoneBudgets } from './budget';
import { doneIn } from './done';
import { standingOf, type Standing } from './earned-value';
import type { Entry } from './entry';
import { tasks } from './task';

/** How the hours of one wall stand. */
export interface WallStanding {
  readonly wall: WallRow;
  readonly hours: Standing;
}

/**
 * How the labor-hours stand on the walls that entries name. What is booked for the zone as a whole belongs to no wall.
 * @param entries the recorded work
 * @param budgets what the estimate allows in a zone
 * @returns a line for each wall named, in the order of the zone
 */
export function standingByWall(entries: readonly Entry[], budgets: ZoneBudgets): WallStanding[] {
  return budgets.zone.rows.flatMap((wall) => {
    const own = entries.filter((entry) => entry.wall === wall && entry.hours > 0);
    if (own.length === 0) return [];
    const budget = budgets.ofWall(wall).hours;
    const earned = tasks.reduce((sum, task) => {
      const ofTask = own.filter((entry) => entry.task === task);
      return sum + doneIn(ofTask, task, budgets).earned.hours;
    }, 0);
    const actual = own.reduce((sum, { hours }) => sum + hours, 0);
    return [{ wall, hours: standingOf([{ budget, earned: Math.min(earned, budget), actual }]) }];
  });
}
