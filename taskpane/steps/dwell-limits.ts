import { dryingTime } from '../../src/estimate/drying';
import type { ZoneEstimate } from '../../src/estimate/schedule';
import { constants } from '../../src/rules/constants';
import type { FactorsInForce } from '../../src/rules/read-factors';
import type { DwellLimits } from '../../src/site/dwell-clock';
import { patchTimes } from '../../src/site/patch-times';

/**
 * What the dwell clock of a zone goes by. Where its walls are not washed alike, each has its own times in the steps: the
 * clock tells the first and the last start, and counts the last spot by the wall where it comes first.
 * @param zone its estimate
 * @param factors the factors in force
 * @returns least and maximum dwell, time to dry, when the plan starts to rinse, and when the last point has to be rinsed
 */
export function dwellLimits(zone: ZoneEstimate, factors: FactorsInForce): DwellLimits {
  const times = zone.washed.flatMap(({ how: { cycle } }) => (cycle ? [patchTimes(cycle, factors)] : []));
  const starts = times.map(({ rinseAt }) => rinseAt);
  const [first, last] = [Math.min(...starts), Math.max(...starts)];
  const alike = last - first <= constants.guard.value * last;
  return {
    least: factors.value('dwell.least'),
    most: factors.value('dwell.most'),
    dries: dryingTime(factors),
    rinseAt: times.length === 0 ? undefined : first,
    rinseAtMost: times.length === 0 || alike ? undefined : last,
    lastBy: times.length === 0 ? undefined : Math.min(...times.map(({ lastBy }) => lastBy)),
  };
}
