import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { refusal } from '../functions/call';

const refused = (...rows: unknown[][]): string => refusal(() => readFactors(rows)).message;

describe('a factor of the user', () => {
  it.each<[string, unknown, string, string]>([
    ['team.size', 2.5, '2.5', 'a whole number from 1 to 20 people'],
    ['team.size', 0, '0', 'a whole number from 1 to 20 people'],
    ['team.size', 'two', '"two"', 'a whole number from 1 to 20 people'],
    ['team.size', '1,5', '"1,5" (a number stored as text)', 'a whole number from 1 to 20 people'],
    ['team.size', true, 'TRUE', 'a whole number from 1 to 20 people'],
    ['team.size', '#REF!', 'the error #REF!', 'a whole number from 1 to 20 people'],
    ['team.size', NaN, 'NaN', 'a whole number from 1 to 20 people'],
    ['cleaner.applications', 1.5, '1.5', 'a whole number from 1 to 10'],
    ['shift', 25, '25', 'a number from 1 to 24 hours per day'],
    ['dwell.least', '2025-01-05', '"2025-01-05" (a date)', 'a number from 0 to 120 minutes'],
    ['mask.lap', -1, '-1', 'a number from 0 to 120 in'],
    ['tape.waste', 301, '301', 'a number from 0 to 300%'],
    ['rate.apply', 0, '0', 'a number above 0 and at most 1000 ft² per minute'],
    ['weather.air', 201, '201', 'a number from -40 to 200 °F'],
    ['nozzle.pressure', Infinity, 'Infinity', 'a number above 0 and at most 5000 psi'],
  ])('%s of %j is refused', (id, value, seen, accepted) => {
    expect(refused(['Factor', 'Value'], [id, value])).toBe(
      `Row 2 (${id}), column value: ${seen} cannot be used. Accepted: ${accepted}.`,
    );
  });

  it('has its range in the units of the user', () => {
    // 1000 ft2/min x 0.09290304; 120 in. x 25.4; 200 degF are 840/9 degC.
    expect(refused(['units', 'SI'], ['rate.apply', 93])).toContain(
      'above 0 and at most 92.903 m² per minute',
    );
    expect(refused(['units', 'SI'], ['mask.lap', 3049])).toContain('a number from 0 to 3048 mm');
    expect(refused(['units', 'SI'], ['weather.air', 94])).toContain('a number from -40 to 93.3333 °C');
  });

  it('is taken at the very ends of its range, in both systems', () => {
    expect(readFactors([['mask.lap', 120]]).value('mask.lap')).toBeCloseTo(120 * 0.0254, 12);
    const si = [
      ['units', 'SI'],
      ['mask.lap', 3048],
    ];
    expect(readFactors(si).value('mask.lap')).toBeCloseTo(3.048, 12);
  });

  it('is read in the units of the user', () => {
    expect(readFactors([['rate.wet', 10]]).value('rate.wet')).toBeCloseTo(0.9290304, 12);
    expect(
      readFactors([
        ['units', 'US'],
        ['nozzle.distance', 10],
      ]).value('nozzle.distance'),
    ).toBeCloseTo(0.254, 12);
    const si = readFactors([
      ['rate.wet', 0.9290304],
      ['Units', 'si'],
      ['nozzle.distance', 254],
    ]);
    expect(si.system).toBe('SI');
    expect(si.value('rate.wet')).toBeCloseTo(0.9290304, 12);
    expect(si.value('nozzle.distance')).toBeCloseTo(0.254, 12);
  });

  it('keeps its starting value where it is left blank or says start, while 0 is 0', () => {
    for (const blank of ['', null, undefined, 'start', ' Start ']) {
      const inForce = readFactors([
        ['mask.lap', blank],
        ['weather.air', blank],
        ['access.kind', blank],
        ['price.water', blank],
        ['cleaner.class', blank],
        ['material.red-brick.suction', blank],
      ]);
      expect(inForce.value('mask.lap')).toBeCloseTo(6 * 0.0254, 12);
      // 68 degF.
      expect(inForce.value('weather.air')).toBeCloseTo(20, 9);
      expect(inForce.chosenClass).toBeUndefined();
      for (const id of ['mask.lap', 'weather.air', 'access.kind', 'price.water'] as const)
        expect(inForce.overridden(id)).toBe(false);
      expect(inForce.materials.flatMap(({ overridden }) => overridden)).toEqual([]);
    }
    expect(readFactors([['mask.lap', 0]]).value('mask.lap')).toBe(0);
    expect(readFactors([['cleaner.class', 0]]).chosenClass).toBe(0);
  });

  it('is marked as an override, also where it equals the starting value', () => {
    const inForce = readFactors([['team.size', 2]]);
    expect(inForce.overridden('team.size')).toBe(true);
    expect(inForce.changed('team.size')).toBe(false);
    expect(inForce.overridden('shift')).toBe(false);
    expect(readFactors([['team.size', 3]]).changed('team.size')).toBe(true);
    // What has no starting value is changed by any; 6 in. are 152.4 mm.
    expect(readFactors([['price.labor', 0]]).changed('price.labor')).toBe(true);
    const si = ['units', 'SI'];
    expect(readFactors([si, ['mask.lap', 152.4]]).changed('mask.lap')).toBe(false);
    expect(readFactors([si, ['mask.lap', 152.5]]).changed('mask.lap')).toBe(true);
  });
});

describe('factors that do not fit together', () => {
  it.each<[string, unknown[][], string]>([
    [
      'a minimum dwell above the most',
      [['dwell.least', 6]],
      'The minimum dwell is longer than the maximum dwell. Accepted: dwell.least at most dwell.most.',
    ],
    [
      'a set-up as long as the shift',
      [
        ['shift', 4],
        ['setup.perDay', 4],
      ],
      'Set-up takes the whole shift. Accepted: setup.perDay less than shift.',
    ],
  ])('are refused: %s', (_, rows, message) => {
    expect(refused(...rows)).toBe(message);
  });

  it('may meet', () => {
    expect(readFactors([['dwell.least', 5]]).value('dwell.least')).toBe(5);
  });
});
