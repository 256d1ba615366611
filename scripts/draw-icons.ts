import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';

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

function pixels(size: number, paint: Paint): Buffer {
  const rows = Buffer.alloc(size * (size * 4 + 1));
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      const sum = [0, 0, 0, 0];
      for (let sub = 0; sub < FINE * FINE; sub++) {
        const x = (column + ((sub % FINE) + 0.5) / FINE) / size;
        const y = (row + (Math.floor(sub / FINE) + 0.5) / FINE) / size;
        paint(x, y).forEach((part, index) => (sum[index] = (sum[index] ?? 0) + part));
      }
      const at = row * (size * 4 + 1) + 1 + column * 4;
      sum.forEach((part, index) => rows.writeUInt8(Math.round(part / (FINE * FINE)), at + index));
    }
  }
  return rows;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

function png(size: number, paint: Paint): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(pixels(size, paint))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

for (const size of SIZES) writeFileSync(join('assets', `icon-${String(size)}.png`), png(size, full));
writeFileSync(join('assets', `outline-${String(OUTLINE)}.png`), png(OUTLINE, outline));
