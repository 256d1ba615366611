import type { ZoneEstimate } from '../estimate/schedule';
import type { FactorsInForce } from '../rules/read-factors';
import { age } from './steps/age';
import { apply } from './steps/apply';
import { clear } from './steps/clear';
import { dwell } from './steps/dwell';
import { laterWash } from './steps/later-wash';
import { look } from './steps/look';
import { mix } from './steps/mix';
import { preWet } from './steps/pre-wet';
import { protection } from './steps/protection';
import { rinse } from './steps/rinse';
import { sample } from './steps/sample';
import { sampleWash } from './steps/sample-wash';
import { scrape } from './steps/scrape';
import { scrub } from './steps/scrub';
import { outOfScope } from '../hazards/washed';
import { wallsNamed } from './named';
import { stepIds, type Step, type StepBuilder, type StepId, type StepSite } from './step';
import { siteWashes } from './washes';

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
  'sample-wash': sampleWash,
  sample,
  protection,
  scrape,
  'pre-wet': preWet,
  mix,
  apply,
  scrub,
  dwell,
  rinse,
  'later-3': laterWash(3),
  'later-2': laterWash(2),
  'later-1': laterWash(1),
  'later-0': laterWash(0),
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
  const washes = siteWashes(zone);
  const first = washes.find((wash) => !wash.later);
  const later = washes.filter((wash) => wash.later);
  const site = { zone, zones, factors, first, later };
  return {
    zone: zone.zone.name,
    walls: zone.zone.rows.map(({ wall }) => wall),
    notice: noticeOf(site),
    steps: stepIds.map((id) => builders[id](site)).filter((step) => step !== undefined),
  };
}

function noticeOf({ zone, first, later }: StepSite): string {
  const out = outOfScope(zone);
  return [
    ...(first === undefined && later.length === 0
      ? ['Nothing is washed here: every wall of the zone is masked.']
      : []),
    ...(first === undefined && later.length > 0
      ? [
          'Every wall of the zone is masked: the masonry is uncovered and washed afterwards, at its own class.',
        ]
      : []),
    ...(first?.class === 0
      ? [
          `${later.length > 0 ? 'The bare walls of this zone are' : 'This zone is'} washed with clear water: there is no cleaner, no dwell and no patch.`,
        ]
      : []),
    ...(out.length > 0
      ? [`Out of scope: ${wallsNamed(out)}, masonry that is covered and left unwashed (Masked = only).`]
      : []),
  ].join(' ');
}
