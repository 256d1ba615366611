import { expect, it } from 'vitest';
import { standingOf, type Booked } from '../../src/actuals/earned-value';
import { toBase } from '../../src/quantity/conversions';
import { paceInWords, useInWords } from '../../src/site/pace-words';

it.each<[string, Booked]>([
  // 50 / 60 = 0.833; 50 / 40 = 1.25; 2000 / 2001 = 0.9995, shown as 1.00.
  ['Behind plan: 50 planned hours earned for 60 worked, index 0.83', { budget: 100, earned: 50, actual: 60 }],
  [
    'Ahead of plan: 50 planned hours earned for 40 worked, index 1.25',
    { budget: 100, earned: 50, actual: 40 },
  ],
  [
    'As planned: 2000 planned hours earned for 2001 worked, index 1.00',
    { budget: 3000, earned: 2000, actual: 2001 },
  ],
  ['7.5 worked, nothing earned yet', { budget: 100, earned: 0, actual: 7.5 }],
  ['Nothing is recorded yet', { budget: 100, earned: 0, actual: 0 }],
])('%s', (words, booked) => {
  expect(paceInWords(standingOf([booked]))).toBe(words);
});

it('tells of water and cleaner what was used and planned, with units', () => {
  const [planned, used] = [toBase(450, 'gal'), toBase(500, 'gal')];
  const standing = standingOf([{ budget: 2 * planned, earned: planned, actual: used }]);
  expect(useInWords(standing, 'US')).toBe(
    'More than planned: 500 gal used where 450 gal were planned, index 0.90',
  );
  const spared = standingOf([{ budget: 800, earned: 400, actual: 320 }]);
  expect(useInWords(spared, 'SI')).toBe('Less than planned: 320 L used where 400 L were planned, index 1.25');
});
