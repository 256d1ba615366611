import { punchList } from './inspection';
import { listed } from './named';
import { heldByItems, itemsNamed, openItems } from './open-items';
import type { Hold, Step } from './step';
import type { StepChecklist } from './step-checklist';
import type { Overruled, StepRecord, ZoneProgress } from './step-progress';

const MS_PER_DAY = 86_400_000;

/**
 * Where a step stands. `done`: ticked. `open`: may be ticked. `again`: a gate that was passed before something was
 * added to what it is decided on. `held`: an earlier gate, a condition, or the workbook itself, holds it back.
 */
export type StepStanding = 'done' | 'open' | 'again' | 'held';

/** A step with where it stands. */
export interface StandingStep {
  readonly step: Step;
  readonly standing: StepStanding;
  /** Why it is held, or to be done again; empty otherwise. */
  readonly reason: string;
  readonly record: StepRecord | undefined;
  /** The condition that holds it and that may be overruled; empty where there is none. */
  readonly condition: string;
  /** Who overruled the condition that else would hold it. */
  readonly overruled: Overruled | undefined;
}

/** By what a condition of time is judged. */
export interface Present {
  /** ms */
  readonly now: number;
  /** The ms of a time in ISO 8601. */
  readonly timeOf: (time: string) => number;
  /** Writes ms in words. */
  readonly timeText: (time: number) => string;
}

/**
 * Which steps are done, open and held back.
 * @param checklist the steps of a zone
 * @param progress what was taken down of it
 * @param present the time, and how times are written
 * @returns the steps in order
 */
export function standingSteps(
  checklist: StepChecklist,
  progress: ZoneProgress,
  present: Present,
): StandingStep[] {
  let closedGate = '';
  return checklist.steps.map((listedStep) => {
    const step = withItems(listedStep, progress);
    const record = progress.records.find((candidate) => candidate.step === step.id);
    const own = standingOf(step, record, holdOf(step, record, progress, present));
    const behind = closedGate;
    if (step.decidedOn !== undefined && own.standing !== 'done' && closedGate === '') closedGate = step.title;
    if (behind === '' || own.standing === 'done') return { step, record, ...own };
    return { step, record, ...own, standing: 'held', reason: `Waits for "${behind}".`, condition: '' };
  });
}

function standingOf(
  { decidedOn = [], mayOverrule = false }: Step,
  record: StepRecord | undefined,
  hold: Hold | undefined,
): Pick<StandingStep, 'standing' | 'reason' | 'condition' | 'overruled'> {
  const gate = decidedOn.length > 0;
  const isOverruled = mayOverrule && hold !== undefined && record?.overruled?.hold === hold.condition;
  const free = { condition: '', overruled: isOverruled ? record.overruled : undefined };
  if (hold !== undefined && !isOverruled && (gate || record?.done !== true))
    return { ...free, standing: 'held', reason: hold.words, condition: mayOverrule ? hold.condition : '' };
  if (record?.done !== true) return { ...free, standing: 'open', reason: '' };
  const before = new Set(record.decidedOn);
  const added = decidedOn.filter((item) => !before.has(item));
  return added.length === 0
    ? { ...free, standing: 'done', reason: '' }
    : {
        ...free,
        standing: 'again',
        reason: `New in the workbook since then: ${listed(added)}. Check again.`,
      };
}

/** What is found later asks for another look, once it is put right. */
function withItems(step: Step, progress: ZoneProgress): Step {
  if (step.ofPunchList !== true) return step;
  return { ...step, decidedOn: [...(step.decidedOn ?? []), ...itemsNamed(punchList(progress))] };
}

/** What is accepted already has had its wait. */
function holdOf(
  { hold, waits, ofPunchList = false }: Step,
  record: StepRecord | undefined,
  progress: ZoneProgress,
  { now, timeOf, timeText }: Present,
): Hold | undefined {
  if (hold !== undefined) return { condition: hold, words: hold };
  if (ofPunchList) return heldByItems(openItems(progress));
  if (waits === undefined || record?.done === true) return undefined;
  const begun = progress.records.find(({ step, done }) => step === waits.after && done);
  const waiting = `Waits for "${waits.title}".`;
  if (begun === undefined) return { condition: waiting, words: waiting };
  const end = timeOf(begun.when) + waits.days * MS_PER_DAY;
  if (now >= end) return undefined;
  return {
    condition: `Too early: wait ${String(waits.days)} days from ${begun.when}.`,
    words: `Too early: wait until ${timeText(end)}.`,
  };
}
