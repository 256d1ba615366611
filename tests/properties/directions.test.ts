import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mortarTypes } from '../../src/rules/mortars';
import { residues } from '../../src/rules/residues';
import { estimateOf, type MadeRow } from '../core/made';
import {
  expectNoMore,
  expectSame,
  hours,
  mostOf,
  hoursOf,
  ownFactors,
  rows,
  RUNS,
  valueOf,
  withFactors,
} from './jobs';

const part = fc.double({ min: 0, max: 1, noNaN: true });
const times = fc.double({ min: 1, max: 5, noNaN: true });
const pick = fc.nat();

/** The rows with one of them changed. */
function changed(made: readonly MadeRow[], at: number, to: (row: MadeRow) => MadeRow): MadeRow[] {
  return made.map((row, index) => (index === at % made.length ? to(row) : row));
}

describe('never costs more hours:', () => {
  it('a wider window', () => {
    let moved = 0;
    fc.assert(
      fc.property(rows, ownFactors, part, times, (made, own, by, longer) => {
        const [least, most] = [valueOf(own, 'dwell.least'), valueOf(own, 'dwell.most')];
        const narrow = hours(made, own);
        const lower = hours(made, withFactors(own, { 'dwell.least': least * by }));
        const higher = hours(made, withFactors(own, { 'dwell.most': Math.min(120, most * longer) }));
        expectNoMore(lower, narrow, 'a lower minimum dwell');
        expectNoMore(higher, narrow, 'a higher maximum dwell');
        if (lower < narrow && higher < narrow) moved++;
      }),
      { numRuns: RUNS },
    );
    expect(moved).toBeGreaterThan(0);
  });

  it.each([
    'rate.apply',
    'scrub.full',
    'rate.wet',
    'rate.below',
    'rate.scrape.light',
    'rate.scrape.moderate',
    'rate.scrape.heavy',
    'rate.maskOn',
    'rate.maskOff',
    'rate.glass',
    'nozzle.number',
    'nozzle.pressure',
    'below.interval',
    'patch.most',
  ])('a greater %s', (id) => {
    let moved = 0;
    fc.assert(
      fc.property(rows, ownFactors, times, (made, drawn, by) => {
        // Drawn apart, the greatest patch hardly ever binds.
        const own =
          id === 'patch.most' ? withFactors(drawn, { [id]: valueOf(drawn, 'patch.least') * by }) : drawn;
        const slow = hours(made, own);
        const quick = hours(made, withFactors(own, { [id]: Math.min(valueOf(own, id) * by, mostOf(id)) }));
        expectNoMore(quick, slow, id);
        if (quick < slow) moved++;
      }),
      { numRuns: RUNS / 2 },
    );
    expect(moved).toBeGreaterThan(0);
  });

  it.each([
    'rinse.perArea',
    'patch.change',
    'access.groundMove',
    'patch.least',
    'scrub.least',
    'cleaner.applications',
  ])('a smaller %s', (id) => {
    let moved = 0;
    fc.assert(
      fc.property(rows, ownFactors, part, (made, own, by) => {
        const much = hours(made, own);
        const value = valueOf(own, id);
        const less = id === 'cleaner.applications' ? 1 : value * (0.2 + 0.8 * by);
        const little = hours(made, withFactors(own, { [id]: less }));
        expectNoMore(little, much, id);
        if (little < much) moved++;
      }),
      { numRuns: RUNS / 2 },
    );
    expect(moved).toBeGreaterThan(0);
  });

  it('less residue', () => {
    fc.assert(
      fc.property(rows, ownFactors, pick, (made, own, at) => {
        // Rates of the user's own may have it that heavy residue is scraped off sooner than light.
        const [heavy = 0, moderate = 0, light = 0] = ['heavy', 'moderate', 'light']
          .map((name) => valueOf(own, `rate.scrape.${name}`))
          .sort((a, b) => a - b);
        const rates = {
          'rate.scrape.heavy': heavy,
          'rate.scrape.moderate': moderate,
          'rate.scrape.light': light,
        };
        const [least = NaN, middle = NaN, most = NaN] = residues.map((residue) =>
          hours(
            changed(made, at, (row) => ({ ...row, residue })),
            withFactors(own, rates),
          ),
        );
        expectNoMore(least, middle, 'light against moderate');
        expectNoMore(middle, most, 'moderate against heavy');
      }),
      { numRuns: RUNS },
    );
  });

  it('a weaker mortar', () => {
    fc.assert(
      fc.property(rows, ownFactors, pick, (made, own, at) => {
        const [m = NaN, s = NaN, n = NaN, o = NaN] = mortarTypes.map((mortar) =>
          hours(
            changed(made, at, (row) => ({ ...row, mortar })),
            own,
          ),
        );
        expectNoMore(o, n, 'Type O against N');
        expectNoMore(n, s, 'Type N against S');
        expectNoMore(s, m, 'Type S against M');
      }),
      { numRuns: RUNS },
    );
  });

  it('a lower unmasked wall of the same area', () => {
    let moved = 0;
    fc.assert(
      fc.property(rows, ownFactors, pick, part, (made, own, at, by) => {
        // Without a height it is a lift high.
        const lift = valueOf(own, 'access.lift');
        const tall = changed(made, at, (row) => ({ ...row, mask: 'no' }));
        const low = changed(tall, at, (row) => ({
          ...row,
          height: (row.height || lift) * (0.05 + 0.95 * by),
        }));
        const [above, below] = [hours(tall, own), hours(low, own)];
        expectNoMore(below, above, 'lower');
        if (below < above) moved++;
      }),
      { numRuns: RUNS },
    );
    expect(moved).toBeGreaterThan(0);
  });

  it('a wall that stands lower', () => {
    fc.assert(
      fc.property(rows, ownFactors, (made, own) => {
        // A level more below them all lifts every other.
        const stack = made.map((row) => ({ ...row, level: Math.max(1, row.level ?? 0) }));
        const plinth: MadeRow = { zone: made[0]?.zone ?? '', area: 50, level: 9, height: 2, mask: 'only' };
        const raised = [...stack, { ...plinth, height: 30 }];
        expectNoMore(hours([...stack, plinth], own), hours(raised, own), 'standing lower');
      }),
      { numRuns: RUNS },
    );
  });

  it('a cooler face, in hours or in price', () => {
    fc.assert(
      fc.property(rows, ownFactors, part, (made, own, by) => {
        const surface = valueOf(own, 'weather.surface');
        const hot = estimateOf(
          made,
          withFactors(own, { 'weather.surface': Math.min(200, surface + 100 * by) }),
        );
        const cool = estimateOf(made, own);
        expectNoMore(hoursOf(cool), hoursOf(hot), 'hours');
        if (!Number.isNaN(hot.totals.price)) {
          expectNoMore(cool.totals.price, hot.totals.price, 'price');
          expectNoMore(cool.totals.water, hot.totals.water, 'water');
        }
      }),
      { numRuns: RUNS },
    );
  });
});

it('a row that tolerates less never takes fewer hours', () => {
  let moved = 0;
  fc.assert(
    fc.property(
      rows,
      ownFactors,
      pick,
      fc.shuffledSubarray([0, 1, 2, 3] as const, { minLength: 2, maxLength: 2 }),
      (made, own, at, two) => {
        const [less = 0, more = 0] = [...two].sort((a, b) => a - b);
        const tough = hours(
          changed(made, at, (row) => ({ ...row, ceiling: more })),
          own,
        );
        const delicate = hours(
          changed(made, at, (row) => ({ ...row, ceiling: less })),
          own,
        );
        expectNoMore(tough, delicate, 'tolerating more');
        if (tough < delicate) moved++;
      },
    ),
    { numRuns: RUNS },
  );
  expect(moved).toBeGreaterThan(0);
});

it('more teams, the same labor-hours and water', () => {
  fc.assert(
    fc.property(rows, ownFactors, fc.integer({ min: 2, max: 20 }), (made, own, teams) => {
      const one = estimateOf(made, withFactors(own, { teams: 1 })).totals;
      const many = estimateOf(made, withFactors(own, { teams })).totals;
      for (const id of Object.keys(one) as (keyof typeof one)[]) {
        const byTeams = id === 'crewHours' || id === 'days';
        if (id === 'hireDays' || id.startsWith('price')) continue;
        expectSame(many[id], one[id] / (byTeams ? teams : 1), id);
      }
      expectSame(many.priceLabor, one.priceLabor, 'labor price');
    }),
    { numRuns: RUNS },
  );
});
