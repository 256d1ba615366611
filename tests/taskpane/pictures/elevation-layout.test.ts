import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutElevation, type Room } from '../../../taskpane/pictures/elevation-layout';
import { wallLabel } from '../../../taskpane/pictures/wall-label';
import { wallState } from '../../../taskpane/pictures/wall-state';
import type { WallRow } from '../../../src/walls/wall-row';
import { estimated } from '../../site/job';

const SI = [['units', 'SI']];
const ROOM: Room = { width: 300, mostHeight: 240, labelHeight: 12, caption: 10 };

const NO_STRIP = { walls: [], levels: [] };

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
    const { scale, width, height, strips } = layout([
      wall('b', 2, 30, 2),
      wall('a1', 1, 60, 3),
      wall('a2', 1, 40, 4),
    ]);
    expect({ scale, width, height }).toEqual({ scale: 10, width: 300, height: 50 });
    expect(strips.map(({ from, to, y }) => [from, to, y])).toEqual([[0, 30, 0]]);
    const [{ walls, levels } = NO_STRIP] = strips;
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
    const { scale, height, strips } = layout(
      [wall('parapet', 1, 30, 1), wall('tower', 2, 100, 20), wall('low', 2, 100, 4)],
      { labelHeight: 1 },
    );
    const [{ walls } = NO_STRIP] = strips;
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

  it('a long low wall is broken into as few strips as make its label readable, none wider than the room', () => {
    // 100 m long, 2 m high: 3 units a metre leave 6, 6 leave 12. Two strips of 50 m, each 10 + 12 high.
    const { scale, width, height, strips, drawn } = layout([wall('l', 1, 200, 2)]);
    expect({ scale, width, height }).toEqual({ scale: 6, width: 300, height: 44 });
    expect(strips.map(({ from, to, y }) => [from, to, y])).toEqual([
      [0, 50, 10],
      [50, 100, 32],
    ]);
    expect(strips.map(({ walls }) => walls.map(({ number, pieces }) => [number, pieces]))).toEqual([
      [[1, [{ x: 0, y: 10, width: 300 }]]],
      [[1, [{ x: 0, y: 32, width: 300 }]]],
    ]);
    expect(strips.map(({ levels }) => levels)).toEqual([[{ level: 1, y: 16 }], [{ level: 1, y: 38 }]]);
    expect(drawn.map((row) => row.wall)).toEqual(['l']);
  });

  it('300 ft by 10 ft is whole and labelled in the pane and on paper', () => {
    // 91.44 m by 3.048 m. In the pane 272 / 300 = 0.907 units a foot leave 9.07; two strips leave 18.1. On paper 20.
    const long = [wall('long', 1, 278.709, 3.048)];
    const pane = layout(long, { width: 272, mostHeight: 220, labelHeight: 14, caption: 16 });
    expect([pane.strips.length, pane.width]).toEqual([2, expect.closeTo(272, 6)]);
    const paper = layout(long, { width: 600, mostHeight: 300, labelHeight: 14, caption: 16 });
    expect([paper.strips.length, paper.width, paper.height]).toEqual([1, 600, expect.closeTo(20, 3)]);
    for (const { strips } of [pane, paper])
      for (const { walls } of strips) expect(walls.map((each) => wallLabel(each)?.text)).toEqual(['1 long']);
  });

  it('a thin course on it does not keep the wall below from its label', () => {
    // 90 m by 3 m under 0.2 m: 300 / 90 leave 10 for the wall; two strips 20. The course never has 12 below 240.
    const { strips } = layout([wall('course', 1, 18, 0.2), wall('wall', 2, 270, 3)]);
    expect(strips.length).toBe(2);
    expect(strips.map(({ walls }) => walls.map((each) => wallLabel(each)?.text))).toEqual([
      [undefined, '2 wall'],
      [undefined, '2 wall'],
    ]);
  });

  it('a wall ends in the strip where it ends, and the next goes on beside it', () => {
    // 80 m and 20 m, 2 m high, in two strips of 50 m at 6 units a metre.
    const { strips } = layout([wall('a', 1, 160, 2), wall('b', 1, 40, 2)]);
    expect(strips.map(({ walls }) => walls.map(({ row, pieces }) => [row.wall, pieces]))).toEqual([
      [['a', [{ x: 0, y: 10, width: 300 }]]],
      [
        ['a', [{ x: 0, y: 32, width: 180 }]],
        ['b', [{ x: 180, y: 32, width: 120 }]],
      ],
    ]);
  });

  it('lists what has no height or no area', () => {
    const { drawn, notDrawn } = layout([wall('a', 1, 30, ''), wall('b', 1, 0, 3), wall('c', 1, 9, 3)]);
    expect(drawn.map((row) => row.wall)).toEqual(['c']);
    expect(notDrawn.map((row) => row.wall)).toEqual(['a', 'b']);
    expect(layout([wall('a', 1, 30, '')])).toMatchObject({ width: 0, height: 0, strips: [] });
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
        for (const row of drawn.drawn) {
          const parts = drawn.strips.flatMap(({ walls }) => walls.filter((each) => each.row === row));
          const areas = parts.flatMap(({ height, pieces }) => pieces.map(({ width }) => width * height));
          const area = areas.reduce((sum, each) => sum + each, 0);
          expect(area / drawn.scale ** 2 / row.area).toBeCloseTo(1, 6);
        }
        // Along a plumb line of each strip the walls stand one on the other, from the ground up.
        const line = share * drawn.width;
        const high = drawn.height / drawn.strips.length;
        drawn.strips.forEach(({ y: top, walls }, index) => {
          const cut = walls
            .flatMap(({ height, pieces }) => pieces.map((piece) => ({ ...piece, height })))
            .filter(({ x, width }) => x < line && line < x + width)
            .sort((a, b) => b.y - a.y);
          const reached = cut.reduce(
            (foot, { y, height }) => {
              expect(y + height).toBeCloseTo(foot, 5);
              return y;
            },
            high * (index + 1),
          );
          expect(reached).toBeGreaterThanOrEqual(top - 1e-6);
        });
        expect(drawn.width).toBeLessThanOrEqual(ROOM.width * (1 + 1e-9));
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
