import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { readWalls } from '../../src/walls/read-walls';
import type { WallRow } from '../../src/walls/wall-row';
import { column, spill } from '../functions/call';

const factors = readFactors([['units', 'SI']]);

function rowWith(column: string, cell: unknown): WallRow | undefined {
  return readWalls(
    [
      ['Wall', 'Material', 'Area', column],
      ['A', 'Limestone', 10, cell],
    ],
    factors,
  )[0];
}

describe('a mask', () => {
  it.each<[unknown, string, boolean, boolean]>([
    ['', 'no', false, false],
    ['no', 'no', false, false],
    [false, 'no', false, false],
    ['yes', 'yes', true, false],
    [true, 'yes', true, false],
    [' Only ', 'only', true, false],
    ['never', 'never', false, true],
  ])('of %j is %s', (cell, mask, masked, neverMasked) => {
    expect(rowWith('Masked', cell)).toMatchObject({ mask, masked, neverMasked });
  });

  it('of only is masked as one of yes is, and is not washed afterwards', () => {
    const walls = (masked: string): unknown[][] => [
      ['Wall', 'Material', 'Area', 'Masked'],
      ['A', 'Limestone', 10, 'no'],
      ['B', 'Marble', 20, masked],
    ];
    const masking = (masked: string) => column(spill('SCHEDULE', walls(masked)), 'Masking');
    const washed = (masked: string) => column(spill('SCHEDULE', walls(masked)), 'Washed area')[0];
    expect(masking('only')).toEqual(masking('yes'));
    expect(washed('only')).toBeCloseTo(10, 9);
    expect(washed('yes')).toBeCloseTo(30, 9);
  });
});

it.each<[unknown, string | undefined]>([
  ['', undefined],
  [0, undefined],
  ['Ground', 'ground'],
  ['scaffold', 'scaffold'],
  ['LIFT', 'lift'],
  ['ladder', 'ladder'],
  ['suspended', 'suspended'],
])('access of %j is %s', (cell, access) => {
  expect(rowWith('Access', cell)?.access).toBe(access);
});

it('a row tells whether residue and brushing were stated', () => {
  expect(rowWith('Residue', '')?.residue).toBeUndefined();
  expect(rowWith('Residue', 'light')?.residue).toBe('light');
  expect(rowWith('Brushed', '')).toMatchObject({ brushed: false, brushedStated: false });
  expect(rowWith('Brushed', 'no')).toMatchObject({ brushed: false, brushedStated: true });
  expect(rowWith('Brushed', 'yes')).toMatchObject({ brushed: true, brushedStated: true });
});
