import { bidPrice } from '../../src/estimate/price';
import type { Quantities } from '../../src/estimate/quantities';
import { unitRates } from '../../src/estimate/unit-rates';
import { perUnit, shownUnit } from '../../src/quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../../src/quantity/systems';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { amount, rounded } from '../../src/site/amount';
import { priceText } from '../shared/price-text';

const NO_VALUE = 'no value';
const NO_CHANGE = 'no change';
// What sums leave over where nothing has changed.
const NOTHING = 1e-6;

/**
 * A quantity with its unit; a price without one, since the money is the user's.
 * @param value in the base unit; NaN where there is none
 * @param kind what it measures
 * @param system the display system
 * @returns for example `37.2 m²`
 */
export function quantityText(value: number, kind: Kind, system: System): string {
  if (kind === 'money') return priceText(value);
  return Number.isNaN(value) ? NO_VALUE : amount(value, kind, system);
}

/**
 * A cost under a heading that names it: a price or labor-hours, without a unit.
 * @param value the cost; NaN where there is none
 * @param kind which of the two
 * @returns for example `1,234.50` or `30.7`
 */
export function costText(value: number, kind: 'money' | 'laborHours'): string {
  if (kind === 'money') return priceText(value);
  return Number.isNaN(value) ? NO_VALUE : rounded(value);
}

/**
 * A difference with its sign and unit.
 * @param value in the base unit; NaN where there is none
 * @param kind what it measures
 * @param system the display system
 * @returns for example `+37.2 m²`
 */
export function differenceText(value: number, kind: Kind, system: System): string {
  if (Number.isNaN(value)) return NO_VALUE;
  const isNothing = kind === 'money' ? bidPrice(value) === 0 : Math.abs(show(value, kind, system)) < NOTHING;
  if (isNothing) return NO_CHANGE;
  return `${value < 0 ? '−' : '+'}${quantityText(Math.abs(value), kind, system)}`;
}

/**
 * What an alternate adds or deducts, with its sign and the word for it.
 * @param value the amount; negative for a deduct, NaN where there is none
 * @param kind a price or labor-hours
 * @returns for example `deduct −1,234.50`
 */
export function addedText(value: number, kind: 'money' | 'laborHours'): string {
  if (Number.isNaN(value)) return NO_VALUE;
  const isNothing = kind === 'money' ? bidPrice(value) === 0 : Math.abs(value) < NOTHING;
  if (isNothing) return NO_CHANGE;
  const unit = kind === 'money' ? '' : ' labor-hours';
  return `${value < 0 ? 'deduct −' : 'add +'}${costText(Math.abs(value), kind)}${unit}`;
}

/**
 * The two numbers that stand beside every price.
 * @param totals the quantities of a zone or a job
 * @param factors the factors in force
 * @param price the price as it is bid
 * @returns for example `4.21 per ft², 38.4 ft² per labor-hour`; empty where nothing is washed
 */
export function ratesText(totals: Quantities, { system }: FactorsInForce, price = totals.price): string {
  const { pricePerArea, areaPerLaborHour } = unitRates(totals, price);
  const per = perUnit(unitOf('moneyPerArea', system)) ?? '';
  return [
    ...(Number.isNaN(pricePerArea)
      ? []
      : [`${priceText(show(pricePerArea, 'moneyPerArea', system))} ${per}`]),
    ...(Number.isNaN(areaPerLaborHour)
      ? []
      : [
          `${rounded(show(areaPerLaborHour, 'areaPerLaborHour', system))} ${shownUnit(unitOf('area', system))} per labor-hour`,
        ]),
  ].join(', ');
}
