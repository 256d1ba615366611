import { describe, expect, it } from 'vitest';
import { column, number, spill } from '../functions/call';
import { expectSame } from '../properties/call';

// NIST SP 811 (2008), appendix B.8; ASTM C67 (grams in a minute on 30 in2).
const LITRES_M2_IN_GAL_FT2 = 3.785411784 / 0.09290304;
const KG_M2_IN_GRAM = 0.001 / (30 * 0.00064516);
// In air that is wet nothing dries and nothing is misted; nothing is washed once more.
const PLAIN = [
  ['weather.humidity', 100],
  ['reclean.share', 0],
] as const;

const walls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Openings', 'Residue', 'Masked'],
  ['B1', 'Front', 'Red clay brick', 300, 50, 'moderate', ''],
  ['B2', 'Front', 'Cast stone', 100, '', 'light', ''],
  ['B3', 'Front', 'Coated glass', 80, '', '', 'yes'],
  ['M1', 'Hall', 'Marble', 120, '', 'light', ''],
];

// Front, class 2: 250 + 100 ft2. What the faces do not take up runs off: 1 L/m2 of each pass of pre-wet, the whole mix
// at 70 ft2/gal, the whole rinse of 0.6 gal/ft2. Brick of 20 g and cast stone of 3 g have the least 2 passes.
const FRONT = (350 * 2) / LITRES_M2_IN_GAL_FT2 + 350 / 70 + 350 * 0.6;
// Hall, class 0: the rinse alone.
const HALL = 120 * 0.6;

describe('runoff to collect', () => {
  it.each([
    ['Front', FRONT],
    ['Hall', HALL],
    [null, FRONT + HALL],
  ])('zone %s: all that is applied and not taken up', (zone, worked) => {
    expectSame(number('RUNOFF', walls, zone, PLAIN), worked, 1e-9, 'runoff');
  });

  it('is water and concentrate less what the faces take up', () => {
    // Half of 20 g and of 3 g at 1 min, twice that in the 4 min of 2 passes.
    const takenUp = ((250 * 10 + 100 * 1.5) * KG_M2_IN_GRAM * Math.sqrt(4)) / LITRES_M2_IN_GAL_FT2;
    const applied = number('WATER', walls, 'Front', PLAIN) + number('CLEANER', walls, 'Front', PLAIN);
    expectSame(number('RUNOFF', walls, 'Front', PLAIN), applied - takenUp, 1e-9, 'runoff');
  });

  it.each([0, 35, 100])('of which %i %% is captured', (percent) => {
    const captured = number('RUNOFF', walls, 'Front', [...PLAIN, ['runoff.captured', percent]]);
    if (percent === 0) expect(captured).toBe(0);
    else expectSame(captured, (FRONT * percent) / 100, 1e-9, 'captured');
  });

  it('counts in litres in SI', () => {
    // The mix is thinner: (3 - (0.3 / 0.517)^2) / (2 x 0.3 / 0.517), squared, are 5.3 min of pre-wet, so 3 passes of brick.
    // 350 m2: 2 L/m2 of the passes and 1 more on brick, the mix of 350 / 2.5 L, 15 L/m2 of rinse.
    const si = [...PLAIN, ['units', 'SI'], ['cleaner.coverage', 2.5], ['rinse.perArea', 15]];
    expectSame(number('RUNOFF', walls, 'Front', si), 350 * 2 + 250 + 140 + 350 * 15, 1e-9, 'runoff');
  });

  it('stands in SCHEDULE a zone, and in WALLROWS a row', () => {
    const [front, hall] = column(spill('SCHEDULE', walls, null, PLAIN), 'Runoff') as number[];
    expectSame(front ?? NaN, FRONT, 1e-9, 'front');
    expectSame(hall ?? NaN, HALL, 1e-9, 'hall');
    const rows = column(spill('WALLROWS', walls, 'Front', PLAIN), 'Runoff') as number[];
    // Run-off, mix and rinse go by area alone.
    expectSame(rows[0] ?? NaN, (FRONT * 250) / 350, 1e-9, 'brick');
    expectSame(rows[1] ?? NaN, (FRONT * 100) / 350, 1e-9, 'stone');
    expect(rows[2]).toBe(0);
  });
});
