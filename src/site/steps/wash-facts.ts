import { cleanerMix, cleanerUse, concentrate, mixWater } from '../../estimate/cleaner';
import { dryingTime } from '../../estimate/drying';
import { mistings } from '../../estimate/mist';
import { nozzleFlow } from '../../estimate/nozzle';
import type { WashCycle } from '../../estimate/wash-cycle';
import type { Kind } from '../../quantity/systems';
import { constants } from '../../rules/constants';
import type { MethodId } from '../../rules/methods';
import type { FactorsInForce } from '../../rules/read-factors';
import type { WallRow } from '../../walls/wall-row';
import { rounded } from '../amount';
import { patchTimes } from '../patch-times';
import type { StepFact } from '../step';
import { factorFact, pressureFact, resultFact, wallFacts } from '../step-facts';
import type { SiteWash, WashedWalls } from '../washes';

const PERCENT = 100;

type Cleaned = WashedWalls & { readonly cycle: WashCycle };

/**
 * The pre-wet of the walls of a wash, as facts of a step.
 * @param wash the wash
 * @param factors the factors in force
 * @returns passes and time, by wall where they differ; none where nothing is wetted
 */
export function preWetFacts({ walls }: SiteWash, factors: FactorsInForce): StepFact[] {
  const wetted = walls.filter(({ how }) => how.wet.passes > 0);
  if (wetted.length === 0) return [];
  return [
    ...wallFacts('Passes of plain water', wetted, ({ how }) =>
      resultFact('', how.wet.passes, 'count', 'passes', factors),
    ),
    factorFact('Each pass keeps the face wet for', 'prewet.passContact', factors),
    ...wallFacts('Wet enough after', wetted, ({ how }) =>
      resultFact('', how.wet.needed, 'minutes', 'prewetTime', factors),
    ),
  ];
}

/**
 * The cleaner of a wash, as facts of a step.
 * @param wash the wash
 * @param factors the factors in force
 * @returns dilution, mix of a patch and of the whole wash; none for clear water
 */
export function mixFacts(wash: SiteWash, factors: FactorsInForce): StepFact[] {
  const use = cleanerUse(wash.class, factors);
  if (use === undefined) return [];
  const cleaned = cleanedOf(wash);
  const ofPatch = ({ cycle }: Cleaned): number => cycle.patch / use.coverage;
  const again = factors.value('reclean.share');
  const mixes = cleaned.map(({ area, cycle }) => cleanerMix(area, cycle.passes, again, use));
  const strong = mixes.reduce((sum, mix) => sum + concentrate(mix, use), 0);
  const water = mixes.reduce((sum, mix) => sum + mixWater(mix, concentrate(mix, use)), 0);
  return [
    factorFact('Parts of water to 1 of concentrate', `cleaner.dilution.${use.class}`, factors),
    ...ofCleaned('Mix for one patch', cleaned, 'volume', 'cleanerMix', factors, ofPatch),
    ...ofCleaned(
      'Concentrate in it',
      cleaned,
      'volume',
      'concentrate',
      factors,
      (walls) => ofPatch(walls) / (1 + use.dilution),
    ),
    ...(cleaned.length > 0
      ? [
          resultFact('Concentrate, whole wash with re-clean', strong, 'volume', 'concentrate', factors),
          resultFact('Water in the mix, whole wash', water, 'volume', 'mixWater', factors),
        ]
      : []),
  ];
}

/**
 * Patches, passes and the pace of applying, as facts of a step.
 * @param wash the wash
 * @param factors the factors in force
 * @returns the facts, by wall where they differ; none for clear water
 */
export function applyFacts(wash: SiteWash, factors: FactorsInForce): StepFact[] {
  const cleaned = cleanedOf(wash);
  const times = ({ cycle }: Cleaned) => patchTimes(cycle, factors);
  return [
    ...ofCleaned('Patch, at most', cleaned, 'area', 'patch', factors, ({ cycle }) => cycle.patch),
    ...ofCleaned('Patches', cleaned, 'count', 'patch', factors, ({ area, cycle }) =>
      Math.ceil(area / cycle.patch - constants.guard.value),
    ),
    ...wallFacts('Passes of cleaner', cleaned, ({ how }) => ({
      ...resultFact('', how.passes, 'count', 'washPasses', factors),
      value: passesInWords(how.passes),
    })),
    ...wallFacts('Pace of applying, one person', cleaned, (walls) => {
      const { applyPace, applyPaced } = times(walls);
      return resultFact('', applyPace, 'areaPerMinute', applyPaced ? 'paced' : 'applyTime', factors);
    }),
    ...ofCleaned(
      'One patch is covered in',
      cleaned,
      'minutes',
      'applyTime',
      factors,
      (walls) => times(walls).applying,
    ),
  ];
}

/**
 * The scrubbing of a wash, as facts of a step.
 * @param wash the wash
 * @param factors the factors in force
 * @returns time of a patch, or the pace with clear water
 */
export function scrubFacts(wash: SiteWash, factors: FactorsInForce): StepFact[] {
  const cleaned = cleanedOf(wash);
  if (cleaned.length > 0) {
    return ofCleaned(
      'Scrub one patch, the whole team, for',
      cleaned,
      'minutes',
      'scrubPass',
      factors,
      (walls) => patchTimes(walls.cycle, factors).scrubbing,
    );
  }
  const scrubbed = wash.walls.filter(({ how }) => how.scrub > 0);
  return wallFacts('Pace of scrubbing, the whole team', scrubbed, ({ how }) =>
    resultFact('', factors.value('team.size') / how.scrub, 'areaPerMinute', 'scrub', factors),
  );
}

/**
 * The dwell of a wash, as facts of a step: window, wait, rinsing on the clock, misting.
 * @param wash the wash
 * @param factors the factors in force
 * @returns the facts; none for clear water
 */
export function dwellFacts(wash: SiteWash, factors: FactorsInForce): StepFact[] {
  if (wash.class === 0) return [];
  const dries = dryingTime(factors);
  const misted = mistings(factors);
  const cleaned = cleanedOf(wash);
  return [
    factorFact('Minimum dwell', 'dwell.least', factors),
    factorFact('Maximum dwell', 'dwell.most', factors),
    ...(Number.isFinite(dries)
      ? [resultFact('Dry in this weather after', dries, 'minutes', 'timeToDry', factors)]
      : []),
    ...(misted > 0
      ? [
          resultFact('Mist at least every', dries, 'minutes', 'mistings', factors),
          resultFact('Mistings in a pass', misted, 'count', 'mistings', factors),
          factorFact('Water of one misting', 'weather.mist', factors),
        ]
      : []),
    ...ofCleaned(
      'Wait after scrubbing',
      cleaned,
      'minutes',
      'wait',
      factors,
      (walls) => patchTimes(walls.cycle, factors).wait,
    ),
    ...ofCleaned(
      'Start to rinse, on the clock',
      cleaned,
      'minutes',
      'wait',
      factors,
      (walls) => patchTimes(walls.cycle, factors).rinseAt,
    ),
    ...ofCleaned(
      'Last spot rinsed by, on the clock',
      cleaned,
      'minutes',
      'patch',
      factors,
      (walls) => patchTimes(walls.cycle, factors).lastBy,
    ),
  ];
}

/**
 * The rinse of a wash, as facts of a step: pressure, flow and pace of each wall.
 * @param wash the wash
 * @param overPressure the rows that take less than the nozzle is set to
 * @param factors the factors in force
 * @returns the facts, by wall where they differ
 */
export function rinseFacts(
  wash: SiteWash,
  overPressure: readonly WallRow[],
  factors: FactorsInForce,
): StepFact[] {
  const limited = new Set(overPressure);
  const materialOf = ({ rows }: WashedWalls) =>
    rows[0] !== undefined && limited.has(rows[0]) ? rows[0].material : undefined;
  const pressureOf = (walls: WashedWalls): number =>
    materialOf(walls)?.pressure ?? factors.value('nozzle.pressure');
  const flowOf = (walls: WashedWalls): number =>
    nozzleFlow(factors.value('nozzle.number'), pressureOf(walls));
  return [
    ...wallFacts('Pressure', wash.walls, (walls) => {
      const material = materialOf(walls);
      return material ? pressureFact('', material, factors) : factorFact('', 'nozzle.pressure', factors);
    }),
    ...wallFacts('Flow', wash.walls, (walls) => resultFact('', flowOf(walls), 'flow', 'nozzleFlow', factors)),
    ...wallFacts('Pace of rinsing, one person', wash.walls, (walls) => {
      const { cycle } = walls.how;
      const own = flowOf(walls) / factors.value('rinse.perArea');
      const times = cycle && patchTimes(cycle, factors);
      const paced = times?.rinsePaced === true && times.rinsePace < own * (1 - constants.guard.value);
      const pace = paced ? times.rinsePace : own;
      return resultFact('', pace, 'areaPerMinute', paced ? 'paced' : 'rinseTime', factors);
    }),
  ];
}

/**
 * Passes of cleaner as they are told on site.
 * @param passes a number; the share beyond a whole one is that of the dirtier patches
 * @returns for example `1, and 30% of the patches, the dirtier ones, again`
 */
export function passesInWords(passes: number): string {
  // A share that rounds to all of the patches is a whole pass.
  const share = Math.round((passes - Math.floor(passes)) * PERCENT);
  const whole = Math.floor(passes) + (share === PERCENT ? 1 : 0);
  return share === 0 || share === PERCENT
    ? String(whole)
    : `${String(whole)}, and ${rounded(share)}% of the patches, the dirtier ones, again`;
}

function cleanedOf({ walls }: SiteWash): Cleaned[] {
  return walls.flatMap((group) => (group.how.cycle ? [{ ...group, cycle: group.how.cycle }] : []));
}

function ofCleaned(
  label: string,
  walls: readonly Cleaned[],
  kind: Kind,
  method: MethodId,
  factors: FactorsInForce,
  value: (walls: Cleaned) => number,
): StepFact[] {
  return wallFacts(label, walls, (each) => resultFact('', value(each), kind, method, factors));
}
