import { rowCheck } from '../finding';
import { shownFactor } from '../shown';

/** Masonry that is too young to wash. */
export const tooYoung = rowCheck(
  (row, _, { factors }) => !row.masked && row.age > 0 && row.age < factors.value('limit.age'),
  (_, rows, { factors }) => ({
    check: 'age',
    what: `Masonry ${String(Math.min(...rows.map(({ age }) => age)))} days old, younger than ${shownFactor(factors, 'limit.age')}`,
    why: 'Mortar that has not hardened is washed out and stained',
    todo: 'Wait, or get the brick and mortar makers to agree in writing',
    source: 'tn20',
  }),
);

/** Masonry whose age is not stated. */
export const ageNotStated = rowCheck(
  (row) => !row.masked && row.age === 0,
  (_, __, { factors }) => ({
    check: 'age',
    what: 'Age is not stated',
    why: `Masonry is washed at ${shownFactor(factors, 'limit.age')} at the earliest`,
    todo: 'State the age in days, or look at the date of laying before washing',
    source: 'tn20',
  }),
);
