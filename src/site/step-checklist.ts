import type { ZoneEstimate } from '../estimate/schedule';
import type { FactorsInForce } from '../rules/read-factors';
import { age } from './steps/age';
import { apply } from './steps/apply';
import { clear } from './steps/clear';
import { dwell } from './steps/dwell';
import { look } from './steps/look';
import { mix } from './steps/mix';
import { preWet } from './steps/pre-wet';
import { protection } from './steps/protection';
import { rinse } from './steps/rinse';
import { sample } from './steps/sample';
import { scrape } from './steps/scrape';
import { scrub } from './steps/scrub';
import { stepIds, type Step, type StepBuilder, type StepId } from './step';

/** The steps of a zone in working order. */
export interface StepChecklist {
  readonly zone: string;
  /** The labels of its walls, by which a zone is known again after it was renamed. */
  readonly walls: readonly string[];
  /** What is said of the zone as a whole; empty where there is nothing to say. */
  readonly notice: string;
  readonly steps: readonly Step[];
}

const builders: Readonly<Record<StepId, StepBuilder>> = {
  age,
  sample,
  protection,
  scrape,
  'pre-wet': preWet,
  mix,
  apply,
  dwell,
  scrub,
  rinse,
  clear,
  look,
};

/**
 * The steps that a zone needs, each with its numbers.
 * @param zone the estimate of the zone
 * @param zones the estimates of every zone of the job
 * @param factors the factors in force
 * @returns the checklist
 */
export function stepChecklist(
  zone: ZoneEstimate,
  zones: readonly ZoneEstimate[],
  factors: FactorsInForce,
): StepChecklist {
  return {
    zone: zone.zone.name,
    walls: zone.zone.rows.map(({ wall }) => wall),
    notice: noticeOf(zone),
    steps: stepIds.map((id) => builders[id]({ zone, zones, factors })).filter((step) => step !== undefined),
  };
}

function noticeOf({ governing }: ZoneEstimate): string {
  if (governing === undefined) return 'Nothing is washed here: every wall of the zone is masked.';
  return governing.classToUse === 0
    ? 'This zone is washed with clear water: there is no cleaner, no dwell and no patch.'
    : '';
}
