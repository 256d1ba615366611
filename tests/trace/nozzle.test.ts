import { describe, expect, it } from 'vitest';
import { call, lines } from '../properties/call';

const walls = [
  ['Wall', 'Material', 'Area'],
  ['A-1', 'Red clay brick', 100],
];
const rad = (degrees: number): number => (degrees * Math.PI) / 180;

/** The lines of TRACE: the fan is the same for every wall, the force goes with the pressure of each. */
const trace = (quantity: string, factors: unknown[][]) =>
  quantity === 'reaction force'
    ? lines('TRACE', quantity, walls, null, factors, null, 'A-1')
    : lines('TRACE', quantity, walls, null, factors);

/** What NOZZLE shows under a label. */
function nozzle(label: string, ...args: unknown[]): unknown {
  const spilled = call('NOZZLE', ...args) as unknown[][];
  return spilled.find(([name]) => name === label)?.[1];
}

describe('TRACE of the rinse nozzle in force, in US units', () => {
  const factors = [
    ['units', 'US'],
    ['nozzle.number', 10],
    ['nozzle.pressure', 400],
    ['nozzle.angle', 40],
    ['nozzle.distance', 12],
  ];

  it('the fan is 2 * 12 in * tan(20 deg) = 8.735 in wide', () => {
    const told = trace('fan width', factors);
    expect(told.map((line) => [line['Symbol'], line['Expression'], line['Unit']])).toEqual([
      ['nozzle_distance_given', '', 'in'],
      ['nozzle_angle', '', 'degree'],
      ['radian', '', 'degree'],
      ['fanWidth', '2 * nozzle_distance_given * tan(nozzle_angle / 2 / radian)', 'in'],
    ]);
    const width = told.at(-1)?.['Value'];
    expect(width).toBeCloseTo(8.735, 3);
    expect(width).toBeCloseTo(2 * 12 * Math.tan(rad(20)), 12);
    expect(nozzle('Fan width', 10, 400, 40, 12, 'US')).toBe(width);
  });

  it('the jet pushes back with 0.0526 Q sqrt(P) = 0.0526 * 10 sqrt(400 / 4000) * sqrt(400) = 3.327 lbf', () => {
    const told = trace('reaction force', factors);
    const shown = told.map((line) => [line['Symbol'], line['Expression'], line['Unit']]);
    // What a class that was tried out took from the tables stands before.
    expect(new Set(shown.map((line) => JSON.stringify(line)))).toEqual(
      new Set(
        [
          ['pressure_red_clay_brick', '', 'psi'],
          ['nozzle_pressure', '', 'psi'],
          ['pressure_r2', 'min(nozzle_pressure, pressure_red_clay_brick)', 'psi'],
          ['nozzle_number', '', '1'],
          ['ratedFlow', '', 'gal/min'],
          ['ratedPressure', '', 'psi'],
          ['flow_r2', 'nozzle_number * ratedFlow * sqrt(pressure_r2 / ratedPressure)', 'gal/min'],
          ['jetCoefficient', '', 'lbf/(gal/min psi^0.5)'],
          ['reactionForce_r2', 'jetCoefficient * flow_r2 * sqrt(pressure_r2)', 'lbf'],
        ].map((line) => JSON.stringify(line)),
      ),
    );
    expect(shown.at(-1)?.[0]).toBe('reactionForce_r2');
    const force = told.at(-1)?.['Value'];
    expect(force).toBeCloseTo(3.327, 3);
    expect(force).toBeCloseTo(0.0526 * 10 * Math.sqrt(400 / 4000) * Math.sqrt(400), 12);
    expect(told.find((line) => line['Symbol'] === 'jetCoefficient')?.['Value']).toBeCloseTo(0.0526, 12);
    expect(nozzle('Reaction force', 10, 400, 40, 12, 'US')).toBe(force);
  });

  it('says where each line comes from', () => {
    const kinds = (quantity: string, given: unknown[][]): unknown[][] =>
      trace(quantity, given).map((line) => [line['Symbol'], line['Kind of source']]);
    expect(kinds('fan width', [['nozzle.angle', 25]])).toEqual([
      ['nozzle_distance_given', 'assumption'],
      ['nozzle_angle', 'override'],
      ['radian', 'computed'],
      ['fanWidth', 'computed'],
    ]);
    expect(kinds('reaction force', [])).toEqual(
      expect.arrayContaining([
        ['jetCoefficient', 'computed'],
        ['reactionForce_r2', 'computed'],
      ]),
    );
  });
});

describe('TRACE of the rinse nozzle in force, in SI units', () => {
  const factors = [
    ['units', 'SI'],
    ['nozzle.number', 8],
    ['nozzle.pressure', 3000],
    ['nozzle.angle', 25],
    ['nozzle.distance', 300],
  ];

  it('the fan is 2 * 300 mm * tan(12.5 deg) = 133.02 mm wide', () => {
    const width = trace('fan width', factors).at(-1);
    expect(width).toMatchObject({ Unit: 'mm', Value: expect.closeTo(133.02, 2) as number });
    expect(width?.['Value']).toBeCloseTo(2 * 300 * Math.tan(rad(12.5)), 9);
    expect(nozzle('Fan width', 8, 3000, 25, 300, 'SI')).toBe(width?.['Value']);
  });

  it('the jet pushes back with what 0.0526 Q sqrt(P) gives in lbf, as newtons', () => {
    // NIST SP 811 (2008), appendix B.8: 1 psi = 6.894757 kPa, 1 lbf = 4.448222 N.
    const psi = 3000 / 6.894757;
    const newtons = 0.0526 * 8 * Math.sqrt(psi / 4000) * Math.sqrt(psi) * 4.448222;
    const force = trace('reaction force', factors).at(-1);
    expect(force?.['Unit']).toBe('N');
    expect(Number(force?.['Value']) / newtons).toBeCloseTo(1, 6);
    expect(nozzle('Reaction force', 8, 3000, 25, 300, 'SI')).toBe(force?.['Value']);
  });
});

it('the nozzle of a job with nothing to wash is told too', () => {
  const masked = [
    ['Wall', 'Material', 'Area', 'Masked'],
    ['A-1', 'Red clay brick', 100, 'yes'],
  ];
  const told = lines('TRACE', 'fan width', masked, null, [['nozzle.angle', 90]]);
  // 2 * 20 in * tan(45 deg)
  expect(told.at(-1)?.['Value']).toBeCloseTo(40, 12);
});
