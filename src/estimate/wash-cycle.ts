import type { FactorsInForce } from '../rules/read-factors';
import { fromBase } from '../quantity/conversions';
import { DIGITS, tidy } from '../quantity/shown-number';
import { show, unitOf } from '../quantity/systems';
import type { RowRecord } from '../trace/recorder';

/** The window of the label, and how a team goes from patch to patch. Minutes and m2. */
export interface CycleRules {
  readonly leastDwell: number;
  readonly mostDwell: number;
  readonly leastPatch: number;
  readonly mostPatch: number;
  readonly change: number;
  readonly leastPasses: number;
  readonly mostPasses: number;
}

/** Team-time on an area, min/m2. */
export interface StepTimes {
  /** To apply. */
  readonly apply: number;
  /** To rinse. */
  readonly rinse: number;
  /** To scrub, all of the team. */
  readonly scrub: number;
}

/** How a face is washed, patch after patch. */
export interface WashCycle {
  /** Times that cleaner is applied, scrubbed and rinsed off; the share beyond a whole number is that of the dirtier patches. */
  readonly passes: number;
  /** m2 */
  readonly patch: number;
  /** Time on an area of the slower of applying and rinsing, min/m2. */
  readonly slower: number;
  /** Time on an area of the quicker one, paced so that no point is rinsed too soon, min/m2. */
  readonly paced: number;
  /** Scrubbing in one pass, min/m2. */
  readonly scrub: number;
  /** Wait after scrubbing a patch, min. */
  readonly wait: number;
  /** Team-time on an area, min/m2. */
  readonly time: number;
}

/**
 * The cycle rules in force.
 * @param factors the factors in force
 * @returns window, patches and passes
 */
export function cycleRules(factors: FactorsInForce): CycleRules {
  return {
    leastDwell: factors.value('dwell.least'),
    mostDwell: factors.value('dwell.most'),
    leastPatch: factors.value('patch.least'),
    mostPatch: factors.value('patch.most'),
    change: factors.value('patch.change'),
    leastPasses: factors.value('cleaner.applications'),
    mostPasses: factors.value('cleaner.mostApplications'),
  };
}

/**
 * The wash of a face, patch after patch: apply, scrub, rinse, move on. With g the slower and q the quicker of applying
 * and rinsing and e the scrubbing of a pass, a patch A takes its last point A (g + e) at the most from cleaner to rinse
 * and its first A (q + e) at the least; the patch is the largest that keeps the maximum dwell, and the quicker step is
 * paced, or the team waits, so that the least is kept too. Scrubbing that does not fit into the window of the smallest
 * patch is done in more passes. An assumption of ours; that the cleaner must not dry is BIA Technical Note 20.
 * @param times team-time of each step on an area
 * @param rules window, patches and passes
 * @returns the cycle; `none` with the factors that stand against it where there is none
 */
export function washCycle(
  { apply, rinse, scrub }: StepTimes,
  rules: CycleRules,
): WashCycle | { readonly none: 'slow' | 'passes'; readonly passes: number } {
  const { leastDwell, mostDwell, leastPatch, mostPatch, change } = rules;
  const slower = Math.max(apply, rinse);
  const quicker = Math.min(apply, rinse);
  // Time for the brush on the smallest patch, within the window.
  const room = mostDwell / leastPatch - slower;
  // Ranges of factors may be drawn so that no window or no patch is left.
  if (!(room > 0) || leastDwell > mostDwell || leastPatch > mostPatch) return { none: 'slow', passes: NaN };
  const passes = Math.max(rules.leastPasses, 1, scrub / room);
  if (passes > rules.mostPasses) return { none: 'passes', passes };
  const ofPass = scrub / passes;
  const byWindow = mostDwell / (slower + ofPass);
  const patch = Math.min(byWindow, mostPatch);
  const paced =
    byWindow <= mostPatch
      ? Math.max(quicker, (leastDwell * (slower + ofPass)) / mostDwell - ofPass)
      : Math.max(quicker, slower - (mostDwell - leastDwell) / patch);
  const wait = byWindow <= mostPatch ? 0 : Math.max(0, leastDwell - patch * (paced + ofPass));
  const time = passes * (slower + paced + wait / patch + change / patch) + scrub;
  return { passes, patch, slower, paced, scrub: ofPass, wait, time };
}

/**
 * Writes the lines of a cycle.
 * @param cycle the cycle
 * @param times what it was worked out from
 * @param rules window, patches and passes
 * @param rec takes down the lines; `applyTime#`, `rinseTime#` and `scrubTime#` have been taken down
 */
export function traceCycle(cycle: WashCycle, times: StepTimes, rules: CycleRules, rec: RowRecord): void {
  const slower = times.apply >= times.rinse ? 'applyTime#' : 'rinseTime#';
  const quicker = times.apply >= times.rinse ? 'rinseTime#' : 'applyTime#';
  const byWindow = rules.mostDwell / (cycle.slower + cycle.scrub) <= rules.mostPatch;
  rec.line('slowerStep', cycle.slower);
  rec.line('washPasses', cycle.passes, { slower });
  rec.line('scrubPass', cycle.scrub);
  rec.line('patch', cycle.patch);
  rec.line(byWindow ? 'pacedByWindow' : 'paced', cycle.paced, { quicker });
  rec.line('wait', cycle.wait, byWindow ? '0 * dwell_least' : undefined);
  rec.line('cycle', cycle.time);
}

/**
 * Why a face cannot be washed with a cleaner, in words.
 * @param none what the cycle lacks
 * @param none.none which rule stands against it
 * @param none.passes the passes that it would take
 * @param wall label of the wall
 * @param rinse time to rinse, min/m2
 * @param factors the factors in force
 * @returns a sentence that names the factors
 */
export function noCycle(
  { none, passes }: { readonly none: 'slow' | 'passes'; readonly passes: number },
  wall: string,
  rinse: number,
  factors: FactorsInForce,
): string {
  const { system } = factors;
  const number = (value: number): string => String(tidy(value, DIGITS.site));
  if (none === 'passes') {
    return `Wall ${wall} would take ${number(passes)} passes of cleaner, more than cleaner.mostApplications, ${number(factors.value('cleaner.mostApplications'))}: its residue does not come off within the dwell. Accepted: a stronger class, a longer dwell.most, a smaller patch.least, more people in team.size, or more passes where the label allows them.`;
  }
  const patch = `${number(show(factors.value('patch.least'), 'area', system))} ${unitOf('area', system)}`;
  const slow = Math.max(1 / factors.value('rate.apply'), rinse) * factors.value('patch.least');
  return `Wall ${wall} has no contact window: on the smallest patch, patch.least ${patch}, applying or rinsing alone takes ${number(fromBase(slow, 'min'))} min, and dwell.most is ${number(factors.value('dwell.most'))} min. Accepted: a smaller patch.least, a longer dwell.most, a quicker rate.apply, or a larger nozzle.number.`;
}
