import type { WallRow } from '../../walls/wall-row';
import { type Check, type Finding, materialNames, whereOf } from '../finding';
import type { ZoneEstimate } from '../../estimate/schedule';

/** What lies below is wetted too: a base that may not meet the cleaner used above it. */
export const sensitiveBase: Check = ({ zones }) =>
  zones.flatMap((above): Finding[] => {
    const used = above.governing?.classToUse;
    const top = highestWashed(above);
    if (used === undefined || top === undefined) return [];
    return zones.flatMap((below) => {
      const rows = below.zone.rows.filter(
        (row) => row.level > top && row.material.ceiling < used && (below !== above || row.masked),
      );
      if (rows.length === 0) return [];
      return [
        {
          check: 'sensitive base',
          what: `${materialNames(rows)} lies lower than walls washed with class ${String(used)} in ${above.zone.name}`,
          where: whereOf(below.zone.name, rows),
          why: 'Rinse water carries the cleaner down over what lies below, and under masking that is not sealed',
          todo:
            below === above
              ? 'Seal the upper edge of the masking and keep the base wet until the final rinse'
              : 'If the walls stand above one another, put them in one zone or mask the base; keep it wet until the final rinse',
          source: 'tn20',
        },
      ];
    });
  });

function highestWashed({ zone }: ZoneEstimate): number | undefined {
  const levels = zone.rows.filter((row: WallRow) => !row.masked && row.level > 0).map(({ level }) => level);
  return levels.length === 0 ? undefined : levels.reduce((least, level) => Math.min(least, level));
}
