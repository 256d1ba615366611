import type { Quantities } from '../src/estimate/quantities';
import { unitRates } from '../src/estimate/unit-rates';
import type { Kind, System } from '../src/quantity/systems';
import { heading, notAvailable, quantityCell } from './cells';
import type { CellValue } from './worksheet-function';

/** Why there is no number for an area: protected rows alone are washed, or none. */
export const NO_AREA = 'No masonry is washed here.';

/**
 * The headings of the two numbers that stand beside every price.
 * @param priced whether there is a price
 * @param system the display system
 * @returns price per area where there is one, and area per labor-hour
 */
export function rateHeadings(priced: boolean, system: System): string[] {
  return [
    ...(priced ? [heading('Price per area', 'moneyPerArea', system)] : []),
    heading('Area per labor-hour', 'areaPerLaborHour', system),
  ];
}

/**
 * The two numbers that stand beside every price.
 * @param totals the quantities of a zone or a job
 * @param priced whether there is a price
 * @param system the display system
 * @param finding why they are NaN
 * @returns price per area where there is one, and area per labor-hour
 */
export function rateCells(
  totals: Readonly<Quantities>,
  priced: boolean,
  system: System,
  finding: string | undefined,
): CellValue[] {
  const { pricePerArea, areaPerLaborHour } = unitRates(totals);
  const cell = (value: number, kind: Kind): CellValue =>
    totals.washedArea > 0 ? quantityCell(value, kind, system, finding) : notAvailable(NO_AREA);
  return [
    ...(priced ? [cell(pricePerArea, 'moneyPerArea')] : []),
    cell(areaPerLaborHour, 'areaPerLaborHour'),
  ];
}
