import { describe, expect, it } from 'vitest';
import { preWet, preWetRules, type PreWet } from '../../src/estimate/pre-wet';
import { factorsOf, wallRow, type Lines } from '../core/made';

// 1 g on 30 in2: 0.001 kg on 30 x 0.00064516 m2 (ASTM C67; 1 in2 by NIST SP 811, appendix B.8).
const KG_M2_IN_GRAM = 0.001 / (30 * 0.00064516);
// 1 gal on 1 ft2 is 3.785411784 / 0.09290304 L/m2 (NIST SP 811).
const L_M2_IN_GAL_FT2 = 3.785411784 / 0.09290304;

function wetting(suction: number, lines: Lines = [], material = 'Red clay brick'): PreWet {
  const factors = factorsOf(lines);
  return preWet(wallRow({ area: 100, suction, material }, 0, factors), preWetRules(factors));
}

/** The time after which no more than `spare` is taken up in the dwell, found by halving. */
function byHalving(s: number, dwell: number, spare: number): number {
  const uptake = (t: number): number => s * (Math.sqrt(t + dwell) - Math.sqrt(t));
  if (uptake(0) <= spare) return 0;
  let low = 0;
  let high = 1e6;
  for (let n = 0; n < 200; n++) {
    const middle = (low + high) / 2;
    if (uptake(middle) > spare) low = middle;
    else high = middle;
  }
  return high;
}

describe('time of pre-wetting', () => {
  it.each([
    [20, 3, 70, 0.1],
    [25, 5, 70, 0.1],
    [40, 2, 50, 0.2],
    [15, 10, 100, 0.1],
    [3, 3, 70, 0.1],
  ])(
    'suction %i g, minimum dwell %i min, %i ft2/gal, film %d: as found by halving',
    (suction, dwell, coverage, film) => {
      const own: Lines = [
        ['dwell.least', dwell],
        ['dwell.most', 60],
        ['cleaner.coverage', coverage],
        ['weather.film', film],
        ['prewet.fieldShare', 0.5],
        ['prewet.capacity', 200],
      ];
      const worked = byHalving(suction * KG_M2_IN_GRAM * 0.5, dwell, L_M2_IN_GAL_FT2 / coverage - film);
      expect(Math.abs(wetting(suction, own).needed - worked)).toBeLessThanOrEqual(1e-7 * Math.max(1, worked));
    },
  );

  it('is none for glass, which takes up nothing, and the least passes run off', () => {
    const glass = wetting(0, [['prewet.runoffPerPass', 1]], 'Plain glass');
    expect(glass).toMatchObject({ needed: 0, passes: 2, absorbed: 0, water: 2 });
  });

  it('is until the unit is full where the mix leaves nothing to spare, and never longer', () => {
    const s = 60 * KG_M2_IN_GRAM * 0.5;
    const full = (14 / s) ** 2;
    expect(wetting(60, [['weather.film', 5]]).needed).toBeCloseTo(full, 9);
    expect(
      wetting(200, [
        ['dwell.least', 5],
        ['prewet.capacity', 1],
      ]).needed,
    ).toBeCloseTo((1 / (200 * KG_M2_IN_GRAM * 0.5)) ** 2, 9);
  });
});

describe('passes of plain water', () => {
  const s = 60 * KG_M2_IN_GRAM * 0.5;
  const needed = byHalving(s, 3, L_M2_IN_GAL_FT2 / 70 - 0.1);

  it('are whole, a full last one not rounded up', () => {
    expect(wetting(60, [['prewet.passContact', needed / 4]]).passes).toBe(4);
    expect(wetting(60, [['prewet.passContact', needed / 4.01]]).passes).toBe(5);
    expect(
      wetting(60, [
        ['prewet.passContact', needed / 4],
        ['prewet.leastPasses', 6],
      ]).passes,
    ).toBe(6);
  });

  it('are at most so many, and those wanted are told', () => {
    const seen = wetting(60, [
      ['prewet.passContact', needed / 9.5],
      ['prewet.mostPasses', 6],
    ]);
    expect(seen.passes).toBe(6);
    expect(seen.wanted).toBe(10);
  });

  it('take up no more than the unit holds', () => {
    const seen = wetting(200, [
      ['prewet.capacity', 3],
      ['prewet.runoffPerPass', 1],
    ]);
    expect(seen.absorbed).toBe(3);
    expect(seen.water).toBe(3 + seen.passes);
  });
});
