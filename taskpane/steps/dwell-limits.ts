import { dryingTime } from '../../src/estimate/drying';
import type { ZoneEstimate } from '../../src/estimate/schedule';
import type { FactorsInForce } from '../../src/rules/read-factors';
import type { DwellLimits } from '../../src/site/dwell-clock';

/**
 * What the dwell clock of a zone goes by.
 * @param zone its estimate
 * @param factors the factors in force
 * @returns least and most dwell, time to dry, and when the plan starts to rinse
 */
export function dwellLimits(zone: ZoneEstimate, factors: FactorsInForce): DwellLimits {
  return {
    least: factors.value('dwell.least'),
    most: factors.value('dwell.most'),
    dries: dryingTime(factors),
    rinseAt: zone.patch?.firstContact,
  };
}
