import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JobEstimate } from '../../src/estimate/schedule';
import { estimateOf, type MadeRow } from '../core/made';
import { expectNoMore, hours, hoursOf, ownFactors, rows, RUNS, withFactors } from './jobs';

const pick = fc.nat();

/** The rows with one of them masked or bare. */
function masked(made: readonly MadeRow[], at: number, mask: MadeRow['mask']): MadeRow[] {
  return made.map((row, index) => (index === at % made.length ? { ...row, mask: mask ?? 'no' } : row));
}

const ceilings = (job: JobEstimate): Map<string, number | undefined> =>
  new Map(job.zones.map(({ zone, governing }) => [zone.name, governing?.ceiling]));

describe('the ceiling of a zone', () => {
  it('is the least of its bare rows, and of the bare rows below that its rinse runs over', () => {
    fc.assert(
      fc.property(rows, (made) => {
        const job = estimateOf(made);
        for (const { zone, governing } of job.zones) {
          const bare = (row: { masked: boolean }): boolean => !row.masked;
          const own = zone.rows.filter(bare).map(({ material }) => material.ceiling);
          const all = [...own, ...zone.below.filter(bare).map(({ material }) => material.ceiling)];
          expect(governing?.ceiling).toBe(own.length === 0 ? undefined : Math.min(...all));
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('is never raised by a washed row more', () => {
    fc.assert(
      fc.property(rows, rows, (made, more) => {
        const before = ceilings(estimateOf(made));
        const added = more.map((row) => ({ ...row, mask: 'no' as const, receives: '' }));
        for (const [zone, is] of ceilings(estimateOf([...made, ...added]))) {
          const was = before.get(zone);
          if (was !== undefined) expect(is).toBeLessThanOrEqual(was);
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('is never lowered by masking', () => {
    fc.assert(
      fc.property(rows, pick, fc.constantFrom('yes' as const, 'only' as const), (made, at, mask) => {
        const before = ceilings(estimateOf(made));
        for (const [zone, is] of ceilings(estimateOf(masked(made, at, mask)))) {
          if (is !== undefined) expect(is).toBeGreaterThanOrEqual(before.get(zone) ?? NaN);
        }
      }),
      { numRuns: RUNS },
    );
  });
});

describe('a masked row that tolerates more than its zone', () => {
  const tolerant = (made: readonly MadeRow[], at: number): boolean => {
    const bare = estimateOf(masked(made, at, 'no'));
    const row = bare.zones
      .flatMap(({ zone }) => zone.rows)
      .find((each) => each.row === (at % made.length) + 2);
    const ceiling = bare.zones.find(({ zone }) => zone.name === row?.zone)?.governing?.ceiling ?? 3;
    return (row?.material.masonry ?? false) && (row?.material.ceiling ?? 0) > ceiling;
  };

  it('saves nothing where every wash has one class', () => {
    let compared = 0;
    fc.assert(
      fc.property(rows, ownFactors, pick, fc.constantFrom(0, 1, 2, 3), (made, own, at, chosen) => {
        if (!tolerant(made, at)) return;
        compared++;
        // Two washes of a zone that become one need not be set up twice.
        const of = withFactors(own, { 'cleaner.class': chosen, 'setup.zone': 0 });
        expectNoMore(hours(masked(made, at, 'no'), of), hours(masked(made, at, 'yes'), of), 'bare');
      }),
      { numRuns: RUNS },
    );
    expect(compared).toBeGreaterThan(RUNS / 20);
  });

  it('saves only where it is washed apart with another class', () => {
    let compared = 0;
    fc.assert(
      fc.property(rows, ownFactors, pick, (made, own, at) => {
        if (!tolerant(made, at)) return;
        const of = withFactors(own, { 'setup.zone': 0 });
        const bare = estimateOf(masked(made, at, 'no'), of);
        const apart = estimateOf(masked(made, at, 'yes'), of);
        compared++;
        if (hoursOf(apart) >= hoursOf(bare) * (1 - 1e-9)) return;
        const classes = new Set(
          [bare, apart].flatMap(({ zones }) =>
            zones
              .filter(({ zone }) => zone.name === made[at % made.length]?.zone)
              .flatMap(({ washed }) => washed.map(({ wash }) => wash.class)),
          ),
        );
        expect(classes.size).toBeGreaterThan(1);
      }),
      { numRuns: RUNS },
    );
    expect(compared).toBeGreaterThan(RUNS / 20);
  });

  it('is washed afterwards at no stronger class than it and the bare rows tolerate', () => {
    fc.assert(
      fc.property(rows, ownFactors, (made, own) => {
        for (const { governing, washed } of estimateOf(made, own).zones)
          for (const { row, wash } of washed) {
            expect(wash.class).toBeLessThanOrEqual(row.material.ceiling);
            if (governing) expect(wash.class).toBeLessThanOrEqual(governing.ceiling);
          }
      }),
      { numRuns: RUNS },
    );
  });
});

describe('a class that is chosen', () => {
  it('never takes fewer scrub hours the milder it is', () => {
    let more = 0;
    fc.assert(
      fc.property(rows, ownFactors, (made, own) => {
        const scrub = [0, 1, 2, 3].map(
          (chosen) => estimateOf(made, withFactors(own, { 'cleaner.class': chosen })).totals.scrubHours,
        );
        for (const stronger of [1, 2, 3]) {
          const [mild = NaN, strong = NaN] = [scrub[stronger - 1], scrub[stronger]];
          if (Number.isNaN(mild) || Number.isNaN(strong)) continue;
          expectNoMore(strong, mild, `class ${String(stronger)}`);
          if (strong < mild) more++;
        }
      }),
      { numRuns: RUNS },
    );
    expect(more).toBeGreaterThan(RUNS / 2);
  });

  it('is never used above the ceiling, and never takes fewer hours than the class of the rule', () => {
    fc.assert(
      fc.property(rows, ownFactors, fc.constantFrom(0, 1, 2, 3), (made, own, chosen) => {
        const free = estimateOf(made, own);
        const bound = estimateOf(made, withFactors(own, { 'cleaner.class': chosen }));
        for (const { governing, classToUse } of bound.zones)
          if (governing) expect(classToUse).toBe(Math.min(governing.ceiling, chosen));
        for (const { governing, classToUse } of free.zones)
          if (governing) expect(classToUse).toBeLessThanOrEqual(governing.ceiling);
        expectNoMore(hoursOf(free), hoursOf(bound), 'by the rule');
      }),
      { numRuns: RUNS },
    );
  });
});
