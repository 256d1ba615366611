import { describe, expect, it } from 'vitest';
import { readQuestion } from '../../functions/arguments';
import { budgetsOf } from '../../src/actuals/budget';
import { standingByWall } from '../../src/actuals/by-wall';
import { readActuals } from '../../src/actuals/read-actuals';
import { taskOf } from '../../src/actuals/task';
import { toBase } from '../../src/quantity/conversions';
import { offerOfPatch, offerOfStep, restOf } from '../../src/site/offered-entry';

const HEAD = ['Zone', 'Wall', 'Task', 'Area', 'Hours'];

/** A zone of 400 and 600 ft2, scraped at 60 ft2 a net hour, 50 of 60 minutes net: 8 and 12 labor-hours. */
function site(...actuals: readonly unknown[][]) {
  const walls = [
    ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Mortar', 'Residue'],
    ['a', 'A', 'Red clay brick', 400, 10, 'N', 'light'],
    ['b', 'A', 'Red clay brick', 600, 10, 'N', 'light'],
    ['c', 'B', 'Red clay brick', 500, 10, 'N', 'light'],
  ];
  const { job, factors } = readQuestion(walls, '', [['rate.scrape.light', 60]], null);
  const entries = readActuals([HEAD, ...actuals], job, factors.system);
  const [budgets] = budgetsOf(job, factors);
  if (budgets === undefined) throw new Error('There is no zone.');
  return { budgets, entries };
}
const task = (name: string) => {
  const found = taskOf(name);
  if (found === undefined) throw new Error(`There is no task ${name}.`);
  return found;
};
const squareFeet = (area: number) => toBase(area, 'ft2');

describe('what a step offers', () => {
  it('is the whole task, then what no entry has, then nothing', () => {
    const offer = (...actuals: readonly unknown[][]) => {
      const { budgets, entries } = site(...actuals);
      return offerOfStep('scrape', budgets, entries);
    };
    expect(offer()?.task.name).toBe('scrape');
    expect(offer()?.area).toBeCloseTo(squareFeet(1000), 9);
    expect(offer()?.hours).toBeCloseTo(20, 9);
    // 150 of the 400 ft2 of wall a: 850 ft2 are left.
    const some = offer(['A', 'a', 'scrape', 150, 5]);
    expect(some?.area).toBeCloseTo(squareFeet(850), 9);
    expect(some?.hours).toBeCloseTo(17, 9);
    expect(offer(['A', '', 'scrape', 1000, 30])).toBeUndefined();
    // What another zone has is not this one's.
    expect(offer(['B', '', 'scrape', 500, 30])?.area).toBeCloseTo(squareFeet(1000), 9);
  });

  it('is nothing for a step without hours of its own, or a task that the zone does not have', () => {
    const { budgets, entries } = site();
    expect(
      ['age', 'mix', 'dwell', 'look', 'clear'].map((step) => offerOfStep(step as 'age', budgets, entries)),
    ).toEqual(Array.from({ length: 5 }, () => undefined));
  });

  it('where the wash is recorded as a whole, is the rest of it at the rinse, and nothing before', () => {
    const { budgets, entries } = site(['A', '', 'wash', 250, 6]);
    expect(offerOfStep('apply', budgets, entries)).toBeUndefined();
    const rinse = offerOfStep('rinse', budgets, entries);
    expect(rinse?.task.name).toBe('wash');
    expect(rinse?.area).toBeCloseTo(squareFeet(750), 9);
  });

  it('takes nothing off for entries without an area: nobody knows how much they did', () => {
    const { budgets, entries } = site(['A', '', 'scrape', '', 3]);
    expect(restOf(task('scrape'), budgets, entries)?.hours).toBeCloseTo(20, 9);
  });
});

describe('what is left of a task on a wall', () => {
  it('is its own rest, never more than the rest of the zone', () => {
    const { budgets, entries } = site(['A', 'b', 'scrape', 500, 10], ['A', '', 'scrape', 300, 9]);
    const [a, b] = budgets.zone.rows;
    // 800 of 1,000 ft2 are done: wall a has 400 ft2 and no entry, but only 200 ft2 are left at all.
    expect(restOf(task('scrape'), budgets, entries, a)?.area).toBeCloseTo(squareFeet(200), 9);
    expect(restOf(task('scrape'), budgets, entries, b)?.area).toBeCloseTo(squareFeet(100), 9);
    // 100 of 600 ft2 at 12 labor-hours.
    expect(restOf(task('scrape'), budgets, entries, b)?.hours).toBeCloseTo(2, 9);
  });
});

describe('what a timed patch offers', () => {
  it('is its part of the wash, with the time of the team', () => {
    const { budgets, entries } = site();
    // 8 minutes of 2 persons; a twentieth of 1,000 ft2.
    const offer = offerOfPatch(8, 20, 2, budgets, entries);
    expect(offer?.task.name).toBe('wash');
    expect(offer?.area).toBeCloseTo(squareFeet(50), 9);
    expect(offer?.hours).toBeCloseTo(16 / 60, 12);
  });

  it('is nothing where the parts of the wash are recorded apart, or there is no patch', () => {
    const { budgets, entries } = site(['A', '', 'rinse', 100, 1]);
    expect(offerOfPatch(8, 20, 2, budgets, entries)).toBeUndefined();
    expect(offerOfPatch(8, 0, 2, budgets, site().entries)).toBeUndefined();
  });
});

it('walls that are named stand by their own hours; what is booked for the zone belongs to none', () => {
  const { budgets, entries } = site(
    ['A', 'a', 'scrape', 100, 3],
    ['A', 'a', 'scrape', 100, 3],
    ['A', '', 'scrape', 500, 9],
  );
  const [line, ...more] = standingByWall(entries, budgets);
  expect(more).toEqual([]);
  expect(line?.wall.wall).toBe('a');
  // 200 of 400 ft2 at 8 labor-hours.
  expect(line?.hours.earned).toBeCloseTo(4, 9);
  expect(line?.hours.actual).toBeCloseTo(6, 9);
  expect(line?.hours.index).toBeCloseTo(4 / 6, 9);
});
