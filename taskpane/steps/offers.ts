import { RECLEAN, tasks, WASH } from '../../src/actuals/task';
import type { PunchItem, SecondClean } from '../../src/site/inspection';
import { offerOfPatch, offerOfStep, restOf } from '../../src/site/offered-entry';
import type { StepId } from '../../src/site/step';
import type { EntryDraft, EntryOffer } from '../actuals/entry-draft';
import type { Recorded } from '../actuals/recorded';
import { dayText, timeText } from '../shared/time-text';
import type { Reading } from '../shared/use-reading';

const MS_A_MINUTE = 60_000;

/** What an entry is offered for: a step, a patch by its start, a second clean, one that was kept, or anything else. */
export type OfferKey = StepId | `patch ${string}` | 'second clean' | `second clean ${string}` | 'other';

/** What an entry is offered for, with what is known of it. */
export type Offered = StepId | TimedPatch | { readonly secondClean: Partial<EntryDraft> } | 'other';

/** What was typed into the forms of the offers, by the same keys: it outlasts a form that is out of sight. */
export type Drafts = Map<string, EntryDraft>;

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

/**
 * The key of the offer of a second clean that was kept, or that an item of the punch list asks for.
 * @param of the second clean, or the item
 * @returns the key
 */
export function cleanKeyOf({ wall, when }: SecondClean | PunchItem): OfferKey {
  return `second clean ${when} ${wall}`;
}

/**
 * What is known of a second clean that was kept, for its entry.
 * @param clean the second clean
 * @returns the fields
 */
export function keptCleanDraft({ wall, hours, why, who, when }: SecondClean): Partial<EntryDraft> {
  return { date: dayText(when), wall, hours: String(hours), note: secondCleanNote(who, why) };
}

/**
 * The note of a second clean.
 * @param who whoever did it
 * @param why why it was cleaned again; empty where it is still to be typed
 * @returns for example `Second clean, R. Mason: haze`
 */
export function secondCleanNote(who: string, why: string): string {
  return `Second clean, ${who}: ${why}`;
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
 * @param of a step that is done, a patch that was timed, a second clean, or anything else
 * @returns the entry, or undefined where nothing is left to record, or the recorded work cannot be read
 */
export function offerFor(recorded: Reading<Recorded>, zone: string, of: Offered): EntryOffer | undefined {
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
  if ('secondClean' in of) return { task: RECLEAN, area: 0, typed: of.secondClean };
  const minutes = (Date.parse(of.stop) - Date.parse(of.start)) / MS_A_MINUTE;
  const offer = offerOfPatch(minutes, of.patches, job.factors.value('team.size'), budgets, entries);
  return (
    offer && {
      task: offer.task,
      area: offer.area,
      counted: offer.hours,
      typed: { note: `dwell clock, ${timeText(of.start)}` },
    }
  );
}
