import { describe, expect, it } from 'vitest';
import { spreadOf } from '../../../src/estimate/spread';
import { readFactors } from '../../../src/rules/read-factors';
import { readRanges } from '../../../src/rules/read-ranges';
import { readWalls } from '../../../src/walls/read-walls';
import { zonesOf } from '../../../src/walls/zones';
import { DRAWS, drawRanges } from '../../../taskpane/decisions/draw-ranges';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

const walls = [
  ['Wall', 'Material', 'Area', 'Residue'],
  ['A', 'Red clay brick', 1000, 'moderate'],
];
const factors = [['price.labor', 50]];
const ranges = [
  ['Note', 'Factor', 'Low', 'Likely', 'High'],
  ['', 'price.labor', 40, 50, 80],
  ['', 'rate.apply', 8, 10, 12],
];
const workbook = new MemoryWorkbook({
  sheets: { Walls: walls, Factors: factors, Ranges: ranges },
  tables: [
    { name: 'Walls', sheet: 'Walls', address: 'A1:D2' },
    { name: 'Ranges', sheet: 'Ranges', address: 'A1:E3' },
  ],
});
const source = { walls: { table: 'Walls' }, factors: { sheet: 'Factors', address: 'A1:B1' } };

/** A clock that goes on by itself, so that slices end after so many looks at it. */
function ticking(pause: () => void = () => undefined) {
  let now = 0;
  return {
    now: () => ++now,
    pause: () => {
      pause();
      return Promise.resolve();
    },
  };
}

const input = (controller = new AbortController()) => ({
  port: workbook,
  source,
  table: 'Ranges',
  seed: 5,
  signal: controller.signal,
  turns: ticking(),
  progress: () => undefined,
});

describe('drawing within ranges', () => {
  it('comes to the same in slices as at once', async () => {
    const drawn = await drawRanges(input());
    const inForce = readFactors(factors);
    const read = readRanges(
      ranges.map((row) => row.slice(1)),
      'US',
    );
    const atOnce = spreadOf(zonesOf(readWalls(walls, inForce)), inForce, read, {
      draws: DRAWS,
      seed: 5,
      rankBy: 'price',
    });
    expect(drawn?.result).toEqual(atOnce);
    expect([drawn?.table, drawn?.seed]).toEqual(['Ranges', 5]);
  });

  it('lets others work in between, says how far it is, and ends when it is stopped', async () => {
    const controller = new AbortController();
    const seen: number[] = [];
    let pauses = 0;
    const drawn = await drawRanges({
      ...input(controller),
      turns: ticking(() => {
        if (++pauses === 4) controller.abort();
      }),
      progress: ({ done, total }) => {
        expect(total).toBe(DRAWS);
        seen.push(done);
      },
    });
    expect(drawn).toBeUndefined();
    expect(seen).toHaveLength(3);
    expect(seen).toEqual(seen.toSorted((a, b) => a - b));
    expect(seen.at(-1)).toBeLessThan(DRAWS / 10);
  });

  it('says what cannot be read', async () => {
    await expect(drawRanges({ ...input(), table: 'Walls' })).rejects.toThrow('name no factor');
  });
});
