import { expect, it } from 'vitest';
import { levelsOf, stackedHeight } from '../../src/site/levels';
import { estimated } from './job';

const SI = [['units', 'SI']];

function rowsOf(rows: unknown[][]) {
  return estimated(rows, SI).zones[0]?.zone.rows ?? [];
}

const wall = (name: string, level: number | '', area: number, height: number | '') => [
  ...[name, 'Z', level, 'Red clay brick', area, height, 0, 0, 0, 'N', 'light', 9, 'no', ''],
];

it('goes from the top down, what has no level last', () => {
  const levels = levelsOf(
    rowsOf([wall('c', 3, 10, 2), wall('x', '', 8, 4), wall('a', 1, 30, 3), wall('b', 1, 12, 6)]),
  );
  expect(levels.map(({ level, rows }) => [level, rows.map((row) => row.wall)])).toEqual([
    [1, ['a', 'b']],
    [3, ['c']],
    [0, ['x']],
  ]);
  // Level 1: 30 / 3 + 12 / 6 = 12 m long, 6 m high.
  expect(levels[0]).toMatchObject({ height: 6, length: 12 });
});

it('stacks levels; a wall without a level may stand beside them', () => {
  expect(stackedHeight(rowsOf([wall('a', 1, 30, 3), wall('b', 2, 8, 4)]))).toBe(7);
  expect(stackedHeight(rowsOf([wall('a', 1, 30, 3), wall('x', '', 90, 9)]))).toBe(9);
  expect(stackedHeight(rowsOf([wall('a', 1, 30, '')]))).toBe(0);
});
