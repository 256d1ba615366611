import { levelsOf } from '../../src/site/levels';
import type { WallRow } from '../../src/walls/wall-row';

/** A wall as it is drawn: its top left corner and its sides, in units of the picture. */
export interface DrawnWall {
  readonly row: WallRow;
  /** Its number in the picture and in the table beside it, from 1. */
  readonly number: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A level as it is drawn. */
export interface DrawnLevel {
  readonly level: number;
  readonly y: number;
  readonly height: number;
}

/** An elevation to scale. */
export interface ElevationLayout {
  readonly width: number;
  readonly height: number;
  /** Units of the picture for a metre. */
  readonly scale: number;
  readonly walls: readonly DrawnWall[];
  readonly levels: readonly DrawnLevel[];
  /** Rows that have no length because their height or area is not stated. */
  readonly notDrawn: readonly WallRow[];
}

/** The room that a picture has. */
export interface Room {
  /** What the longest level fills. */
  readonly width: number;
  /** How high the picture may get. */
  readonly mostHeight: number;
  /** What the lowest wall should have, where this widens the picture to no more than `mostWidth`. */
  readonly leastWallHeight: number;
  readonly mostWidth: number;
}

/**
 * Lays the walls of a zone out to scale: levels from the top down, the walls of a level side by side on its foot. The
 * length of a wall is its area by its height.
 * @param rows the rows of the zone
 * @param room the room for the picture
 * @returns places and sizes
 */
export function layoutElevation(rows: readonly WallRow[], room: Room): ElevationLayout {
  const drawable = rows.filter(({ area, height }) => area > 0 && height > 0);
  const notDrawn = rows.filter(({ area, height }) => area === 0 || height === 0);
  const levels = levelsOf(drawable);
  const longest = levels.reduce((most, { length }) => Math.max(most, length), 0);
  const stack = levels.reduce((sum, { height }) => sum + height, 0);
  if (longest === 0) return { width: 0, height: 0, scale: 0, walls: [], levels: [], notDrawn };
  const lowest = drawable.reduce((least, { height }) => Math.min(least, height), Infinity);
  const filling = Math.min(room.width / longest, room.mostHeight / stack);
  const legible = Math.min(room.leastWallHeight / lowest, room.mostWidth / longest, room.mostHeight / stack);
  const scale = Math.max(filling, legible);
  const walls: DrawnWall[] = [];
  const drawnLevels: DrawnLevel[] = [];
  let y = 0;
  for (const { level, rows: onLevel, height } of levels) {
    const levelHeight = height * scale;
    drawnLevels.push({ level, y, height: levelHeight });
    let x = 0;
    for (const row of onLevel) {
      const width = (row.area / row.height) * scale;
      const wallHeight = row.height * scale;
      walls.push({
        row,
        number: walls.length + 1,
        x,
        y: y + levelHeight - wallHeight,
        width,
        height: wallHeight,
      });
      x += width;
    }
    y += levelHeight;
  }
  return { width: longest * scale, height: y, scale, walls, levels: drawnLevels, notDrawn };
}
