import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TraceLine } from '../../src/trace/recorder';
import { ownFactors, rangeOf, RUNS, walls as madeWalls } from '../properties/walls';
import { jobs, mixedSi, mixedUs } from './jobs';
import { once, record, replay } from './replay';
import { conversionsAmong, replayUnits } from './unit-replay';

function numbersAmong(lines: readonly TraceLine[]): TraceLine[] {
  return lines.filter(({ value }) => !Number.isNaN(value));
}

describe.each(Object.entries(jobs))('%s', (_, job) => {
  it('every line comes out in its unit and with its value', () => {
    const { lines } = record(job);
    expect(lines.filter(({ expression }) => expression !== '').length).toBeGreaterThan(100);
    replayUnits(numbersAmong(lines));
  });
});

it('made walls come out in their units too', () => {
  fc.assert(
    fc.property(madeWalls, ownFactors, fc.constantFrom('US', 'SI'), (rows, own, units) => {
      const factors = [['units', units], ...(units === 'US' ? own.map((line) => [...line]) : [])];
      replayUnits(numbersAmong(record({ walls: rangeOf(rows), factors }).lines));
    }),
    { numRuns: RUNS },
  );
});

it.each([
  ['US', mixedUs, 5],
  ['SI', mixedSi, 2],
])('the conversion factors of a record in %s units change the unit and not the quantity', (_, job, least) => {
  const { lines } = record(job);
  const factors = conversionsAmong(lines);
  // The wind's units are numbers here, so that its factor stays a number of its own.
  factors.delete('km/h per mph');
  expect(factors.size).toBeGreaterThanOrEqual(least);
  for (const [unit, one] of factors) expect(one, unit).toBeCloseTo(1, 12);
});

describe('what a wrong line looks like', () => {
  const right = once(() => record(mixedUs, 'Street front').lines);
  const put = (symbol: string, expression: string, unit?: string): (() => void) => {
    const lines = right().map((line) =>
      line.symbol === symbol ? { ...line, expression, unit: unit ?? line.unit } : line,
    );
    return () => {
      replayUnits(lines);
    };
  };

  it('gallons and feet are not added', () => {
    const before = right().findIndex(({ symbol }) => symbol === 'water_r2');
    expect(right().findIndex(({ symbol }) => symbol === 'perimeter_r2')).toBeLessThan(before);
    expect(put('water_r2', 'preWetWater_r2 + perimeter_r2')).toThrow('Units do not match');
  });

  it('a product in place of a quotient comes out in another unit', () => {
    expect(put('rinseTime_r2', 'rinse_perArea * flow_r2')).toThrow('not in min/ft²');
  });

  it('inches taken for feet are right as a quantity, and wrong as the number that is shown', () => {
    const lines = right().map((line) =>
      line.symbol === 'lapArea_r2' ? { ...line, expression: 'perimeter_r2 * mask_lap_given' } : line,
    );
    expect(() => {
      replay(lines);
    }).toThrow('lapArea_r2');
  });

  it('a label of another unit is found out', () => {
    expect(put('flow_r2', 'nozzle_number * ratedFlow * sqrt(pressure_r2 / ratedPressure)', 'ft2')).toThrow(
      'not in ft2',
    );
  });

  it('degrees are not taken for radians', () => {
    expect(put('fanWidth', '2 * nozzle_distance_given * tan(nozzle_angle / 2 / 180)')).toThrow('fanWidth');
  });

  it('a jet coefficient of flow and pressure takes both', () => {
    expect(put('reactionForce_r2', 'jetCoefficient * pressure_r2')).toThrow('not in lbf');
  });

  it('per cent is not taken for a share', () => {
    expect(put('tape_r2', 'perimeter_r2 * (1 + tape_waste_given)')).toThrow('tape_r2');
  });
});
