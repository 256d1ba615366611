import { comparable } from '../quantity/cell';
import { didYouMean, namesListed } from '../quantity/did-you-mean';
import { ended, nothingHere } from '../quantity/problem';
import { rowsBelow } from './rinse-paths';
import type { WallRow } from './wall-row';

/** Walls that are washed with one cleaner. */
export interface Zone {
  readonly name: string;
  readonly rows: readonly WallRow[];
  /** Unmasked rows of other zones that the zone's rinse runs over; its cleaner may not harm them either. */
  readonly below: readonly WallRow[];
  /**
   * The rows put together by groups, where they were read so: one row with the sums for all that differ in nothing but
   * label, age and the numbers that add up. A copy of a zone with other rows has none.
   */
  readonly groups?: readonly WallRow[];
}

/**
 * Sorts the rows into zones, in the order in which the zones first appear.
 * @param rows the wall rows
 * @param options how the rows are looked at
 * @param options.midway the rows stand between two states: rinse that leads nowhere or in a circle is no mistake then
 * @returns the zones
 * @throws {WashdownError} when zones receive each other's rinse in a circle, or one that does not exist
 */
export function zonesOf(rows: readonly WallRow[], options: { midway?: boolean } = {}): Zone[] {
  const zones = new Map<string, WallRow[]>();
  for (const row of rows) {
    const known = zones.get(row.zone);
    if (known) known.push(row);
    else zones.set(row.zone, [row]);
  }
  const below = rowsBelow(rows, options);
  return [...zones].map(([name, zoneRows]) => ({ name, rows: zoneRows, below: below.get(name) ?? [] }));
}

/**
 * The zones that a question is about.
 * @param zones all zones
 * @param name name of one zone, case and spacing ignored; empty for the whole job
 * @returns that zone, or all
 * @throws {WashdownError} when no wall is in the zone, or there is no wall at all
 */
export function selectZones(zones: readonly Zone[], name: string): readonly Zone[] {
  if (zones.length === 0) throw nothingHere('There is no wall in the range: every row is blank.');
  if (name === '') return zones;
  const found = zones.filter((zone) => comparable(zone.name) === comparable(name));
  if (found.length > 0) return found;
  const names = zones.map((zone) => zone.name);
  const accepted = `${namesListed('a zone', names)}${didYouMean(name, names, 1)}`;
  throw nothingHere(`No wall is in the zone "${name}". Accepted: ${ended(accepted)}`);
}
