import type { FactorsInForce } from '../rules/read-factors';
import { factorAmount } from './amount';

/**
 * What of the nozzle would harm joints: set nearer than the least distance, or narrower than the narrowest fan.
 * @param factors the factors in force
 * @returns for example `4 in off, fan of 15°`; empty where neither is
 */
export function narrowJet(factors: FactorsInForce): string {
  const narrow: string[] = [];
  if (factors.value('nozzle.distance') < factors.value('limit.distance'))
    narrow.push(`${factorAmount('nozzle.distance', factors)} off`);
  if (factors.value('nozzle.angle') < factors.value('limit.angle'))
    narrow.push(`fan of ${factorAmount('nozzle.angle', factors)}`);
  return narrow.join(', ');
}
