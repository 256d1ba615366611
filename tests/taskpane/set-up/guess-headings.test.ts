import { describe, expect, it } from 'vitest';
import { columnIds, columns } from '../../../src/walls/columns';
import { guessHeadings, headingRows, systemOfHeadings } from '../../../taskpane/set-up/guess-headings';

const named = (headings: readonly string[]) =>
  Object.fromEntries([...guessHeadings(headings)].map(([id, place]) => [id, headings[place]]));

describe('headings are guessed', () => {
  it('where they are ours, in any order and case', () => {
    const headings = columnIds.map((id) => columns[id].name.toUpperCase()).reverse();
    const match = guessHeadings(headings);
    for (const id of columnIds) expect(headings[match.get(id) ?? -1]).toBe(columns[id].name.toUpperCase());
    expect(headingRows(headings, match)).toEqual([]);
  });

  it('where they are what estimators call them', () => {
    expect(
      named([
        'Mark',
        'Gross Area (SF)',
        'Ht',
        'Masonry Type',
        'Floor',
        'Mortar type',
        'Perim.',
        'Window area',
        'IRA',
      ]),
    ).toEqual({
      wall: 'Mark',
      area: 'Gross Area (SF)',
      height: 'Ht',
      material: 'Masonry Type',
      level: 'Floor',
      mortar: 'Mortar type',
      openingPerimeter: 'Perim.',
      openings: 'Window area',
      suction: 'IRA',
    });
  });

  it.each<[string, Record<string, string>]>([
    // Elevation is the wall where nothing else names it, and the zone where something does.
    ['Elevation|Ht ft|Type|Qty SF', { wall: 'Elevation', height: 'Ht ft', material: 'Type', area: 'Qty SF' }],
    [
      'Elevation|Mark|Description|Qty SF|Ht ft',
      { zone: 'Elevation', wall: 'Mark', material: 'Description', area: 'Qty SF', height: 'Ht ft' },
    ],
    ['Description|Type|SF', { wall: 'Description', material: 'Type', area: 'SF' }],
    ['Mark|Masonry|Mortar type|Type', { wall: 'Mark', material: 'Masonry', mortar: 'Mortar type' }],
    // A length is no area of openings, and a quantity without a unit may be anything.
    [
      'Mark|Openings SF|Openings LF',
      { wall: 'Mark', openings: 'Openings SF', openingPerimeter: 'Openings LF' },
    ],
    ['Mark|Qty|Height (SF)', { wall: 'Mark' }],
    ['Net SF|Gross SF', { area: 'Gross SF' }],
    ['Net m2', { area: 'Net m2' }],
  ])('with senses that depend on what else is there: %s', (headings, match) => {
    expect(named(headings.split('|'))).toEqual(match);
  });

  it('by the materials that stand below', () => {
    const headings = ['Type', 'Skin', 'SF'];
    const below = [
      ['Field', 'CMU', 100],
      ['Base', 'Buff brick', 50],
    ];
    const match = guessHeadings(headings, below);
    expect(headings[match.get('material') ?? -1]).toBe('Skin');
    expect(systemOfHeadings(headings, match)).toBe('US');
    expect(systemOfHeadings(['Wall', 'm2', 'Height m'], guessHeadings(['Wall', 'm2', 'Height m']))).toBe(
      'SI',
    );
    expect(systemOfHeadings(['Wall'], guessHeadings(['Wall']))).toBeUndefined();
  });

  it('through slips of the pen', () => {
    expect(named(['Wal', 'Materail', 'Areas', 'Heigth'])).toEqual({
      wall: 'Wal',
      material: 'Materail',
      area: 'Areas',
      height: 'Heigth',
    });
  });

  it('not at all where nothing is like them, and each once', () => {
    expect(named(['Date', 'Qty', 'Notes', '', '1'])).toEqual({});
    expect(named(['Area', 'Area 2', 'Gross area'])).toEqual({ area: 'Area' });
    const places = [...guessHeadings(['Wall', 'Wall area', 'Wall height', 'Opening', 'Openings']).values()];
    expect(new Set(places).size).toBe(places.length);
  });
});

it('the map of headings has those that are not ours, in our order', () => {
  const headings = ['sf', ' WALL ', 'Brick'];
  const match = new Map([
    ['area', 0],
    ['material', 2],
    ['wall', 1],
  ] as const);
  expect(headingRows(headings, match)).toEqual([
    ['Material', 'Brick'],
    ['Area', 'sf'],
  ]);
});
