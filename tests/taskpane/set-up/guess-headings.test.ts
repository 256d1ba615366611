import { describe, expect, it } from 'vitest';
import { columnIds, columns } from '../../../src/walls/columns';
import { guessHeadings, headingRows } from '../../../taskpane/set-up/guess-headings';

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
