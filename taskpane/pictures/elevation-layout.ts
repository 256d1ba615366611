import { constants } from '../../src/rules/constants';
import { levelsOf, type Level } from '../../src/site/levels';
import type { WallRow } from '../../src/walls/wall-row';

/** A part of a wall that stands on an even foot; in units of the picture, `y` being its top. */
export interface WallPiece {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** A wall, or what of it a strip shows, as it is drawn, in units of the picture. */
export interface DrawnWall {
  readonly row: WallRow;
  /** Its number in the picture and in the table beside it, from 1. */
  readonly number: number;
  readonly height: number;
  /** From left to right, side by side; more than one where it stands on walls of several heights. */
  readonly pieces: readonly WallPiece[];
}

/** A level as it is marked: the middle of its first wall in a strip. */
export interface DrawnLevel {
  readonly level: number;
  readonly y: number;
}

/** A part of an elevation that is too long for one line; the strips stand one below the other, from left to right. */
export interface Strip {
  /** Metres from the left end. */
  readonly from: number;
  readonly to: number;
  /** Its top in the picture. */
  readonly y: number;
  readonly walls: readonly DrawnWall[];
  readonly levels: readonly DrawnLevel[];
}

/** An elevation to scale. */
export interface ElevationLayout {
  readonly width: number;
  readonly height: number;
  /** Units of the picture for a metre. */
  readonly scale: number;
  /** One where the whole length fits; none where nothing can be drawn. */
  readonly strips: readonly Strip[];
  /** The rows that are drawn, in the order of their numbers. */
  readonly drawn: readonly WallRow[];
  /** Rows that have no length because their height or area is not stated. */
  readonly notDrawn: readonly WallRow[];
}

/** The room that a picture has. */
export interface Room {
  /** What the longest level fills, or each of its strips. */
  readonly width: number;
  /** How high the picture may get, all strips together. */
  readonly mostHeight: number;
  /** What a wall needs for its label. */
  readonly labelHeight: number;
  /** What each strip has above it to say which part it is. */
  readonly caption: number;
}

// More strips than this are no picture any more.
const MOST_STRIPS = 24;

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
 * height. An elevation that would be too low for its labels is broken into strips; none is wider than the room.
 * @param rows the rows of the zone
 * @param room the room for the picture
 * @returns places and sizes
 */
export function layoutElevation(rows: readonly WallRow[], room: Room): ElevationLayout {
  const drawable = rows.filter(({ area, height }) => area > 0 && height > 0);
  const notDrawn = rows.filter(({ area, height }) => area === 0 || height === 0);
  const levels = levelsOf(drawable);
  const longest = levels.reduce((most, { length }) => Math.max(most, length), 0);
  if (longest === 0) return { width: 0, height: 0, scale: 0, strips: [], drawn: [], notDrawn };
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
  const { count, scale } = broken(drawable, longest, top, room);
  const caption = captionOf(count, room);
  const drawn = levels.flatMap(({ rows: onLevel }) => onLevel);
  const strips = Array.from({ length: count }, (_, index): Strip => {
    const [from, to] = [(longest * index) / count, (longest * (index + 1)) / count];
    const y = index * (top * scale + caption) + caption;
    const walls = drawn.flatMap((row, place): DrawnWall[] => {
      const shown = within(stacked.get(row)?.stretches ?? [], from, to, constants.guard.value * longest);
      const pieces = shown.map((stretch) => ({
        x: (stretch.from - from) * scale,
        y: y + (top - stretch.foot - row.height) * scale,
        width: (stretch.to - stretch.from) * scale,
      }));
      return pieces.length === 0 ? [] : [{ row, number: place + 1, height: row.height * scale, pieces }];
    });
    return { from, to, y, walls, levels: levels.flatMap((level) => marked(level, walls)) };
  });
  return {
    width: (longest / count) * scale,
    height: count * (top * scale + caption),
    scale,
    strips,
    drawn,
    notDrawn,
  };
}

function captionOf(count: number, { caption }: Room): number {
  return count > 1 ? caption : 0;
}

/** Into how many strips: as few as give the most walls the height of a label or, where none gets it, the largest scale. */
function broken(
  rows: readonly WallRow[],
  longest: number,
  top: number,
  room: Room,
): { readonly count: number; readonly scale: number } {
  const choices = Array.from({ length: MOST_STRIPS }, (_, index) => {
    const count = index + 1;
    const high = room.mostHeight / count - captionOf(count, room);
    const scale = Math.min((count * room.width) / longest, high / top);
    const labelled = rows.filter(({ height }) => height * scale >= room.labelHeight).length;
    return { count, scale, labelled };
  });
  return choices.reduce((best, choice) => {
    const better =
      choice.labelled > best.labelled || (choice.labelled + best.labelled === 0 && choice.scale > best.scale);
    return better ? choice : best;
  });
}

function marked({ level, rows }: Level, walls: readonly DrawnWall[]): DrawnLevel[] {
  const wall = walls.find(({ row }) => rows.includes(row));
  const [piece] = wall?.pieces ?? [];
  return wall && piece ? [{ level, y: piece.y + wall.height / 2 }] : [];
}

/** What of stretches lies between two places; slivers that rounding makes are left out. */
function within(stretches: readonly Stretch[], from: number, to: number, guard: number): Stretch[] {
  return stretches
    .map((stretch) => ({
      ...stretch,
      from: Math.max(stretch.from, from),
      to: Math.min(stretch.to, to),
    }))
    .filter((part) => part.to - part.from > guard);
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
