import type { RowRecord, ZoneRecord } from '../trace/recorder';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';

/** How a zone stands: its levels from the top (1) down, in m. */
export interface Elevation {
  /** Height above the ground at which a row stands, m. */
  readonly foot: (row: WallRow) => number;
  /** Height of a row, or that of a lift where it states none, m. */
  readonly height: (row: WallRow) => number;
  /** The levels below a row, nearest first, with the greatest height there, m. */
  readonly below: (row: WallRow) => readonly LevelBelow[];
}

/** A level with the greatest height of its rows. */
export interface LevelBelow {
  readonly level: number;
  /** m */
  readonly height: number;
}

/**
 * The elevation of a zone. Levels stand on one another, each as high as its highest row, masked rows counted; a row that
 * states no level stands on the ground and over nothing.
 * @param rows all rows of the zone
 * @param lift height that a row without one is taken to have, m
 * @param rec takes down the height of each level
 * @returns the elevation
 */
export function elevationOf(rows: readonly WallRow[], lift: number, rec?: ZoneRecord): Elevation {
  const height = (row: WallRow): number => (row.height > 0 ? row.height : lift);
  const heights = new Map<number, number>();
  for (const row of rows) {
    if (row.level > 0) heights.set(row.level, Math.max(heights.get(row.level) ?? 0, height(row)));
  }
  const levels = [...heights]
    .map(([level, most]) => ({ level, height: most }))
    .sort((a, b) => a.level - b.level);
  if (rec) {
    for (const { level } of levels) {
      const terms = rows.filter((row) => row.level === level);
      for (const row of terms) traceHeight(row, rec.row(row.row, row.wall));
      rec.most(
        `levelHeight${String(level)}@`,
        terms.map((row) => `rowHeight_r${String(row.row)}`),
        terms.map(height),
        'length',
        'levelHeight',
      );
    }
  }
  const feet = new Map<number, number>();
  const under = new Map<number, readonly LevelBelow[]>();
  levels.forEach(({ level }, place) => {
    const below = levels.slice(place + 1);
    under.set(level, below);
    feet.set(
      level,
      below.reduce((sum, next) => sum + next.height, 0),
    );
  });
  return {
    height,
    foot: ({ level }) => feet.get(level) ?? 0,
    below: ({ level }) => under.get(level) ?? [],
  };
}

/**
 * The height of a row, or that of a lift.
 * @param row the wall row
 * @param rec takes down the lines
 */
export function traceHeight(row: WallRow, rec: RowRecord): void {
  if (row.height > 0) {
    rec.input('Height#', row.height, 'length', 'Height of the row', 'height');
    rec.line('rowHeight', row.height);
  } else rec.line('rowHeightAssumed', rec.value('access.lift'));
}

/** The masonry of a zone that is washed, by level: net area, m2. */
export type MasonryByLevel = ReadonlyMap<number, number>;

/**
 * The masonry of each level that is washed, now or afterwards. A cover lets water by at its edges, and what is clean
 * already must not dry with what runs over it, so that masking spares no wetting.
 * @param rows all rows of the zone
 * @returns net area by level, m2; rows that state no level left out
 */
export function masonryByLevel(rows: readonly WallRow[]): MasonryByLevel {
  const areas = new Map<number, number>();
  for (const row of rows)
    if (isOnLevel(row)) areas.set(row.level, (areas.get(row.level) ?? 0) + netArea(row));
  return areas;
}

function isOnLevel(row: WallRow): boolean {
  return row.level > 0 && row.material.masonry && row.mask !== 'only' && netArea(row) > 0;
}

/**
 * The name of a level's masonry in a trace.
 * @param level the level
 * @returns a symbol of the zone
 */
export function masonrySymbol(level: number): string {
  return `masonry${String(level)}@`;
}

/**
 * Writes the lines of the masonry of each level, which the strips below rest on.
 * @param all all rows of the zone
 * @param masonry net area by level, m2
 * @param rec takes down the lines
 */
export function traceMasonry(all: readonly WallRow[], masonry: MasonryByLevel, rec: ZoneRecord): void {
  for (const level of masonry.keys()) {
    const rows = all.filter((row) => row.level === level && isOnLevel(row));
    for (const row of rows) {
      const rowRec = rec.row(row.row, row.wall);
      rowRec.input('Area#', row.area, 'area', 'Area of the row, gross', 'area');
      rowRec.input('Openings#', row.openings, 'area', 'Openings in the row', 'openings');
      rowRec.line('bareArea', netArea(row));
    }
    const terms = rows.map((row) => `bareArea_r${String(row.row)}`);
    rec.sum(masonrySymbol(level), terms, rows.map(netArea), 'area', 'masonryOfLevel');
  }
}
