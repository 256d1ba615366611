import { minutes, squareMetres, type Minutes, type SquareMetres } from '../quantity/quantities';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import { dryingTime } from './drying';

/** The largest area that is washed in one go. */
export interface Patch {
  readonly area: SquareMetres;
  /** Between the end of applying and the start of rinsing. */
  readonly wait: Minutes;
  /** Contact at the point that is applied and rinsed first. */
  readonly firstContact: Minutes;
  /** Contact at the point that is applied and rinsed last. */
  readonly lastContact: Minutes;
}

/**
 * The largest patch, and its wait. Applied at rate a and rinsed at rate r in the same order, the point x is in
 * contact for A/a + w + x (1/r - 1/a); that is longest and shortest at the two ends, so with m and M the lesser and
 * the greater rate A = min(D m, (D - d) / (1/m - 1/M)) and w = max(0, d - A/M) for the contact window d to D.
 * @param apply area covered in a minute, m2/min
 * @param rinse area rinsed in a minute, m2/min
 * @param least least contact d, min
 * @param most most contact D, min
 * @returns the patch, or undefined where no area stays within the window
 */
export function largestPatch(apply: number, rinse: number, least: number, most: number): Patch | undefined {
  if (most < least) return undefined;
  const slow = Math.min(apply, rinse);
  const fast = Math.max(apply, rinse);
  const byMost = most * slow;
  const area = slow === fast ? byMost : Math.min(byMost, (most - least) / (1 / slow - 1 / fast));
  if (area <= 0) return undefined;
  const wait = Math.max(0, least - area / fast);
  return {
    area: squareMetres(area),
    wait: minutes(wait),
    firstContact: minutes(area / apply + wait),
    lastContact: minutes(wait + area / rinse),
  };
}

/**
 * The patch in force: within the dwell, and rinsed before the cleaner dries.
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns the patch, or the reason why there is none
 */
export function patchInForce(factors: FactorsInForce, rec?: Recorder): Patch | { readonly none: string } {
  const least = factors.value('dwell.least');
  const dries = dryingTime(factors, rec);
  const most = Math.min(factors.value('dwell.most'), dries);
  const apply = factors.value('rate.apply');
  const rinse = factors.value('rate.rinse');
  const patch = largestPatch(apply, rinse, least, most);
  if (patch === undefined) {
    const shown = (time: number) => String(Number(time.toPrecision(3)));
    return {
      none:
        most < least
          ? `No contact window: the cleaner dries after ${shown(dries)} min, before its least dwell of ${shown(least)} min. Wait for cooler or calmer weather, shade the wall, or see the label.`
          : `No contact window: least and most dwell are both ${shown(most)} min while applying and rinsing go at different rates. Accepted: a wider dwell, or equal rates.`,
    };
  }
  if (rec) {
    const longest = Number.isFinite(dries) ? 'min(dwell_most, timeToDry)' : 'dwell_most';
    rec.line('longestContact', longest, most, 'minutes', 'longestContact');
    const byWindow =
      '(longestContact - dwell_least) / (1 / min(rate_apply, rate_rinse) - 1 / max(rate_apply, rate_rinse))';
    const byMost = 'longestContact * min(rate_apply, rate_rinse)';
    rec.line('patch', apply === rinse ? byMost : `min(${byMost}, ${byWindow})`, patch.area, 'area', 'patch');
    rec.line(
      'wait',
      'max(0 * dwell_least, dwell_least - patch / max(rate_apply, rate_rinse))',
      patch.wait,
      'minutes',
      'wait',
    );
  }
  return patch;
}
