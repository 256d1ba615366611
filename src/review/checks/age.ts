import { ageNotStated as withoutAge, tooOld as late, tooYoung as young } from '../../hazards/age';
import { hazardCheck } from '../finding';
import { shownFactor, shownValue } from '../shown';

/** Masonry that is too young to wash. */
export const tooYoung = hazardCheck(young, (_, rows, { factors }) => ({
  check: 'age',
  what: `Masonry ${shownValue(Math.min(...rows.map(({ age }) => age)), 'days', factors)} old, younger than ${shownFactor(factors, 'limit.age')}`,
  why: 'Mortar that has not hardened is washed out and stained',
  todo: 'Wait, or get the brick and mortar makers to agree in writing',
  source: 'tn20',
  column: 'age',
}));

/** Masonry whose mortar smears have had time to get hard. */
export const tooOld = hazardCheck(late, (_, rows, { factors }) => ({
  check: 'age',
  what: `Masonry ${shownValue(Math.max(...rows.map(({ age }) => age)), 'days', factors)} old, older than ${shownFactor(factors, 'limit.late')}`,
  why: 'Mortar smears get harder with age: clay brick is best cleaned by 28 days, block by 21, strong mortar by 7',
  todo: 'Allow for more scraping and brushing, and try it on the sample first; no stronger acid, no more pressure',
  source: 'masonry-2007',
  column: 'age',
}));

/** Masonry whose age is not stated. */
export const ageNotStated = hazardCheck(withoutAge, (_, __, { factors }) => ({
  check: 'age',
  what: 'Age is not stated',
  why: `Masonry is washed at ${shownFactor(factors, 'limit.age')} at the earliest`,
  todo: 'State the age in days, or check when it was laid before washing',
  source: 'tn20',
  column: 'age',
}));
