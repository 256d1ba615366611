import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { refusal } from '../functions/call';

const refused = (range: unknown): { type: string; message: string } => refusal(() => readFactors(range));

describe('the range of factors', () => {
  it.each([[null], [undefined], [''], [[]], [[[]]], [[['', '']]], [[[0, 0]]], [[['Factor', 'Value']]]])(
    '%j means the starting values',
    (range) => {
      const inForce = readFactors(range);
      expect(inForce.system).toBe('US');
      expect(inForce.value('team.size')).toBe(2);
      expect(inForce.overridden('team.size')).toBe(false);
      expect(inForce.chosenClass).toBeUndefined();
    },
  );

  it.each(['Factor', 'factor id', 'ID', 'Factors'])('may have a header "%s"', (heading) => {
    expect(
      readFactors([
        [heading, 'Value'],
        ['team.size', 3],
      ]).value('team.size'),
    ).toBe(3);
  });

  it('may have blank rows, more columns, and ids in any case and spacing', () => {
    const range = [
      ['', '', ''],
      [' Scrub. Full ', 30, 'slower here'],
      [0, 0, 'note'],
      [null, null, null],
      ['TEAM.Size', 4, ''],
    ];
    const inForce = readFactors(range);
    expect(inForce.value('team.size')).toBe(4);
    expect(inForce.value('scrub.full')).toBeCloseTo(30 * 0.09290304, 12);
  });

  it.each([
    ['team', 'teams, '],
    ['scrub.ful', 'scrub.full, '],
    ['dwell.lest', 'dwell.least, '],
    ['unit', 'units, '],
    ['cleaner.clas', 'cleaner.class, '],
  ])('with the unknown id "%s" is refused, the nearest offered', (id, offered) => {
    expect(refused([[id, 2]]).message).toMatch(
      new RegExp(
        `^Row 1 \\(${id}\\), column value: the factor "${id}" cannot be used\\. Accepted: a factor id of WASH\\.FACTORS\\(\\)\\. Did you mean ${offered}[^,]+, [^,]+\\?$`,
      ),
    );
  });

  it('has each id once, however it is typed', () => {
    const message =
      'Row 3 (Teams), column value: the factor "Teams" a second time cannot be used. Accepted: each factor once.';
    expect(
      refused([
        ['teams', 3],
        ['shift', 8],
        ['Teams', 3],
      ]),
    ).toEqual({ type: 'input', message });
    expect(
      refused([
        ['units', 'US'],
        ['Units', 'US'],
      ]).message,
    ).toContain('a second time');
    expect(
      refused([
        ['cleaner.class', 1],
        ['cleaner.class', 1],
      ]).message,
    ).toContain('a second time');
  });

  it.each<[unknown, string]>([
    ['metric', '"metric"'],
    [1, '1'],
    ['', 'a blank cell'],
    ['#N/A', 'the error #N/A'],
  ])('has units US or SI, not %j', (units, seen) => {
    expect(refused([['units', units]]).message).toBe(
      `Row 1 (units), column value: ${seen} cannot be used. Accepted: US or SI.`,
    );
  });

  it('has an id beside each value', () => {
    expect(refused([['', 5]]).message).toBe(
      'Row 1, column 1: a blank factor id beside a value cannot be used. Accepted: a factor id.',
    );
    expect(refused([[0, 5]]).message).toContain('a blank factor id beside a value');
    expect(refused([['', '#REF!']]).message).toContain('a blank factor id beside a value');
  });

  it.each<[unknown, string]>([
    [7, '7'],
    [true, 'TRUE'],
    ['#N/A', 'the error #N/A'],
  ])('has a text as an id, not %j', (id, seen) => {
    expect(refused([[id, 5]]).message).toBe(
      `Row 1, column 1: ${seen} cannot be used. Accepted: a factor id.`,
    );
  });

  it.each(['teams', 5, true, [['teams']], ['teams', 3]])('is two columns, not %j', (range) => {
    expect(refused(range)).toEqual({
      type: 'input',
      message: 'The factors must be a range of two columns: factor id, value.',
    });
  });

  it('is read to its end: the message counts the rest', () => {
    expect(
      refused([
        ['teams', 0],
        ['shift', 30],
        ['dwell.least', 200],
      ]).message,
    ).toBe(
      'Row 1 (teams), column value: 0 cannot be used. Accepted: a whole number from 1 to 100. 2 more problems were found.',
    );
  });

  it.each([
    ['crew', 'team.size (people on a team) and teams'],
    ['rate.rinse', 'rinse.perArea'],
    ['rate.scrub', 'scrub.full'],
    ['need.heavy', 'left.0 to left.3 and load.heavy'],
    ['rinse.count', 'cleaner.applications'],
  ])('refuses %s of a former version and names what took its place', (id, successor) => {
    expect(refused([[id, 2]])).toEqual({
      type: 'input',
      message: `Row 1 (${id}), column value: the factor "${id}", which is no longer in use, cannot be used. Accepted: in its place ${successor}.`,
    });
  });

  it('reads price.labour as price.labor, and either of them once', () => {
    expect(readFactors([['price.labour', 52]]).value('price.labor')).toBe(52);
    const both = [
      ['price.labor', 52],
      ['price.labour', 52],
    ];
    expect(refused(both).message).toContain('a second time');
  });

  it('has a price of labor by the person or by the crew, never both', () => {
    const both = [
      ['price.labor', 52],
      ['price.crew', 110],
    ];
    expect(refused(both).type).toBe('input');
    expect(refused(both).message).toMatch(/price\.labor.*price\.crew/);
  });
});
