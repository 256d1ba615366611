import type { ZoneEstimate } from '../../estimate/schedule';
import { tooCold, tooHot } from '../../hazards/weather';
import type { FactorsInForce } from '../../rules/read-factors';
import { factorAmount } from '../amount';
import { weatherHazardWords } from '../hazard-words';

/**
 * Why no water may go on a dry wall in the weather of the workbook. It never holds the rinse of a cleaner.
 * @param zone the zone
 * @param factors the factors in force
 * @returns the reason, or undefined where it is warm enough
 */
export function coldHold(zone: ZoneEstimate, factors: FactorsInForce): string | undefined {
  const cold = tooCold(zone, factors);
  return cold.length === 0
    ? undefined
    : `Too cold: ${weatherHazardWords(cold, factors)}. Wait until it is above ${factorAmount('limit.air', factors)} and stays so until the wall is dry, then enter the new weather in the factors.`;
}

/**
 * Why no cleaner may go on the wall in the weather of the workbook.
 * @param zone the zone
 * @param factors the factors in force
 * @returns the reason, or undefined where the weather allows it
 */
export function applyHold(zone: ZoneEstimate, factors: FactorsInForce): string | undefined {
  const hot = tooHot(zone, factors);
  return (
    coldHold(zone, factors) ??
    (hot.length === 0
      ? undefined
      : `Too hot: ${weatherHazardWords(hot, factors)}. Wait until it is below ${factorAmount('limit.surface', factors)}, then enter the new weather in the factors.`)
  );
}
