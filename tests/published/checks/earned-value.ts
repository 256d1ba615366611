import { standingOf, type Booked, type Forecasts } from '../../../src/actuals/earned-value';
import { exact, type SourceChecks } from '../check';
import { byFormula } from '../second-library';

function indexOf(...tasks: readonly Booked[]): number {
  return standingOf(tasks).index ?? NaN;
}
function forecast(of: keyof Forecasts, ...tasks: readonly Booked[]): number {
  return standingOf(tasks).forecasts?.[of] ?? NaN;
}

/** Worked examples of a package's manual, each with the numbers that it prints. */
export const earnedValueManual: SourceChecks = {
  document: 'PRA, Project Risk Analysis: reference manual of the R package',
  edition: 'as on its documentation site; a package, no public guide',
  section: 'examples of cpi and eac',
  checks: [
    {
      what: 'index of 35% of a budget of 100,000 for 36,000',
      value: 0.9722222,
      unit: '1',
      mark: 'published',
      within: 0.5e-7 * (1 + 1e-9),
      because: 'printed to 7 decimals',
      ours: () => indexOf({ budget: 100_000, earned: 35_000, actual: 36_000 }),
    },
    {
      what: 'forecast of a budget of 100,000, the rest at an index of 0.83',
      value: 120_481.9,
      unit: '$',
      mark: 'published',
      within: 0.05 * (1 + 1e-9),
      because: 'printed to 1 decimal',
      ours: () => forecast('atIndex', { budget: 100_000, earned: 41_500, actual: 50_000 }),
    },
    {
      what: 'forecast of a budget of 100,000, the rest as budgeted, 35,000 earned for 63,000',
      value: 128_000,
      unit: '$',
      mark: 'published',
      ...exact,
      ours: () => forecast('asBudgeted', { budget: 100_000, earned: 35_000, actual: 63_000 }),
    },
  ],
};

const HALF_DONE: Booked = { budget: 100, earned: 50, actual: 60 };
const NOT_BEGUN: Booked = { budget: 60, earned: 0, actual: 0 };

/** The formulas of a public card on two tasks, one half done and one not begun. */
export const earnedValueCard: SourceChecks = {
  document: 'Defense Acquisition University, Earned Value Management Gold Card',
  edition: '2013, a copy',
  section: 'efficiencies; estimate at completion',
  checks: [
    {
      what: 'CPI = BCWP / ACWP of two tasks, 50 h earned of 160 for 60 h',
      value: 50 / 60,
      unit: '1',
      mark: 'computed',
      ...exact,
      ours: () => indexOf(HALF_DONE, NOT_BEGUN),
      second: byFormula('(0.5 * 100 + 0 * 60) / 60', 'mathjs, from the formula'),
    },
    {
      what: 'EAC = BAC / CPI of the two tasks together',
      value: 192,
      unit: 'labor-h',
      mark: 'computed',
      ...exact,
      ours: () => forecast('atIndex', HALF_DONE, NOT_BEGUN),
      second: byFormula('60 + (160 - 50) / (50 / 60)', 'mathjs, as ACWP + (BAC - BCWP) / CPI'),
    },
    {
      what: 'EAC = ACWP + BAC - BCWP of the two tasks together',
      value: 170,
      unit: 'labor-h',
      mark: 'computed',
      ...exact,
      ours: () => forecast('asBudgeted', HALF_DONE, NOT_BEGUN),
      second: byFormula('(60 + 50) + (0 + 60)', 'mathjs, task by task'),
    },
    {
      what: 'EAC of the two tasks, each at its own CPI, the one not begun as budgeted',
      value: 180,
      unit: 'labor-h',
      mark: 'computed',
      ...exact,
      ours: () => forecast('taskByTask', HALF_DONE, NOT_BEGUN),
      second: byFormula('60 + 50 / (50 / 60) + 60', 'mathjs, as ACWP + (BAC - BCWP) / CPI of each'),
    },
  ],
};
