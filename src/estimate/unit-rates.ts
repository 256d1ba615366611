import type { Quantities } from './quantities';

/** The two numbers that an estimator checks first; NaN where nothing is washed, or no hours are spent. */
export interface UnitRates {
  /** Money for m2 of washed area. */
  readonly pricePerArea: number;
  /** m2 of washed area for a labor-hour. */
  readonly areaPerLaborHour: number;
}

/**
 * Price per area, and area per labor-hour.
 * @param totals the quantities of a zone or a job, in base units
 * @param price the price to set against the area, where it is another than the unrounded one
 * @returns the rates, in base units
 */
export function unitRates(
  { price: unrounded, washedArea, laborHours }: Pick<Quantities, 'price' | 'washedArea' | 'laborHours'>,
  price = unrounded,
): UnitRates {
  return {
    pricePerArea: washedArea > 0 ? price / washedArea : NaN,
    areaPerLaborHour: washedArea > 0 && laborHours > 0 ? washedArea / laborHours : NaN,
  };
}
