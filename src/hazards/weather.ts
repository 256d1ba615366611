import type { ZoneEstimate } from '../estimate/schedule';
import type { FactorsInForce } from '../rules/read-factors';
import { isWashed, takesCleaner } from './washed';

/** A reading of the weather that breaks a limit. */
export interface WeatherHazard {
  readonly reading: 'weather.air' | 'weather.surface' | 'weather.wind';
  readonly limit: 'limit.air' | 'limit.surface' | 'limit.wind';
}

/**
 * Air or face colder than the coldest to wash in: a saturated wall that freezes spalls. Source of the limit: the factor
 * `limit.air`.
 * @param zone the estimate of the zone; nothing is too cold for a zone that is not washed
 * @param factors the factors in force
 * @returns the readings below the limit
 */
export function tooCold(zone: ZoneEstimate, factors: FactorsInForce): WeatherHazard[] {
  if (!isWashed(zone)) return [];
  return (['weather.air', 'weather.surface'] as const)
    .filter((reading) => factors.value(reading) < factors.value('limit.air'))
    .map((reading) => ({ reading, limit: 'limit.air' }));
}

/**
 * A face as hot as the limit, or hotter: cleaner dries on it. Source of the limit: the factor `limit.surface`.
 * @param zone the estimate of the zone; clear water may dry
 * @param factors the factors in force
 * @returns the reading at or above the limit
 */
export function tooHot(zone: ZoneEstimate, factors: FactorsInForce): WeatherHazard[] {
  return takesCleaner(zone) && factors.value('weather.surface') >= factors.value('limit.surface')
    ? [{ reading: 'weather.surface', limit: 'limit.surface' }]
    : [];
}

/**
 * More wind than cleaner may be sprayed in: it drifts onto people, cars and planting. Source of the limit: the factor
 * `limit.wind`.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns the reading above the limit
 */
export function tooWindy(zone: ZoneEstimate, factors: FactorsInForce): WeatherHazard[] {
  return takesCleaner(zone) && factors.value('weather.wind') > factors.value('limit.wind')
    ? [{ reading: 'weather.wind', limit: 'limit.wind' }]
    : [];
}
