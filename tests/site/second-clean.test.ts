import { describe, expect, it } from 'vitest';
import { readQuestion } from '../../functions/arguments';
import { budgetsOf } from '../../src/actuals/budget';
import { progressOf } from '../../src/actuals/progress';
import { ratesOf } from '../../src/actuals/rates';
import { readActuals, rowOfActuals, type NewEntry } from '../../src/actuals/read-actuals';
import { RECLEAN, WASH } from '../../src/actuals/task';
import { restOf } from '../../src/site/offered-entry';

// A table of the user's own: another order, and a column besides.
const HEAD = ['Shift', 'Hours', 'Task', 'Wall', 'Zone', 'Area', 'Note', 'Date', 'Water'];
const WALLS = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Mortar', 'Residue'],
  ['a', 'A', 'Red clay brick', 400, 10, 'N', 'light'],
  ['b', 'A', 'Red clay brick', 600, 10, 'N', 'light'],
];
const { job, factors } = readQuestion(WALLS, '', [['reclean.share', 5]], null);
const [budgets] = budgetsOf(job, factors);
if (budgets === undefined) throw new Error('There is no zone.');
const [wallA] = budgets.zone.rows;
if (wallA === undefined) throw new Error('There is no wall.');

const written = (...entries: readonly NewEntry[]) =>
  readActuals([HEAD, ...entries.map((entry) => rowOfActuals(HEAD, entry, 'US'))], job, 'US');
const washed = { zone: 'A', task: 'wash', area: 500, hours: 10 };
const scraped = { zone: 'A', wall: 'b', task: 'scrape', area: 600, hours: 3 };
// What the form writes where a wall is named, and where the zone is.
const again = [
  {
    date: 46_163,
    zone: 'A',
    wall: 'a',
    task: 'reclean',
    area: '',
    hours: 2.5,
    note: 'Second clean, R. M.: haze',
  },
  { date: 46_164, zone: 'A', task: 'reclean', hours: 1, water: 30 },
];

describe('a second clean in the recorded work', () => {
  it('is read back with its hours, its wall and its water', () => {
    expect(written(...again)).toMatchObject([
      { task: RECLEAN, wall: { wall: 'a' }, hours: 2.5, area: 0, date: 46_163 },
      { task: RECLEAN, wall: undefined, hours: 1, area: 0 },
    ]);
    // 30 gal of 3.785412 L.
    expect(written(...again)[1]?.water).toBeCloseTo(113.56, 2);
  });

  it('earns its allowance, 5% of the wash, as far as the zone is washed; its hours count once', () => {
    const line = progressOf(written(washed, ...again), job, factors).find(({ task }) => task === RECLEAN);
    const allowance = 0.05 * budgets.of(WASH).hours;
    expect(line?.standing.hours.actual).toBeCloseTo(3.5, 9);
    // 500 of 1,000 ft2 are washed.
    expect(line?.standing.hours.earned).toBeCloseTo(allowance / 2, 9);
    expect(line?.standing.hours.index).toBeCloseTo(allowance / 2 / 3.5, 9);
    expect(line?.findings).toEqual([]);
    const [whole] = progressOf(written(washed, ...again), job, factors).slice(-1);
    expect(whole?.standing.hours.actual).toBeCloseTo(13.5, 9);
  });

  it('shows no rate, and moves none that other work shows', () => {
    const without = ratesOf(written(scraped), job, factors);
    const besides = ratesOf(written(scraped, ...again), job, factors);
    expect(besides.rates.length).toBe(1);
    expect(
      besides.rates.map(({ factor, plain, blended, weight }) => [factor.id, plain, blended, weight]),
    ).toEqual(without.rates.map(({ factor, plain, blended, weight }) => [factor.id, plain, blended, weight]));
    expect(besides.without).toMatchObject([{ task: RECLEAN, why: 'no single rate' }]);
    expect(besides.without[0]?.entries.length).toBe(2);
  });

  it('leaves of its allowance what is not booked yet, in the zone and on its wall; it has no area', () => {
    const allowance = 0.05 * budgets.of(WASH).hours;
    const some = (hours: number) => written({ zone: 'A', wall: 'a', task: 'reclean', hours });
    const left = restOf(RECLEAN, budgets, some(allowance / 10));
    expect(left?.area).toBe(0);
    expect(left?.hours).toBeCloseTo(0.9 * allowance, 9);
    // Wall a has 400 of 1,000 ft2 of the same kind, so 40% of the allowance, a quarter of which is booked.
    expect(restOf(RECLEAN, budgets, some(allowance / 10), wallA)?.hours).toBeCloseTo(0.3 * allowance, 6);
    expect(restOf(RECLEAN, budgets, some(allowance * 2))).toBeUndefined();
  });
});
