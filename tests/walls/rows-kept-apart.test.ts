import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { readWalls } from '../../src/walls/read-walls';
import { rowsAlike } from '../../src/walls/rows-alike';
import type { WallRow } from '../../src/walls/wall-row';

const factors = readFactors([['units', 'SI']]);

/** Rows of one material, with area, height, level and suction as given. */
function rows(...cells: [area: number, height: number, level?: number, suction?: number][]): WallRow[] {
  const range = cells.map(([area, height, level = 1, suction = 0], index) => [
    `W${String(index)}`,
    'Red clay brick',
    area,
    height,
    level,
    suction,
  ]);
  return readWalls([['Wall', 'Material', 'Area', 'Height', 'Level', 'Suction'], ...range], factors);
}

describe('rows that are alike', () => {
  it('become one with their area and their height', () => {
    expect(rowsAlike(rows([20, 4], [30, 4]))).toMatchObject([{ area: 50, height: 4 }]);
  });

  it('have no height where none of them has', () => {
    expect(rowsAlike(rows([20, 0], [30, 0]))).toMatchObject([{ area: 50, height: 0 }]);
  });

  it('are left as they are where there is one alone', () => {
    const [row] = rows([20, 4]);
    expect(rowsAlike(row ? [row] : [])[0]).toBe(row);
  });
});

describe('rows that are not alike', () => {
  it('stay apart where their heights differ: each takes its own moves', () => {
    expect(rowsAlike(rows([20, 4], [30, 2]))).toHaveLength(2);
  });

  it('stay apart where one has a height and the other has none', () => {
    expect(rowsAlike(rows([20, 4], [30, 0]))).toMatchObject([
      { area: 20, height: 4 },
      { area: 30, height: 0 },
    ]);
  });

  it('stay apart where their numbers would be the same side by side', () => {
    // Level 1 with suction 10, and level 11 with suction 0: 110 both.
    expect(rowsAlike(rows([20, 4, 1, 10], [30, 4, 11, 0]))).toHaveLength(2);
  });
});
