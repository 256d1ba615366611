import { residueOf } from '../../govern/residue';
import { classInWords } from '../../rules/cleaner-classes';
import { rowCheck } from '../finding';

const HEAVY = 'heavy';

/** Heavy residue under a class that does not take it off by itself. */
export const heavyUnderWeakClass = rowCheck(
  (row, { governing }) =>
    !row.masked &&
    residueOf(row) === HEAVY &&
    governing !== undefined &&
    governing.classToUse < governing.mostNeed,
  ({ governing }) => ({
    check: 'heavy residue',
    what: `Heavy residue under ${classInWords(governing?.classToUse)}`,
    why: 'The cleaner does not take it off: scrubbing has to, and may mark the face',
    todo: 'Scrape more before washing, mask what governs, or plan for the scrubbing that is priced',
    source: 'estimate',
  }),
);
