import type { ZoneEstimate } from '../estimate/schedule';
import { comparable } from '../quantity/cell';
import type { WallRow } from '../walls/wall-row';
import { strongestClass, washesOf } from './washed';

/**
 * Walls that rinse water reaches and that may not meet its class: what is masked lower down in the zone itself, and what
 * states that it receives the rinse. Levels of two zones are not compared: the zones may stand on two elevations.
 * @param above the estimate of the zone that is washed
 * @param zones the estimates of every zone of the job
 * @returns the masked rows of the zone itself and the rows of other zones that receive its rinse, washed or masked
 */
export function weakerBelow(above: ZoneEstimate, zones: readonly ZoneEstimate[]): WallRow[] {
  const washes = washesOf(above).map(({ class: used, rows }) => ({
    used,
    top: rows.reduce((top, { level }) => (level > 0 && level < top ? level : top), Infinity),
  }));
  const reached = receiving(above.zone.name, zones);
  return zones.flatMap((below) => {
    const own = below.zone.name === above.zone.name;
    return below.zone.rows.filter((row) =>
      washes.some(
        ({ used, top }) =>
          row.material.ceiling < used && (own ? row.masked && row.level > top : reached.has(row)),
      ),
    );
  });
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
