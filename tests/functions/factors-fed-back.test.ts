import { describe, expect, it } from 'vitest';
import { column, spill } from './call';

const header = [
  'Wall',
  'Zone',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Opening perimeter',
  'Fixtures',
  'Mortar',
  'Residue',
];
const walls = [
  header,
  ['A', 'Yard', 'Red clay brick', 600, 20, 60, 64, 3, 'N', 'moderate'],
  ['B', 'Yard', 'Red clay brick', 500, 10, '', '', '', 'S', 'heavy'],
  ['C', 'Court', 'Limestone', 150, 5, '', '', 1, 'O', 'light'],
  ['D', 'Front', 'Coated glass', 400, 20, '', '', '', '', ''],
];

function expectSame(seen: unknown[][], before: unknown[][]): void {
  expect(seen).toHaveLength(before.length);
  before.forEach((line, row) => {
    line.forEach((cell, place) => {
      const again = seen[row]?.[place];
      if (typeof cell !== 'number' || typeof again !== 'number') expect(again).toEqual(cell);
      else expect(Math.abs(again - cell)).toBeLessThanOrEqual(1e-12 * Math.abs(cell));
    });
  });
}

describe.each([
  ['US, the starting values', []],
  ['SI, the starting values', [['units', 'SI']]],
  [
    'US, values of the user',
    [
      ['team.size', 3],
      ['access.kind', 'scaffold'],
      ['scaffold', 'yes'],
      ['rate.apply', 17.3],
      ['weather.air', 77],
      ['cleaner.class', 1],
      ['mask.lap', 7],
    ],
  ],
  [
    'SI, values of the user',
    [
      ['units', 'SI'],
      ['rinse.perArea', 22],
      ['nozzle.pressure', 2500],
      ['prewet.capacity', 12],
    ],
  ],
])('FACTORS fed back as factors: %s', (_, own) => {
  const fed = spill('FACTORS', own);

  it('changes no estimate', () => {
    expectSame(spill('SCHEDULE', walls, null, fed), spill('SCHEDULE', walls, null, own));
    expectSame(spill('WALLROWS', walls, null, fed), spill('WALLROWS', walls, null, own));
  });

  it('spills the same values, now all marked override', () => {
    const again = spill('FACTORS', fed);
    for (const heading of ['Factor', 'Unit', 'Starting value', 'Meaning'])
      expect(column(again, heading)).toEqual(column(fed, heading));
    expectSame([column(again, 'Value')], [column(fed, 'Value')]);
    const kinds = column(again, 'Kind of source').slice(2);
    const values = column(again, 'Value').slice(2);
    // What is not given has no value to feed back.
    expect(kinds).toEqual(values.map((value) => (value === '' ? 'yours to state' : 'override')));
    expect(values.filter((value) => value === '')).toHaveLength(6);
  });
});

describe('FACTORS', () => {
  it('marks as override what the user gave, and nothing else', () => {
    const spilled = spill('FACTORS', [
      ['team.size', 4],
      ['cleaner.class', 2],
      ['mask.lap', 6],
    ]);
    const ids = column(spilled, 'Factor');
    const marked = ids.filter((_id, row) => column(spilled, 'Kind of source')[row] === 'override');
    expect(marked).toEqual(['cleaner.class', 'team.size', 'mask.lap']);
    expect(column(spilled, 'Value')[ids.indexOf('team.size')]).toBe(4);
    expect(column(spilled, 'Starting value')[ids.indexOf('team.size')]).toBe(2);
  });

  it.each([
    ['mask.lap', 6, 'in', 152.4, 'mm'],
    ['weather.air', 68, '°F', 20, '°C'],
    ['tape.waste', 10, '%', 10, '%'],
    ['rate.apply', 10, 'ft²/min', 0.9290304, 'm²/min'],
    ['rate.maskOn', 108, 'ft²/labor-h', 10.03352832, 'm²/labor-h'],
    ['nozzle.pressure', 400, 'psi', 2757.9029, 'kPa'],
    ['cleaner.coverage', 70, 'ft²/gal', (70 * 0.09290304) / 3.785411784, 'm²/L'],
    ['prewet.capacity', 14, 'L/m²', 14, 'L/m²'],
    ['weather.wind', 6.2, 'mph', 9.9779328, 'km/h'],
  ])('shows %s as %d %s, in SI as %d %s', (id, us, usUnit, si, siUnit) => {
    for (const [own, value, unit] of [
      [[], us, usUnit],
      [[['units', 'SI']], si, siUnit],
    ] as const) {
      const spilled = spill('FACTORS', own);
      const row = column(spilled, 'Factor').indexOf(id);
      expect((column(spilled, 'Value')[row] as number) / value).toBeCloseTo(1, 7);
      expect(column(spilled, 'Unit')[row]).toBe(unit);
    }
  });
});
