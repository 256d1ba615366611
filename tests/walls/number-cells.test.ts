import { describe, expect, it } from 'vitest';
import { call, number, refusal } from '../functions/call';

const header = [
  'Wall',
  'Level',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Opening perimeter',
  'Fixtures',
  'Age',
  'Suction',
];
const row = (cells: Record<string, unknown>): unknown[] =>
  header.map((name) =>
    name in cells ? cells[name] : ({ Wall: 'South', Material: 'Limestone', Area: 400 }[name] ?? ''),
  );
const refused = (cells: Record<string, unknown>, factors?: unknown): string =>
  refusal(() => call('WATER', [header, row(cells)], null, factors)).message;

// The bounds of sense, from m2, m and kg/m2: 1e7 / 0.09290304 ft2, 1e3 / 0.3048 ft, 1e6 / 0.3048 ft, and 10 kg/m2 in
// grams on 30 in2, 10 / 0.0516668.
const AREA = 'a number of ft² from 0 to 107639000';

describe('a number column', () => {
  it.each<[string, unknown, string]>([
    ['a comma between thousands', '1,200', '"1,200" (a number stored as text)'],
    ['a decimal comma', '12,5', '"12,5" (a number stored as text)'],
    ['point and comma', '1.234,5', '"1.234,5" (a number stored as text)'],
    ['an apostrophe', "1'200", '"1\'200" (a number stored as text)'],
    ['a typographic apostrophe', '1’200', '"1’200" (a number stored as text)'],
    ['a space', '1 200', '"1 200" (a number stored as text)'],
    ['a narrow space', '1\u202f200', '"1\u202f200" (a number stored as text)'],
    ['plain digits', '1200', '"1200" (a number stored as text)'],
    ['an unknown unit', '1200 faces', '"1200 faces"'],
    ['a sign', '-12.5', '"-12.5" (a number stored as text)'],
    ['a power of ten', '1.2e3', '"1.2e3" (a number stored as text)'],
    ['a text', 'lots', '"lots"'],
    ['a date as text', '2025-03-01', '"2025-03-01" (a date)'],
    ['a date in another order', '1/3/2025', '"1/3/2025" (a date)'],
    ['a date with points', '1.3.2025', '"1.3.2025" (a date)'],
    [
      'a number shown as a date',
      { type: 'FormattedNumber', basicType: 'Double', basicValue: 45717, numberFormat: 'dd/mm/yyyy' },
      '"45717" (a date)',
    ],
    ['an error as text', '#REF!', 'the error #REF!'],
    [
      'an error as an object',
      { type: 'Error', basicType: 'Error', basicValue: '#DIV/0!' },
      'the error #DIV/0!',
    ],
    ['true', true, 'TRUE'],
    ['false', false, 'FALSE'],
    ['a number below 0', -1, '-1'],
    ['a number beyond sense', 1e12, '1000000000000'],
    ['no number', NaN, 'NaN'],
    ['no end', Infinity, 'Infinity'],
    ['an object', { shape: 'round' }, 'a value that is not a number or a text'],
  ])('refuses %s', (_, value, seen) => {
    expect(refused({ Area: value })).toBe(
      `Row 2 (South), column Area: ${seen} cannot be used. Accepted: ${AREA}.`,
    );
  });

  it('takes a formatted number, and one whose format holds letters of a date in quotes or colours', () => {
    const bare = number('WATER', [header, row({ Area: 400 })]);
    for (const numberFormat of ['#,##0.0', '0 "yd"', '[Red]0', '0\\d', undefined]) {
      const formatted = { type: 'FormattedNumber', basicType: 'Double', basicValue: 400, numberFormat };
      expect(number('WATER', [header, row({ Area: formatted })])).toBe(bare);
    }
  });

  it.each([
    ['Height', 3281, 'blank, or a number of ft from 0.00328084 to 3280.84'],
    ['Height', 0.003, 'blank, or a number of ft from 0.00328084 to 3280.84'],
    ['Height', 5e-324, 'blank, or a number of ft from 0.00328084 to 3280.84'],
    ['Openings', -2, AREA],
    ['Opening perimeter', 1e8, 'a number of ft from 0 to 3280840'],
    ['Suction', 500, 'a number of g per 30 in² from 0 to 193.548'],
    ['Age', -1, 'a number of days from 0 to 19999, or a date'],
    ['Level', 1.5, 'a whole number from 0 to 1000000'],
    ['Level', -1, 'a whole number from 0 to 1000000'],
    ['Fixtures', 2.5, 'a whole number from 0 to 1000000'],
  ])('%s of %d is refused', (name, value, accepted) => {
    expect(refused({ [name]: value })).toBe(
      `Row 2 (South), column ${name}: ${String(value)} cannot be used. Accepted: ${accepted}.`,
    );
  });

  it('says what is accepted in the units of the user', () => {
    const si = [['units', 'SI']];
    expect(refused({ Area: -1 }, si)).toBe(
      'Row 2 (South), column Area: -1 cannot be used. Accepted: a number of m² from 0 to 10000000.',
    );
    expect(refused({ Suction: 11 }, si)).toBe(
      'Row 2 (South), column Suction: 11 cannot be used. Accepted: a number of kg per m² from 0 to 10.',
    );
  });

  it('takes a blank for 0, as the host hands one over: 0, "" or null', () => {
    const bare = number('WATER', [header, row({ Height: 0 })]);
    for (const blank of ['', null, undefined, '  '])
      expect(number('WATER', [header, row({ Height: blank })])).toBe(bare);
  });
});

describe('openings', () => {
  it('must not be larger than the area of the row', () => {
    expect(refused({ Area: 100, Openings: 101 })).toBe(
      'Row 2 (South), column Openings: 101 cannot be used. Accepted: at most the Area of the row, 100 ft².',
    );
    expect(refused({ Area: 0.1, Openings: 0.3 }, [['units', 'SI']])).toBe(
      'Row 2 (South), column Openings: 0.3 cannot be used. Accepted: at most the Area of the row, 0.1 m².',
    );
  });

  it('may be as large', () => {
    expect(number('WATER', [header, row({ Area: 33.3, Openings: 33.3 })])).toBe(0);
  });

  it('are no second problem where the area cannot be read', () => {
    expect(refused({ Area: '1,200', Openings: 50 })).toBe(
      `Row 2 (South), column Area: "1,200" (a number stored as text) cannot be used. Accepted: ${AREA}.`,
    );
  });
});
