import { comparable } from '../quantity/cell';
import { didYouMean, namesListed } from '../quantity/did-you-mean';
import { badInput, cellProblem, WashdownError } from '../quantity/problem';
import { columns } from './columns';
import type { WallRow } from './wall-row';

/**
 * The unmasked rows of other zones that the rinse of each zone runs over: those that state that they receive it, and,
 * on its way further down, those that receive the rinse of a zone that it reaches.
 * @param rows all wall rows
 * @param options how the rows are looked at
 * @param options.midway the rows stand between two states: what only one of the two would hold is no mistake then, so a
 * zone that is not there sends no rinse, and a circle is gone round once
 * @returns by the name of the upper zone, the rows below that its cleaner wets; a zone that wets none is left out
 * @throws {WashdownError} when a row receives a zone that does not exist, or zones receive each other in a circle
 */
export function rowsBelow(
  rows: readonly WallRow[],
  { midway = false }: { midway?: boolean } = {},
): ReadonlyMap<string, readonly WallRow[]> {
  const receivers = new Map<string, WallRow[]>();
  if (rows.every(({ receives }) => receives === '')) return receivers;
  const zones = new Map(rows.map(({ zone }) => [comparable(zone), zone]));
  for (const row of rows) {
    if (row.receives === '') continue;
    const upper = zones.get(comparable(row.receives));
    if (upper === undefined) {
      if (midway) continue;
      const names = [...zones.values()];
      const where = { row: row.row, label: row.wall, column: columns.receives.name };
      throw new WashdownError([
        cellProblem(
          where,
          `"${row.receives}"`,
          `${namesListed('a zone', names)}, or blank${didYouMean(row.receives, names, 1)}`,
        ),
      ]);
    }
    receivers.set(upper, [...(receivers.get(upper) ?? []), row]);
  }
  const below = new Map<string, readonly WallRow[]>();
  for (const zone of receivers.keys()) below.set(zone, reach(zone, receivers, midway));
  return below;
}

function reach(from: string, receivers: ReadonlyMap<string, readonly WallRow[]>, midway: boolean): WallRow[] {
  const reached = new Set<WallRow>();
  const done = new Set<string>();
  const visit = (zone: string, path: readonly string[]): void => {
    if (path.includes(zone)) {
      if (midway) return;
      const circle = [...path.slice(path.indexOf(zone)), zone].join(' -> ');
      throw badInput(
        `Zones receive each other's rinse in a circle: ${circle}. Accepted: rinse that runs downward only.`,
      );
    }
    // Many rows of one zone receive the same rinse; walking on from each would take for ever.
    if (done.has(zone)) return;
    for (const row of receivers.get(zone) ?? []) {
      reached.add(row);
      visit(row.zone, [...path, zone]);
    }
    done.add(zone);
  };
  visit(from, []);
  return [...reached].filter((row) => !row.masked);
}
