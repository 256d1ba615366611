import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { washCycle, type CycleRules, type StepTimes, type WashCycle } from '../../src/estimate/wash-cycle';

const RUNS = Number(process.env['PROPERTY_RUNS'] ?? 3000);
const POINTS = 24;
/** Minutes by which rounding may be off. */
const SLACK = 1e-7;

/** How a team goes over a patch: minutes on an area, and the wait before it rinses. */
interface Pace {
  readonly apply: number;
  readonly scrub: number;
  readonly wait: number;
  readonly rinse: number;
}

/** A patch, pass after pass on the clock: when it ends, and the contact of every point. */
function washPatch(
  area: number,
  passes: number,
  pace: Pace,
  change: number,
): { end: number; contacts: number[] } {
  let clock = 0;
  const contacts: number[] = [];
  const step = area / POINTS;
  for (let pass = 0; pass < passes; pass++) {
    const wetSince: number[] = [clock];
    for (let point = 0; point < POINTS; point++) {
      clock += step * pace.apply;
      wetSince.push(clock);
    }
    for (let point = 0; point < POINTS; point++) clock += step * pace.scrub;
    clock += pace.wait;
    contacts.push(clock - (wetSince[0] ?? NaN));
    for (let point = 1; point <= POINTS; point++) {
      clock += step * pace.rinse;
      contacts.push(clock - (wetSince[point] ?? NaN));
    }
    clock += change;
  }
  return { end: clock, contacts };
}

/** What the crew is told: the quicker step goes at the pace of the cycle, the slower as quickly as it can. */
function paceOf(cycle: WashCycle, { apply, rinse }: StepTimes): Pace {
  return {
    apply: apply < rinse ? cycle.paced : apply,
    rinse: apply < rinse ? rinse : cycle.paced,
    scrub: cycle.scrub,
    wait: cycle.wait,
  };
}

/** As often small as large. */
const scaled = (least: number, most: number): fc.Arbitrary<number> =>
  fc.noBias(fc.nat(1e6)).map((part) => Number((least * (most / least) ** (part / 1e6)).toPrecision(6)));

/** Minutes and m2; rates about those of the starting values, 0.93 m2/min to apply and 0.79 to rinse. */
const questions = fc
  .record({
    apply: scaled(0.2, 6),
    rinse: scaled(0.2, 6),
    scrub: scaled(0.1, 20),
    dwell: fc.tuple(
      fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 6, arbitrary: scaled(0.3, 20) }),
      scaled(1, 40),
    ),
    oneDwell: fc.integer({ min: 0, max: 9 }),
    patch: fc.tuple(scaled(0.2, 2), scaled(1, 12)),
    change: fc.oneof(fc.constant(0), scaled(0.05, 5)),
    leastPasses: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ apply, rinse, scrub, dwell, oneDwell, patch, change, leastPasses }) => {
    const most = Math.max(...dwell);
    const rules: CycleRules = {
      leastDwell: oneDwell === 0 ? most : Math.min(...dwell),
      mostDwell: most,
      leastPatch: Math.min(...patch),
      mostPatch: Math.max(...patch),
      change,
      leastPasses,
      mostPasses: 20,
    };
    return { times: { apply, rinse, scrub }, rules };
  });

describe('a patch gone through in time, point by point', () => {
  it('keeps every point within the dwell, scrubbing included, and takes the time of the closed form', () => {
    const seen = { washed: 0, dirtier: 0, bound: 0, waited: 0, paced: 0, slow: 0, passes: 0 };
    fc.assert(
      fc.property(questions, ({ times, rules }) => {
        const cycle = washCycle(times, rules);
        if ('none' in cycle) {
          seen[cycle.none]++;
          // Even on the smallest patch the slower step alone fills the window, or brushing takes more passes than may be.
          const slower = Math.max(times.apply, times.rinse) * rules.leastPatch;
          if (cycle.none === 'slow') expect(slower).toBeGreaterThanOrEqual(rules.mostDwell * (1 - 1e-9));
          else
            expect(times.scrub * rules.leastPatch).toBeGreaterThan(
              (rules.mostDwell - slower) * rules.mostPasses,
            );
          return;
        }
        const pace = paceOf(cycle, times);
        // No one is asked to go quicker than they can.
        expect(pace.apply).toBeGreaterThanOrEqual(times.apply);
        expect(pace.rinse).toBeGreaterThanOrEqual(times.rinse);
        expect(cycle.wait).toBeGreaterThanOrEqual(0);
        expect(cycle.patch).toBeGreaterThanOrEqual(rules.leastPatch * (1 - 1e-9));
        expect(cycle.patch).toBeLessThanOrEqual(rules.mostPatch * (1 + 1e-9));
        expect(cycle.passes).toBeGreaterThanOrEqual(rules.leastPasses);

        const whole = Math.floor(cycle.passes);
        const share = cycle.passes - whole;
        const few = washPatch(cycle.patch, whole, pace, rules.change);
        const many = washPatch(cycle.patch, whole + 1, pace, rules.change);
        const contacts = [...few.contacts, ...many.contacts];
        expect(Math.min(...contacts)).toBeGreaterThanOrEqual(rules.leastDwell - SLACK);
        expect(Math.max(...contacts)).toBeLessThanOrEqual(rules.mostDwell + SLACK);
        // The dirtier patches get one pass more.
        const minutes = (1 - share) * few.end + share * many.end;
        expect(Math.abs(minutes / cycle.patch / cycle.time - 1)).toBeLessThan(1e-9);
        const brushed = ((1 - share) * whole + share * (whole + 1)) * cycle.scrub;
        expect(Math.abs(brushed / times.scrub - 1)).toBeLessThan(1e-9);

        seen.washed++;
        if (share > 1e-9) seen.dirtier++;
        if (cycle.patch === rules.mostPatch) seen.bound++;
        if (cycle.wait > 0) seen.waited++;
        if (cycle.paced > Math.min(times.apply, times.rinse)) seen.paced++;
      }),
      { numRuns: RUNS },
    );
    for (const [what, count] of Object.entries(seen)) expect(count, what).toBeGreaterThan(0);
  });

  it('breaks the window where the patch is larger or nobody waits or paces', () => {
    let broken = 0;
    fc.assert(
      fc.property(questions, ({ times, rules }) => {
        const cycle = washCycle(times, rules);
        if ('none' in cycle) return;
        const pace = paceOf(cycle, times);
        if (cycle.patch < rules.mostPatch) {
          const { contacts } = washPatch(cycle.patch * 1.01, 1, pace, 0);
          expect(Math.max(...contacts)).toBeGreaterThan(rules.mostDwell);
          broken++;
        }
        const hurried = { ...pace, apply: times.apply, rinse: times.rinse, wait: 0 };
        const lost = cycle.wait / cycle.patch + cycle.paced - Math.min(times.apply, times.rinse);
        if (lost * cycle.patch > 1e-3) {
          const { contacts } = washPatch(cycle.patch, 1, hurried, 0);
          expect(Math.min(...contacts)).toBeLessThan(rules.leastDwell);
          broken++;
        }
      }),
      { numRuns: RUNS },
    );
    expect(broken).toBeGreaterThan(RUNS / 2);
  });

  it('finds no shorter cycle on a grid of patches, paces and waits with the same passes', () => {
    fc.assert(
      fc.property(questions, ({ times, rules }) => {
        const cycle = washCycle(times, rules);
        if ('none' in cycle) return;
        const first = times.apply < times.rinse;
        for (let n = 1; n <= 8; n++) {
          const area = rules.leastPatch + ((rules.mostPatch - rules.leastPatch) * n) / 8;
          for (const slow of [1, 1.2, 1.6, 2.5, 4, 7])
            for (const wait of [0, 0.1, 0.3, 1, 3]) {
              const pace: Pace = {
                apply: times.apply * (first ? slow : 1),
                rinse: times.rinse * (first ? 1 : slow),
                scrub: cycle.scrub,
                wait: wait * rules.leastDwell,
              };
              const { end, contacts } = washPatch(area, 1, pace, rules.change);
              if (Math.min(...contacts) < rules.leastDwell || Math.max(...contacts) > rules.mostDwell)
                continue;
              expect((end / area) * cycle.passes).toBeGreaterThanOrEqual(cycle.time * (1 - 1e-9));
            }
        }
      }),
      { numRuns: RUNS / 10 },
    );
  });
});
