import { listed } from './named';
import type { Step } from './step';
import type { StepChecklist } from './step-checklist';
import type { StepRecord, ZoneProgress } from './step-progress';

/**
 * Where a step stands. `done`: ticked. `open`: may be ticked. `again`: a gate that was passed before something was
 * added to what it is decided on. `held`: an earlier gate, or the workbook itself, holds it back.
 */
export type StepStanding = 'done' | 'open' | 'again' | 'held';

/** A step with where it stands. */
export interface StandingStep {
  readonly step: Step;
  readonly standing: StepStanding;
  /** Why it is held, or to be done again; empty otherwise. */
  readonly reason: string;
  readonly record: StepRecord | undefined;
}

/**
 * Which steps are done, open and held back.
 * @param checklist the steps of a zone
 * @param progress what was taken down of it
 * @returns the steps in order
 */
export function standingSteps(checklist: StepChecklist, progress: ZoneProgress): StandingStep[] {
  let closedGate = '';
  return checklist.steps.map((step) => {
    const record = progress.records.find((candidate) => candidate.step === step.id);
    const own = standingOf(step, record);
    const behind = closedGate;
    if (step.decidedOn !== undefined && own.standing !== 'done' && closedGate === '') closedGate = step.title;
    if (behind === '' || own.standing === 'done') return { step, record, ...own };
    return { step, record, standing: 'held', reason: `Waits for "${behind}".` };
  });
}

function standingOf(
  { decidedOn = [], hold }: Step,
  record: StepRecord | undefined,
): Pick<StandingStep, 'standing' | 'reason'> {
  const gate = decidedOn.length > 0;
  if (hold !== undefined && (gate || record?.done !== true)) return { standing: 'held', reason: hold };
  if (record?.done !== true) return { standing: 'open', reason: '' };
  const before = new Set(record.decidedOn);
  const added = decidedOn.filter((item) => !before.has(item));
  return added.length === 0
    ? { standing: 'done', reason: '' }
    : { standing: 'again', reason: `New in the workbook since then: ${listed(added)}. Look again.` };
}
