import { shownNumber } from '../../src/quantity/shown-number';
import { show, type Kind, type System } from '../../src/quantity/systems';
import type { Task } from '../../src/actuals/task';

// As many digits as a number keeps through a change of units.
const DIGITS = 12;
const MEASURED_DIGITS = 3;
// A hundredth of an hour is half a minute.
const MOST_PLACES = 4;

/** What the form of an entry holds, as it is typed. */
export interface EntryDraft {
  /** Year-month-day. */
  readonly date: string;
  /** Label of the wall; empty for the zone as a whole. */
  readonly wall: string;
  readonly task: Task;
  readonly area: string;
  readonly hours: string;
  readonly water: string;
  readonly cleaner: string;
  readonly note: string;
}

/** What the form starts with. */
export interface EntryOffer {
  readonly task: Task;
  /** m2; 0 where the task has no area. */
  readonly area: number;
  /** Labor-hours that a clock has counted; undefined where nobody has counted them. */
  readonly counted?: number;
  /** What is known beside that. */
  readonly typed?: Partial<EntryDraft>;
}

/**
 * What the form of an entry holds before anybody types. Hours that nobody has counted are blank.
 * @param offer what is offered
 * @param date the day, as year-month-day
 * @param system the display system
 * @returns the fields
 */
export function draftOf(offer: EntryOffer, date: string, system: System): EntryDraft {
  const { task, area, counted, typed } = offer;
  return {
    ...{ date, wall: '', task, water: '', cleaner: '', note: '' },
    area: counted === undefined ? typedNumber(area, 'area', system) : measured(show(area, 'area', system)),
    hours: counted === undefined ? '' : measured(counted),
    ...typed,
  };
}

/**
 * A base value as it is typed into a field.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @returns the number as shown; empty for 0
 */
export function typedNumber(value: number, kind: Kind, system: System): string {
  return value === 0 ? '' : shownNumber(value, kind, system, DIGITS);
}

/** As it can be measured on the wall, and never more than there is. */
function measured(value: number): string {
  if (!(value > 0)) return '';
  const place = MEASURED_DIGITS - 1 - Math.floor(Math.log10(value));
  const step = 10 ** Math.min(MOST_PLACES, place);
  return String(Math.floor(value * step) / step);
}
