import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';
import { hoursOf, type Crew } from './crew';
import type { Masking } from './masking';

/** The rates of putting masking on and taking it off. */
export interface MaskRates {
  /** m2 per labor-hour */
  readonly on: number;
  /** m2 per labor-hour */
  readonly off: number;
  /** min each */
  readonly fixtureCover: number;
}

/**
 * The rates in force.
 * @param factors the factors in force
 * @returns rates on and off, and the time of a fixture
 */
export function maskRates(factors: FactorsInForce): MaskRates {
  return {
    on: factors.value('rate.maskOn'),
    off: factors.value('rate.maskOff'),
    fixtureCover: factors.value('fixture.cover'),
  };
}

/**
 * Labor-hours to put the masking of a row on.
 * @param mask what is masked
 * @param rates the rates in force
 * @param slowed how access slows the work, a ratio
 * @param crew the crew in force
 * @param rec takes down the line; `access#` has been taken down
 * @returns labor-hours
 */
export function maskOnHours(
  mask: Masking,
  rates: MaskRates,
  slowed: number,
  crew: Crew,
  rec?: RowRecord,
): number {
  const hour = constants.minPerHour.value;
  const net =
    (mask.lapped / rates.on) * hour + mask.fixtures * rates.fixtureCover * constants.onePerson.value;
  const hours = hoursOf(net * slowed, crew);
  rec?.line('maskOn', hours);
  return hours;
}

/**
 * Labor-hours to take the masking of a row off.
 * @param mask what is masked
 * @param rates the rates in force
 * @param slowed how access slows the work, a ratio
 * @param crew the crew in force
 * @param rec takes down the line; `access#` has been taken down
 * @returns labor-hours
 */
export function maskOffHours(
  mask: Masking,
  rates: MaskRates,
  slowed: number,
  crew: Crew,
  rec?: RowRecord,
): number {
  const hours = hoursOf((mask.area / rates.off) * constants.minPerHour.value * slowed, crew);
  rec?.line('maskOff', hours);
  return hours;
}
