import { describe, expect, it } from 'vitest';
import { catalogue } from '../../functions/catalogue';
import { plainFunctions } from '../../functions/plain-numbers';
import { call, refusal, spill } from '../functions/call';
import { expectSame } from '../properties/call';

// NIST SP 811 (2008), appendix B.8.
const GALLON_L = 3.785411784;
const FOOT2_M2 = 0.09290304;
const POUND_KG = 0.45359237;
const PSI_KPA = 6.894757;
const INCH_MM = 25.4;

/** The lines of a spill: each label with its value and unit. */
function linesOf(name: string, ...args: readonly unknown[]): Record<string, [value: number, unit: unknown]> {
  return Object.fromEntries(
    spill(name, ...args).map(([label, value, unit]) => [label as string, [Number(value), unit]]),
  );
}

function valueOf(label: string, name: string, ...args: readonly unknown[]): number {
  return linesOf(name, ...args)[label]?.[0] ?? NaN;
}

function expectNear(seen: number, published: number, within: number): void {
  expect(Math.abs(seen / published - 1), `${String(seen)} against ${String(published)}`).toBeLessThan(within);
}

describe('PATCH', () => {
  // Contact of the first point: area / apply + wait; of the last: wait + area / rinse. The larger is the maximum dwell at
  // the largest patch, or the two span the dwell.
  it.each([
    // 5 min x 8 ft2/min = 40, less than 2 min / (1/8 - 1/10) = 80.
    [
      [10, 8, 3, 5],
      [40, 0, 4, 5],
    ],
    // 1 min / (1/8 - 1/10) = 40, less than 6 x 8 = 48; 40 / 10 = 4 min are a minute short of 5.
    [
      [10, 8, 5, 6],
      [40, 1, 5, 6],
    ],
    // Rinsed faster than applied, the first point is the one in contact longest.
    [
      [8, 10, 5, 6],
      [40, 1, 6, 5],
    ],
    // At equal rates every point is in contact alike.
    [
      [10, 10, 4, 6],
      [60, 0, 6, 6],
    ],
    [
      [10, 10, 4, 4],
      [40, 0, 4, 4],
    ],
    // It dries after 4.5 min: 4.5 x 8 = 36.
    [
      [10, 8, 3, 5, 4.5],
      [36, 0, 3.6, 4.5],
    ],
    [
      [10, 8, 3, 5, 1e9],
      [40, 0, 4, 5],
    ],
    // No minimum dwell: nothing to wait for.
    [
      [10, 8, 0, 5],
      [40, 0, 4, 5],
    ],
  ])('%j is %j', (args, [area, wait, first, last]) => {
    const seen = spill('PATCH', ...args);
    expect(seen.map(([label, , unit]) => [label, unit])).toEqual([
      ['Patch', 'ft²'],
      ['Wait', 'min'],
      ['Contact at the first point', 'min'],
      ['Contact at the last point', 'min'],
    ]);
    [area, wait, first, last].forEach((by = NaN, line) => {
      expect(seen[line]?.[1]).toBeCloseTo(by, 9);
    });
  });

  it('is in square metres in SI', () => {
    expect(linesOf('PATCH', 1, 0.8, 3, 5, null, 'SI')['Patch']).toEqual([4, 'm²']);
    const us = valueOf('Patch', 'PATCH', 10, 8, 3, 5);
    const si = valueOf('Patch', 'PATCH', 10 * FOOT2_M2, 8 * FOOT2_M2, 3, 5, '', 'SI');
    expectSame(si, us * FOOT2_M2, 1e-12, 'patch');
  });

  it.each([
    ['it dries before the minimum dwell', [10, 8, 3, 5, 2]],
    ['the minimum dwell is the most, at rates that differ', [10, 8, 4, 4]],
    ['the minimum dwell is longer than the most', [10, 8, 6, 5]],
  ])('has no window where %s', (_, args) => {
    const { type, message } = refusal(() => call('PATCH', ...args));
    expect(type).toBe('nothing');
    expect(message).toContain('No contact window');
  });
});

describe('NOZZLE', () => {
  it.each([
    // Charts: number 8 gives 4 gal/min at 1000 psi; 5 gal/min at 2500 psi asks for 6.32.
    [8, 1000, 4],
    [6.32, 2500, 5],
    // By definition the number is the flow at 4000 psi.
    [10, 4000, 10],
    [10, 400, Math.sqrt(10)],
  ])('number %f at %i psi gives %f gal/min', (number, pressure, flow) => {
    expectNear(valueOf('Flow', 'NOZZLE', number, pressure), flow, 0.001);
  });

  it.each([
    [25, 12, 5.32],
    [40, 12, 8.74],
  ])('a fan of %i degrees at %i in. is %f in. wide', (angle, distance, width) => {
    expectNear(valueOf('Fan width', 'NOZZLE', 10, 400, angle, distance), width, 0.001);
  });

  it('pushes back with 6.65 lbf at 4 gal/min and 1000 psi, as the momentum of its jet says', () => {
    expectNear(valueOf('Reaction force', 'NOZZLE', 8, 1000), 6.65, 0.001);
    // F = density x flow x speed, speed = sqrt(2 P / density), 117.5 m/s with water of 998 kg/m3.
    const speed = Math.sqrt((2 * 1000 * PSI_KPA * 1000) / 998);
    expect(speed).toBeCloseTo(117.5, 1);
    const newtons = 998 * ((4 * GALLON_L) / 1000 / 60) * speed;
    expectNear(valueOf('Reaction force', 'NOZZLE', 8, 1000 * PSI_KPA, null, null, 'SI'), newtons, 0.002);
  });

  it('has the units of its system', () => {
    const units = (...args: unknown[]) => spill('NOZZLE', ...args).map(([label, , unit]) => [label, unit]);
    expect(units(10, 400, 40, 12)).toEqual([
      ['Flow', 'gal/min'],
      ['Fan width', 'in'],
      ['Reaction force', 'lbf'],
    ]);
    expect(units(10, 2758, 40, 300, 'SI')).toEqual([
      ['Flow', 'L/min'],
      ['Fan width', 'mm'],
      ['Reaction force', 'N'],
    ]);
    const si = linesOf('NOZZLE', 8, 1000 * PSI_KPA, 25, 12 * INCH_MM, 'SI');
    expectNear(si['Flow']?.[0] ?? NaN, 4 * GALLON_L, 1e-6);
    expectNear(si['Fan width']?.[0] ?? NaN, 5.32 * INCH_MM, 0.001);
  });

  it.each([[[]], [[null, null]], [['', '']]])(
    'takes 40 degrees and 20 in. where they are left out (%j)',
    (left) => {
      const seen = spill('NOZZLE', 10, 400, ...left);
      expect(seen).toEqual(spill('NOZZLE', 10, 400, 40, 20));
      expect(valueOf('Fan width', 'NOZZLE', 10, 400, null, null, 'SI')).toBeCloseTo(
        2 * 20 * Math.tan((20 * Math.PI) / 180) * INCH_MM,
        6,
      );
    },
  );
});

describe('DRYING', () => {
  it.each([
    // Uno 1998 after ACI 305R; its US equation has rounded coefficients of its own and lies 4% above the SI one. Then a
    // hand calculation: 5 x (38^2.5 - 0.5 x 38^2.5) x 14 x 1e-6.
    ['SI', [27, 31, 0.5, 19], 1.15, 0.005],
    ['US', [80, 87, 0.5, 12], 0.24, 0.05],
    ['SI', [20, 20, 0.5, 10], 0.3115, 0.0005],
  ])('%s, %j: %f evaporates', (system, weather, published, within) => {
    expectNear(valueOf('Evaporation', 'DRYING', ...weather, null, system), published, within);
  });

  it('dries a film of 0.1 mm in 19.3 min at 20 °C, 50%, 10 km/h, and a film of 0.25 mm in 2.5 times that', () => {
    expectNear(valueOf('Time to dry', 'DRYING', 20, 20, 0.5, 10, 0.1, 'SI'), 19.3, 0.003);
    expectNear(valueOf('Time to dry', 'DRYING', 20, 20, 0.5, 10, 0.25, 'SI'), 2.5 * 19.3, 0.003);
  });

  it('takes a film of 0.1 mm where it is left out, in either system', () => {
    expect(spill('DRYING', 20, 20, 0.5, 10, '', 'SI')).toEqual(spill('DRYING', 20, 20, 0.5, 10, 0.1, 'SI'));
    expect(spill('DRYING', 68, 68, 0.5, 6)).toEqual(spill('DRYING', 68, 68, 0.5, 6, 0.1, 'US'));
  });

  it('tells the same weather alike in both systems', () => {
    const si = linesOf('DRYING', 20, 25, 0.4, 16.09344, null, 'SI');
    const us = linesOf('DRYING', 68, 77, 0.4, 10);
    expect([si['Evaporation']?.[1], us['Evaporation']?.[1]]).toEqual(['kg/(m² h)', 'lb/(ft² h)']);
    expectSame(
      (us['Evaporation']?.[0] ?? NaN) * (POUND_KG / FOOT2_M2),
      si['Evaporation']?.[0] ?? NaN,
      1e-9,
      'evaporation',
    );
    expectSame(us['Time to dry']?.[0] ?? NaN, si['Time to dry']?.[0] ?? NaN, 1e-9, 'time');
  });

  it.each([
    ['in saturated air as warm as the face', [68, 68, 1, 6]],
    ['on a face colder than the dew of the air', [90, 50, 0.9, 6]],
  ])('nothing dries %s', (_, args) => {
    const { type, message } = refusal(() => call('DRYING', ...args));
    expect(type).toBe('nothing');
    expect(message).toContain('Nothing evaporates');
  });
});

describe('a number that cannot be used', () => {
  const good: Readonly<Record<string, readonly unknown[]>> = {
    PATCH: [10, 8, 3, 5, 60],
    NOZZLE: [10, 400, 40, 12],
    DRYING: [68, 68, 0.5, 6, 0.1],
  };
  const names: Readonly<Record<string, readonly string[]>> = {
    PATCH: ['applyRate', 'rinseRate', 'leastDwell', 'mostDwell', 'timeToDry'],
    NOZZLE: ['number', 'pressure', 'angle', 'distance'],
    DRYING: ['air', 'surface', 'humidity', 'wind', 'film'],
  };
  const arguments_ = Object.entries(names).flatMap(([name, of]) =>
    of.map((argument, place) => [name, argument, place] as const),
  );

  it.each(arguments_)('%s, %s: text, number as text, date, error, TRUE', (name, argument, place) => {
    for (const bad of ['ten', '12,5', '2026-01-05', '#DIV/0!', true]) {
      const args = (good[name] ?? []).map((value, index) => (index === place ? bad : value));
      const { type, message } = refusal(() => call(name, ...args));
      expect(type).toBe('input');
      expect(message).toContain(argument);
      expect(message).toContain(bad === true ? 'TRUE' : String(bad));
      expect(message).toContain('Accepted:');
    }
  });

  it.each([
    ['PATCH', 0, 0],
    ['PATCH', 1, -8],
    ['PATCH', 2, -1],
    ['PATCH', 3, 0],
    ['PATCH', 4, 0],
    ['NOZZLE', 0, 0],
    ['NOZZLE', 1, -400],
    ['NOZZLE', 2, -40],
    // A fan of more than half a turn has no width.
    ['NOZZLE', 2, 200],
    ['NOZZLE', 3, -1],
    ['DRYING', 2, -0.1],
    // Per cent typed for a fraction.
    ['DRYING', 2, 50],
    ['DRYING', 3, -1],
    ['DRYING', 4, 0],
    ['DRYING', 0, -400],
  ])('%s, argument %i: %f is out of range', (name, place, bad) => {
    const args = (good[name] ?? []).map((value, index) => (index === place ? bad : value));
    const { type, message } = refusal(() => call(name, ...args));
    expect(type).toBe('input');
    expect(message).toContain(names[name]?.[place]);
    expect(message).toContain(String(bad));
  });

  it('has its range told in the units of the system', () => {
    expect(refusal(() => call('NOZZLE', 10, -1)).message).toContain('5000 psi');
    expect(refusal(() => call('NOZZLE', 10, -1, null, null, 'SI')).message).toContain('34473.8 kPa');
    expect(refusal(() => call('DRYING', 20, 20, 50, 10, null, 'SI')).message).toContain(
      'a number from 0 to 1',
    );
  });

  it('is none among units: US or SI, in any spelling', () => {
    for (const [name, args] of Object.entries(good)) {
      // 68 is too hot an air in degrees C.
      const both = args.map((value) => (value === 68 ? 40 : value));
      const of = (units: unknown) => spill(name, ...both, units);
      expect(of('us')).toEqual(of('US'));
      expect(of(null)).toEqual(of('US'));
      expect(of(' Si ')).toEqual(of('SI'));
      expect(of('SI')).not.toEqual(of('US'));
      expect(refusal(() => of('metric'))).toEqual({
        type: 'input',
        message: expect.stringContaining('US, SI') as string,
      });
    }
  });
});

it.each(Object.entries(plainFunctions))(
  '%s takes its arguments as the host lists them',
  (name, { takes }) => {
    const listed = catalogue.find((entry) => entry.name === name)?.parameters;
    expect(takes).toEqual(listed?.map((parameter) => parameter.name));
  },
);
