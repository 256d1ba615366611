import type { ZoneEstimate } from '../estimate/schedule';
import { toBase } from '../quantity/conversions';
import { factorRow } from '../rules/factor-row';
import type { FactorsInForce } from '../rules/read-factors';
import type { WallRow } from '../walls/wall-row';
import { isWashed, takesCleaner, washedRows } from './washed';

/** A setting of the nozzle that breaks a limit. */
export interface NozzleHazard {
  readonly setting: 'nozzle.distance' | 'nozzle.angle';
  readonly limit: 'limit.distance' | 'limit.angle';
}

/**
 * A nozzle held closer than the least standoff, or with a fan narrower than the narrowest. Source of the limits: the
 * factors `limit.distance` and `limit.angle`.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns the settings below their limits
 */
export function narrowJet(zone: ZoneEstimate, factors: FactorsInForce): NozzleHazard[] {
  if (!isWashed(zone)) return [];
  const settings: NozzleHazard[] = [
    { setting: 'nozzle.distance', limit: 'limit.distance' },
    { setting: 'nozzle.angle', limit: 'limit.angle' },
  ];
  return settings.filter(({ setting, limit }) => factors.value(setting) < factors.value(limit));
}

/**
 * Walls that take less pressure than the nozzle is set to. Each is rinsed at its own limit, and so priced; the nozzle has
 * to be turned down before it.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns the washed rows concerned
 */
export function overPressure(zone: ZoneEstimate, factors: FactorsInForce): WallRow[] {
  return washedRows(zone).filter(({ material }) => factors.value('nozzle.pressure') > material.pressure);
}

/** The most pressure at which cleaner is put on, psi as published: the starting value of the factor. */
const published = factorRow('apply.pressure');

/**
 * Cleaner put on with more pressure than is published: it is driven into the wall.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns the published most, in kPa, where the pressure set is above it
 */
export function appliedUnderPressure(zone: ZoneEstimate, factors: FactorsInForce): number | undefined {
  const most = toBase(published.value, published.unit);
  return takesCleaner(zone) && factors.value('apply.pressure') > most ? most : undefined;
}
