import { describe, expect, it } from 'vitest';
import { column, number, spill } from '../functions/call';

const header = ['Wall', 'Zone', 'Material', 'Area', 'Masked', 'Suction'];
// 1 g on 30 in2: 0.001 kg on 30 x 0.00064516 m2 (ASTM C67; 1 in2 by NIST SP 811, appendix B.8).
const KG_M2_IN_GRAM = 0.001 / (30 * 0.00064516);
const time = (walls: unknown[][], factors: unknown[][] = []): number =>
  column(spill('SCHEDULE', [header, ...walls], null, factors), 'Pre-wet')[0] as number;
const passes = (walls: unknown[][], factors: unknown[][] = []): unknown =>
  column(spill('SCHEDULE', [header, ...walls], null, factors), 'Passes')[0];

/** The time at which the uptake of the dwell has fallen to what may be left, found by halving. */
function byHalving(s: number, dwell: number, left: number): number {
  const uptake = (t: number): number => s * (Math.sqrt(t + dwell) - Math.sqrt(t));
  if (uptake(0) <= left) return 0;
  let low = 0;
  let high = 1e6;
  for (let n = 0; n < 200; n++) {
    const middle = (low + high) / 2;
    if (uptake(middle) > left) low = middle;
    else high = middle;
  }
  return high;
}

describe('time of pre-wetting', () => {
  it.each([
    [20, 5, 1],
    [25, 5, 1],
    [40, 10, 0.5],
    [15, 3, 1],
    [8, 5, 1],
    [120, 30, 2],
  ])('suction %i g, dwell %i min, %d kg/m2 left: as found by halving', (suction, dwell, left) => {
    const worked = byHalving(suction * KG_M2_IN_GRAM, dwell, left);
    const seen = time(
      [['A', '', 'Red clay brick', 100, '', suction]],
      [
        ['dwell.most', dwell],
        ['prewet.residualUptake', left],
      ],
    );
    expect(Math.abs(seen - worked)).toBeLessThanOrEqual(1e-8 * Math.max(1, worked));
  });

  it('has cases on both sides of no time at all', () => {
    expect(byHalving(8 * KG_M2_IN_GRAM, 5, 1)).toBe(0);
    expect(byHalving(20 * KG_M2_IN_GRAM, 5, 1)).toBeGreaterThan(4);
  });

  it('is none for glass, which takes up nothing', () => {
    const glass = ['A', '', 'Plain glass', 100, '', ''];
    expect(time([glass])).toBe(0);
    expect(passes([glass])).toBe(2);
    // Two passes run off, 2 L/m2, and nothing is taken up.
    const si = [['units', 'SI']];
    expect(number('WATER', [header, glass], null, si, 'prewet')).toBeCloseTo(200, 9);
  });

  it('gives whole passes, a full last one not rounded up', () => {
    const brick = [['A', '', 'Red clay brick', 100, '', 20]];
    const t0 = byHalving(20 * KG_M2_IN_GRAM, 5, 1);
    expect(passes(brick, [['prewet.passContact', t0 / 4]])).toBe(4);
    expect(passes(brick, [['prewet.passContact', t0 / 4.01]])).toBe(5);
    expect(passes(brick, [['prewet.leastPasses', 7]])).toBe(7);
  });
});

describe('passes that fill the time to the last second', () => {
  // S = 0.8 and 2.4 kg/m2 left: L/S = 3, ((15 - 9) / 6)^2 = 1 min and ((21 - 9) / 6)^2 = 4 min. In the arithmetic of the
  // machine 2.4 / 0.8 is a last digit less than 3, the time a last digit more, and that may not cost a pass.
  it.each([
    [15, 1, 1],
    [15, 0.5, 2],
    [15, 0.1, 10],
    [21, 1, 4],
    [21, 0.5, 8],
    [21, 0.1, 40],
  ])('dwell %i min in passes of %d min: %i', (dwell, pass, worked) => {
    const factors = [
      ['units', 'SI'],
      ['dwell.most', dwell],
      ['prewet.residualUptake', 2.4],
      ['prewet.passContact', pass],
      ['prewet.leastPasses', 0],
    ];
    expect(2.4 / 0.8).toBeLessThan(3);
    expect(passes([['A', '', 'Red clay brick', 100, '', 0.8]], factors)).toBe(worked);
  });
});

describe('pre-wet of a zone', () => {
  // Sand-faced brick, 25 g, is thirstier than red, 20 g: ((5 - 0.59937) / 1.54838)^2 = 8.08 min, 5 passes of 2 min.
  const brick = ['A', '', 'Red clay brick', 100, '', ''];
  const sand = ['B', '', 'Sand-faced brick', 50, '', ''];

  it('follows the washed row with the highest suction', () => {
    expect(time([brick, sand])).toBeCloseTo(8.08, 2);
    expect(passes([brick, sand])).toBe(5);
    expect(passes([sand, brick])).toBe(5);
    const masked = sand.with(4, 'yes');
    expect(passes([brick, masked])).toBe(3);
  });

  it('gives each row the water of its own suction', () => {
    const spilled = spill('WALLROWS', [header, brick, sand], null, [['units', 'SI']]);
    // 10 min wet: 100 m2 x 20 g x sqrt 10 and 50 m2 x 25 g x sqrt 10, with 5 L/m2 run off.
    const worked = [
      100 * (20 * KG_M2_IN_GRAM * Math.sqrt(10) + 5),
      50 * (25 * KG_M2_IN_GRAM * Math.sqrt(10) + 5),
    ];
    const seen = column(spilled, 'Pre-wet water') as number[];
    seen.forEach((value, row) => {
      expect(value / (worked[row] ?? NaN)).toBeCloseTo(1, 10);
    });
  });

  it("takes a measured suction in place of the material's, higher or lower", () => {
    expect(passes([brick.with(5, 25)])).toBe(5);
    expect(passes([sand.with(5, 20)])).toBe(3);
    // In SI the measured suction is in kg/m2.
    const si = spill('SCHEDULE', [header, brick.with(5, 25 * KG_M2_IN_GRAM)], null, [['units', 'SI']]);
    expect(column(si, 'Passes')[0]).toBe(5);
  });
});
