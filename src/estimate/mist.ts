import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import { dryingTime } from './drying';

/**
 * Times that a face is misted in each pass so that the cleaner does not dry within the maximum dwell; not rounded, and by
 * whoever tends, so that it takes no hours of its own. An assumption over the evaporation equation.
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns mistings in a pass
 */
export function mistings(factors: FactorsInForce, rec?: Recorder): number {
  const dries = dryingTime(factors, rec);
  const times = Math.max(0, factors.value('dwell.most') / dries - 1);
  if (rec) {
    if (Number.isFinite(dries)) rec.line('mistings', times);
    else rec.line('mistings', 0, '0');
  }
  return times;
}
