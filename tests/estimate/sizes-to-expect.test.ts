import { describe, expect, it } from 'vitest';
import { washHours } from '../../src/estimate/quantities';
import { estimateOf, type Lines, type MadeRow } from '../core/made';

// 1,000 ft2 with nothing but starting values. Hours of washing and of scraping are gross: net by the 50-minute hour.
const FT2 = 0.09290304;
const GAL = 3.785411784;

function sizes(row: Omit<MadeRow, 'area'>, lines: Lines = []) {
  const { zones, totals } = estimateOf([{ ...row, area: 1000 }], lines);
  const how = zones[0]?.washed[0]?.how;
  return {
    class: zones[0]?.classToUse,
    wash: washHours.reduce((sum, part) => sum + totals[part], 0),
    scrape: totals.scrapeHours,
    patch: (how?.cycle?.patch ?? NaN) / FT2,
    passes: how?.passes,
    preWets: how?.wet.passes,
    water: (totals.water - totals.recleanWater) / GAL / 1000,
  };
}

/** Within a few per cent. */
function expectAbout(seen: number, expected: number): void {
  expect(Math.abs(seen / expected - 1), `${String(seen)} about ${String(expected)}`).toBeLessThan(0.03);
}

describe('sizes that an estimator expects', () => {
  it.each<[string, Omit<MadeRow, 'area'>, number, number, number]>([
    ['red brick, light', { residue: 'light' }, 1, 15.5, 2],
    ['red brick, moderate', { residue: 'moderate' }, 2, 15.5, 4],
    ['red brick, heavy', { residue: 'heavy' }, 3, 15.5, 10],
    ['red brick, heavy, Type S', { residue: 'heavy', mortar: 'S' }, 3, 16, 15.5],
    ['limestone, moderate', { material: 'Limestone', residue: 'moderate' }, 1, 23.9, 4],
    ['limestone, heavy', { material: 'Limestone', residue: 'heavy' }, 1, 41.5, 10],
    ['marble, light', { material: 'Marble', residue: 'light' }, 0, 20, 2],
  ])('%s: class, hours of washing and of scraping', (_, row, classToUse, wash, scrape) => {
    const seen = sizes(row);
    expect(seen.class).toBe(classToUse);
    expectAbout(seen.wash, wash);
    expectAbout(seen.scrape, scrape);
  });

  it('patch, passes and water of red brick', () => {
    const seen = sizes({ residue: 'moderate' });
    expectAbout(seen.patch, 19);
    expect(seen.preWets).toBe(2);
    expectAbout(seen.water, 0.69);
  });

  it('passes of cleaner on limestone with heavy residue', () => {
    expectAbout(sizes({ material: 'Limestone', residue: 'heavy' }).passes ?? NaN, 1.3);
  });

  it('clear water for light residue on Type O, and from a team of 4 on Type N', () => {
    expect(sizes({ residue: 'light', mortar: 'O' }).class).toBe(0);
    for (const team of [1, 2, 3]) expect(sizes({ residue: 'light' }, [['team.size', team]]).class).toBe(1);
    expect(sizes({ residue: 'light' }, [['team.size', 4]]).class).toBe(0);
  });
});
