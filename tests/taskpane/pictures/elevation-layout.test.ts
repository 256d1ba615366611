import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutElevation, type Room } from '../../../taskpane/pictures/elevation-layout';
import { wallState } from '../../../taskpane/pictures/wall-state';
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
    expect({ scale, width, height }).toEqual({ scale: 10, width: 300, height: 60 });
    expect(levels).toEqual([
      { level: 1, y: 0, height: 40 },
      { level: 2, y: 40, height: 20 },
    ]);
    expect(walls.map(({ row, number, ...box }) => [row.wall, number, box])).toEqual([
      // Lower than its neighbour, it stands on the foot of the level.
      ['a1', 1, { x: 0, y: 10, width: 200, height: 30 }],
      ['a2', 2, { x: 200, y: 0, width: 100, height: 40 }],
      ['b', 3, { x: 0, y: 40, width: 150, height: 20 }],
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

  it('keeps every area in proportion, and nothing overlaps within a level', () => {
    const walls = fc.array(
      fc.record({
        level: fc.integer({ min: 1, max: 4 }),
        area: fc.double({ min: 1, max: 500, noNaN: true }),
        height: fc.double({ min: 0.5, max: 30, noNaN: true }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(walls, (some) => {
        const drawn = layout(
          some.map(({ level, area, height }, index) => wall(`w${index}`, level, area, height)),
        );
        for (const { row, width, height } of drawn.walls) {
          expect((width * height) / drawn.scale ** 2 / row.area).toBeCloseTo(1, 9);
        }
        for (const level of drawn.levels) {
          const onLevel = drawn.walls.filter(({ row }) => row.level === level.level);
          const sum = onLevel.reduce((end, { x, width }) => (expect(x).toBeCloseTo(end, 6), end + width), 0);
          expect(sum).toBeLessThanOrEqual(drawn.width * (1 + 1e-9));
        }
        expect(drawn.height).toBeLessThanOrEqual(ROOM.mostHeight * (1 + 1e-9));
      }),
    );
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
