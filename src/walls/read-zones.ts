import type { FactorsInForce } from '../rules/read-factors';
import { readGroups, readWalls } from './read-walls';
import { ZoneOfGroups } from './zone-of-groups';
import { zonesOf, type Zone } from './zones';

/**
 * Reads a headed range into zones, in the order in which they first appear. A long table is not kept row by row.
 * @param range its rows, the first being the headings; it must stay as it is while the zones are in use
 * @param factors the factors in force
 * @param headings optional rows (our column, their heading)
 * @returns the zones
 * @throws {WashdownError} with every cell that cannot be read, or rinse that leads nowhere or in a circle
 */
export function readZones(range: unknown, factors: FactorsInForce, headings?: unknown): readonly Zone[] {
  const groups = readGroups(range, factors, headings);
  const rowByRow = once(() => zonesOf(readWalls(range, factors, headings)));
  // What the rinse runs over is found row by row.
  if (groups.some(({ receives }) => receives !== '')) return rowByRow();
  return zonesOf(groups).map((zone, index) => new ZoneOfGroups(zone, () => rowByRow()[index]?.rows ?? []));
}

function once<Value extends object>(work: () => Value): () => Value {
  let done: Value | undefined;
  return () => (done ??= work());
}
