import { readCell } from '../quantity/cell';
import { dayIn } from '../quantity/day';
import { dayWords } from '../quantity/day-words';

/** What was agreed when the sample panel was accepted: the finished wall is held beside it. */
export interface AgreedSample {
  /** Who accepted it: owner, architect or builder. */
  readonly approvedBy: string;
  /** The day, as year-month-day. */
  readonly on: string;
  /** From how far it was looked at, with its unit. */
  readonly distance: string;
  /** In what light. */
  readonly light: string;
  /** Whether it was dry. */
  readonly dry: boolean;
  /** Who recorded it, and when: date and time, ISO 8601. */
  readonly who: string;
  readonly when: string;
}

/** Who did something, and when: date and time, ISO 8601. */
export interface Signed {
  readonly who: string;
  readonly when: string;
}

/** Something that has to be put right on a wall. */
export interface PunchItem extends Signed {
  /** Label of the wall; the zone as a whole where it is empty. */
  readonly wall: string;
  readonly what: string;
  /** File name, or number on the camera; left out where there is no photo. */
  readonly photo?: string;
  /** Undefined while it is open. */
  readonly closed?: Signed | undefined;
}

/**
 * A wall, or part of it, that was cleaned once more, as it was kept here before second cleans went to the recorded work.
 */
export interface SecondClean extends Signed {
  /** Label of the wall; the zone as a whole where it is empty. */
  readonly wall: string;
  /** Labor-hours */
  readonly hours: number;
  readonly why: string;
}

/** What is kept of the inspection of a zone. Progress that was kept before it was known holds none of it. */
export interface Inspection {
  readonly agreed?: AgreedSample;
  readonly punch?: readonly PunchItem[];
  readonly secondCleans?: readonly SecondClean[];
}

type Change = <Of extends Inspection>(inspection: Of) => Of;

/**
 * Keeps what was agreed on the sample panel, in place of what was agreed before.
 * @param agreed what was agreed
 * @returns the change
 */
export function agreeOnSample(agreed: AgreedSample): Change {
  return (inspection) => ({ ...inspection, agreed });
}

/**
 * Puts an item on the punch list.
 * @param item the item
 * @returns the change
 */
export function addPunchItem(item: PunchItem): Change {
  return (inspection) => ({ ...inspection, punch: [...punchList(inspection), item] });
}

/**
 * Marks an item of the punch list as done, or as open again.
 * @param item the item, known by its wall, its words and its time
 * @param closed who did it and when; undefined where it is open again
 * @returns the change
 */
export function closePunchItem(item: PunchItem, closed: Signed | undefined): Change {
  return (inspection) => ({
    ...inspection,
    punch: punchList(inspection).map((other) => {
      if (other.when !== item.when || other.wall !== item.wall || other.what !== item.what) return other;
      return { ...other, closed };
    }),
  });
}

/**
 * Takes a second clean out of what is kept here, once it stands in the recorded work.
 * @param clean the second clean, known by its wall and its time
 * @returns the change
 */
export function dropSecondClean({ wall, when }: Pick<SecondClean, 'wall' | 'when'>): Change {
  return (inspection) => ({
    ...inspection,
    secondCleans: secondCleansOf(inspection).filter((other) => other.wall !== wall || other.when !== when),
  });
}

/**
 * The punch list of a zone.
 * @param inspection what is kept of its inspection
 * @returns its items in the order in which they were found
 */
export function punchList({ punch = [] }: Inspection): readonly PunchItem[] {
  return punch;
}

/**
 * The second cleans of a zone that are kept here.
 * @param inspection what is kept of its inspection
 * @returns them in the order in which they were recorded
 */
export function secondCleansOf({ secondCleans = [] }: Inspection): readonly SecondClean[] {
  return secondCleans;
}

/**
 * What was agreed on the sample panel, in words.
 * @param agreed what was agreed
 * @returns for example `Accepted by the architect on May 2, 2026, viewed dry from 20 ft in daylight.`
 */
export function agreedWords({ approvedBy, on, distance, light, dry }: AgreedSample): string {
  const state = dry ? 'dry' : 'while it was not yet dry';
  const day = dayIn(readCell(on));
  const when = day === undefined ? on : dayWords(day);
  return `Accepted by ${approvedBy} on ${when}, viewed ${state} from ${distance} in ${light}.`;
}
