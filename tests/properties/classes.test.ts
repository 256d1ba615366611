import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { materials } from '../../src/rules/materials';
import type { Line } from './call';
import { scheduleOf } from './compare';
import { rangeOf, RUNS, wall, walls } from './walls';

/** The ceiling of a zone; undefined where nothing is washed. */
function ceilingIn(line: Line | undefined): number | undefined {
  const cell = line?.['Ceiling'];
  return typeof cell === 'number' ? cell : undefined;
}

it('the ceiling is the least of what the unmasked materials allow', () => {
  // Receiving rinse from above adds materials of other zones; here no row does.
  const own = walls.map((rows) => rows.map((row) => ({ ...row, receives: '', zone: 'North' })));
  fc.assert(
    fc.property(own, (rows) => {
      const allowed = rows
        .filter(({ masked }) => masked !== 'yes')
        .map(({ material }) => materials.find(({ name }) => name === material)?.ceiling ?? NaN);
      const expected = allowed.length === 0 ? undefined : Math.min(...allowed);
      expect(ceilingIn(scheduleOf(rangeOf(rows)).get('North'))).toBe(expected);
    }),
    { numRuns: RUNS },
  );
});

it('adding a washed row never raises a ceiling', () => {
  fc.assert(
    fc.property(walls, wall, fc.nat(), (rows, added, place) => {
      const before = scheduleOf(rangeOf(rows));
      const more = [...rows];
      more.splice(place % (rows.length + 1), 0, { ...added, masked: 'no' });
      const after = scheduleOf(rangeOf(more));
      for (const [zone, line] of before) {
        const was = ceilingIn(line);
        if (was !== undefined) expect(ceilingIn(after.get(zone))).toBeLessThanOrEqual(was);
      }
    }),
    { numRuns: 2 * RUNS },
  );
});

it('masking a row never lowers a ceiling', () => {
  fc.assert(
    fc.property(walls, fc.nat(), (rows, pick) => {
      const masked = rows.map((row, index) =>
        index === pick % rows.length ? { ...row, masked: 'yes' } : row,
      );
      const before = scheduleOf(rangeOf(rows));
      for (const [zone, line] of scheduleOf(rangeOf(masked))) {
        const is = ceilingIn(line);
        if (is !== undefined) expect(is).toBeGreaterThanOrEqual(ceilingIn(before.get(zone)) ?? NaN);
      }
    }),
    { numRuns: 2 * RUNS },
  );
});

describe('a class that is chosen', () => {
  it('never takes fewer scrub hours the milder it is', () => {
    let compared = 0;
    fc.assert(
      fc.property(walls, (rows) => {
        const range = rangeOf(rows);
        let stronger: ReadonlyMap<string, Line> | undefined;
        for (const chosen of [3, 2, 1, 0]) {
          const milder = scheduleOf(range, [['cleaner.class', chosen]]);
          for (const [zone, line] of milder) {
            const hours = line['Scrub hours'] as number;
            const before = stronger?.get(zone)?.['Scrub hours'] as number | undefined;
            if (before === undefined) continue;
            expect(hours).toBeGreaterThanOrEqual(before * (1 - 1e-12));
            if (hours > before) compared++;
          }
          stronger = milder;
        }
      }),
      { numRuns: RUNS },
    );
    expect(compared).toBeGreaterThan(0);
  });

  it('is never used above the ceiling', () => {
    fc.assert(
      fc.property(walls, fc.integer({ min: 0, max: 3 }), (rows, chosen) => {
        for (const line of scheduleOf(rangeOf(rows), [['cleaner.class', chosen]]).values()) {
          const ceiling = ceilingIn(line);
          if (ceiling !== undefined) expect(line['Class']).toBe(Math.min(ceiling, chosen));
        }
      }),
      { numRuns: RUNS },
    );
  });
});

it('a class by need is never stronger than the ceiling, and never stronger than what light residue needs for less', () => {
  fc.assert(
    fc.property(walls, (rows) => {
      for (const line of scheduleOf(rangeOf(rows)).values()) {
        const ceiling = ceilingIn(line);
        if (ceiling !== undefined) expect(line['Class']).toBeLessThanOrEqual(ceiling);
      }
      // Light residue in Type N mortar needs class 1 and no more.
      const light = rows.map((row) => ({ ...row, residue: 'light', mortar: 'N' }));
      for (const line of scheduleOf(rangeOf(light)).values()) {
        if (ceilingIn(line) !== undefined) expect(line['Class']).toBeLessThanOrEqual(1);
      }
    }),
    { numRuns: RUNS },
  );
});
