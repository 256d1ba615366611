import type { DrawnWall, WallPiece } from './elevation-layout';

// Mean width of a letter at the size of the style sheet; a label that may not fit is shortened.
const LETTER = 6.4;
const LINE = 13;
// Fewer letters of a name say nothing.
const LEAST_LETTERS = 4;

/** What stands in a wall of the picture, and whether it is turned to run upwards. */
export interface WallLabel {
  readonly text: string;
  readonly upright: boolean;
  /** Its middle. */
  readonly x: number;
  readonly y: number;
}

/**
 * The label of a wall: its number and name; in a tower turned upwards, where that shows more of it; shortened with an
 * ellipsis where the name is too long, and the number alone where not even that fits.
 * @param wall the wall as it is drawn
 * @returns the label; undefined where there is room for none
 */
export function wallLabel({ row, number, height, pieces }: DrawnWall): WallLabel | undefined {
  const widest = pieces.reduce<WallPiece | undefined>(
    (best, piece) => (best && best.width >= piece.width ? best : piece),
    undefined,
  );
  if (widest === undefined) return undefined;
  const lettersAlong = (room: number, across: number): number =>
    across < LINE ? 0 : Math.floor(room / LETTER);
  const across = lettersAlong(widest.width, height);
  const up = lettersAlong(height, widest.width);
  const whole = `${String(number)} ${row.wall}`;
  const upright = across < whole.length && up > across && height > widest.width;
  const text = fitted(whole, String(number), upright ? up : across);
  if (text === '') return undefined;
  return { text, upright, x: widest.x + widest.width / 2, y: widest.y + height / 2 };
}

function fitted(whole: string, number: string, letters: number): string {
  if (whole.length <= letters) return whole;
  if (letters >= number.length + 1 + LEAST_LETTERS) return `${whole.slice(0, letters - 1).trimEnd()}…`;
  return number.length <= letters ? number : '';
}
