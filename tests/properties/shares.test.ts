import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hourParts, quantityIds, type Quantities, type QuantityId } from '../../src/estimate/quantities';
import { estimateOf, factorsOf, type MadeRow } from '../core/made';
import { expectNoMore, expectSame, ownFactors, RELATIVE, rows, RUNS, valueOf, withFactors } from './jobs';

const waterParts = [
  'preWetWater',
  'belowWater',
  'mistWater',
  'mixWater',
  'rinseWater',
  'recleanWater',
] as const satisfies readonly QuantityId[];
const priceParts = quantityIds.filter((id) => id.startsWith('price') && id !== 'price');

const sumOf = (of: Readonly<Quantities>, ids: readonly QuantityId[]): number =>
  ids.reduce((sum, id) => sum + of[id], 0);

const isAmount = (value: number): boolean => Number.isFinite(value) && value >= 0;

it('every number is finite and not below zero, or the wall is named that cannot be washed so', () => {
  let refused = 0;
  // With a class of the user's own there may be no cycle; by the rule there is clear water at least.
  const chosen = fc.option(fc.constantFrom(1, 2, 3), { nil: undefined });
  fc.assert(
    fc.property(rows, ownFactors, chosen, (made, given, of) => {
      const own = of === undefined ? given : withFactors(given, { 'cleaner.class': of });
      const ofRows: Quantities[] = [];
      const job = estimateOf(made, own, (_, quantities) => ofRows.push({ ...quantities }));
      for (const { totals, finding } of job.zones) {
        for (const id of quantityIds)
          if (!isAmount(totals[id]) && !(finding !== undefined && Number.isNaN(totals[id])))
            expect.fail(`${id} is ${String(totals[id])}`);
        if (finding === undefined) continue;
        expect(finding).toMatch(/^Wall W\d .* Accepted: .*(patch\.least|dwell\.most)/u);
        refused++;
      }
      if (job.finding !== undefined) return;
      for (const ofRow of ofRows)
        for (const id of quantityIds)
          if (!isAmount(ofRow[id])) expect.fail(`${id} of a row is ${String(ofRow[id])}`);
    }),
    { numRuns: RUNS },
  );
  expect(refused).toBeGreaterThan(0);
});

it('rows add up to their zone, and zones to the job', () => {
  fc.assert(
    fc.property(rows, ownFactors, (made, own) => {
      const sums = new Map<string, Quantities>();
      const job = estimateOf(made, own, (row, quantities) => {
        const sum =
          sums.get(row.zone) ?? (Object.fromEntries(quantityIds.map((id) => [id, 0])) as Quantities);
        for (const id of quantityIds) sum[id] += quantities[id];
        sums.set(row.zone, sum);
      });
      for (const id of quantityIds) {
        for (const { zone, totals } of job.zones) {
          // What the zone shares out has no number where one of its rows has none.
          if (Number.isNaN(totals[id])) expect(sums.get(zone.name)?.[id]).toBeNaN();
          else expectSame(sums.get(zone.name)?.[id] ?? NaN, totals[id], `${zone.name}: ${id}`);
        }
        expectSame(
          job.zones.reduce((sum, { totals }) => sum + totals[id], 0),
          job.totals[id],
          id,
        );
      }
    }),
    { numRuns: RUNS },
  );
});

it('the parts add up to labor-hours, water and price', () => {
  fc.assert(
    fc.property(rows, ownFactors, (made, own) => {
      const check = (of: Readonly<Quantities>): void => {
        if (Number.isNaN(of.laborHours)) return;
        expectSame(sumOf(of, hourParts), of.laborHours, 'labor-hours');
        expect(of.tendHours).toBeGreaterThanOrEqual(0);
        const persons = valueOf(own, 'team.size') * valueOf(own, 'teams');
        expectSame(of.crewHours * persons, of.laborHours, 'crew-hours');
        expectSame(sumOf(of, waterParts), of.water, 'water');
        expectSame(of.mixWater + of.concentrate, of.mix, 'mix');
        expectSame(of.bicarbonate + of.sodaAsh, of.neutralizer, 'neutralizer');
        expectSame(sumOf(of, priceParts), of.price, 'price');
      };
      for (const { totals } of estimateOf(made, own, (_, ofRow) => {
        check(ofRow);
      }).zones)
        check(totals);
    }),
    { numRuns: RUNS },
  );
});

it('runoff and neutralizer follow the share captured', () => {
  fc.assert(
    fc.property(rows, ownFactors, fc.integer({ min: 0, max: 100 }), (made, own, percent) => {
      const whole = estimateOf(made, withFactors(own, { 'runoff.captured': 100 })).totals;
      const captured = estimateOf(made, withFactors(own, { 'runoff.captured': percent })).totals;
      for (const id of [
        'runoff',
        'neutralizer',
        'bicarbonate',
        'sodaAsh',
        'priceNeutralizer',
        'priceDisposal',
      ] as const)
        expectSame(captured[id], (whole[id] * percent) / 100, id);
      expectSame(captured.laborHours, whole.laborHours, 'labor-hours');
    }),
    { numRuns: RUNS },
  );
});

describe('twice the area', () => {
  const doubled = (made: readonly MadeRow[]): MadeRow[] =>
    made.map((row) => ({
      ...row,
      area: 2 * row.area,
      openings: 2 * (row.openings ?? 0),
      openingPerimeter: 2 * (row.openingPerimeter ?? 0),
    }));

  it('takes twice the cleaner, scraping, scrubbing, moves and acid', () => {
    fc.assert(
      fc.property(rows, ownFactors, fc.constantFrom(0, 1, 2, 3), (made, own, chosen) => {
        // Of one class: what lies below may tip the choice between two.
        const of = withFactors(own, { 'cleaner.class': chosen });
        const [once, twice] = [estimateOf(made, of).totals, estimateOf(doubled(made), of).totals];
        for (const id of [
          'washedArea',
          'mix',
          'concentrate',
          'neutralizer',
          'scrapeHours',
          'scrubHours',
          'applyHours',
          'rinseHours',
          'prewetHours',
          'moveHours',
          'preWetWater',
          'rinseWater',
        ] as const)
          expectSame(twice[id], 2 * once[id], id);
      }),
      { numRuns: RUNS },
    );
  });

  it('takes twice the water and runoff, and twice the hours but for the job, where nothing lies below', () => {
    fc.assert(
      fc.property(rows, ownFactors, (made, own) => {
        const flat = made.map((row) => ({ ...row, level: 1, mask: 'no' as const, fixtures: 0 }));
        const [once, twice] = [estimateOf(flat, own).totals, estimateOf(doubled(flat), own).totals];
        for (const id of [
          'water',
          'runoff',
          'absorbed',
          'mistWater',
          'tendHours',
          'changeHours',
          'recleanHours',
        ] as const)
          expectSame(twice[id], 2 * once[id], id);
      }),
      { numRuns: RUNS },
    );
  });
});

it('a square foot more costs no more than its own share', () => {
  const added = fc.double({ min: 1e-6, max: 1, noNaN: true });
  fc.assert(
    fc.property(rows, ownFactors, fc.nat(), added, (made, own, pick, more) => {
      const at = pick % made.length;
      const grown = made.map((row, index) => (index === at ? { ...row, area: row.area + more } : row));
      const shares: { hours: number; area: number }[] = [];
      const before = estimateOf(made, own, (row, of) => {
        shares[row.row - 2] = {
          hours:
            of.laborHours -
            of.zonesetupHours -
            of.setupHours -
            of.sampleHours -
            of.mobilizeHours -
            of.protectHours,
          area: row.area,
        };
      });
      if (before.finding !== undefined) return;
      const factors = factorsOf(own);
      const perDay = factors.value('setup.perDay');
      const withSetup = factors.value('shift') / (factors.value('shift') - perDay);
      const again = 1 + factors.value('reclean.share');
      // What stands above keeps it wet while it is washed, each in full.
      let wetting = 0;
      const grownRow = made[at];
      for (const zone of before.zones)
        for (const { row, how, wash } of zone.washed) {
          const level = grownRow?.level ?? 0;
          const isAbove = row.zone === grownRow?.zone && level > 0 && row.level > 0 && row.level < level;
          if (!isAbove || !row.material.masonry || wash.rows.length === 0) continue;
          const team = (how.all / factors.value('team.size')) * (row.area - row.openings);
          const kind = row.access ?? factors.choice('access.kind');
          const slowed =
            factors.value(`access.factor.${kind}` as 'access.factor.lift') *
            factors.value(`texture.factor.${row.material.texture}`);
          wetting +=
            (team * slowed) /
            factors.value('below.interval') /
            factors.value('rate.below') /
            60 /
            factors.value('working.share');
        }
      const share = shares[at] ?? { hours: NaN, area: NaN };
      const squareMetres = more * 0.09290304;
      const net = share.area - (grownRow?.openings ?? 0) * 0.09290304;
      const cost = estimateOf(grown, own).totals.laborHours - before.totals.laborHours;
      const most = squareMetres * (share.hours / Math.min(net, share.area) + wetting * again) * withSetup;
      if (!(cost <= most * (1 + 1e-6) + before.totals.laborHours * RELATIVE))
        expect.fail(`${String(more)} ft2 more takes ${String(cost)} h, its share is ${String(most)}`);
    }),
    { numRuns: RUNS },
  );
});

it('a square foot of its own brings no more than it takes alone, but for what is new with it', () => {
  fc.assert(
    fc.property(
      rows,
      ownFactors,
      fc.nat(),
      fc.double({ min: 0, max: 200, noNaN: true }),
      (made, own, pick, suction) => {
        const like = made[pick % made.length];
        if (like === undefined || like.mask === 'yes' || like.mask === 'only') return;
        // At no level, so that nothing above keeps it wet; of the material of a row that is there, thirsty or not.
        const small: MadeRow = {
          ...like,
          area: 1,
          openings: 0,
          openingPerimeter: 0,
          fixtures: 0,
          level: 0,
          suction,
          residue: 'heavy',
        };
        const before = estimateOf(made, own);
        const after = estimateOf([...made, small], own);
        if (before.finding !== undefined || after.finding !== undefined) return;
        const classToUse = before.zones.find(({ zone }) => zone.name === (like.zone ?? ''))?.classToUse ?? 0;
        // By itself, at the class that its zone is washed with, without what belongs to the zone and the job.
        const alone = estimateOf(
          [{ ...small, receives: '' }],
          withFactors(own, {
            'cleaner.class': classToUse,
            'sample.hours': 0,
            'mobilize.hours': 0,
            'protect.hours': 0,
            'setup.zone': 0,
          }),
        );
        const cost = after.totals.laborHours - before.totals.laborHours;
        if (alone.finding === undefined)
          expectNoMore(cost, alone.totals.laborHours + before.totals.laborHours * RELATIVE, 'a square foot');
      },
    ),
    { numRuns: RUNS },
  );
});

describe('nothing is capped:', () => {
  const wall: MadeRow = { area: 1000 };
  it('what more residue leaves beyond what the brush takes anyway is more work, until a factor stands against it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.5, max: 9, noNaN: true }),
        fc.double({ min: 1.01, max: 1.1, noNaN: true }),
        (load, by) => {
          const heavy = (of: number) => estimateOf([{ ...wall, residue: 'heavy' }], [['load.heavy', of]]);
          const [less, more] = [heavy(load), heavy(load * by)];
          expectSame(more.totals.scrubHours, less.totals.scrubHours * by, 'scrub hours');
          expect(more.totals.laborHours).toBeGreaterThan(less.totals.laborHours);
        },
      ),
      { numRuns: RUNS },
    );
    expect(estimateOf([{ ...wall, ceiling: 0, residue: 'heavy' }]).totals.laborHours).toBeLessThan(
      estimateOf([{ ...wall, ceiling: 0, residue: 'heavy', mortar: 'S' }]).totals.laborHours,
    );
  });

  it('each stronger mortar takes more on heavy residue', () => {
    const [m = NaN, s = NaN, n = NaN] = (['M', 'S', 'N'] as const).map(
      (mortar) => estimateOf([{ ...wall, residue: 'heavy', mortar }]).totals.scrubHours,
    );
    expect(m).toBeGreaterThan(s);
    expect(s).toBeGreaterThan(n);
  });
});
