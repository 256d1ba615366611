import { describe, expect, it } from 'vitest';
import { call, column, refusal, spill } from '../functions/call';

const SI = [['units', 'SI']];
const refused = (walls: unknown): string => refusal(() => call('WATER', walls, null, SI)).message;

describe('bounds of sense', () => {
  const walls = (area: number): unknown[][] => [
    ['Wall', 'Material', 'Area'],
    ['A', 'Limestone', area],
  ];

  it('take the bound itself, and nothing beyond it', () => {
    expect(column(spill('WALLROWS', walls(1e7), null, SI), 'Washed area')).toEqual([1e7]);
    expect(refused(walls(1e7 + 1))).toBe(
      'Row 2 (A), column Area: 10000001 cannot be used. Accepted: a number of m² from 0 to 10000000.',
    );
  });
});

describe('the word Type before a mortar', () => {
  const walls = (mortar: string, residue = ''): unknown[][] => [
    ['Wall', 'Material', 'Area', 'Mortar', 'Residue'],
    ['A', 'Red clay brick', 10, mortar, residue],
  ];

  it('is left out in front of the letter alone', () => {
    expect(call('CLASS', walls('Type S', 'light'))).toBe(2);
    expect(refused(walls('N type'))).toContain('column Mortar: "N type" cannot be used');
  });

  it('is no part of another choice', () => {
    expect(refused(walls('N', 'type light'))).toContain('column Residue: "type light" cannot be used');
  });
});

it('a name of the upper zone that is not text is refused under its own heading', () => {
  const walls = [
    ['Wall', 'Zone', 'Material', 'Area', 'Receives'],
    ['A', 'Upper', 'Limestone', 10, ''],
    ['B', 'Lower', 'Limestone', 10, true],
  ];
  expect(refused(walls)).toContain('Row 3 (B), column Receives: TRUE cannot be used');
});

it('a circle of rinse is told without the way that leads to it', () => {
  const walls = [
    ['Wall', 'Zone', 'Material', 'Area', 'Receives'],
    ['A-1', 'Tower', 'Limestone', 10, ''],
    ['B-1', 'Terrace', 'Limestone', 10, 'Tower'],
    ['C-1', 'Court', 'Limestone', 10, 'Terrace'],
    ['B-2', 'Terrace', 'Limestone', 10, 'Court'],
  ];
  expect(refused(walls)).toContain('in a circle: Terrace -> Court -> Terrace.');
});
