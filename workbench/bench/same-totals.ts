import { addedQuantities } from '../../src/estimate/quantities';
import type { ZoneTotals } from './bare-loop';

const RELATIVE = 1e-9;
const headings = ['Class', ...Object.values(addedQuantities).map(({ heading }) => heading)];

/**
 * Makes sure that something compared with SCHEDULE comes to what SCHEDULE comes to; it would prove nothing otherwise.
 * @param schedule what SCHEDULE spilled, with prices
 * @param totals the totals to compare, by zone and heading
 * @param whose what they are, for the message
 * @throws {Error} where a zone or a quantity is missing, or differs by more than the digits that adding up leaves
 */
export function expectSameTotals(
  schedule: readonly (readonly unknown[])[],
  totals: ReadonlyMap<string, ZoneTotals>,
  whose: string,
): void {
  const [header = [], ...zones] = schedule;
  const named = header.map((cell) => String(cell).replace(/ \([^)]*\)$/, ''));
  if (zones.length !== totals.size) throw new Error(`${whose}: ${totals.size} zones, not ${zones.length}`);
  for (const zone of zones) {
    const name = String(zone[0]);
    for (const heading of headings) {
      const expected = zone[named.indexOf(heading)];
      const value = totals.get(name)?.[heading];
      const isSame =
        typeof expected === 'number' &&
        typeof value === 'number' &&
        Math.abs(value - expected) <= RELATIVE * Math.abs(expected);
      if (!isSame) throw new Error(`${whose}, ${name}, ${heading}: ${value}, not ${String(expected)}`);
    }
  }
}
