import { describe, expect, it } from 'vitest';
import { call, column, number, spill } from '../functions/call';

// Two zones, five rows, US units, every factor at its starting value. Each step is written out in plain numbers; the
// figure behind a step is the same step done on a pocket calculator.

const walls = [
  // prettier-ignore
  ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter', 'Fixtures', 'Mortar', 'Residue', 'Brushed', 'Masked', 'Suction'],
  ['W1', 'Yard', 1, 'Red clay brick', 600, 20, 60, 64, 3, 'N', 'moderate', '', '', ''],
  ['W2', 'Yard', 2, 'Red clay brick', 300, 10, '', '', '', 'S', 'moderate', '', '', ''],
  ['W3', 'Yard', 3, 'Limestone', 80, 2, '', '', '', '', '', '', 'yes', ''],
  ['W4', 'Yard', 2, 'Light clay brick', 200, 10, '', '', '', '', '', 'yes', 'no', 12],
  ['W5', 'Court', 1, 'Ground-face block', 150, 8, '', '', 1, 'N', 'light', '', '', ''],
];

// NIST SP 811 (2008), appendix B.8: 1 ft2 = 0.09290304 m2, 1 gal = 3.785411784 L, so 1 gal/ft2 = 40.745 83 L/m2.
const LITRES_M2_IN_GAL_FT2 = 3.785411784 / 0.09290304;
// ASTM C67: the initial rate of absorption is grams in a minute on 30 in2; 1 in2 = 0.00064516 m2. 1 g = 0.051 667 kg/m2.
const KG_M2_IN_GRAM = 0.001 / (30 * 0.00064516);

// Yard. Ceiling: red brick 3, light brick 2; the limestone is masked and does not count. min(3, 3, 2) = 2.
// Need: W1 moderate 2; W2 moderate 2, and Type S adds 1, 3; W4 blank but brushed, light, 1. Greatest 3.
// Class to use: min(2, 3) = 2. Classes short: W1 0, W2 3 - 2 = 1, W4 0.
const yardArea = 600 - 60 + 300 + 200; // 1040 ft2 washed

// Pre-wet of the yard: its thirstiest rows are the red brick, 20 g.
const redS = 20 * KG_M2_IN_GRAM; // 1.033 34 L/m2 in the first minute
const lightS = 12 * KG_M2_IN_GRAM; // 0.620 00, as measured at W4
const redT0 = ((5 - (1 / redS) ** 2) / (2 * (1 / redS))) ** 2; // ((5 - 0.936 51) / 1.935 47)^2 = 4.4079 min
// Passes of 2 min: 4.4079 / 2 = 2.2, so 3 passes, 6 min wet. Run-off 3 passes x 1 L/m2.
const absorbed = (840 * redS * Math.sqrt(6) + 200 * lightS * Math.sqrt(6)) / LITRES_M2_IN_GAL_FT2; // 59.637 gal
const ranOff = (1040 * 3) / LITRES_M2_IN_GAL_FT2; // 76.572 gal
const yardPrewetWater = absorbed + ranOff; // 136.209 gal

// Mix: 1040 ft2 at 100 ft2/gal = 10.4 gal, of which 1 part in 1 + 8 is concentrate.
const yardConcentrate = 10.4 / 9; // 1.1556 gal
const yardMixWater = 10.4 - 10.4 / 9; // 9.2444 gal

// Rinse: number 10 at 400 psi gives 10 x sqrt(400 / 4000) = 3.1623 gal/min; at 8 ft2/min that is 0.395 28 gal/ft2.
const rinsePerFoot2 = (10 * Math.sqrt(400 / 4000)) / 8;
const yardRinseWater = 1040 * rinsePerFoot2; // 411.096 gal

// Masking: W1 60 ft2 of openings, laps 64 ft x 0.5 ft = 32, fixtures 3 x 4 ft2 = 12. W3 whole: 80 ft2, 80 / 2 = 40 ft
// long, edge 2 x (40 + 2) = 84 ft, laps 84 x 0.5 = 42.
const yardMasking = 60 + 32 + 12 + (80 + 42); // 226 ft2
const yardTape = (64 + 84) * 1.1; // 162.8 ft
const yardFilm = 226 * 1.15; // 259.9 ft2

// Hours, crew of 2. Scraping by residue, moderate 200 and light 400 ft2/h; Type S against N: sqrt(1800 / 750) = 1.5492.
const yardScrape = 540 / 200 + (300 / 200) * Math.sqrt(1800 / 750) + 200 / 400; // 2.7 + 2.3238 + 0.5 = 5.5238
const yardMask = (60 + 32) / 150 + (3 * 6) / 60 + (80 + 42) / 150; // 0.613 33 + 0.3 + 0.813 33 = 1.726 67
const yardUnmask = 226 / 400; // 0.565
const yardScrub = 300 / 60; // W2 is one class short: 5
// Patch: applied at 10 and rinsed at 8 ft2/min, dwell 3 to 5 min: min(5 x 8, (5 - 3) / (1/8 - 1/10)) = min(40, 80) =
// 40 ft2. The quickest contact is 40 / 10 = 4 min, more than 3: no wait. 1040 / 40 = 26 patches.
const yardPrewet = (26 * 6 * 2) / 60; // 5.2
const yardApply = (26 * 4 * 2) / 60; // 3.466 67
const yardRinse = (26 * 5 * 2) / 60; // 4.333 33
// Lengths: level 1, 600 / 20 = 30 ft; level 2, 300 / 10 + 200 / 10 = 50 ft; level 3, 80 / 2 = 40 ft. The longest, 50 ft,
// takes 3 positions of 20 ft, each 20 min.
const yardMove = (3 * 20 * 2) / 60; // 2
const yardOther =
  yardScrape + yardMask + yardPrewet + yardApply + yardScrub + yardRinse + yardUnmask + yardMove; // 27.8155
const yardDays = yardOther / (2 * (8 - 0.75)); // 27.8155 / 14.5 = 1.9183
const yardSetup = yardDays * 0.75 * 2; // 2.8775
const yardHours = yardOther + yardSetup; // 30.6930

// Court. Ceiling and class 1: ground-face block, light residue. Nothing is short.
const blockS = 8 * KG_M2_IN_GRAM; // 0.413 34; L/S = 2.4194, its square 5.85 is above the dwell of 5: no time needed.
// The least 2 passes hold: 4 min wet, 2 L/m2 run off.
const courtAbsorbed = (150 * blockS * Math.sqrt(4)) / LITRES_M2_IN_GAL_FT2; // 3.0433 gal
const courtPrewetWater = courtAbsorbed + (150 * 2) / LITRES_M2_IN_GAL_FT2; // 3.0433 + 7.3627 = 10.4060 gal
const courtConcentrate = 1.5 / 21; // 150 / 100 = 1.5 gal of mix, 1 part in 1 + 20: 0.071 43 gal
const courtMixWater = 1.5 - 1.5 / 21; // 1.428 57 gal
const courtRinseWater = 150 * rinsePerFoot2; // 59.2927 gal
const courtMasking = 4; // one fixture
const courtScrape = 150 / 400; // 0.375
const courtMask = 6 / 60; // 0.1
const courtUnmask = 4 / 400; // 0.01
// 150 / 40 = 3.75: 4 patches. 150 / 8 = 18.75 ft: 1 position.
const courtPrewet = (4 * 4 * 2) / 60; // 0.533 33
const courtApply = (4 * 4 * 2) / 60; // 0.533 33
const courtRinse = (4 * 5 * 2) / 60; // 0.666 67
const courtMove = (1 * 20 * 2) / 60; // 0.666 67
const courtOther = courtScrape + courtMask + courtUnmask + courtPrewet + courtApply + courtRinse + courtMove; // 2.885
const courtDays = courtOther / (2 * (8 - 0.75)); // 0.198 97
const courtSetup = courtDays * 0.75 * 2; // 0.298 45
const courtHours = courtOther + courtSetup; // 3.183 45

const yard = {
  water: yardPrewetWater + yardMixWater + yardRinseWater,
  masking: yardMasking,
  tape: yardTape,
  cleaner: yardConcentrate,
  hours: yardHours,
};
const court = {
  water: courtPrewetWater + courtMixWater + courtRinseWater,
  masking: courtMasking,
  tape: 0,
  cleaner: courtConcentrate,
  hours: courtHours,
};

function expectClose(seen: number, worked: number, what: string): void {
  expect(Math.abs(seen - worked), `${what}: ${String(seen)} against ${String(worked)}`).toBeLessThanOrEqual(
    1e-9 * Math.abs(worked),
  );
}

describe('a wall worked out by hand', () => {
  it('has the steps that a pocket calculator gives', () => {
    expect(redT0).toBeCloseTo(4.4079, 3);
    expect(yardPrewetWater).toBeCloseTo(136.209, 2);
    expect(yardRinseWater).toBeCloseTo(411.096, 2);
    expect(yard.water).toBeCloseTo(556.55, 2);
    expect(yardOther).toBeCloseTo(27.8155, 3);
    expect(yardHours).toBeCloseTo(30.693, 3);
    expect(court.water).toBeCloseTo(71.127, 2);
    expect(courtHours).toBeCloseTo(3.1834, 3);
  });

  it.each([
    ['Yard', 2, 2, 'Light clay brick'],
    ['Court', 1, 1, 'Ground-face block'],
  ])('%s: ceiling %i, class %i, set by %s', (zone, ceiling, classToUse, governor) => {
    expect(call('GOVERNING', walls, zone)).toBe(ceiling);
    expect(call('CLASS', walls, zone)).toBe(classToUse);
    expect(call('GOVERNOR', walls, zone)).toBe(governor);
  });

  it.each([
    ['Yard', yard],
    ['Court', court],
    [
      '',
      {
        water: yard.water + court.water,
        masking: 230,
        tape: yard.tape,
        cleaner: yard.cleaner + court.cleaner,
        hours: yard.hours + court.hours,
      },
    ],
  ])('totals of zone "%s"', (zone, worked) => {
    expectClose(number('WATER', walls, zone), worked.water, 'water');
    expectClose(number('MASKING', walls, zone), worked.masking, 'masking');
    expectClose(number('TAPE', walls, zone), worked.tape, 'tape');
    expectClose(number('CLEANER', walls, zone), worked.cleaner, 'cleaner');
    expectClose(number('CREWHOURS', walls, zone), worked.hours, 'crew-hours');
  });

  it.each([
    ['prewet', yardPrewetWater, courtPrewetWater],
    ['mix', yardMixWater, courtMixWater],
    ['rinse', yardRinseWater, courtRinseWater],
  ])('water: %s', (part, ofYard, ofCourt) => {
    expectClose(number('WATER', walls, 'Yard', null, part), ofYard, part);
    expectClose(number('WATER', walls, 'Court', null, part), ofCourt, part);
    expectClose(number('WATER', walls, null, null, part), ofYard + ofCourt, part);
  });

  it.each([
    ['scrape', yardScrape, courtScrape],
    ['mask', yardMask, courtMask],
    ['prewet', yardPrewet, courtPrewet],
    ['apply', yardApply, courtApply],
    ['scrub', yardScrub, 0],
    ['rinse', yardRinse, courtRinse],
    ['unmask', yardUnmask, courtUnmask],
    ['move', yardMove, courtMove],
    ['setup', yardSetup, courtSetup],
  ])('crew-hours: %s', (part, ofYard, ofCourt) => {
    expectClose(number('CREWHOURS', walls, 'Yard', null, part), ofYard, part);
    expectClose(number('CREWHOURS', walls, 'Court', null, part), ofCourt, part);
    expectClose(number('CREWHOURS', walls, null, null, part), ofYard + ofCourt, part);
  });

  it('SCHEDULE has the same, a line a zone', () => {
    const spilled = spill('SCHEDULE', walls);
    const expected: Record<string, [number, number]> = {
      Ceiling: [2, 1],
      Class: [2, 1],
      'Pre-wet': [redT0, 0],
      Passes: [3, 2],
      Patch: [40, 40],
      Wait: [0, 0],
      Patches: [26, 4],
      'Washed area': [yardArea, 150],
      Water: [yard.water, court.water],
      'Pre-wet water': [yardPrewetWater, courtPrewetWater],
      'Mix water': [yardMixWater, courtMixWater],
      'Rinse water': [yardRinseWater, courtRinseWater],
      'Mixed cleaner': [10.4, 1.5],
      'Water taken up': [absorbed, courtAbsorbed],
      // All that is applied, less what the faces take up.
      Runoff: [yard.water + yardConcentrate - absorbed, court.water + courtConcentrate - courtAbsorbed],
      Concentrate: [yardConcentrate, courtConcentrate],
      Masking: [yardMasking, courtMasking],
      'Film to buy': [yardFilm, 4.6],
      Tape: [yardTape, 0],
      'Crew-hours': [yardHours, courtHours],
      'Scrub hours': [yardScrub, 0],
      Days: [yardDays, courtDays],
      'Calendar days': [2, 1],
    };
    expect(column(spilled, 'Zone')).toEqual(['Yard', 'Court']);
    expect(column(spilled, 'Set by')).toEqual(['Light clay brick', 'Ground-face block']);
    for (const [heading, worked] of Object.entries(expected)) {
      const seen = column(spilled, heading) as number[];
      seen.forEach((value, line) => {
        expectClose(value, worked[line] ?? NaN, heading);
      });
    }
  });
});
