import { describe, expect, it } from 'vitest';
import { column, number, spill } from '../functions/call';

const walls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Residue'],
  ['A', 'North', 'Red clay brick', 4000, 20, 'heavy'],
  ['B', 'South', 'Limestone', 700, 10, 'moderate'],
  ['C', 'South', 'Red clay brick', 55, 5, 'light'],
];

describe('set-up and days', () => {
  it.each([
    ['the starting crew', 2, 8, 0.75],
    ['a larger crew with long days', 5, 10, 1.25],
    ['no set-up', 1, 7, 0],
  ])('fill whole shifts with %s: days x crew x shift = crew-hours', (_, crew, shift, perDay) => {
    const factors = [
      ['crew', crew],
      ['shift', shift],
      ['setup.perDay', perDay],
    ];
    const spilled = spill('SCHEDULE', walls, null, factors);
    const days = column(spilled, 'Days') as number[];
    const hours = column(spilled, 'Crew-hours') as number[];
    const setUps = column(spilled, 'Set-up hours') as number[];
    expect(days).toHaveLength(2);
    days.forEach((value, zone) => {
      expect(value).toBeGreaterThan(0);
      expect((value * crew * shift) / (hours[zone] ?? NaN)).toBeCloseTo(1, 12);
      expect(setUps[zone]).toBeCloseTo(value * perDay * crew, 9);
    });
  });

  it('are unrounded, with whole calendar days beside', () => {
    const spilled = spill('SCHEDULE', walls);
    const days = column(spilled, 'Days') as number[];
    expect(days.every((value) => !Number.isInteger(value))).toBe(true);
    expect(column(spilled, 'Calendar days')).toEqual(days.map((value) => Math.floor(value) + 1));
  });

  it('add up over the zones', () => {
    const part = (zone: string): number => number('CREWHOURS', walls, zone, null, 'setup');
    expect(part('')).toBeCloseTo(part('North') + part('South'), 12);
  });
});
