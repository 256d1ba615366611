import type { NozzleHazard } from '../hazards/jet';
import type { WeatherHazard } from '../hazards/weather';
import type { FactorsInForce } from '../rules/read-factors';
import { factorAmount } from './amount';

const READINGS: Readonly<Record<WeatherHazard['reading'], string>> = {
  'weather.air': 'air at',
  'weather.surface': 'face at',
  'weather.wind': 'wind of',
};

/**
 * Readings of the weather that break a limit, in words.
 * @param found the readings
 * @param factors the factors in force
 * @returns for example `air at 35 °F`; empty where there are none
 */
export function weatherHazardWords(found: readonly WeatherHazard[], factors: FactorsInForce): string {
  return found.map(({ reading }) => `${READINGS[reading]} ${factorAmount(reading, factors)}`).join(', ');
}

/**
 * Settings of the nozzle that break a limit, in words.
 * @param found the settings
 * @param factors the factors in force
 * @returns for example `4 in off, fan of 15°`; empty where there are none
 */
export function nozzleHazardWords(found: readonly NozzleHazard[], factors: FactorsInForce): string {
  return found
    .map(({ setting }) => {
      const set = factorAmount(setting, factors);
      return setting === 'nozzle.distance' ? `${set} off` : `fan of ${set}`;
    })
    .join(', ');
}
