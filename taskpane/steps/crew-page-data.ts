import type { ZoneEstimate } from '../../src/estimate/schedule';
import { toBring, type ToBring } from '../../src/site/bring';
import { cautionSheet, type AppliedCaution } from '../../src/site/caution-sheet';
import type { StandingStep } from '../../src/site/step-gates';
import type { ZoneProgress } from '../../src/site/step-progress';
import type { WallRow } from '../../src/walls/wall-row';
import type { Job } from '../shared/use-job';

/** What the crew of a zone has to know on site, without a price. */
export interface CrewPageData {
  readonly zone: ZoneEstimate;
  /** The walls that are worked on today, in the order of the table. */
  readonly today: readonly WallRow[];
  readonly bring: readonly ToBring[];
  readonly progress: ZoneProgress;
  readonly steps: readonly StandingStep[];
  readonly cautions: readonly AppliedCaution[];
}

/**
 * Puts together what the crew of a zone has to know.
 * @param zone its estimate
 * @param job the job that it belongs to
 * @param progress how far it is
 * @param steps its steps
 * @param chosen labels of the walls of today; all of the zone where none is chosen
 * @returns what stands on the crew's page
 */
export function crewPageData(
  zone: ZoneEstimate,
  job: Job,
  progress: ZoneProgress,
  steps: readonly StandingStep[],
  chosen: readonly string[],
): CrewPageData {
  const { rows } = zone.zone;
  const picked = rows.filter(({ wall }) => chosen.includes(wall));
  const today = picked.length > 0 ? picked : rows;
  return {
    zone,
    today,
    bring: toBring(zone, job.zones, new Set(today), job.factors),
    progress,
    steps,
    cautions: cautionSheet([zone], job.factors, job.zones),
  };
}
