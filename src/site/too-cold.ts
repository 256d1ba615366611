import type { FactorsInForce } from '../rules/read-factors';
import { factorAmount } from './amount';

/**
 * Air or face colder than the coldest to wash in.
 * @param factors the factors in force
 * @returns what is too cold, for example `air at 35 °F`; empty where nothing is
 */
export function tooCold(factors: FactorsInForce): string {
  const limit = factors.value('limit.air');
  const cold: string[] = [];
  if (factors.value('weather.air') < limit) cold.push(`air at ${factorAmount('weather.air', factors)}`);
  if (factors.value('weather.surface') < limit)
    cold.push(`face at ${factorAmount('weather.surface', factors)}`);
  return cold.join(', ');
}
