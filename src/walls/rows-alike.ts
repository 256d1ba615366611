import { metres, squareMetres } from '../quantity/quantities';
import type { WallRow } from './wall-row';

/**
 * Puts rows together whose quantities go with their areas, perimeters and counts alone, so that a zone is worked out
 * from fewer rows with the same sums. Masked rows stay by themselves, since their edges do not add up to one edge.
 * @param rows the rows of a zone
 * @returns rows with the same sums
 */
export function rowsAlike(rows: readonly WallRow[]): WallRow[] {
  const groups = new Map<string, WallRow[]>();
  rows.forEach((row, index) => {
    const alike = row.masked
      ? String(index)
      : [
          row.material.code,
          row.mortar,
          row.residue,
          row.brushed,
          row.level,
          row.suction,
          row.height > 0,
          row.access,
          row.mask,
        ].join('|');
    groups.set(alike, [...(groups.get(alike) ?? []), row]);
  });
  return [...groups.values()].map(together);
}

function together(rows: readonly WallRow[]): WallRow {
  const [first, ...more] = rows as readonly [WallRow, ...WallRow[]];
  if (more.length === 0) return first;
  const sum = (of: (row: WallRow) => number): number => rows.reduce((total, row) => total + of(row), 0);
  const area = sum((row) => row.area);
  const length = sum((row) => (row.height > 0 ? row.area / row.height : 0));
  return {
    ...first,
    area: squareMetres(area),
    // The height that gives the rows' area over their length.
    height: metres(length > 0 ? area / length : first.height),
    openings: squareMetres(sum((row) => row.openings)),
    openingPerimeter: metres(sum((row) => row.openingPerimeter)),
    fixtures: sum((row) => row.fixtures),
  };
}
