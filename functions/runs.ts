import { runAlternates } from './alternates';
import { runBidPrice } from './bid-price';
import { runChanges } from './changes';
import { runChecks } from './checks';
import { runClass, runGoverning, runGovernor } from './governing';
import { runOptions } from './options';
import { runDrying, runNozzle, runPatch } from './plain-numbers';
import { hourParts, neutralizerParts, runQuantity, waterParts } from './quantity-functions';
import { runSchedule, runWallRows } from './spills';
import { runFactors, runMaterials, runSources } from './tables';
import { runTrace } from './trace';
import type { Run } from './worksheet-function';

/** What each worksheet function does, by its name. What is said of it stands in the catalogue. */
export const runs = {
  CLASS: runClass,
  GOVERNING: runGoverning,
  GOVERNOR: runGovernor,
  WATER: runQuantity('water', waterParts),
  MASKING: runQuantity('maskingArea'),
  TAPE: runQuantity('tape'),
  CREWHOURS: runQuantity('crewHours', hourParts),
  LABORHOURS: runQuantity('laborHours', hourParts),
  CLEANER: runQuantity('concentrate'),
  SCHEDULE: runSchedule,
  WALLROWS: runWallRows,
  TRACE: runTrace,
  CHECKS: runChecks,
  FACTORS: runFactors,
  MATERIALS: runMaterials,
  SOURCES: runSources,
  RUNOFF: runQuantity('runoff'),
  NEUTRALIZER: runQuantity('neutralizer', neutralizerParts),
  BIDPRICE: runBidPrice,
  OPTIONS: runOptions,
  CHANGES: runChanges,
  ALTERNATES: runAlternates,
  PATCH: runPatch,
  NOZZLE: runNozzle,
  DRYING: runDrying,
} as const satisfies Record<string, Run>;

/** The name of a worksheet function. */
export type FunctionName = keyof typeof runs;
