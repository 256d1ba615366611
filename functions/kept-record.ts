import type { JobEstimate } from '../src/estimate/schedule';
import { Recorder } from '../src/trace/recorder';
import type { Zone } from '../src/walls/zones';
import { answer, type Question } from './arguments';

/** Most lines of a record that is kept: at some 300 bytes a line 30 MB, at some 200 lines a wall 500 walls. */
const MOST_KEPT = 100_000;

/** An estimate, and all that was taken down for it. */
export interface Recorded {
  readonly rec: Recorder;
  readonly estimate: JobEstimate;
}

interface Kept extends Recorded {
  readonly question: Question;
  readonly taken: readonly Zone[];
}

let kept: Kept | undefined;

/**
 * Works the estimate out and takes everything down. The last record is kept, since formulas ask the same walls for many
 * quantities; it is shared, so that nobody may write to it.
 * @param question factors and zones
 * @param taken the zones whose lines are taken down; the others share in what belongs to the job, and are not taken apart
 * @param most lines of a record that is kept
 * @returns the estimate of those zones and the record
 */
export function recordOf(question: Question, taken: readonly Zone[], most = MOST_KEPT): Recorded {
  // What was read last is remembered, so that the same cells are the same objects.
  const { factors, job } = question;
  if (kept?.question.factors === factors && kept.question.job === job && kept.taken === taken) return kept;
  kept = undefined;
  const rec = new Recorder(factors);
  const estimate = answer({ ...question, zones: taken }, { rec });
  const recorded = { rec, estimate };
  if (rec.size <= most) kept = { ...recorded, question, taken };
  return recorded;
}
