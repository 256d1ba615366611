/** What was budgeted, earned and booked for something, in one unit. */
export interface Booked {
  /** Budget at completion, BAC. */
  readonly budget: number;
  /** Budget of the work done, EV. */
  readonly earned: number;
  /** What it really took, AC; 0 where nothing is booked, and nothing is earned then. */
  readonly actual: number;
}

/** How the work stands, in the terms of earned value. */
export interface Standing extends Booked {
  /** Index of productivity, CPI = EV / AC; undefined where nothing is booked. */
  readonly index: number | undefined;
  /** Undefined where nothing is booked, or nothing is earned by what is. */
  readonly forecasts: Forecasts | undefined;
}

/** What it will have taken at completion, by three rules. */
export interface Forecasts {
  /** The rest at the index so far: BAC / CPI. */
  readonly atIndex: number;
  /** The rest as budgeted: AC + BAC - EV. */
  readonly asBudgeted: number;
  /** Each task at its own index, one that is not begun as budgeted: the sum of its BAC / CPI. */
  readonly taskByTask: number;
}

/**
 * How one task, or the tasks of a zone or a job together, stand. Source: EIA-748 and public-domain guides to earned
 * value; a task that has taken something and earned nothing has no index to go by, and counts in the sum with what it
 * took and its whole budget.
 * @param tasks the tasks
 * @returns their sums, index and forecasts
 */
export function standingOf(tasks: readonly Booked[]): Standing {
  const sum = (of: (task: Booked) => number): number => tasks.reduce((total, task) => total + of(task), 0);
  const budget = sum((task) => task.budget);
  const earned = sum((task) => task.earned);
  const actual = sum((task) => task.actual);
  const index = actual === 0 ? undefined : earned / actual;
  const forecasts =
    index === undefined || earned === 0
      ? undefined
      : {
          atIndex: budget / index,
          asBudgeted: actual + budget - earned,
          taskByTask: sum((task) =>
            task.earned === 0 ? task.actual + task.budget : (task.budget * task.actual) / task.earned,
          ),
        };
  return { budget, earned, actual, index, forecasts };
}
