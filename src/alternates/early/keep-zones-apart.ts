import { comparable } from '../../quantity/cell';
import type { WallRow } from '../../walls/wall-row';
import { setting, type EarlyChoice } from './early-choice';

/**
 * The rinse of each zone kept off each other zone that it runs over.
 * @param bid the bid as it is
 * @returns the alternates, in the order of the rows that receive rinse
 */
export const keepZonesApart: EarlyChoice = ({ rows, zones }) => {
  const asked = new Set(zones.map(({ zone }) => comparable(zone.name)));
  const pairs = new Map<string, { from: string; to: string; receiving: WallRow[] }>();
  for (const row of rows) {
    const [from, to] = [comparable(row.receives), comparable(row.zone)];
    if (row.receives === '' || !(asked.has(from) || asked.has(to))) continue;
    const key = `${from}\n${to}`;
    const pair = pairs.get(key) ?? { from: row.receives, to: row.zone, receiving: [] };
    pair.receiving.push(row);
    pairs.set(key, pair);
  }
  return [...pairs.values()].map(({ from, to, receiving }) => ({
    name: `Rinse of ${from} kept off ${to}`,
    edits: setting(receiving, 'receives', ''),
    notes: [],
  }));
};
