import { describe, expect, it } from 'vitest';
import { call, column, number, spill } from '../functions/call';

// Coated glass: ceiling 0. 800 ft2, 40 ft long.
const walls = [
  ['Wall', 'Material', 'Area', 'Height', 'Residue'],
  ['Front', 'Coated glass', 800, 20, 'light'],
];

describe('a zone washed with clear water', () => {
  it('has class 0', () => {
    expect(call('CLASS', walls)).toBe(0);
    expect(call('GOVERNING', walls)).toBe(0);
  });

  it('takes rinse water alone: no dwell, so no pre-wet and no cleaner', () => {
    expect(number('WATER', walls, null, null, 'prewet')).toBe(0);
    expect(number('WATER', walls, null, null, 'mix')).toBe(0);
    expect(number('CLEANER', walls)).toBe(0);
    // 10 x sqrt(400 / 4000) gal/min at 8 ft2/min on 800 ft2: 316.23 gal.
    expect(number('WATER', walls)).toBeCloseTo(316.2278, 3);
    expect(number('WATER', walls, null, null, 'rinse')).toBeCloseTo(316.2278, 3);
  });

  it('takes hours of rinsing without patches', () => {
    for (const part of ['prewet', 'apply']) expect(number('CREWHOURS', walls, null, null, part)).toBe(0);
    // 800 / 8 = 100 min of a crew of 2.
    expect(number('CREWHOURS', walls, null, null, 'rinse')).toBeCloseTo((100 * 2) / 60, 9);
    const spilled = spill('SCHEDULE', walls);
    for (const heading of ['Pre-wet', 'Passes', 'Patch', 'Wait', 'Patches'])
      expect(column(spilled, heading)[0], heading).toBe(0);
  });

  it('makes up for the class short by scrubbing', () => {
    // Light residue needs class 1: one short, 800 / 60 h.
    expect(number('CREWHOURS', walls, null, null, 'scrub')).toBeCloseTo(800 / 60, 9);
  });

  it('rinses as often as asked', () => {
    expect(number('WATER', walls, null, [['rinse.count', 3]])).toBeCloseTo(3 * 316.2278, 3);
    expect(number('CREWHOURS', walls, null, [['rinse.count', 3]], 'rinse')).toBeCloseTo(10, 9);
  });

  it('is what a chosen class of 0 gives on any wall', () => {
    const brick = [
      ['Wall', 'Material', 'Area'],
      ['A', 'Red clay brick', 800],
    ];
    expect(number('WATER', brick, null, [['cleaner.class', 0]])).toBeCloseTo(316.2278, 3);
  });
});
