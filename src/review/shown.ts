import { DIGITS, shownAmount } from '../quantity/shown-number';
import type { Kind } from '../quantity/systems';
import { factorRow } from '../rules/factor-row';
import type { FactorId } from '../rules/factors';
import type { FactorsInForce } from '../rules/read-factors';

/**
 * A factor's value with its unit, for a sentence.
 * @param factorsInForce the factors in force
 * @param id the factor
 * @returns for example `400 psi`
 */
export function shownFactor(factorsInForce: FactorsInForce, id: FactorId): string {
  return shownValue(factorsInForce.value(id), factorRow(id).kind, factorsInForce);
}

/**
 * A base value with its unit, for a sentence.
 * @param value in the base unit
 * @param kind what it measures
 * @param factorsInForce the factors in force, for their display system
 * @returns for example `37.2 m²`
 */
export function shownValue(value: number, kind: Kind, factorsInForce: FactorsInForce): string {
  return shownAmount(value, kind, factorsInForce.system, DIGITS.sentence);
}
