import { runProgress, runRates } from './actuals';
import { runAlternates } from './alternates';
import { runBidPage } from './bid-page';
import { runChanges } from './changes';
import { runChecks } from './checks';
import { runDayPlan } from './day-plan';
import { runOptions } from './options';
import { plainFunctions } from './plain-numbers';
import { runFactors, runMaterials, runSources } from './tables';
import { runTrace } from './trace';
import type { Run } from './worksheet-function';

/** What the functions do that explain, check and compare, by name; a workbook that calls none does not load them. */
export const moreRuns = {
  TRACE: runTrace,
  CHECKS: runChecks,
  FACTORS: runFactors,
  MATERIALS: runMaterials,
  SOURCES: runSources,
  OPTIONS: runOptions,
  CHANGES: runChanges,
  ALTERNATES: runAlternates,
  PROGRESS: runProgress,
  RATES: runRates,
  PATCH: plainFunctions.PATCH.run,
  NOZZLE: plainFunctions.NOZZLE.run,
  DRYING: plainFunctions.DRYING.run,
  BIDPAGE: runBidPage,
  DAYPLAN: runDayPlan,
} as const satisfies Record<string, Run>;
