import { withUnit } from '../../quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../../quantity/systems';
import { statedNumber } from './stated-number';

const grouped = new Intl.NumberFormat('en-US');

/**
 * A quantity as a bid states it, with commas.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @returns for example `1,200 ft²`
 */
export function amountInWords(value: number, kind: Kind, system: System): string {
  return withUnit(grouped.format(statedNumber(show(value, kind, system))), unitOf(kind, system));
}
