import { withUnit } from '../../quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../../quantity/systems';

const grouped = new Intl.NumberFormat('en-US', { maximumFractionDigits: 0 });
const fine = new Intl.NumberFormat('en-US', { maximumFractionDigits: 1 });
const FINE_BELOW = 10;

/**
 * A quantity as a bid states it: whole, with commas; one decimal below ten.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @returns for example `1,200 ft²`
 */
export function amountInWords(value: number, kind: Kind, system: System): string {
  const shown = show(value, kind, system);
  const number = (Math.abs(shown) < FINE_BELOW ? fine : grouped).format(shown);
  return withUnit(number, unitOf(kind, system));
}
