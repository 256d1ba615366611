import { withUnit } from './shown-unit';
import { show, unitOf, type Kind, type System } from './systems';

/**
 * How many digits a number is shown with, by what its reader does with it. Beside these stand money, with its cents, and
 * what a bid states, whole (`stated-number.ts`).
 */
export const DIGITS = {
  /** Typed into a cell: a bound, a value converted. */
  typed: 6,
  /** Read in a sentence of the office. */
  sentence: 4,
  /** Read out on site. */
  site: 3,
} as const;

/**
 * A number without the digits that nobody reads, or that the conversion of units touches. The one rounding for display.
 * @param value the number
 * @param digits how many are left
 * @returns the number
 */
export function tidy(value: number, digits: number): number {
  return Number(value.toPrecision(digits));
}

/**
 * A base value as a number in the user's system.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @param digits how many are shown
 * @returns the number in the shown unit, without the unit
 */
export function shownNumber(value: number, kind: Kind, system: System, digits: number): string {
  return String(tidy(show(value, kind, system), digits));
}

/**
 * A base value with its unit in the user's system.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @param digits how many are shown
 * @returns for example `37.2 m²`
 */
export function shownAmount(value: number, kind: Kind, system: System, digits: number): string {
  return withUnit(shownNumber(value, kind, system, digits), unitOf(kind, system));
}
