import type { ZoneEstimate } from '../estimate/schedule';
import type { RowWash } from '../estimate/wash-row';
import type { Wash } from '../estimate/washes';
import { inWorkingOrder, isLater, washedRows } from '../hazards/washed';
import type { CleanerClass } from '../rules/cleaner-classes';
import { netArea } from '../walls/net-area';
import { kindOf } from '../walls/rows-alike';
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
 * The washes of a zone in working order, each with its walls by kind.
 * @param zone the estimate of the zone
 * @returns the first wash, where there is one, then those of the masked masonry, the most tolerant first
 */
export function siteWashes(zone: ZoneEstimate): SiteWash[] {
  // Long tables are estimated with one row of each kind; on site every wall has its name.
  const rowsOfKind = groupedBy(washedRows(zone), kindOf);
  const byWash = new Map<Wash, Map<string, RowWash>>();
  for (const { row, wash, how } of zone.washed) {
    const kinds = byWash.get(wash) ?? new Map<string, RowWash>();
    if (!kinds.has(kindOf(row))) kinds.set(kindOf(row), how);
    byWash.set(wash, kinds);
  }
  return inWorkingOrder(zone).map((wash) => {
    const kinds = byWash.get(wash) ?? new Map<string, RowWash>();
    return {
      class: wash.class,
      later: isLater(wash),
      walls: [...kinds].map(([kind, how]) => {
        const rows = rowsOfKind.get(kind) ?? [];
        return { rows, area: rows.reduce((sum, row) => sum + netArea(row), 0), how };
      }),
      finding: [...kinds.values()].find(({ finding }) => finding !== undefined)?.finding,
    };
  });
}

/**
 * The rows of a wash.
 * @param wash the wash
 * @returns its rows, kind after kind
 */
export function rowsOf({ walls }: SiteWash): WallRow[] {
  return walls.flatMap(({ rows }) => rows);
}
