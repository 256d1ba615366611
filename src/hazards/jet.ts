import type { ZoneEstimate } from '../estimate/schedule';
import { toBase } from '../quantity/conversions';
import { factors as table, type Factor } from '../rules/factors';
import type { FactorsInForce, MaterialInForce } from '../rules/read-factors';
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
 * The washed material that takes the least pressure, which holds for the whole zone.
 * @param rows the rows of the zone
 * @returns the material, or undefined where every row is masked
 */
export function takesLeastPressure(rows: readonly WallRow[]): MaterialInForce | undefined {
  return rows.reduce<MaterialInForce | undefined>(
    (least, { masked, material }) =>
      masked || (least !== undefined && least.pressure <= material.pressure) ? least : material,
    undefined,
  );
}

/**
 * More pressure at the rinse than a washed wall takes.
 * @param zone the estimate of the zone
 * @param factors the factors in force
 * @returns the washed material that takes the least, where that is less than the pressure set
 */
export function overPressure(zone: ZoneEstimate, factors: FactorsInForce): MaterialInForce | undefined {
  const least = takesLeastPressure(washedRows(zone));
  return least !== undefined && factors.value('nozzle.pressure') > least.pressure ? least : undefined;
}

/** The most pressure at which cleaner is put on, psi as published: the starting value of the factor. */
const published = table.find(({ id }) => id === 'apply.pressure') as Factor;

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
