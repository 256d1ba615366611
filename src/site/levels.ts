import type { WallRow } from '../walls/wall-row';

/** The walls that stand at the same height. */
export interface Level {
  /** Order from the top, 1 = highest; 0 where none is stated. */
  readonly level: number;
  readonly rows: readonly WallRow[];
  /** Height of its highest row, m; 0 where none is stated. */
  readonly height: number;
  /** Sum of area by height over the rows whose height is stated, m. */
  readonly length: number;
}

/**
 * The levels of a zone in the order of rinsing: from the top down, what has no level last.
 * @param rows the rows of the zone
 * @returns its levels
 */
export function levelsOf(rows: readonly WallRow[]): Level[] {
  const byLevel = new Map<number, WallRow[]>();
  for (const row of rows) {
    const known = byLevel.get(row.level);
    if (known) known.push(row);
    else byLevel.set(row.level, [row]);
  }
  return [...byLevel]
    .sort(([a], [b]) => (a === 0 ? Infinity : a) - (b === 0 ? Infinity : b))
    .map(([level, onLevel]) => ({
      level,
      rows: onLevel,
      height: Math.max(...onLevel.map(({ height }) => height)),
      length: onLevel.reduce((sum, { area, height }) => (height > 0 ? sum + area / height : sum), 0),
    }));
}

/**
 * Height of a zone: its levels stand above one another; a row without a level may stand beside any of them.
 * @param rows the rows of the zone
 * @returns height in m, 0 where none is stated
 */
export function stackedHeight(rows: readonly WallRow[]): number {
  let stack = 0;
  let beside = 0;
  for (const { level, height } of levelsOf(rows)) {
    if (level === 0) beside = height;
    else stack += height;
  }
  return Math.max(stack, beside);
}
