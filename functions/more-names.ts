import type { moreRuns } from './more-runs';

const listed: Readonly<Record<keyof typeof moreRuns, true>> = {
  TRACE: true,
  CHECKS: true,
  FACTORS: true,
  MATERIALS: true,
  SOURCES: true,
  OPTIONS: true,
  CHANGES: true,
  ALTERNATES: true,
  PROGRESS: true,
  RATES: true,
  PATCH: true,
  NOZZLE: true,
  DRYING: true,
  BIDPAGE: true,
  DAYPLAN: true,
};

/** The names of the functions that come when one of them is first called. */
export const moreNames = Object.keys(listed) as (keyof typeof moreRuns)[];
