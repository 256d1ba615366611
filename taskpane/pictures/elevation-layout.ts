import { constants } from '../../src/rules/constants';
import { levelsOf } from '../../src/site/levels';
import type { WallRow } from '../../src/walls/wall-row';

/** A part of a wall that stands on an even foot; in units of the picture, `y` being its top. */
export interface WallPiece {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** A wall as it is drawn, in units of the picture. */
export interface DrawnWall {
  readonly row: WallRow;
  /** Its number in the picture and in the table beside it, from 1. */
  readonly number: number;
  readonly height: number;
  /** From left to right, side by side; more than one where it stands on walls of several heights. */
  readonly pieces: readonly WallPiece[];
}

/** A level as it is marked: the middle of its first wall. */
export interface DrawnLevel {
  readonly level: number;
  readonly y: number;
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

/** A stretch of the elevation and what it stands at, in metres. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly foot: number;
}

interface StackedWall {
  readonly row: WallRow;
  readonly stretches: readonly Stretch[];
}

/**
 * Lays the walls of a zone out to scale: levels from the ground up, the walls of a level side by side, each on what is
 * below it. No column has a hole, however unlike the heights of a level are. The length of a wall is its area by its
 * height.
 * @param rows the rows of the zone
 * @param room the room for the picture
 * @returns places and sizes
 */
export function layoutElevation(rows: readonly WallRow[], room: Room): ElevationLayout {
  const drawable = rows.filter(({ area, height }) => area > 0 && height > 0);
  const notDrawn = rows.filter(({ area, height }) => area === 0 || height === 0);
  const levels = levelsOf(drawable);
  const longest = levels.reduce((most, { length }) => Math.max(most, length), 0);
  if (longest === 0) return { width: 0, height: 0, scale: 0, walls: [], levels: [], notDrawn };
  const stacked = new Map<WallRow, StackedWall>();
  let skyline: readonly Stretch[] = [{ from: 0, to: longest, foot: 0 }];
  for (const { rows: onLevel } of [...levels].reverse()) {
    const walls = putOn(skyline, onLevel, constants.guard.value * longest);
    for (const wall of walls) stacked.set(wall.row, wall);
    const raised = walls.flatMap(({ row, stretches }) =>
      stretches.map((stretch) => ({ ...stretch, foot: stretch.foot + row.height })),
    );
    const end = raised.at(-1)?.to ?? 0;
    skyline = [...raised, ...under(skyline, end, longest, constants.guard.value * longest)];
  }
  const top = skyline.reduce((most, { foot }) => Math.max(most, foot), 0);
  const lowest = drawable.reduce((least, { height }) => Math.min(least, height), Infinity);
  const filling = Math.min(room.width / longest, room.mostHeight / top);
  const legible = Math.min(room.leastWallHeight / lowest, room.mostWidth / longest, room.mostHeight / top);
  const scale = Math.max(filling, legible);
  const walls = levels
    .flatMap(({ rows: onLevel }) => onLevel)
    .map((row, index) => ({
      row,
      number: index + 1,
      height: row.height * scale,
      pieces: (stacked.get(row)?.stretches ?? []).map(({ from, to, foot }) => ({
        x: from * scale,
        y: (top - foot - row.height) * scale,
        width: (to - from) * scale,
      })),
    }));
  return {
    width: longest * scale,
    height: top * scale,
    scale,
    walls,
    levels: levels.map(({ level, rows: [first] }) => {
      const wall = walls.find(({ row }) => row === first);
      return { level, y: (wall?.pieces[0]?.y ?? 0) + (wall?.height ?? 0) / 2 };
    }),
    notDrawn,
  };
}

/** Puts the walls of a level side by side on what is below. */
function putOn(skyline: readonly Stretch[], onLevel: readonly WallRow[], guard: number): StackedWall[] {
  let x = 0;
  return onLevel.map((row) => {
    const from = x;
    x += row.area / row.height;
    return { row, stretches: under(skyline, from, x, guard) };
  });
}

/** The skyline between two places, even stretches put together; slivers that rounding makes are left out. */
function under(skyline: readonly Stretch[], from: number, to: number, guard: number): Stretch[] {
  const parts: Stretch[] = [];
  for (const stretch of skyline) {
    const part = { ...stretch, from: Math.max(stretch.from, from), to: Math.min(stretch.to, to) };
    if (part.to - part.from <= guard) continue;
    const last = parts.at(-1);
    if (last && Math.abs(last.foot - part.foot) <= guard) parts[parts.length - 1] = { ...last, to: part.to };
    else parts.push({ ...part, from: last?.to ?? from });
  }
  const last = parts.at(-1);
  if (last) parts[parts.length - 1] = { ...last, to };
  return parts;
}
