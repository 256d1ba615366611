import { constants } from '../rules/constants';
import type { ZoneBudgets } from './budget';
import type { Entry, Measure } from './entry';
import type { Task } from './task';

/** More area than there is: a zone or a wall done twice, or an area mistyped. */
export interface Beyond {
  readonly type: 'beyond';
  /** The zone or the wall. */
  readonly where: string;
  /** What was recorded, m2. */
  readonly done: number;
  /** What there is, m2. */
  readonly area: number;
}

/** How much of a task is done in a zone, by the areas of its entries; each area counts once. */
export interface Done {
  /** m2 */
  readonly area: number;
  readonly earned: Readonly<Record<Measure, number>>;
  readonly beyond: readonly Beyond[];
}

/**
 * What the areas of the entries of a task earn in a zone: the share of each wall named, or of the zone where none is.
 * @param entries entries of one task in the zone; those without an area say nothing here
 * @param task the task
 * @param budgets what the estimate allows in the zone
 * @returns area done, what it earns, and areas beyond what is there
 */
export function doneIn(entries: readonly Entry[], task: Task, budgets: ZoneBudgets): Done {
  const ofZone = budgets.of(task);
  const beyond: Beyond[] = [];
  let area = 0;
  const earned = { hours: 0, water: 0, cleaner: 0 };
  const take = (share: number, of: Readonly<Record<Measure, number>>): void => {
    for (const measure of ['hours', 'water', 'cleaner'] as const) earned[measure] += share * of[measure];
  };
  const byWall = new Map<Entry['wall'], number>();
  for (const each of entries) byWall.set(each.wall, (byWall.get(each.wall) ?? 0) + each.area);
  for (const [wall, done] of byWall) {
    const budget = wall ? budgets.ofWall(wall).of(task) : ofZone;
    if (done === 0) continue;
    if (isBeyond(done, budget.area))
      beyond.push({ type: 'beyond', where: wall?.wall ?? budgets.zone.name, done, area: budget.area });
    const counts = Math.min(done, budget.area);
    area += counts;
    if (counts > 0) take(counts / budget.area, budget);
  }
  // Walls by name and the zone besides may together be more than there is.
  if (isBeyond(area, ofZone.area)) {
    beyond.push({ type: 'beyond', where: budgets.zone.name, done: area, area: ofZone.area });
    area = ofZone.area;
  }
  return { area, earned: atMost(earned, ofZone), beyond };
}

/**
 * What is earned, never more than the budget.
 * @param earned what the entries add up to
 * @param budget what the estimate allows
 * @returns the lesser of the two
 */
export function atMost(
  earned: Readonly<Record<Measure, number>>,
  budget: Readonly<Record<Measure, number>>,
): Record<Measure, number> {
  return {
    hours: Math.min(earned.hours, budget.hours),
    water: Math.min(earned.water, budget.water),
    cleaner: Math.min(earned.cleaner, budget.cleaner),
  };
}

function isBeyond(done: number, area: number): boolean {
  return done > area * (1 + constants.guard.value);
}
