import { describe, expect, it } from 'vitest';
import { call, number, refusal } from '../functions/call';

const refused = (walls: unknown, headings?: unknown): { type: string; message: string } =>
  refusal(() => call('MASKING', walls, null, null, headings));
const missing = (name: string, nearest: string, more = ''): { type: string; message: string } => ({
  type: 'input',
  message: `Row 1: no column is headed "${name}". Accepted: that heading, or a headings range that names yours. Did you mean ${nearest}?${more}`,
});
const wall = ['South', 'Limestone', 40, 12, 8];
const ours = ['Wall', 'Material', 'Area', 'Openings', 'Fixtures'];
// 12 ft2 of openings and 8 fixtures of 4 ft2.
// 44 ft2, and half a foot of lap along the edge of the 12 ft2 of openings as a square.
const MASKING = 44 + 4 * Math.sqrt(12) * 0.5;

describe('headings of the wall rows', () => {
  it('are found in any order, case and spacing, beside columns that are not ours', () => {
    expect(number('MASKING', [ours, wall])).toBeCloseTo(MASKING, 9);
    const loose = [
      'Bid item',
      ' FIXTURES ',
      'open ings',
      'area',
      'Note',
      'wall',
      'mater\u00a0ial',
      '',
      5,
      true,
    ];
    const row = ['B-12', 8, 12, 40, '#REF!', 'South', 'limestone', 'x', 7, 'y'];
    expect(number('MASKING', [loose, row])).toBeCloseTo(MASKING, 9);
  });

  it('must hold wall, material and area', () => {
    expect(refused([['Wall', 'Material', 'Sq ft'], wall])).toEqual(missing('Area', 'Wall, Sq ft, Material'));
    expect(refused([['Wall', 'Mat.', 'Area'], wall])).toEqual(missing('Material', 'Mat., Area, Wall'));
    expect(refused([['Face', 'Material', 'Area'], wall])).toEqual(missing('Wall', 'Face, Area, Material'));
    expect(refused([['Wall', 'Stuff', 'Face'], wall])).toEqual(
      missing('Material', 'Wall, Face, Stuff', ' One more problem was found.'),
    );
  });

  it('stand once each', () => {
    expect(refused([['Wall', 'Material', 'Area', ' AREA'], wall])).toEqual({
      type: 'input',
      message: 'Row 1, column Area: the heading "Area" twice cannot be used. Accepted: each heading once.',
    });
    expect(
      number('MASKING', [
        [...ours, 'Note', 'Note'],
        [...wall, 'a', 'b'],
      ]),
    ).toBeCloseTo(MASKING, 9);
  });
});

describe('headings range', () => {
  const theirs = ['Face no.', 'Facing', 'Gross', 'Windows', 'Lamps'];
  const mapping = [
    ['Wall', 'Face no.'],
    ['material', 'FACING'],
    ['Area', 'Gross'],
    ['Openings', 'Windows'],
    ['Fixtures', 'Lamps'],
  ];

  it('names the headings of another table', () => {
    expect(number('MASKING', [theirs, wall], null, null, mapping)).toBeCloseTo(MASKING, 9);
  });

  it('may have a header, blank rows and columns left out', () => {
    const loose = [['Our column', 'Your heading'], ...mapping, ['', ''], [0, ''], ['Height', '']];
    expect(number('MASKING', [theirs, wall], null, null, loose)).toBeCloseTo(MASKING, 9);
  });

  it('may name a number', () => {
    const walls = [['Wall', 'Material', 2024], wall];
    expect(number('MASKING', walls, null, null, [['Area', 2024]])).toBe(0);
  });

  it('must name a heading that is there, for a column that is not needed too', () => {
    expect(refused([theirs, wall], mapping.with(4, ['Fixtures', 'Lights']))).toEqual(
      missing('Lights', 'Lamps, Gross, Windows'),
    );
  });

  it('must name a column of ours, in its first row too', () => {
    const message = (row: number, seen: string): string =>
      `Row ${String(row)}, column our column: "${seen}" cannot be used. Accepted: one of Wall, Zone, Level, Material, Area, Height, Openings, Opening perimeter, Fixtures, Mortar, Residue, Brushed, Age, Masked, Access, Suction, Receives.`;
    expect(refused([theirs, wall], [...mapping.slice(0, 4), ['Fixture', 'Lamps']]).message).toBe(
      message(5, 'Fixture'),
    );
    expect(refused([theirs, wall], [['Fixture', 'Lamps'], ...mapping.slice(0, 4)]).message).toBe(
      message(1, 'Fixture'),
    );
  });

  it('must name each column once', () => {
    expect(refused([theirs, wall], [...mapping, ['AREA', 'Windows']]).message).toBe(
      'Row 6, column our column: "AREA" a second time cannot be used. Accepted: each column once.',
    );
  });

  it.each([[[['Wall']]], ['Wall'], [5]])('must be two columns: %j', (headings) => {
    expect(refused([theirs, wall], headings).message).toBe(
      'The headings must be a range of two columns: our column, your heading.',
    );
  });

  it('must not hold an error', () => {
    expect(refused([theirs, wall], [...mapping.slice(0, 4), ['Fixtures', '#N/A']]).message).toBe(
      'Row 5, column your heading: the error #N/A cannot be used. Accepted: the text of a heading.',
    );
  });
});
