import { describe, expect, it } from 'vitest';
import { column, number, spill } from '../functions/call';

// Applied at 20 and rinsed at 10 ft2/min, dwell 8 to 10 min: min(10 x 10, (10 - 8) / (1/10 - 1/20)) = min(100, 40) = 40
// ft2, applied in 2 min and rinsed in 4. The quickest point would have 40 / 20 = 2 min of contact, so 8 - 2 = 6 min of wait.
// Air at saturation does not dry the cleaner. Glazed brick, 1 g, needs the least 2 passes of 2 min: 4 min, which fits
// into the wait of the patch before.
const factors = [
  ['rate.apply', 20],
  ['rate.rinse', 10],
  ['dwell.least', 8],
  ['dwell.most', 10],
  ['weather.humidity', 100],
];
const walls = (area: number): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Residue'],
  ['Entry', 'Glazed brick', area, 'light'],
];
const hours = (area: number, part: string, own: unknown[][] = []): number =>
  number('CREWHOURS', walls(area), null, [...factors, ...own], part);

describe('pre-wetting during the wait', () => {
  it('has the patch and the wait worked out by hand', () => {
    const spilled = spill('SCHEDULE', walls(120), null, factors);
    expect(column(spilled, 'Patch')[0]).toBeCloseTo(40, 9);
    expect(column(spilled, 'Wait')[0]).toBeCloseTo(6, 9);
    expect(column(spilled, 'Patches')[0]).toBe(3);
  });

  it('hides nothing where there is one patch', () => {
    // Pre-wet 4 min, apply 2, wait 6, rinse 4, for a crew of 2.
    expect(hours(40, 'prewet')).toBeCloseTo((4 * 2) / 60, 9);
    expect(hours(40, 'apply')).toBeCloseTo(((2 + 6) * 2) / 60, 9);
    expect(hours(40, 'rinse')).toBeCloseTo((4 * 2) / 60, 9);
  });

  it('uses the waits of all patches but the last', () => {
    // The first two waits of 6 min are filled with 4 min of wetting the next patch, the third is waited out.
    expect(hours(120, 'prewet')).toBeCloseTo((3 * 4 * 2) / 60, 9);
    expect(hours(120, 'apply')).toBeCloseTo(((3 * 2 + 2 + 2 + 6) * 2) / 60, 9);
    expect(hours(120, 'rinse')).toBeCloseTo((3 * 4 * 2) / 60, 9);
  });

  it('hides no more than the wait is long', () => {
    // 5 passes of 2 min are 10 min: each of the two first waits is filled whole, and 4 min of wetting are left over.
    const own = [['prewet.leastPasses', 5]];
    expect(hours(120, 'prewet', own)).toBeCloseTo((3 * 10 * 2) / 60, 9);
    expect(hours(120, 'apply', own)).toBeCloseTo(((3 * 2 + 0 + 0 + 6) * 2) / 60, 9);
  });

  it('rinses each patch as often as asked', () => {
    expect(hours(120, 'rinse', [['rinse.count', 2]])).toBeCloseTo((3 * 4 * 2 * 2) / 60, 9);
  });

  it('applies each coat at the rate of the first', () => {
    expect(hours(120, 'apply', [['cleaner.applications', 2]])).toBeCloseTo(((3 * 4 + 2 + 2 + 6) * 2) / 60, 9);
  });
});
