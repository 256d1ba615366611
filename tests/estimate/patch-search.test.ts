import { describe, expect, it } from 'vitest';
import { largestPatch } from '../../src/estimate/largest-patch';

interface Case {
  readonly apply: number;
  readonly rinse: number;
  readonly least: number;
  readonly most: number;
  /** Of the whole team, min on an area. */
  readonly scrub?: number;
}

/** The largest patch where no least and no most area stands against it. */
const patchOf = ({ apply, rinse, least, most, scrub = 0 }: Case) =>
  largestPatch({
    apply,
    rinse,
    leastDwell: least,
    mostDwell: most,
    scrub,
    leastPatch: 0,
    mostPatch: Infinity,
  });

/** Whether every point of a patch stays between the least and the most contact, point by point. */
function staysWithin({ apply, rinse, least, most, scrub = 0 }: Case, area: number, wait: number): boolean {
  const points = 50;
  for (let index = 0; index <= points; index++) {
    const x = (area * index) / points;
    const appliedAt = x / apply;
    const rinsedAt = area / apply + area * scrub + wait + x / rinse;
    const contact = rinsedAt - appliedAt;
    if (contact < least - 1e-9 || contact > most + 1e-9) return false;
  }
  return true;
}

/** The largest area of a grid of areas and waits that stays within the dwell, and the shortest wait for it. */
function search(of: Case, step: { area: number; wait: number }): { area: number; wait: number } | undefined {
  const mostArea = of.most * Math.max(of.apply, of.rinse);
  for (let n = Math.ceil(mostArea / step.area); n > 0; n--)
    for (let wait = 0; wait <= of.most; wait += step.wait)
      if (staysWithin(of, n * step.area, wait)) return { area: n * step.area, wait };
  return undefined;
}

describe('the largest patch is that of a search over areas and waits', () => {
  it.each<[string, Case]>([
    ['applied faster than rinsed, bound by the maximum dwell', { apply: 10, rinse: 8, least: 3, most: 5 }],
    ['applied faster than rinsed, bound by the window', { apply: 20, rinse: 10, least: 8, most: 10 }],
    ['applied slower than rinsed, bound by the maximum dwell', { apply: 6, rinse: 9, least: 2, most: 6 }],
    ['applied slower than rinsed, bound by the window', { apply: 5, rinse: 15, least: 4, most: 5 }],
    ['rates alike', { apply: 7, rinse: 7, least: 3, most: 5 }],
    ['rates alike and one dwell alone', { apply: 7, rinse: 7, least: 4, most: 4 }],
    ['scrubbed in between', { apply: 10, rinse: 8, least: 3, most: 5, scrub: 0.15 }],
    ['scrubbed in between, bound by the window', { apply: 20, rinse: 10, least: 8, most: 10, scrub: 0.05 }],
    ['no minimum dwell', { apply: 12, rinse: 4, least: 0, most: 3 }],
  ])('%s', (_, of) => {
    const step = { area: 0.25, wait: 0.05 };
    const found = search(of, step);
    const patch = patchOf(of);
    expect(found).toBeDefined();
    expect(patch).toBeDefined();
    if (!found || !patch) return;
    expect(staysWithin(of, patch.area, patch.wait)).toBe(true);
    // The grid may miss the largest area by a step of its own, and by the area that a step of the wait costs.
    const slack = step.area + step.wait * Math.max(of.apply, of.rinse);
    expect(patch.area).toBeGreaterThanOrEqual(found.area - 1e-9);
    expect(patch.area - found.area).toBeLessThanOrEqual(slack);
    const noShorter = staysWithin(of, patch.area, Math.max(0, patch.wait - 0.01));
    expect(patch.wait === 0 || !noShorter).toBe(true);
    expect(patch.firstContact).toBeCloseTo(patch.area * (1 / of.apply + (of.scrub ?? 0)) + patch.wait, 12);
    expect(patch.lastContact).toBeCloseTo(patch.area * (1 / of.rinse + (of.scrub ?? 0)) + patch.wait, 12);
  });

  it.each<[string, Case]>([
    ['the maximum dwell is below the least', { apply: 10, rinse: 8, least: 3, most: 2.5 }],
    ['the maximum dwell is below the least at rates alike', { apply: 7, rinse: 7, least: 4, most: 3 }],
    ['one dwell alone at different rates', { apply: 10, rinse: 8, least: 4, most: 4 }],
    ['no dwell at all', { apply: 10, rinse: 8, least: 0, most: 0 }],
  ])('there is none where %s', (_, of) => {
    expect(search(of, { area: 0.25, wait: 0.05 })).toBeUndefined();
    expect(patchOf(of)).toBeUndefined();
  });

  it('is no larger than the most patch, and there is none below the least', () => {
    const of = { apply: 10, rinse: 8, leastDwell: 3, mostDwell: 5, scrub: 0 };
    expect(largestPatch({ ...of, leastPatch: 8, mostPatch: 12 })?.area).toBe(12);
    expect(largestPatch({ ...of, leastPatch: 41, mostPatch: 60 })).toBeUndefined();
  });
});
