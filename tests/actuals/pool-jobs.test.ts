import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { blend, type Beliefs } from '../../src/actuals/blend';
import { betweenJobs, pool } from '../../src/actuals/pool-jobs';
import { chance } from '../../src/estimate/chance';

const beliefs: Beliefs = { prior: 4, degrees: 6, spread: 0.4, areaHalf: 0 };
const jobOf = (...unitTimes: readonly number[]) => unitTimes.map((unitTime) => ({ unitTime, area: 1 }));
const times = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, index) => make(index));

describe('the variance between jobs', () => {
  it('is that of the moments, by hand', () => {
    // Weights 1/0.5 = 2, 1/0.25 = 4, 4; mean (0 + 4 + 12) / 10 = 1.6; Q = 2 x 2.56 + 4 x 0.36 + 4 x 1.96 = 14.4;
    // (14.4 - 2) / (10 - (4 + 16 + 16) / 10) = 12.4 / 6.4.
    const jobs = [
      { mean: 0, variance: 0.5 },
      { mean: 1, variance: 0.25 },
      { mean: 3, variance: 0.25 },
    ];
    expect(betweenJobs(jobs)).toBeCloseTo(12.4 / 6.4, 12);
  });

  it('is none where jobs agree better than their own variances let expect, or there is one', () => {
    expect(betweenJobs(times(3, () => ({ mean: 1, variance: 1 })))).toBe(0);
    expect(betweenJobs([{ mean: 1, variance: 1 }])).toBe(0);
  });
});

describe('jobs pooled', () => {
  it('agree with the blend of all their entries where they do not differ', () => {
    const each = jobOf(0.9, 1.1, 1);
    const [pooled, together] = [pool(1, [each, each], beliefs), blend(1, [...each, ...each], beliefs)];
    expect(pooled.weight).toBeCloseTo(together.weight, 12);
    expect(Math.abs(Math.log(pooled.unitTime / together.unitTime))).toBeLessThan(0.02);
  });

  it('count by their number where they differ, not by their entries', () => {
    // One job of 40 entries at 3, five of 2 at 1: entries alone would say 40 to 10.
    const jobs = [jobOf(...times(40, () => 3)), ...times(5, () => jobOf(1, 1))];
    const pooled = pool(1, jobs, beliefs);
    const byEntries = blend(1, jobs.flat(), beliefs);
    expect(pooled.unitTime).toBeLessThan(2);
    expect(byEntries.unitTime).toBeGreaterThan(2);
  });

  it('are trusted less than as many entries of one luck each', () => {
    const apart = pool(1, [jobOf(...times(10, () => 0.5)), jobOf(...times(10, () => 2))], beliefs);
    const alike = pool(1, [jobOf(...times(10, () => 1)), jobOf(...times(10, () => 1))], beliefs);
    expect(apart.weight).toBeLessThan(alike.weight);
    expect(apart.high / apart.low).toBeGreaterThan(alike.high / alike.low);
  });

  it('one entry of one job hardly moves the start, twenty jobs nearly set it', () => {
    expect(pool(1, [jobOf(2)], beliefs).unitTime).toBeLessThan(1.25);
    const many = pool(
      1,
      times(20, () => jobOf(2)),
      beliefs,
    ).unitTime;
    expect(many).toBeGreaterThan(1.7);
    expect(many).toBeLessThan(2.1);
  });

  it('hold the mean of jobs to come in the 80% range far oftener than their entries thrown together do', () => {
    const draw = chance(4711);
    const normal = (): number => jStat.normal.inv(draw(), 0, 1);
    const TRIALS = 400;
    const [within, between] = [0.2, 0.3];
    const held = { pooled: 0, together: 0 };
    for (let trial = 0; trial < TRIALS; trial += 1) {
      // The mean of the firm is drawn from the prior: 4 entries of spread 0.4.
      const mean = -(0.4 ** 2) / 2 + normal() * (0.4 / 2);
      const jobs = times(6, () => {
        const luck = mean + normal() * between;
        return jobOf(...times(12, () => Math.exp(luck + normal() * within)));
      });
      const truth = Math.exp(mean + (within ** 2 + between ** 2) / 2);
      const holds = ({ low, high }: { low: number; high: number }): number =>
        low <= truth && truth <= high ? 1 : 0;
      held.pooled += holds(pool(1, jobs, beliefs));
      held.together += holds(blend(1, jobs.flat(), beliefs));
    }
    expect(held.pooled / TRIALS).toBeGreaterThan(0.65);
    expect(held.together / TRIALS).toBeLessThan(0.6);
  });
});
