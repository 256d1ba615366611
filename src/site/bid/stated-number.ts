const FINE_BELOW = 10;
const STEPS_OF_ONE = 10;

/**
 * A number as a bid states it: whole, one decimal below ten. A bid is added up and read aloud, so that significant
 * digits, which leave 12,300 of 12,345, are not for it.
 * @param shown the number in the shown unit
 * @returns the number
 */
export function statedNumber(shown: number): number {
  const steps = Math.abs(shown) < FINE_BELOW ? STEPS_OF_ONE : 1;
  return Math.round(shown * steps) / steps;
}
