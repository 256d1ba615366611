import { describe, expect, it } from 'vitest';
import { column, number, spill } from '../functions/call';
import { expectSame } from '../properties/call';

// NIST SP 811 (2008), appendix B.8; ASTM C67 (grams in a minute on 30 in2).
const LITRES_M2_IN_GAL_FT2 = 3.785411784 / 0.09290304;
const KG_M2_IN_GRAM = 0.001 / (30 * 0.00064516);
// Number 10 at 400 psi: 10 x sqrt(400 / 4000) gal/min, over 8 ft2/min.
const RINSE = (10 * Math.sqrt(0.1)) / 8;

const walls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Openings', 'Residue', 'Masked'],
  ['B1', 'Front', 'Red clay brick', 300, 50, 'moderate', ''],
  ['B2', 'Front', 'Cast stone', 100, '', 'light', ''],
  ['B3', 'Front', 'Coated glass', 80, '', '', 'yes'],
  ['M1', 'Hall', 'Marble', 120, '', 'light', ''],
];

// Front, class 2: 250 + 100 ft2. Brick of 20 g sets 3 passes for the zone, 6 min wet; cast stone takes up 6 g's worth.
// What the faces do not take up runs off: 3 L/m2 of the passes, the whole mix of 350 / 100 gal, the whole rinse.
const FRONT = (350 * 3) / LITRES_M2_IN_GAL_FT2 + 3.5 + 350 * RINSE;
// Hall, class 0: the rinse alone.
const HALL = 120 * RINSE;

describe('runoff to collect', () => {
  it.each([
    ['Front', FRONT],
    ['Hall', HALL],
    [null, FRONT + HALL],
  ])('zone %s: all that is applied and not taken up', (zone, worked) => {
    expectSame(number('RUNOFF', walls, zone), worked, 1e-9, 'runoff');
  });

  it('is water and concentrate less what the faces take up', () => {
    const takenUp = ((250 * 20 + 100 * 6) * KG_M2_IN_GRAM * Math.sqrt(6)) / LITRES_M2_IN_GAL_FT2;
    const applied = number('WATER', walls, 'Front') + number('CLEANER', walls, 'Front');
    expectSame(number('RUNOFF', walls, 'Front'), applied - takenUp, 1e-9, 'runoff');
  });

  it.each([0, 35, 100])('of which %i %% is captured', (percent) => {
    const captured = number('RUNOFF', walls, 'Front', [['runoff.captured', percent]]);
    if (percent === 0) expect(captured).toBe(0);
    else expectSame(captured, (FRONT * percent) / 100, 1e-9, 'captured');
  });

  it('counts in litres in SI', () => {
    // 350 m2: 3 L/m2 of the passes, the mix of 350 / 2.5 L, 12 L/min over 0.8 m2/min of rinse.
    const si = [
      ['units', 'SI'],
      ['cleaner.coverage', 2.5],
      ['rate.rinse', 0.8],
      ['nozzle.number', (12 / 3.785411784) * Math.sqrt(10)],
    ];
    expectSame(number('RUNOFF', walls, 'Front', si), 350 * 3 + 140 + 350 * 15, 1e-9, 'runoff');
  });

  it('stands in SCHEDULE a zone, and in WALLROWS a row', () => {
    const [front, hall] = column(spill('SCHEDULE', walls), 'Runoff') as number[];
    expectSame(front ?? NaN, FRONT, 1e-9, 'front');
    expectSame(hall ?? NaN, HALL, 1e-9, 'hall');
    const rows = column(spill('WALLROWS', walls, 'Front'), 'Runoff') as number[];
    // Run-off, mix and rinse go by area alone.
    expectSame(rows[0] ?? NaN, (FRONT * 250) / 350, 1e-9, 'brick');
    expectSame(rows[1] ?? NaN, (FRONT * 100) / 350, 1e-9, 'stone');
    expect(rows[2]).toBe(0);
  });
});
