import type { KnownJob } from '../../alternates/known-job';
import type { WallRow } from '../../walls/wall-row';

/** The quantities that a change is measured by. */
export const measured = ['water', 'maskingArea', 'concentrate', 'laborHours', 'price'] as const;

/** Differences by quantity, in base units; NaN where a zone has no such number before or after. */
export type Difference = Record<(typeof measured)[number], number>;

/** The job with some of the changes made. */
export interface Reached {
  /** Sums over the zones that have such a number. */
  readonly sums: Difference;
  /** The quantities of which a zone has no number, with these zones. */
  readonly without: ReadonlyMap<keyof Difference, readonly string[]>;
  /** The class of each zone. */
  readonly classes: ReadonlyMap<string, string>;
}

/** The job with any of the changes made. */
export class ChangingJob {
  readonly #job: KnownJob;
  readonly #rowsWith: (made: ReadonlySet<number>) => WallRow[];

  /**
   * Holds the job.
   * @param job works it out
   * @param rowsWith its rows with some of the changes made
   */
  constructor(job: KnownJob, rowsWith: (made: ReadonlySet<number>) => WallRow[]) {
    this.#job = job;
    this.#rowsWith = rowsWith;
  }

  /**
   * Works the job out.
   * @param made the places of the changes that are made
   * @returns what it comes to
   */
  at(made: ReadonlySet<number>): Reached {
    const { estimate, keys } = this.#job.at(this.#rowsWith(made));
    const sums = nothing();
    const without = new Map<keyof Difference, string[]>();
    const classes = new Map<string, string>();
    for (const { zone, totals, classToUse } of estimate.zones) {
      classes.set(zone.name, classToUse === undefined ? 'none' : String(classToUse));
      for (const id of measured) {
        if (!Number.isNaN(totals[id])) sums[id] += totals[id];
        else without.set(id, [...(without.get(id) ?? []), keys.get(zone.name) ?? '']);
      }
    }
    return { sums, without, classes };
  }
}

/**
 * No difference.
 * @returns a zero for each quantity
 */
export function nothing(): Difference {
  return { water: 0, maskingArea: 0, concentrate: 0, laborHours: 0, price: 0 };
}

/**
 * What a job comes to more than another. A zone without a number takes none away as long as it is the same in both.
 * @param a the one
 * @param b the other
 * @returns the differences
 */
export function minus(a: Reached, b: Reached): Difference {
  const left = nothing();
  for (const id of measured) {
    const same = isSame(a.without.get(id) ?? [], b.without.get(id) ?? []);
    left[id] = same ? a.sums[id] - b.sums[id] : NaN;
  }
  return left;
}

function isSame(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((each) => other.includes(each));
}
