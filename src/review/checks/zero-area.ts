import { rowCheck } from '../finding';

/** A labelled row without an area: the host does not tell a blank from a 0. */
export const zeroArea = rowCheck(
  (row) => row.area === 0,
  () => ({
    check: 'area',
    what: 'Area is 0 or blank',
    why: 'The row counts in the governing class, but nothing is priced for it',
    todo: 'State the area, or delete the row',
    source: 'rows',
  }),
);
