import type { ZoneEstimate } from '../estimate/schedule';
import { comparable } from '../quantity/cell';
import type { WallRow } from '../walls/wall-row';
import { strongestClass, washesOf } from './washed';

/**
 * Walls lower down, in this zone or another, that may not meet the class used above them: rinse water reaches them.
 * @param above the estimate of the zone that is washed
 * @param zones the estimates of every zone of the job
 * @returns the masked rows of the zone itself and the rows of the other zones, washed or masked
 */
export function weakerBelow(above: ZoneEstimate, zones: readonly ZoneEstimate[]): WallRow[] {
  const washes = washesOf(above).map(({ class: used, rows }) => ({
    used,
    top: rows.reduce((top, { level }) => (level > 0 && level < top ? level : top), Infinity),
  }));
  const reached = receiving(above.zone.name, zones);
  return zones.flatMap((below) =>
    below.zone.rows.filter(
      (row) =>
        washes.some(
          ({ used, top }) => row.material.ceiling < used && (row.level > top || reached.has(row)),
        ) &&
        (below.zone.name !== above.zone.name || row.masked),
    ),
  );
}

/**
 * The masked walls of a zone that may not meet a class used in it.
 * @param zone the estimate of the zone
 * @returns its weaker rows, which the masking keeps from the cleaner
 */
export function weakerMasked(zone: ZoneEstimate): WallRow[] {
  const used = strongestClass(zone) ?? 0;
  return zone.zone.rows.filter(({ masked, material }) => masked && material.ceiling < used);
}

/** The rows that state that they receive the rinse of a zone, and on its way down of the zones that it reaches. */
function receiving(from: string, zones: readonly ZoneEstimate[]): Set<WallRow> {
  const rows = zones.flatMap(({ zone }) => zone.rows).filter(({ receives }) => receives !== '');
  const reached = new Set<WallRow>();
  const names = new Set([comparable(from)]);
  for (const name of names) {
    for (const row of rows) {
      if (comparable(row.receives) !== name) continue;
      reached.add(row);
      names.add(comparable(row.zone));
    }
  }
  return reached;
}
