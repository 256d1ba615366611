import { unit as measure } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { column, number, spill } from './call';

/** A number of one unit in another, as a general library has it. */
const converted = (value: number, from: string, to: string): number => measure(value, from).toNumber(to);
const m2 = (ft2: number): number => converted(ft2, 'sqft', 'm^2');
const m = (ft: number): number => converted(ft, 'ft', 'm');
const kgM2 = (grams: number): number => grams / 1000 / (30 * 0.0254 ** 2);

const header = [
  'Wall',
  'Zone',
  'Level',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Opening perimeter',
  'Fixtures',
  'Residue',
  'Masked',
  'Suction',
];
const us = [
  header,
  ['A', 'Yard', 1, 'Red clay brick', 1234, 17, 123, 150, 2, 'heavy', '', 22],
  ['B', 'Yard', 2, 'Limestone', 90, 3, '', '', '', '', 'yes', ''],
  ['C', 'Court', 1, 'Split-face block', 800, 20, '', '', 1, 'light', '', ''],
];
const si = [
  header,
  ['A', 'Yard', 1, 'Red clay brick', m2(1234), m(17), m2(123), m(150), 2, 'heavy', '', kgM2(22)],
  ['B', 'Yard', 2, 'Limestone', m2(90), m(3), '', '', '', '', 'yes', ''],
  ['C', 'Court', 1, 'Split-face block', m2(800), m(20), '', '', 1, 'light', '', ''],
];
const ownUs = [
  ['units', 'US'],
  ['rate.apply', 12],
  ['scrub.full', 15],
  ['mask.lap', 9],
  ['nozzle.pressure', 350],
  ['access.dropWidth', 15],
  ['weather.air', 75],
  ['cleaner.coverage', 80],
];
const ownSi = [
  ['units', 'SI'],
  ['rate.apply', m2(12)],
  ['scrub.full', m2(15)],
  ['mask.lap', 228.6],
  ['nozzle.pressure', converted(350, 'psi', 'kPa')],
  ['access.dropWidth', m(15)],
  ['weather.air', (75 - 32) / 1.8],
  ['cleaner.coverage', converted(80, 'sqft/gallon', 'm^2/L')],
];

describe.each([
  ['starting values', [['units', 'US']], [['units', 'SI']]],
  ['values of the user', ownUs, ownSi],
])('US in and out is SI in and out converted: %s', (_, usFactors, siFactors) => {
  it.each([
    ['WATER', 'gallon', 'L'],
    ['MASKING', 'sqft', 'm^2'],
    ['TAPE', 'ft', 'm'],
    ['CLEANER', 'gallon', 'L'],
    ['RUNOFF', 'gallon', 'L'],
    ['CREWHOURS', 'hour', 'hour'],
    ['LABORHOURS', 'hour', 'hour'],
  ])('%s', (name, from, to) => {
    for (const zone of ['', 'Yard', 'Court']) {
      const inUs = number(name, us, zone, usFactors);
      const inSi = number(name, si, zone, siFactors);
      if (inUs === 0) expect(inSi).toBe(0);
      else expect(converted(inUs, from, to) / inSi).toBeCloseTo(1, 10);
    }
  });

  it.each([
    ['Class', '', ''],
    ['Most pre-wet passes', '', ''],
    ['Most passes of cleaner', '', ''],
    ['Days', '', ''],
    ['Rental days', '', ''],
    ['Smallest patch', 'sqft', 'm^2'],
    ['Area per labor-hour', 'sqft', 'm^2'],
    ['Washed area', 'sqft', 'm^2'],
    ['Film to buy', 'sqft', 'm^2'],
    ['Rinse water', 'gallon', 'L'],
  ])('SCHEDULE, %s', (heading, from, to) => {
    const inUs = column(spill('SCHEDULE', us, null, usFactors), heading) as number[];
    const inSi = column(spill('SCHEDULE', si, null, siFactors), heading) as number[];
    inUs.forEach((value, zone) => {
      expect((from === '' ? value : converted(value, from, to)) / (inSi[zone] ?? NaN)).toBeCloseTo(1, 10);
    });
  });
});

it('headings name the unit', () => {
  const bySystem = (system: string): unknown[] =>
    spill('SCHEDULE', system === 'US' ? us : si, null, [['units', system]])[0] ?? [];
  expect(bySystem('US')).toEqual(
    expect.arrayContaining(['Water (gal)', 'Masking (ft²)', 'Tape (ft)', 'Crew-hours']),
  );
  expect(bySystem('SI')).toEqual(
    expect.arrayContaining(['Water (L)', 'Masking (m²)', 'Tape (m)', 'Crew-hours']),
  );
});
