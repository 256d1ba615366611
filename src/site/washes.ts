import type { ZoneEstimate } from '../estimate/schedule';
import type { RowWash } from '../estimate/wash-row';
import type { Wash } from '../estimate/washes';
import { inWorkingOrder, isLater, washedRows } from '../hazards/washed';
import type { CleanerClass } from '../rules/cleaner-classes';
import { netArea } from '../walls/net-area';
import { groupKey } from '../walls/rows-alike';
import type { WallRow } from '../walls/wall-row';
import { groupedBy } from './grouped';

/** Walls that are washed alike. */
export interface WashedWalls {
  readonly rows: readonly WallRow[];
  /** Bare net area, m2. */
  readonly area: number;
  readonly how: RowWash;
}

/** One wash of a zone, as it is told on site. */
export interface SiteWash {
  readonly class: CleanerClass;
  /** Whether it is one of masked masonry, afterwards. */
  readonly later: boolean;
  readonly walls: readonly WashedWalls[];
  /** Why some wall cannot be washed so. */
  readonly finding: string | undefined;
}

/**
 * The washes of a zone in working order, each with its walls by group.
 * @param zone the estimate of the zone
 * @returns the first wash, where there is one, then those of the masked masonry, the most tolerant first
 */
export function siteWashes(zone: ZoneEstimate): SiteWash[] {
  // Long tables are estimated with one row of each group; on site every wall has its name.
  const rowsOfGroup = groupedBy(washedRows(zone), groupKey);
  const byWash = new Map<Wash, Map<string, RowWash>>();
  for (const { row, wash, how } of zone.washed) {
    const groups = byWash.get(wash) ?? new Map<string, RowWash>();
    if (!groups.has(groupKey(row))) groups.set(groupKey(row), how);
    byWash.set(wash, groups);
  }
  return inWorkingOrder(zone).map((wash) => {
    const groups = byWash.get(wash) ?? new Map<string, RowWash>();
    return {
      class: wash.class,
      later: isLater(wash),
      walls: [...groups].map(([group, how]) => {
        const rows = rowsOfGroup.get(group) ?? [];
        return { rows, area: rows.reduce((sum, row) => sum + netArea(row), 0), how };
      }),
      finding: [...groups.values()].find(({ finding }) => finding !== undefined)?.finding,
    };
  });
}

/**
 * The rows of a wash.
 * @param wash the wash
 * @returns its rows, group after group
 */
export function rowsOf({ walls }: SiteWash): WallRow[] {
  return walls.flatMap(({ rows }) => rows);
}
