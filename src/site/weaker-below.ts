import type { ZoneEstimate } from '../estimate/schedule';
import { comparable } from '../quantity/cell';
import type { WallRow } from '../walls/wall-row';

/**
 * Walls lower down, in this zone or another, that may not meet the class used above them: rinse water reaches them.
 * @param above the zone that is washed
 * @param zones every zone of the job
 * @returns the masked rows of the zone itself and the rows of the other zones
 */
export function weakerBelow(above: ZoneEstimate, zones: readonly ZoneEstimate[]): WallRow[] {
  const used = above.governing?.classToUse;
  const washedLevels = above.zone.rows
    .filter(({ masked, level }) => !masked && level > 0)
    .map(({ level }) => level);
  if (used === undefined) return [];
  const top = Math.min(...washedLevels);
  const name = comparable(above.zone.name);
  return zones.flatMap((below) =>
    below.zone.rows.filter(
      (row) =>
        (row.level > top || comparable(row.receives) === name) &&
        row.material.ceiling < used &&
        (below.zone.name !== above.zone.name || row.masked),
    ),
  );
}

/**
 * The masked walls of a zone that may not meet the class used in it.
 * @param zone the zone
 * @returns its weaker rows, which the masking keeps from the cleaner
 */
export function weakerMasked({ zone, governing }: ZoneEstimate): WallRow[] {
  return governing === undefined
    ? []
    : zone.rows.filter(({ masked, material }) => masked && material.ceiling < governing.classToUse);
}
