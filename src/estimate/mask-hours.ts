import { crewHours, type CrewHours } from '../quantity/quantities';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { Masking } from './masking';

/** The rates of putting masking on and taking it off. */
export interface MaskRates {
  /** m2 a crew-hour */
  readonly on: number;
  /** m2 a crew-hour */
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
 * Crew-hours to put the masking of a row on.
 * @param mask what is masked
 * @param rates the rates in force
 * @param rec takes down the line
 * @returns crew-hours
 */
export function maskOnHours(mask: Masking, rates: MaskRates, rec?: Recorder): CrewHours {
  const byFixture =
    (mask.fixtures * rates.fixtureCover * constants.onePerson.value) / constants.minPerHour.value;
  const hours = mask.lapped / rates.on + byFixture;
  const expression =
    '(masked# + lapArea#) / rate_maskOn + fixtures# * fixture_cover * onePerson / minPerHour';
  rec?.line('maskHours#', expression, hours, 'crewHours', 'maskOn');
  return crewHours(hours);
}

/**
 * Crew-hours to take the masking of a row off.
 * @param mask what is masked
 * @param rates the rates in force
 * @param rec takes down the line
 * @returns crew-hours
 */
export function maskOffHours(mask: Masking, rates: MaskRates, rec?: Recorder): CrewHours {
  const hours = mask.area / rates.off;
  rec?.line('unmaskHours#', 'maskingArea# / rate_maskOff', hours, 'crewHours', 'maskOff');
  return crewHours(hours);
}
