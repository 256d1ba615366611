import { describe, expect, it } from 'vitest';
import { WashdownError, type Problem } from '../../src/quantity/problem';
import { call, column, number, refusal, spill } from '../functions/call';

const header = ['Wall', 'Zone', 'Material', 'Area'];
const refused = (walls: unknown): { type: string; message: string } => refusal(() => call('WATER', walls));

describe('labels', () => {
  it('are unique', () => {
    const walls = [header, ['A', '', 'Limestone', 5], ['B', '', 'Limestone', 5], [' A ', '', 'Limestone', 5]];
    expect(refused(walls)).toEqual({
      type: 'input',
      message:
        'Row 4 (A), column Wall: "A", which row 2 has already, cannot be used. Accepted: a label that no other row has.',
    });
  });

  it('may be numbers, dates or texts, and one number is one label however it is typed', () => {
    const walls = [
      header,
      [12, '', 'Limestone', 5],
      ['2025-03-01', '', 'Limestone', 5],
      ['x', '', 'Limestone', 5],
    ];
    expect(column(spill('WALLROWS', walls), 'Wall')).toEqual(['12', '2025-03-01', 'x']);
    expect(refused([header, [12, '', 'Limestone', 5], ['12', '', 'Limestone', 5]]).message).toContain(
      '"12", which row 2 has already,',
    );
  });

  it.each([
    [true, 'TRUE'],
    ['#NAME?', 'the error #NAME?'],
  ])('cannot be %j', (label, seen) => {
    expect(refused([header, [label, '', 'Limestone', 5]]).message).toBe(
      `Row 2, column Wall: ${seen} cannot be used. Accepted: a text or a number as a label.`,
    );
  });

  it('must stand beside any cell that is filled, or a wall would be lost', () => {
    const walls = [header, ['', '', 'Limestone', 5]];
    expect(refused(walls)).toEqual({
      type: 'input',
      message:
        'Row 2, column Wall: a blank label beside "Limestone" in column Material cannot be used. Accepted: a label for each row that is not blank.',
    });
    expect(refused([header, [0, 'North', '', '']]).message).toContain('beside "North" in column Zone');
    expect(refused([header, [null, '', '', 40]]).message).toContain('beside 40 in column Area');
    expect(refused([header, ['', '', '', '#N/A']]).message).toContain('beside the error #N/A in column Area');
  });

  it('alone do not make a wall', () => {
    expect(refused([header, ['A']]).message).toBe(
      'Row 2 (A), column Material: a blank cell cannot be used. Accepted: a name or code of the material table.',
    );
  });
});

describe('rows', () => {
  const wall = ['A', 'North', 'Limestone', 50];
  const other = ['B', 'North', 'Red clay brick', 70];

  it('that are blank are skipped, whichever blank the host hands over', () => {
    const bare = number('WATER', [header, wall, other]);
    const blanks = [[0, 0, 0, 0], ['', '', '', ''], [null, null, null, null], [], [0, '', null, undefined]];
    expect(number('WATER', [header, ...blanks, wall, ...blanks, other, ...blanks])).toBe(bare);
  });

  it('keep their number in messages when blank rows come before', () => {
    expect(refused([header, [], wall, [0, 0, 0, 0], ['C', '', 'Limestone', -1]]).message).toMatch(
      /^Row 5 \(C\), /,
    );
  });

  it('may be ragged: what is not there is blank', () => {
    const ragged = [
      [...header, 'Height', 'Fixtures'],
      ['A', '', 'Limestone', 50],
      [...other, 10, 3],
    ];
    const full = [
      [...header, 'Height', 'Fixtures'],
      ['A', '', 'Limestone', 50, '', ''],
      [...other, 10, 3],
    ];
    expect(spill('WALLROWS', ragged)).toEqual(spill('WALLROWS', full));
  });

  it('may have an area of 0', () => {
    expect(number('WATER', [header, ['A', '', 'Limestone', 0]])).toBe(0);
  });

  it('are all read: one error line counts the rest', () => {
    const walls = [header, ['A', '', 'Slate', 'x'], ['A', '', 'Limestone', -3], ['C', '', 'Limestone', 4]];
    expect(refused(walls).message).toMatch(/^Row 2 \(A\), .*\? 3 more problems were found\.$/);
    let problems: readonly Problem[] = [];
    try {
      call('WATER', walls);
    } catch (error) {
      if (error instanceof WashdownError) problems = error.problems;
    }
    expect(problems.map(({ row, column }) => `${String(row)} ${String(column)}`).sort()).toEqual([
      '2 Area',
      '2 Material',
      '3 Area',
      '3 Wall',
    ]);
  });
});

describe('the range as a whole', () => {
  it.each([[null], [undefined], [''], ['Walls'], [7], [[]], [['Wall', 'Material']]])(
    'cannot be %j',
    (walls) => {
      expect(refused(walls)).toEqual({
        type: 'input',
        message: 'The walls must be a range whose first row is its headings.',
      });
    },
  );

  it('with headings alone, or blank rows alone, has no wall: an answer is not available', () => {
    const message = 'There is no wall in the range: every row is blank.';
    expect(refused([header])).toEqual({ type: 'nothing', message });
    expect(refused([header, [0, 0, 0, 0], ['', '', '', '']])).toEqual({ type: 'nothing', message });
  });

  it('with an empty first row has no headings', () => {
    expect(refused([[]]).message).toBe(
      'Row 1: no column is headed "Wall". Accepted: that heading, or a headings range that names yours. 2 more problems were found.',
    );
  });
});
