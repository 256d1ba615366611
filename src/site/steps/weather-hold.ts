import type { FactorsInForce } from '../../rules/read-factors';
import { factorAmount } from '../amount';
import { tooCold } from '../too-cold';

/**
 * Why no water may go on the wall in the weather of the workbook.
 * @param factors the factors in force
 * @returns the reason, or undefined where the weather allows it
 */
export function weatherHold(factors: FactorsInForce): string | undefined {
  const cold = tooCold(factors);
  return cold === ''
    ? undefined
    : `Too cold: ${cold}. Wait until it is above ${factorAmount('limit.air', factors)} and stays so until the wall is dry, then put the new weather into the factors.`;
}
