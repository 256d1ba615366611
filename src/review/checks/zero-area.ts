import { netArea } from '../../walls/net-area';
import { rowCheck } from '../finding';

/** A labelled row without an area: the host does not tell a blank from a 0. */
export const zeroArea = rowCheck(
  (row) => row.area === 0,
  () => ({
    check: 'area',
    what: 'Area is 0 or blank',
    why: 'The row governs nothing, and nothing is priced for it',
    todo: 'State the area, or delete the row',
    source: 'rows',
    column: 'area',
  }),
);

/** A row that is nothing but openings. */
export const nothingButOpenings = rowCheck(
  (row) => row.area > 0 && netArea(row) <= 0,
  () => ({
    check: 'area',
    what: 'Openings take the whole area',
    why: 'The row governs nothing and is not washed; only its openings are covered',
    todo: 'Look at Area and Openings, or list the row as glass',
    source: 'rows',
    column: 'openings',
  }),
);
