/** The largest area that is washed at one time: m2, times in min. */
export interface Patch {
  readonly area: number;
  /** Between the end of applying and scrubbing and the start of rinsing. */
  readonly wait: number;
  /** Contact at the point that is applied and rinsed first. */
  readonly firstContact: number;
  /** Contact at the point that is applied and rinsed last. */
  readonly lastContact: number;
}

/** Rates in m2/min, times in min, areas in m2. */
export interface PatchQuestion {
  readonly apply: number;
  readonly rinse: number;
  readonly leastDwell: number;
  readonly mostDwell: number;
  /** Scrubbing of the whole team on an area, min/m2. */
  readonly scrub: number;
  readonly leastPatch: number;
  readonly mostPatch: number;
}

/**
 * The largest patch at rates that nobody paces, and its wait. Applied at rate a, scrubbed s and rinsed at rate r in the
 * same order, the point x of a patch A is in contact for A/a + A s + w + x (1/r - 1/a); that is longest and shortest at
 * the two ends, so with m and M the lesser and the greater rate
 * A = min(D / (1/m + s), (D - d) / (1/m - 1/M), most patch) and w = max(0, d - A (1/M + s)) for the window d to D.
 * @param question rates, window and patches
 * @returns the patch, or undefined where no patch of the least area stays within the window
 */
export function largestPatch(question: PatchQuestion): Patch | undefined {
  const { apply, rinse, leastDwell, mostDwell, scrub, leastPatch, mostPatch } = question;
  if (mostDwell < leastDwell) return undefined;
  const slow = Math.min(apply, rinse);
  const fast = Math.max(apply, rinse);
  const byMost = Math.min(mostDwell / (1 / slow + scrub), mostPatch);
  const area = slow === fast ? byMost : Math.min(byMost, (mostDwell - leastDwell) / (1 / slow - 1 / fast));
  if (area <= 0 || area < leastPatch) return undefined;
  const wait = Math.max(0, leastDwell - area * (1 / fast + scrub));
  return {
    area,
    wait,
    firstContact: area / apply + area * scrub + wait,
    lastContact: area * scrub + wait + area / rinse,
  };
}
