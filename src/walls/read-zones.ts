import type { FactorsInForce } from '../rules/read-factors';
import { readKinds, readWalls } from './read-walls';
import { zonesOf, type Zone } from './zones';

/**
 * Reads a headed range into zones, in the order in which they first appear. A long table is not kept row by row.
 * @param range its rows, the first being the headings; it must stay as it is while the zones are in use
 * @param factors the factors in force
 * @param headings optional rows (our column, their heading)
 * @param washDate day of the wash, as the spreadsheet counts days; a wall's date can only be read with it
 * @returns the zones
 * @throws {WashdownError} with every cell that cannot be read, or rinse that leads nowhere or in a circle
 */
export function readZones(
  range: unknown,
  factors: FactorsInForce,
  headings?: unknown,
  washDate?: number,
): readonly Zone[] {
  let whole: Zone[] | undefined;
  const rowByRow = (): Zone[] => (whole ??= zonesOf(readWalls(range, factors, headings, washDate)));
  const kinds = readKinds(range, factors, headings, washDate);
  // What the rinse runs over is found row by row.
  if (kinds.some(({ receives }) => receives !== '')) return rowByRow();
  const zones = zonesOf(kinds);
  zones.forEach((zone, index) => {
    Object.defineProperties(zone, {
      // Not enumerable: a copy of the zone with other rows must not take its kinds along.
      kinds: { value: zone.rows },
      rows: { get: () => rowByRow()[index]?.rows },
    });
  });
  return zones;
}
