import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { readActuals } from '../../src/actuals/read-actuals';
import { readZones } from '../../src/walls/read-zones';
import { readWalls } from '../../src/walls/read-walls';
import type { WallRow } from '../../src/walls/wall-row';
import { refusal } from '../functions/call';

const FOOT = 0.3048;
const US = readFactors(null);
const SI = readFactors([['units', 'SI']]);
const needed = ['Wall', 'Material', 'Area'];

/** One wall with a further column, as read. */
function read(heading: string, value: number, system = US, headings?: unknown): WallRow {
  const isArea = /^area|^gross/i.test(heading);
  const header = isArea ? ['Wall', 'Material', heading] : [...needed, heading];
  const cells = isArea ? ['South', 'Limestone', value] : ['South', 'Limestone', 5000, value];
  const [row] = readWalls([header, cells], system, headings);
  if (row === undefined) throw new Error('no row');
  return row;
}
const refused = (heading: string, system = US, headings?: unknown): string =>
  refusal(() => read(heading, 50, system, headings)).message;

describe('a heading with the unit in force', () => {
  it.each([
    ...[
      'Area (SF)',
      'Area (sf)',
      'Area SF',
      'Area, SF',
      'Area - SF',
      'Area-SF',
      'AREA [SQ FT]',
      'Area sq. ft.',
    ],
    ...[
      'Area (ft2)',
      'Area ft²',
      'Area (ft^2)',
      'Area SQFT',
      'Area (square feet)',
      'Area (s.f.)',
      'Area\n(SF)',
    ],
  ])('is the column Area: %j', (heading) => {
    expect(read(heading, 50).area).toBeCloseTo(50 * FOOT * FOOT, 12);
  });

  it.each(['Area (m2)', 'Area m²', 'Area, sq m', 'Area (sq. metres)', 'Area SQM', 'Area (sm)'])(
    'is the column Area in SI: %j',
    (heading) => {
      expect(read(heading, 50, SI).area).toBe(50);
    },
  );

  it.each(['Height (ft)', 'Height, ft', 'Height ft.', 'Height (LF)', 'Height feet', "Height (')"])(
    'is the column Height: %j',
    (heading) => {
      expect(read(heading, 12).height).toBeCloseTo(12 * FOOT, 12);
    },
  );

  it.each(['Height (m)', 'Height m', 'Height, meters'])('is the column Height in SI: %j', (heading) => {
    expect(read(heading, 12, SI).height).toBe(12);
  });

  it('is every other column of numbers', () => {
    expect(read('Openings (SF)', 50).openings).toBeCloseTo(50 * FOOT * FOOT, 12);
    expect(read('Opening perimeter, lin. ft.', 50).openingPerimeter).toBeCloseTo(50 * FOOT, 12);
    expect(read('Opening perimeter (lm)', 50, SI).openingPerimeter).toBe(50);
    expect(read('Fixtures (ea.)', 5).fixtures).toBe(5);
    expect(read('Age (days)', 35).age).toBe(35);
    expect(read('Suction (kg/m²)', 1, SI).suction).toBe(1);
    // 30 in2 are 0.01935 m2.
    expect(read('Suction (g/30 in²)', 20).suction).toBeCloseTo(0.02 / (30 * 0.0254 * 0.0254), 12);
    expect(read('Suction (g/(30 in2 min))', 20).suction).toBeCloseTo(0.02 / (30 * 0.0254 * 0.0254), 12);
  });

  it('is read in a mapped heading, wherever the unit stands', () => {
    for (const heading of ['Gross SF', 'Gross (SF) of wall', 'Gross, Sq. Ft.'])
      expect(read(heading, 50, US, [['Area', heading]]).area).toBeCloseTo(50 * FOOT * FOOT, 12);
    expect(read('SF glass', 50, US, [['Openings', 'SF glass']]).openings).toBeCloseTo(50 * FOOT * FOOT, 12);
  });
});

describe('a heading with the unit of the other system', () => {
  it('is refused: the unit stated, the unit in force and the cures', () => {
    expect(refused('Area (SF)', SI)).toBe(
      'Row 1, column Area: the heading "Area (SF)", which states ft², cannot be used. Accepted: m², with the factor units at SI: set the factor units to US, or convert the numbers and change the heading.',
    );
    expect(refused('Height, m')).toBe(
      'Row 1, column Height: the heading "Height, m", which states m, cannot be used. Accepted: ft, with the factor units at US: set the factor units to SI, or convert the numbers and change the heading.',
    );
  });

  it.each([
    ['Gross SF', 'Area', SI],
    ['LF of frame', 'Opening perimeter', SI],
    ['Windows (sq ft)', 'Openings', SI],
    ['Ht ft', 'Height', SI],
    ['IRA g', 'Suction', SI],
    ['Gross m2', 'Area', US],
    ['Ht (m)', 'Height', US],
    ['IRA kg/m2', 'Suction', US],
  ])('is refused where %j is mapped to %s', (heading, ours, system) => {
    expect(refused(heading, system, [[ours, heading]])).toMatch(
      /^Row 1, column .*: the heading ".*", which states .*, cannot be used\. Accepted: .* set the factor units to (US|SI), or convert/,
    );
  });

  it('finds every such column of a bid at once', () => {
    const bid = [
      ['Wall', 'Material', 'Area (SF)', 'Height (ft)', 'Openings (SF)', 'Opening perimeter (LF)'],
      ['South', 'Limestone', 19790, 12, 0, 0],
    ];
    expect(readWalls(bid, US)).toHaveLength(1);
    expect(refusal(() => readWalls(bid, SI)).message).toMatch(/Area \(SF\).*3 more problems were found\.$/);
  });
});

describe('a heading with a unit of another size', () => {
  it.each([
    ['Area (SY)', 'yd²', '1 yd² is 9 ft²'],
    ['Area (SQ)', 'squares', '1 squares is 100 ft²'],
    ['Height (in)', 'in.', '1 in. is 1/12 ft'],
    ['Height, inches', 'in.', '1 in. is 1/12 ft'],
    ['Height (yd)', 'yd', '1 yd is 3 ft'],
    ['Age (weeks)', 'weeks', '1 weeks is 7 days'],
  ])('is refused with its size: %s', (heading, unit, size) => {
    const message = refused(heading);
    expect(message).toContain(`the heading "${heading}", which states ${unit}, cannot be used`);
    expect(message).toContain(`convert the numbers (${size}) and change the heading.`);
  });

  it('is refused in SI too', () => {
    expect(refused('Height (mm)', SI)).toContain('(1 mm is 1/1000 m)');
    expect(refused('Area (cm2)', SI)).toContain('(1 cm² is 1/10000 m²)');
  });
});

describe('a heading with a unit of another measure', () => {
  it('is refused where it is mapped', () => {
    expect(refused('Openings, LF', US, [['Openings', 'Openings, LF']])).toBe(
      'Row 1, column Openings, LF: the heading "Openings, LF", which states ft, cannot be used. Accepted: ft², with the factor units at US: head another column Openings, or change the heading.',
    );
    expect(refused('Elevation (ft)', US, [['Level', 'Elevation (ft)']])).toContain(
      'Accepted: a plain number: head another column Level',
    );
  });

  it('is no column of ours where it is not mapped', () => {
    expect(read('Openings (no.)', 50).openings).toBe(0);
    expect(refusal(() => readWalls([['Wall', 'Material', 'Area (LF)']], US)).message).toContain(
      'no column is headed "Area"',
    );
  });
});

describe('headings', () => {
  const two = (first: string, second: string): unknown[][] => [
    ['Wall', 'Material', first, second],
    ['South', 'Limestone', 100, 9.29],
  ];

  it('of one column in two units are told apart by the units in force', () => {
    const [us] = readWalls(two('Area (SF)', 'Area (m2)'), US);
    const [si] = readWalls(two('Area (SF)', 'Area (m2)'), SI);
    expect(us?.area).toBeCloseTo(9.290304, 12);
    expect(si?.area).toBe(9.29);
  });

  it('that are ours as they are come before those with a unit', () => {
    expect(readWalls(two('Area (SF)', 'Area'), US)[0]?.area).toBeCloseTo(9.29 * FOOT * FOOT, 12);
  });

  it('of one column in one unit twice are refused', () => {
    expect(refusal(() => readWalls(two('Area (SF)', 'Area, sq ft'), US)).message).toContain(
      'the heading "Area" twice',
    );
  });

  it('without a unit, and letters that are no unit, are as before', () => {
    expect(read('Gross', 50, US, [['Area', 'Gross']]).area).toBeCloseTo(50 * FOOT * FOOT, 12);
    expect(read('Gross M', 50, US, [['Area', 'Gross M']]).area).toBeCloseTo(50 * FOOT * FOOT, 12);
    expect(read('Windows in wall', 50, US, [['Openings', 'Windows in wall']]).openings).toBeCloseTo(
      50 * FOOT * FOOT,
      12,
    );
  });
});

describe('headings of recorded work', () => {
  const zones = readZones([needed, ['South', 'Limestone', 500]], US);
  const work = (hours: string, water: string, system = US): number | undefined => {
    const range = [
      ['Zone', 'Task', 'Area', hours, water],
      ['', 'rinse', 10, 4, 30],
    ];
    return readActuals(range, zones, system.system)[0]?.water;
  };

  it('state units as those of the walls do', () => {
    // 1 US gallon is 3.785411784 L.
    expect(work('Hours', 'Water (gal)')).toBeCloseTo(30 * 3.785411784, 9);
    expect(work('Hours (labor-hours)', 'Water, L', SI)).toBe(30);
    expect(refusal(() => work('Hours', 'Water (gal)', SI)).message).toContain('set the factor units to US');
    expect(refusal(() => work('Hours (crew-hours)', 'Water')).message).toBe(
      'Row 1, column Hours: the heading "Hours (crew-hours)", which states crew-hours, cannot be used. Accepted: labor-hours, with the factor units at US: convert the numbers and change the heading.',
    );
  });
});
