import { isWashedRow, outOfScope } from '../../hazards/washed';
import type { WallRow } from '../../walls/wall-row';
import { type Check, type Finding, hazardCheck, materialNames, placed } from '../finding';

/** Masonry that is covered and left unwashed. */
export const leftOut = hazardCheck(outOfScope, (_, rows) => ({
  check: 'out of scope',
  what: `${materialNames(rows)} is covered and left unwashed: Masked = only`,
  why: 'Its wash is out of scope: only its masking is priced',
  todo: 'Say so in the bid',
  source: 'rows',
  column: 'masked',
}));

/** Masonry that is covered and left unwashed, and that no other row washes. */
export const washedNowhere: Check = ({ zones, job }) => {
  const washed = new Set(job.flatMap(({ zone }) => zone.rows.filter(isWashedRow).map(faceOf)));
  return zones.flatMap((zone): Finding[] => {
    const rows = outOfScope(zone).filter((row) => !washed.has(faceOf(row)));
    return rows.length === 0
      ? []
      : [
          {
            check: 'washed nowhere',
            what: `No row washes this ${materialNames(rows)}`,
            ...placed(zone.zone.name, rows),
            column: 'masked',
            why: 'Masonry must end up clean; no other row has its material and area and is washed',
            todo: 'Set Masked to yes, so that it is washed afterwards at its own class, or leave it to others on purpose',
            source: 'rows',
          },
        ];
  });
};

/** The same face listed twice has the same material and area. */
function faceOf({ material, area }: WallRow): string {
  return `${material.code} ${String(area)}`;
}
