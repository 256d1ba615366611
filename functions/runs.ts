import { runBidPrice } from './bid-price';
import { runClass, runGoverning, runGovernor } from './governing';
import { hourParts, neutralizerParts, runLaborHours, runQuantity, waterParts } from './quantity-functions';
import { runSchedule, runWallRows } from './spills';
import type { moreRuns } from './more-runs';
import type { Run } from './worksheet-function';

/**
 * What the functions of a bid do, by name: they answer as soon as a workbook opens. The others come when one of them is
 * first called (`more-runs.ts`). What is said of a function stands in the catalogue.
 */
export const runs = {
  CLASS: runClass,
  GOVERNING: runGoverning,
  GOVERNOR: runGovernor,
  WATER: runQuantity('water', waterParts),
  MASKING: runQuantity('maskingArea'),
  TAPE: runQuantity('tape'),
  CREWHOURS: runQuantity('crewHours', hourParts),
  LABORHOURS: runLaborHours,
  CLEANER: runQuantity('concentrate'),
  RUNOFF: runQuantity('runoff'),
  NEUTRALIZER: runQuantity('neutralizer', neutralizerParts),
  BIDPRICE: runBidPrice,
  SCHEDULE: runSchedule,
  WALLROWS: runWallRows,
} as const satisfies Record<string, Run>;

/** The name of a worksheet function. */
export type FunctionName = keyof typeof runs | keyof typeof moreRuns;
