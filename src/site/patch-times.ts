import type { WashCycle } from '../estimate/wash-cycle';
import type { FactorsInForce } from '../rules/read-factors';
import { constants } from '../rules/constants';
import type { SiteWash } from './washes';

/** How one patch is washed in one pass: areas a minute in m2/min, times in min on a clock that starts with the first stroke. */
export interface PatchTimes {
  readonly applyPace: number;
  readonly rinsePace: number;
  /** True where that step is held back so that no point is rinsed too soon. */
  readonly applyPaced: boolean;
  readonly rinsePaced: boolean;
  /** Minutes that each takes. */
  readonly applying: number;
  readonly scrubbing: number;
  readonly wait: number;
  /** Start of rinsing. */
  readonly rinseAt: number;
  /** End of rinsing as planned. */
  readonly rinsed: number;
  /** The last point has to be rinsed by then: it is applied last, and then has its maximum dwell. */
  readonly lastBy: number;
}

/**
 * How one patch of a wall is washed in one pass.
 * @param cycle the cycle of the wall
 * @param factors the factors in force
 * @returns paces and times
 */
export function patchTimes(cycle: WashCycle, factors: FactorsInForce): PatchTimes {
  const { patch, slower, paced, scrub, wait } = cycle;
  const own = 1 / factors.value('rate.apply');
  const applySlower = own >= slower * (1 - constants.guard.value);
  const apply = applySlower ? slower : paced;
  const rinse = applySlower ? paced : slower;
  const rinseAt = patch * (apply + scrub) + wait;
  return {
    applyPace: 1 / apply,
    rinsePace: 1 / rinse,
    applyPaced: apply > own * (1 + constants.guard.value),
    rinsePaced: applySlower,
    applying: patch * apply,
    scrubbing: patch * scrub,
    wait,
    rinseAt,
    rinsed: rinseAt + patch * rinse,
    lastBy: patch * apply + factors.value('dwell.most'),
  };
}

/**
 * Patches to wash, each as often as its passes; the last of all is not filled.
 * @param washes the washes of a zone
 * @returns a whole number
 */
export function patchesToWash(washes: readonly SiteWash[]): number {
  const all = washes
    .flatMap(({ walls }) => walls)
    .reduce((sum, { area, how: { cycle } }) => sum + (cycle ? (area / cycle.patch) * cycle.passes : 0), 0);
  return all > 0 ? Math.ceil(all - constants.guard.value) : 0;
}
