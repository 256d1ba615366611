import { dryingTime } from '../estimate/drying';
import type { ZoneEstimate } from '../estimate/schedule';
import { isCalcareous } from '../rules/calcareous';
import type { FactorsInForce } from '../rules/read-factors';
import type { WallRow } from '../walls/wall-row';
import { isWashed, rowsUnderAcid, takesCleaner, washedRows } from './washed';

/**
 * Concrete and other calcareous masonry that meets an acid, which a public guide specification rules out.
 * @param zone the estimate of the zone
 * @returns the washed rows concerned
 */
export function acidOnCalcareous(zone: ZoneEstimate): WallRow[] {
  return rowsUnderAcid(zone).filter(({ material }) => isCalcareous(material));
}

/**
 * Light or manganese-colored brick that meets an acid, which can bring out a stain.
 * @param zone the estimate of the zone
 * @returns the washed rows concerned
 */
export function stainUnderAcid(zone: ZoneEstimate): WallRow[] {
  return rowsUnderAcid(zone).filter(({ material }) => material.group === 'light brick');
}

/**
 * Cleaner that is dry before its longest dwell is over.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns when it is dry, min, where that is too early
 */
export function driesEarly(zone: ZoneEstimate, factors: FactorsInForce): number | undefined {
  const dries = dryingTime(factors);
  return takesCleaner(zone) && dries < factors.value('dwell.most') ? dries : undefined;
}

/**
 * Cleaner that is dry even before its minimum dwell: without misting it would never have worked long enough.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns when it is dry, min, where that is too soon
 */
export function driesTooSoon(zone: ZoneEstimate, factors: FactorsInForce): number | undefined {
  const dries = driesEarly(zone, factors);
  return dries !== undefined && dries < factors.value('dwell.least') ? dries : undefined;
}

/**
 * No sample area has been washed and inspected, or too small a one.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns true where the area stated is below the factor `sample.least`
 */
export function sampleMissing(zone: ZoneEstimate, factors: FactorsInForce): boolean {
  return isWashed(zone) && factors.value('sample.area') < factors.value('sample.least');
}

/**
 * Glass or metal that is washed along with the wall.
 * @param zone the estimate of the zone
 * @returns the washed rows concerned
 */
export function unmaskedGlassOrMetal(zone: ZoneEstimate): WallRow[] {
  return washedRows(zone).filter(({ material }) => material.group === 'glass' || material.group === 'metal');
}
