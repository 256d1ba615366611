import { expect, it } from 'vitest';
import { column, spill } from '../functions/call';

// The sizes that the starting values were chosen for: red brick, Type N, moderate residue, 1000 ft2. By hand:
// pre-wet ((5 - 0.9365) / 1.9355)^2 = 4.408 min, 3 passes; 1000 ft2 x (1.0333 x sqrt 6 + 3) L/m2 / 40.7458 = 135.7 gal;
// mix 10 gal less 10 / 9 of concentrate, 8.9 gal; rinse 1000 x 3.1623 / 8 = 395.3 gal. Together 539.9 gal.
// Scrape 1000 / 200 = 5 h; 25 patches of 40 ft2, each 6 + 4 + 5 = 15 min of a crew of 2, 12.5 h; no scrubbing; a wall of
// 10 ft is 100 ft long, 5 moves, 3.33 h; 20.83 h of work, and 0.75 / 7.25 of that for set-up, 2.155 h.
it('1000 square feet of red brick come out at the expected sizes', () => {
  const spilled = spill('SCHEDULE', [
    ['Wall', 'Material', 'Area', 'Height', 'Residue'],
    ['South', 'Red clay brick', 1000, 10, 'moderate'],
  ]);
  const only = (heading: string): number => column(spilled, heading)[0] as number;
  expect(only('Pre-wet')).toBeCloseTo(4.408, 3);
  expect(only('Passes')).toBe(3);
  expect(only('Patch')).toBeCloseTo(40, 9);
  expect(only('Patches')).toBe(25);
  expect(only('Water')).toBeCloseTo(539.9, 1);
  expect(only('Crew-hours') - only('Move hours') - only('Set-up hours')).toBeCloseTo(17.5, 9);
  expect(only('Move hours')).toBeCloseTo(10 / 3, 9);
  expect(only('Set-up hours')).toBeCloseTo((5 + 12.5 + 10 / 3) * (0.75 / 7.25), 9);
});
