import type { ZoneBudgets } from '../actuals/budget';
import { doneIn } from '../actuals/done';
import type { Entry } from '../actuals/entry';
import { isOfWash, RECLEAN, taskOf, WASH, type Task } from '../actuals/task';
import { constants } from '../rules/constants';
import type { WallRow } from '../walls/wall-row';
import type { StepId } from './step';

/** The task that a step is recorded as; a step that is left out has no hours of its own. */
const names: Readonly<Partial<Record<StepId, string>>> = {
  'sample-wash': 'sample',
  protection: 'mask',
  scrape: 'scrape',
  'pre-wet': 'prewet',
  apply: 'apply',
  scrub: 'scrub',
  rinse: 'rinse',
  clear: 'unmask',
};

/** Recorded work as it is offered to whoever did it, to be corrected. */
export interface OfferedEntry {
  readonly task: Task;
  /** m2; 0 where the task has no area. */
  readonly area: number;
  /** Labor-hours: what the estimate allows, or those of the clock. */
  readonly hours: number;
}

/**
 * What a step that is ticked off offers to record: the rest of its task. Where the wash of the zone is recorded as a
 * whole, the rinse offers the rest of the wash, and the other parts offer nothing.
 * @param step the step
 * @param budgets what the estimate allows in the zone
 * @param entries the recorded work
 * @returns the entry, or undefined where nothing is left to record
 */
export function offerOfStep(
  step: StepId,
  budgets: ZoneBudgets,
  entries: readonly Entry[],
): OfferedEntry | undefined {
  const named = taskOf(names[step] ?? '');
  if (named === undefined) return undefined;
  const own = entries.filter((entry) => entry.zone === budgets.zone && entry.hours > 0);
  const asWhole = isOfWash(named) && own.some((entry) => entry.task === WASH);
  if (asWhole && step !== 'rinse') return undefined;
  return restOf(asWhole ? WASH : named, budgets, entries);
}

/**
 * What is left to record of a task in a zone or on one of its walls: the area that no entry has, and what the estimate
 * allows for it. Cleaning once more has no area of its own: what is left of its hours is what no entry has booked.
 * @param task the task
 * @param budgets what the estimate allows in the zone
 * @param entries the recorded work
 * @param wall the wall; left out for the zone
 * @returns the rest, or undefined where there is none
 */
export function restOf(
  task: Task,
  budgets: ZoneBudgets,
  entries: readonly Entry[],
  wall?: WallRow,
): OfferedEntry | undefined {
  const own = entries.filter(
    (entry) => entry.zone === budgets.zone && entry.hours > 0 && entry.task === task,
  );
  const { area, hours } = (wall ? budgets.ofWall(wall) : budgets).of(task);
  if (!(hours > 0)) return undefined;
  const ofPlace = wall ? own.filter((entry) => entry.wall === wall) : own;
  if (task === RECLEAN) {
    const left = Math.min(hours - hoursIn(ofPlace), budgets.of(task).hours - hoursIn(own));
    return left > hours * constants.guard.value ? { task, area: 0, hours: left } : undefined;
  }
  if (area === 0) return ofPlace.length > 0 ? undefined : { task, area: 0, hours };
  const ofZone = budgets.of(task).area - doneIn(own, task, budgets).area;
  const left = Math.min(area - doneIn(ofPlace, task, budgets).area, ofZone);
  return left > area * constants.guard.value ? { task, area: left, hours: (hours * left) / area } : undefined;
}

function hoursIn(entries: readonly Entry[]): number {
  return entries.reduce((sum, { hours }) => sum + hours, 0);
}

/**
 * What a patch that was timed offers to record: its part of the wash, and the time of the team on the clock.
 * @param minutes from the first stroke until it was rinsed
 * @param patches how many patches the zone has, each as often as it has passes
 * @param team persons who work on a patch
 * @param budgets what the estimate allows in the zone
 * @param entries the recorded work
 * @returns the entry, or undefined where the parts of the wash are recorded apart, or the zone has no patch
 */
export function offerOfPatch(
  minutes: number,
  patches: number,
  team: number,
  budgets: ZoneBudgets,
  entries: readonly Entry[],
): OfferedEntry | undefined {
  const apart = entries.some(({ zone, task }) => zone === budgets.zone && task !== WASH && isOfWash(task));
  if (apart || !(patches > 0)) return undefined;
  return {
    task: WASH,
    area: budgets.of(WASH).area / patches,
    hours: (Math.max(0, minutes) * team) / constants.minPerHour.value,
  };
}
