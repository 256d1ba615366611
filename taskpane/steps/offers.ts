import { tasks, WASH } from '../../src/actuals/task';
import { offerOfPatch, offerOfStep, restOf } from '../../src/site/offered-entry';
import type { StepId } from '../../src/site/step';
import type { EntryOffer } from '../actuals/entry-form';
import type { Recorded } from '../actuals/recorded';
import { timeText } from '../shared/time-text';
import type { Reading } from '../shared/use-reading';

const MS_A_MINUTE = 60_000;

/** What an entry is offered for: a step, a patch by its start, or anything else. */
export type OfferKey = StepId | `patch ${string}` | 'other';

/** The entries that are offered and neither written nor dropped, by zone and what they are offered for. */
export type Offers = Readonly<Record<string, EntryOffer>>;

/**
 * The key of an offer.
 * @param zone name of the zone
 * @param of what it is offered for
 * @returns the key
 */
export function offerKey(zone: string, of: OfferKey): string {
  return `${zone}\n${of}`;
}

/**
 * The key of the offer of a patch.
 * @param start when it was started, ISO 8601
 * @returns the key
 */
export function patchKey(start: string): OfferKey {
  return `patch ${start}`;
}

/** A patch that was timed. */
export interface TimedPatch {
  /** ISO 8601 */
  readonly start: string;
  readonly stop: string;
  /** Patches of the zone, each as often as it has passes. */
  readonly patches: number;
}

/**
 * What is offered to be recorded.
 * @param recorded the recorded work
 * @param zone name of the zone
 * @param of a step that is done, a patch that was timed, or anything else
 * @returns the entry, or undefined where nothing is left to record, or the recorded work cannot be read
 */
export function offerFor(
  recorded: Reading<Recorded>,
  zone: string,
  of: StepId | TimedPatch | 'other',
): EntryOffer | undefined {
  if (recorded.is !== 'ready') return undefined;
  const { job, entries } = recorded.value;
  const budgets = recorded.value.budgets.find((each) => each.zone.name === zone);
  if (budgets === undefined) return undefined;
  if (of === 'other') {
    const task = tasks.find((each) => restOf(each, budgets, entries)) ?? WASH;
    return { task, area: restOf(task, budgets, entries)?.area ?? 0 };
  }
  if (typeof of === 'string') {
    const offer = offerOfStep(of, budgets, entries);
    return offer && { task: offer.task, area: offer.area };
  }
  const minutes = (Date.parse(of.stop) - Date.parse(of.start)) / MS_A_MINUTE;
  const offer = offerOfPatch(minutes, of.patches, job.factors.value('team.size'), budgets, entries);
  return (
    offer && {
      task: offer.task,
      area: offer.area,
      counted: offer.hours,
      note: `dwell clock, ${timeText(of.start)}`,
    }
  );
}
