import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { encode } from 'fast-png';

// Four courses in running bond, the lower part washed: a motif of our own, drawn from two flat colours.
const SIZES = [16, 32, 64, 80, 192];
const OUTLINE = 32;
const UNWASHED: Rgb = [166, 82, 60];
const WASHED: Rgb = [205, 128, 98];
const JOINT: Rgb = [240, 236, 228];
const COURSES = 4;
const FINE = 4;

const WHITE: Rgb = [255, 255, 255];
const OPAQUE = 255;
const CHANNELS = 4;

type Rgb = readonly [number, number, number];
/** The color of a point, and how opaque it is. */
type Paint = (x: number, y: number) => readonly [...Rgb, number];

const full: Paint = (x, y) => [...colourAt(x, y), OPAQUE];
/** White lines on nothing, as the unified manifest wants its second icon. */
const outline: Paint = (x, y) => [...WHITE, colourAt(x, y) === JOINT ? OPAQUE : 0];

function colourAt(x: number, y: number): Rgb {
  const course = Math.min(COURSES - 1, Math.floor(y * COURSES));
  const down = y * COURSES - course;
  const along = (x * 2 + (course % 2 === 0 ? 0 : 0.5)) % 1;
  if (down < 0.14 || along < 0.08) return JOINT;
  // The washed edge runs down in a slant, as rinse water does.
  return y > 0.25 + 0.5 * x ? WASHED : UNWASHED;
}

function png(size: number, paint: Paint): Uint8Array {
  const data = new Uint8Array(size * size * CHANNELS);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      const sum = [0, 0, 0, 0];
      for (let sub = 0; sub < FINE * FINE; sub++) {
        const x = (column + ((sub % FINE) + 0.5) / FINE) / size;
        const y = (row + (Math.floor(sub / FINE) + 0.5) / FINE) / size;
        paint(x, y).forEach((part, index) => (sum[index] = (sum[index] ?? 0) + part));
      }
      const mean = sum.map((part) => Math.round(part / (FINE * FINE)));
      data.set(mean, (row * size + column) * CHANNELS);
    }
  }
  return encode({ width: size, height: size, data, channels: CHANNELS });
}

for (const size of SIZES) writeFileSync(join('assets', `icon-${String(size)}.png`), png(size, full));
writeFileSync(join('assets', `outline-${String(OUTLINE)}.png`), png(OUTLINE, outline));
