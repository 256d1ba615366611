import { columnsAlike } from './columns-alike';
import { edgeLength, openingsEdge } from './edge-length';
import { statedValue } from './stated-value';
import type { WallRow } from './wall-row';

/**
 * Puts rows together whose quantities go with their areas, perimeters and counts alone, so that a zone is worked out
 * from fewer rows with the same sums.
 * @param rows the rows of a zone
 * @returns rows with the same sums
 */
export function rowsAlike(rows: readonly WallRow[]): WallRow[] {
  const groups = new Map<string, WallRow[]>();
  for (const row of rows) {
    const alike = groupKey(row);
    groups.set(alike, [...(groups.get(alike) ?? []), row]);
  }
  return [...groups.values()].map(together);
}

// Zone and Receives say where a row is, not how it is washed.
const deciding = columnsAlike.filter((id) => id !== 'zone' && id !== 'receives');

/**
 * What decides how a row is washed, but for the numbers that add up.
 * @param row the wall row
 * @returns the same text for rows of one group
 */
export function groupKey(row: WallRow): string {
  return deciding.map((id) => statedValue(row, id)).join('|');
}

function together(rows: readonly WallRow[]): WallRow {
  const [first, ...more] = rows as readonly [WallRow, ...WallRow[]];
  if (more.length === 0) return first;
  const sum = (of: (row: WallRow) => number): number => rows.reduce((total, row) => total + of(row), 0);
  return {
    ...first,
    area: sum((row) => row.area),
    openings: sum((row) => row.openings),
    openingPerimeter: sum((row) => openingsEdge(row.openings, row.openingPerimeter)),
    fixtures: sum((row) => row.fixtures),
    ...(first.masked ? { edge: sum((row) => row.edge ?? edgeLength(row.area, row.height)) } : {}),
  };
}
