import { DIGITS, tidy } from '../quantity/shown-number';
import { withUnit } from '../quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../quantity/systems';
import { factorRow } from '../rules/factor-row';
import type { FactorId } from '../rules/factors';
import type { FactorsInForce } from '../rules/read-factors';

const WHOLE_FROM = 100;

/**
 * A number as it is read out on site: whole from a hundred up, three digits below. Not cut to digits above that: nobody
 * measures off 1,240 ft2 where 1,236 was estimated.
 * @param value the number as shown
 * @returns for example `1236` or `4.44`
 */
export function rounded(value: number): string {
  return String(Math.abs(value) >= WHOLE_FROM ? Math.round(value) : tidy(value, DIGITS.site));
}

/**
 * A base value with its unit in the user's system.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @returns for example `37.2 m²`
 */
export function amount(value: number, kind: Kind, system: System): string {
  return withUnit(rounded(show(value, kind, system)), unitOf(kind, system));
}

/**
 * An amount as it is measured off on site: less than a gallon, or less than a liter, is told in fluid ounces or
 * milliliters too.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @returns for example `0.274 gal = 35.1 fl oz`
 */
export function siteAmount(value: number, kind: Kind, system: System): string {
  const large = amount(value, kind, system);
  const isSmall = kind === 'volume' && value > 0 && show(value, kind, system) < 1;
  return isSmall ? `${large} = ${amount(value, 'smallVolume', system)}` : large;
}

/**
 * A factor in force with its unit.
 * @param id the factor
 * @param factors the factors in force
 * @returns for example `400 psi`
 */
export function factorAmount(id: FactorId, factors: FactorsInForce): string {
  return amount(factors.value(id), factorRow(id).kind, factors.system);
}
