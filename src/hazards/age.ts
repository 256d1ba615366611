import type { ZoneEstimate } from '../estimate/schedule';
import type { FactorsInForce } from '../rules/read-factors';
import type { WallRow } from '../walls/wall-row';
import { washedRows } from './washed';

/**
 * Masonry that is washed before its mortar has hardened. Source of the limit: the factor `limit.age`.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns the washed rows whose stated age is below the limit
 */
export function tooYoung(zone: ZoneEstimate, factors: FactorsInForce): WallRow[] {
  return washedRows(zone).filter(({ age }) => age > 0 && age < factors.value('limit.age'));
}

/**
 * Masonry whose mortar smears have had time to get hard. Source of the limit: the factor `limit.late`.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns the washed rows whose stated age is above the limit
 */
export function tooOld(zone: ZoneEstimate, factors: FactorsInForce): WallRow[] {
  return washedRows(zone).filter(({ age }) => age > factors.value('limit.late'));
}

/**
 * Masonry whose age nobody stated.
 * @param zone the estimate of the zone
 * @returns the washed rows without an age
 */
export function ageNotStated(zone: ZoneEstimate): WallRow[] {
  return washedRows(zone).filter(({ age }) => age === 0);
}
