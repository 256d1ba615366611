import { describe, expect, it } from 'vitest';
import { beginningOf, findWalls, wallsIn } from '../../../taskpane/set-up/find-walls';
import { guessHeadings } from '../../../taskpane/set-up/guess-headings';
import { matchWarnings, missingColumns } from '../../../taskpane/set-up/match-warnings';

const TITLES = [
  ['', 'BID NO. 417', '', '', '', ''],
  ['', 'Facade wash-down', '', 'Date', 'Nov 3', ''],
  ['', '', '', '', '', ''],
];
const HEADINGS = ['', 'Elevation', 'Mark', 'Type', 'Qty SF', ''];
const WALLS = [
  ['', 'North', 'N-1', 'CMU', 900, ''],
  ['', '', 'N-2', 'Buff brick', 400, ''],
];
const found = (...rows: (string | number)[][]) => findWalls([...TITLES, HEADINGS, ...rows]);

describe('walls below the titles of a bid', () => {
  it('begin at the row that is most like our headings', () => {
    expect(found(...WALLS)).toEqual({ heading: 3, last: 5 });
    expect(
      findWalls([
        ['a', 'b'],
        [1, 2],
      ]),
    ).toEqual({ heading: 0, last: 1 });
  });

  it('end above a total and above a blank row, where no wall comes after', () => {
    expect(found(...WALLS, ['', 'TOTAL', '', '', 1300, ''])).toEqual({ heading: 3, last: 5 });
    const note = ['', 'Prices are firm for 30 days', '', '', '', ''];
    expect(found(...WALLS, ['', '', '', '', '', ''], note)).toEqual({ heading: 3, last: 5 });
  });

  it('go on below a subtotal and a blank row, where a wall comes after', () => {
    const subtotal = ['', 'Subtotal', '', '', 1300, ''];
    const south = ['', 'South', 'S-1', 'CMU', 700, ''];
    expect(
      found(...WALLS, subtotal, ['', '', '', '', '', ''], south, ['', 'Total', '', '', 2000, '']),
    ).toEqual({
      heading: 3,
      last: 8,
    });
  });

  it('keep a wall whose material is missing: it is for the reader to refuse', () => {
    expect(found(...WALLS, ['', 'South', 'S-1', '', 700, ''])).toEqual({ heading: 3, last: 6 });
  });

  it('are as wide as their headings', () => {
    const rows = [...TITLES, HEADINGS, ...WALLS];
    expect(wallsIn({ sheet: 'Bid', address: 'A2:F7' }, rows, findWalls(rows))).toEqual({
      sheet: 'Bid',
      address: 'B5:E7',
    });
    expect(beginningOf(['', '', 'TOTAL', 5])).toBe('TOTAL');
  });
});

describe('what the user is told of a match', () => {
  it('is each needed column without a heading', () => {
    const told = missingColumns(guessHeadings(['Mark', 'Notes']));
    expect(told.map((sentence) => /to (\w+),/.exec(sentence)?.[1])).toEqual(['Material', 'Area']);
  });

  it('is what is left alone, cells that a merge leaves blank, and openings taken off twice', () => {
    const headings = ['Elevation', 'Mark', 'Type', 'Net SF', 'Openings SF', 'Crew', ''];
    const below = [
      ['North', 'N-1', 'CMU', 900, 10, 'A', ''],
      ['', 'N-2', 'CMU', 400, 10, 'A', ''],
      ['', '', '', '', '', '', ''],
    ];
    const told = matchWarnings(headings, guessHeadings(headings, below), below);
    expect(told).toHaveLength(3);
    expect(told[0]).toBe('Not used: Crew.');
    expect(told[1]).toContain('“Elevation” is blank in 1 of 2 walls');
    expect(told[2]).toContain('“Openings SF” is deducted from it again');
    expect(matchWarnings(['Wall', 'Area'], guessHeadings(['Wall', 'Area']), [['a', 1]])).toEqual([]);
  });
});
