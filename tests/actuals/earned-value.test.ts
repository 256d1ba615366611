import { describe, expect, it } from 'vitest';
import { standingOf } from '../../src/actuals/earned-value';

describe('earned value', () => {
  it('of two tasks, one half done and one not begun, forecasts by three rules', () => {
    // 50% of 100 h is 50 h earned for 60 h: 50 / 60. (100 + 60) / (50 / 60) = 192; 60 + 160 - 50 = 170;
    // 100 / (50 / 60) + 60 = 180.
    const { budget, earned, actual, index, forecasts } = standingOf([
      { budget: 100, earned: 50, actual: 60 },
      { budget: 60, earned: 0, actual: 0 },
    ]);
    expect([budget, earned, actual]).toEqual([160, 50, 60]);
    expect(index).toBeCloseTo(0.8333, 4);
    expect(forecasts?.atIndex).toBeCloseTo(192, 9);
    expect(forecasts?.asBudgeted).toBeCloseTo(170, 9);
    expect(forecasts?.taskByTask).toBeCloseTo(180, 9);
  });

  it('has no index and no forecast where nothing is booked', () => {
    const { index, forecasts } = standingOf([{ budget: 100, earned: 0, actual: 0 }]);
    expect([index, forecasts]).toEqual([undefined, undefined]);
  });

  it('has index 0 and no forecast where something is booked and nothing earned', () => {
    const { index, forecasts } = standingOf([{ budget: 100, earned: 0, actual: 7 }]);
    expect(index).toBe(0);
    expect(forecasts).toBeUndefined();
  });

  it('counts what a task took besides its whole budget where it has earned nothing', () => {
    // 100 / (50 / 40) = 80, and 7 taken with 60 still to do.
    const { forecasts } = standingOf([
      { budget: 100, earned: 50, actual: 40 },
      { budget: 60, earned: 0, actual: 7 },
    ]);
    expect(forecasts?.taskByTask).toBeCloseTo(80 + 67, 9);
  });

  it('forecasts what it took where all is done', () => {
    const { forecasts } = standingOf([
      { budget: 100, earned: 100, actual: 130 },
      { budget: 60, earned: 60, actual: 50 },
    ]);
    for (const forecast of Object.values(forecasts ?? {})) expect(forecast).toBeCloseTo(180, 9);
  });
});
