import type { ResidueRules } from '../govern/residue';
import { residueRules } from '../govern/residue';
import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import { belowRules } from './below';
import { crewOf } from './crew';
import { mistings } from './mist';
import { preWetRules } from './pre-wet';
import { rinseRules } from './rinse';
import { cycleRules } from './wash-cycle';
import type { WashRules } from './wash-row';

/**
 * What holds for every row that is washed, whatever the class.
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns gives what holds for a class
 */
export function washRules(factors: FactorsInForce, rec?: Recorder): (classToUse: CleanerClass) => WashRules {
  const residue: ResidueRules = residueRules(factors);
  const common = {
    crew: crewOf(factors),
    cycle: cycleRules(factors),
    preWet: preWetRules(factors, rec),
    rinse: rinseRules(factors, rec),
    residue,
    below: belowRules(factors),
    applyRate: factors.value('rate.apply'),
    wetRate: factors.value('rate.wet'),
    scrubRate: factors.value('scrub.full'),
    mistings: mistings(factors, rec),
    mist: factors.value('weather.mist'),
    factors,
  };
  return (classToUse) => ({ ...common, class: classToUse });
}
