import { catalogue } from './catalogue';
import { moreRuns } from './more-runs';
import { runs } from './runs';
import type { WorksheetFunction } from './worksheet-function';

const all = { ...runs, ...moreRuns };

/** The worksheet functions, each with what is said of it and what it does. */
export const worksheetFunctions: readonly WorksheetFunction[] = catalogue.map((entry) => ({
  ...entry,
  run: all[entry.name],
}));
