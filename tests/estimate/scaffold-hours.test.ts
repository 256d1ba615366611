import { describe, expect, it } from 'vitest';
import { estimateOf, type Lines } from '../core/made';

// 100 ft2 at 2 ft2 per labor-hour are 50 labor-hours, as published, breaks among them.
const factors: Lines = [
  ['scaffold', 'yes'],
  ['rate.scaffold.low', 2],
  ['scaffold.low', 1000],
];

describe('hours of a scaffold', () => {
  it.each([0.5, 50 / 60, 1])('are those of the published rate where %d of an hour is worked', (share) => {
    const row = { area: 100, height: 5, access: 'scaffold' as const };
    const { totals } = estimateOf([row], [...factors, ['working.share', share]]);
    expect(totals.scaffoldHours).toBeCloseTo(50, 9);
  });
});
