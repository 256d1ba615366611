import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutElevation, type Room } from '../../../taskpane/pictures/elevation-layout';
import { wallLabel } from '../../../taskpane/pictures/wall-label';
import { wallState } from '../../../taskpane/pictures/wall-state';
import type { WallRow } from '../../../src/walls/wall-row';
import { estimated } from '../../site/job';

const SI = [['units', 'SI']];
const ROOM: Room = { width: 300, mostHeight: 240, leastWallHeight: 12, mostWidth: 1200 };

const wall = (
  name: string,
  level: number | '',
  area: number,
  height: number | '',
  material = 'Red clay brick',
  masked = 'no',
) => [name, 'Z', level, material, area, height, 0, 0, 0, 'N', 'light', 9, masked, ''];

function zoneOf(rows: unknown[][]) {
  const [zone] = estimated(rows, SI).zones;
  if (!zone) throw new Error('no zone');
  return zone;
}

const layout = (rows: unknown[][], room: Partial<Room> = {}) =>
  layoutElevation(zoneOf(rows).zone.rows, { ...ROOM, ...room });

describe('an elevation', () => {
  it('is to scale: the longest level fills the width', () => {
    // Level 1: 60/3 = 20 m and 40/4 = 10 m, so 30 m on 300 units: 10 units a metre. Level 2: 30/2 = 15 m.
    const { scale, width, height, walls, levels } = layout([
      wall('b', 2, 30, 2),
      wall('a1', 1, 60, 3),
      wall('a2', 1, 40, 4),
    ]);
    expect({ scale, width, height }).toEqual({ scale: 10, width: 300, height: 50 });
    // Level 1 is marked at the middle of its first wall.
    expect(levels).toEqual([
      { level: 1, y: 15 },
      { level: 2, y: 40 },
    ]);
    expect(walls.map(({ row, number, height: high, pieces }) => [row.wall, number, high, pieces])).toEqual([
      [
        'a1',
        1,
        30,
        [
          // The first 15 m stand on b, 2 m high, the other 5 m on the ground.
          { x: 0, y: 0, width: 150 },
          { x: 150, y: 20, width: 50 },
        ],
      ],
      ['a2', 2, 40, [{ x: 200, y: 10, width: 100 }]],
      ['b', 3, 20, [{ x: 0, y: 30, width: 150 }]],
    ]);
  });

  it('closes what a tower would leave open: a parapet follows the tops below it', () => {
    // A tower of 5 m by 20 m beside a wall of 25 m by 4 m; over both a parapet of 30 m by 1 m.
    const { scale, height, walls } = layout(
      [wall('parapet', 1, 30, 1), wall('tower', 2, 100, 20), wall('low', 2, 100, 4)],
      { leastWallHeight: 1 },
    );
    expect({ scale, height }).toEqual({ scale: 10, height: 210 });
    expect(walls.map(({ row, pieces }) => [row.wall, pieces])).toEqual([
      [
        'parapet',
        [
          { x: 0, y: 0, width: 50 },
          { x: 50, y: 160, width: 250 },
        ],
      ],
      ['tower', [{ x: 0, y: 10, width: 50 }]],
      ['low', [{ x: 50, y: 170, width: 250 }]],
    ]);
  });

  it('a tower is as high as the room and no higher', () => {
    // 5 m long, 60 m high: 240 / 60 = 4 units a metre.
    expect(layout([wall('t', 1, 300, 60)])).toMatchObject({ scale: 4, width: 20, height: 240 });
  });

  it('a long low wall widens the picture, up to its most', () => {
    // 100 m long, 2 m high: 3 units a metre would leave 6; 12 / 2 = 6 units a metre.
    expect(layout([wall('l', 1, 200, 2)])).toMatchObject({ scale: 6, width: 600, height: 12 });
    // 1,000 m long: 1200 / 1000.
    expect(layout([wall('l', 1, 2000, 2)])).toMatchObject({ scale: 1.2, width: 1200 });
  });

  it('lists what has no height or no area', () => {
    const { walls, notDrawn } = layout([wall('a', 1, 30, ''), wall('b', 1, 0, 3), wall('c', 1, 9, 3)]);
    expect(walls.map(({ row }) => row.wall)).toEqual(['c']);
    expect(notDrawn.map((row) => row.wall)).toEqual(['a', 'b']);
    expect(layout([wall('a', 1, 30, '')])).toMatchObject({ width: 0, height: 0, walls: [] });
  });

  it('keeps every area in proportion, and has no hole and no overlap', () => {
    const some = fc.array(
      fc.record({
        level: fc.integer({ min: 0, max: 4 }),
        area: fc.double({ min: 1, max: 500, noNaN: true }),
        height: fc.double({ min: 0.5, max: 30, noNaN: true }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    const place = fc.double({ min: 0.001, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(some, place, (made, share) => {
        const drawn = layout(
          made.map(({ level, area, height }, index) =>
            wall(`w${index}`, level === 0 ? '' : level, area, height),
          ),
        );
        for (const { row, height, pieces } of drawn.walls) {
          const width = pieces.reduce((sum, piece) => sum + piece.width, 0);
          expect((width * height) / drawn.scale ** 2 / row.area).toBeCloseTo(1, 6);
        }
        // Along a plumb line the walls stand one on the other, from the ground up.
        const line = share * drawn.width;
        const cut = drawn.walls
          .flatMap(({ height, pieces }) => pieces.map((piece) => ({ ...piece, height })))
          .filter(({ x, width }) => x < line && line < x + width)
          .sort((a, b) => b.y - a.y);
        const top = cut.reduce((foot, { y, height }) => {
          expect(y + height).toBeCloseTo(foot, 5);
          return y;
        }, drawn.height);
        expect(top).toBeGreaterThanOrEqual(-1e-6);
        expect(drawn.height).toBeLessThanOrEqual(ROOM.mostHeight * (1 + 1e-9));
      }),
    );
  });
});

describe('the label of a wall', () => {
  const labelled = (name: string, width: number, height: number) =>
    wallLabel({
      row: { wall: name } as WallRow,
      number: 7,
      height,
      pieces: [
        { x: 0, y: 0, width: 1 },
        { x: 10, y: 5, width },
      ],
    });

  it.each([
    // 6.4 units a letter: 64 hold ten, 48 seven, 30 four.
    ['S-2 lower', 80, 20, '7 S-2 lower', false],
    ['S-2 lower', 48, 20, '7 S-2…', false],
    ['S-2 lower', 30, 20, '7', false],
    ['S-2 lower', 14, 80, '7 S-2 lower', true],
    ['S-2 lower', 5, 5, undefined, undefined],
    ['S-2 lower', 80, 12, undefined, undefined],
  ])('%s in %d by %d', (name, width, height, text, upright) => {
    const label = labelled(name, width, height);
    expect([label?.text, label?.upright]).toEqual([text, upright]);
    if (label) expect([label.x, label.y]).toEqual([10 + width / 2, 5 + height / 2]);
  });
});

describe('the state of a wall', () => {
  it('tells masked, governing and washed apart', () => {
    const zone = zoneOf([
      wall('brick', 1, 30, 3),
      wall('stone', 1, 30, 3, 'Limestone'),
      wall('glass', 1, 30, 3, 'Coated glass', 'yes'),
    ]);
    expect(zone.zone.rows.map((row) => wallState(row, zone.governing))).toEqual([
      'washed',
      'governs',
      'masked',
    ]);
    const masked = zoneOf([wall('glass', 1, 30, 3, 'Coated glass', 'yes')]);
    expect(masked.zone.rows.map((row) => wallState(row, masked.governing))).toEqual(['masked']);
  });
});
