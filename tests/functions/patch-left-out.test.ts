import { expect, it } from 'vitest';
import { spill } from './call';

// Applied at 10 and rinsed at 8 ft2/min, dwell 3 to 10 min: min(10 x 8, (10 - 3) / (1/8 - 1/10)) = min(80, 280).
it.each([[[]], [[null]], [['']]])('PATCH with no time to dry (%j) is bound by the dwell alone', (left) => {
  expect(spill('PATCH', 10, 8, 3, 10, ...left)[0]?.[1]).toBeCloseTo(80, 9);
});

it('PATCH is bound by a time to dry that is given', () => {
  expect(spill('PATCH', 10, 8, 3, 10, 6)[0]?.[1]).toBeCloseTo(48, 9);
  expect(spill('PATCH', 10, 8, 3, 10, 60)[0]?.[1]).toBeCloseTo(80, 9);
});
