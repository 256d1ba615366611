import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { readWalls } from '../../src/walls/read-walls';
import type { WallRow } from '../../src/walls/wall-row';
import { refusal } from '../functions/call';

const FOOT = 0.3048;
// 46,023 on 2026-01-01 as the spreadsheet counts, and 31 and 28 days and one more: 2026-03-02.
const WASH = 46083;
const US = readFactors([['wash.date', WASH]]);
const SI = readFactors([['units', 'SI']]);

function read(column: string, cell: unknown, factors = US): WallRow {
  const cells: Record<string, unknown> = { Wall: 'South', Material: 'Limestone', Area: 5000, [column]: cell };
  const [row] = readWalls([Object.keys(cells), Object.values(cells)], factors);
  if (row === undefined) throw new Error('no row');
  return row;
}
const refused = (column: string, cell: unknown, factors = US): string =>
  refusal(() => read(column, cell, factors)).message;

describe('an area with its unit', () => {
  it.each<[string, number]>([
    ['1,200 sf', 1200],
    ['1200 SF', 1200],
    ['1,200.5 sq. ft.', 1200.5],
    ['12,345,678 ft2', 12345678],
    ['1200 ft²', 1200],
    ['12.125sf', 12.125],
    ['0 sf', 0],
  ])('is read: %s', (cell, feet) => {
    expect(read('Area', cell).area).toBeCloseTo(feet * FOOT * FOOT, 6);
  });

  it.each<[string, number]>([
    ['110 m2', 110],
    ['1 200 m²', 1200],
    ['110.5 sq m', 110.5],
  ])('is read in SI: %s', (cell, metres) => {
    expect(read('Area', cell, SI).area).toBeCloseTo(metres, 9);
  });

  it.each([
    // 110 / 0.3048^2, 9 ft2 in a square yard, 100 in a square.
    ['110 m2', '110 m² are 1184.03 ft²'],
    ['40 SY', '40 yd² are 360 ft²'],
    ['1 sq', '1 squares is 100 ft²'],
    ['40 lf', 'ft measure something else'],
    ['12,5 sf', 'type the number without a sign between thousands'],
  ])('is refused with what it comes to: %s', (cell, cure) => {
    expect(refused('Area', cell)).toBe(
      `Row 2 (South), column Area: "${cell}" cannot be used. Accepted: a number of ft² from 0 to 107639000; ${cure}.`,
    );
  });

  it.each(['1,200 m2', '1.200 m2', '12,5 m2'])('is refused where its sign may be both: %s', (cell) => {
    expect(refused('Area', cell, SI)).toContain('type the number without a sign between thousands');
  });

  it('is refused in SI where it is in feet', () => {
    // 1,200 x 0.3048^2.
    expect(refused('Area', '1,200 sf', SI)).toContain('; 1200 ft² are 111.484 m².');
  });

  it.each(['1,2,3 sf', 'about 1200 sf', '1200 or so', 'sf', '-20 sf', '120 sf 3'])(
    'is no other text: %s',
    (cell) => {
      expect(refused('Area', cell)).toContain('Accepted: a number of ft² from 0 to 107639000.');
    },
  );

  it('is a number without its unit as before', () => {
    expect(refused('Area', '1,200')).toContain('"1,200" (a number stored as text)');
  });
});

describe('a height', () => {
  it.each<[string, number]>([
    [`14'-6"`, 14.5],
    [`14' 6"`, 14.5],
    [`14'6"`, 14.5],
    [`14'-6`, 14.5],
    [`14'`, 14],
    [`14'-0"`, 14],
    ['14′-6″', 14.5],
    ['14’-6”', 14.5],
    [`14'-6 1/2"`, 14 + 6.5 / 12],
    [`14'-6½"`, 14 + 6.5 / 12],
    [`14' 1/2"`, 14 + 0.5 / 12],
    [`14'-6.25"`, 14 + 6.25 / 12],
    [`14'-11 15/16"`, 14 + (11 + 15 / 16) / 12],
    ['14 ft 6 in', 14.5],
    ['14 ft. 6 in.', 14.5],
    ['14 ft-6 inches', 14.5],
    ['14 feet, 6 inches', 14.5],
    ['14 ft', 14],
    ['14.5 ft', 14.5],
    ['14.5 LF', 14.5],
  ])('in feet and inches is read: %s', (cell, feet) => {
    expect(read('Height', cell).height).toBeCloseTo(feet * FOOT, 12);
  });

  it('in meters is read in SI', () => {
    expect(read('Height', '4.2 m', SI).height).toBe(4.2);
  });

  it.each([
    // 0.3048 m in a foot, 12 in., 25.4 mm in an inch.
    [`14'-6"`, SI, '14.5 ft are 4.4196 m'],
    ['4.2 m', US, '4.2 m are 13.7795 ft'],
    ['42 in', US, '42 in. are 3.5 ft'],
    ['42"', US, '42 in. are 3.5 ft'],
    ['1219.2 mm', US, '1219.2 mm are 4 ft'],
    ['1 yd', US, '1 yd is 3 ft'],
    ['120 sf', US, 'ft² measure something else'],
  ] as const)('in another unit is refused with what it comes to: %s', (cell, system, cure) => {
    expect(refused('Height', cell, system)).toContain(`; ${cure}.`);
  });

  it.each([`14'-13"`, `14'-6 1/0"`, `14' high`, '14 x 6', `14'-123"`])('is no other text: %s', (cell) => {
    expect(refused('Height', cell)).toMatch(
      /Accepted: blank, or a number of ft from 0\.00328084 to 3280\.84\.$/,
    );
  });

  it('1200 ft2 are no 1200 ft and 2 in.', () => {
    expect(refused('Height', '1200 ft2')).toContain('ft² measure something else');
  });
});

describe('an age', () => {
  it.each<[string, number]>([
    ['35 days', 35],
    ['35 d', 35],
    ['1 day', 1],
    // 26 days of February after the 2nd, and the 1st and 2nd of March.
    ['2026-02-02', 28],
    ['Feb 2, 2026', 28],
    ['2-Feb-2026', 28],
  ])('is read: %s', (cell, days) => {
    expect(read('Age', cell).age).toBe(days);
  });

  it.each([
    ['5 weeks', '; 5 weeks are 35 days.'],
    ['2 months', '; convert months to days.'],
    ['20000 days', 'from 0 to 19999.'],
    ['2/3/2026', 'or a date written as 2026-03-31, so that its order is known.'],
    ['2026-03-02', 'or a date before the wash.date, 46083.'],
  ])('is refused with its cure: %s', (cell, cure) => {
    expect(refused('Age', cell)).toMatch(new RegExp(`${cure.replace(/\./g, '\\.')}$`));
  });

  it('that is a date in words needs the date of the wash too', () => {
    expect(refused('Age', 'Feb 2, 2026', readFactors(null))).toContain(
      '"Feb 2, 2026" cannot be used. Accepted: a number of days from 0 to 19999; a date only where the factor wash.date',
    );
  });
});

describe('the date of the wash', () => {
  it.each(['2026-03-02', 'March 2, 2026', WASH])('is read as a date: %j', (date) => {
    expect(readFactors([['wash.date', date]]).value('wash.date')).toBe(WASH);
  });

  it('is read from a cell shown as a date', () => {
    const cell = { type: 'FormattedNumber', basicType: 'Double', basicValue: WASH, numberFormat: 'm/d/yyyy' };
    expect(readFactors([['wash.date', cell]]).value('wash.date')).toBe(WASH);
  });

  it('is not text whose order is not known', () => {
    expect(() => readFactors([['wash.date', '3/2/2026']])).toThrow('wash.date');
  });
});

describe('a cell of yes or no', () => {
  it.each<[unknown, boolean]>([
    ['Y', true],
    ['y', true],
    ['N', false],
    ['n', false],
    ['true', true],
    ['FALSE', false],
    [true, true],
  ])('takes %j', (cell, yes) => {
    expect(read('Brushed', cell).brushed).toBe(yes);
    expect(read('Masked', cell).masked).toBe(yes);
  });

  it('is none of mortar: N is a type', () => {
    expect(read('Mortar', 'N').mortar).toBe('N');
    expect(refused('Mortar', 'Y')).toContain('"Y" cannot be used. Accepted: M, S, N, O, or blank.');
  });
});

describe('a count', () => {
  it('may say that it counts each', () => {
    expect(read('Fixtures', '3 ea').fixtures).toBe(3);
    expect(refused('Fixtures', '2.5 ea')).toContain('a whole number from 0 to 1000000.');
    expect(refused('Fixtures', '3 ft')).toContain('ft measure something else');
  });
});
