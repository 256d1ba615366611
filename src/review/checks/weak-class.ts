import { needClass, residueOf, residueRules } from '../../govern/residue';
import { washesOf } from '../../hazards/washed';
import { type Check, type Finding, classesInWords, placed } from '../finding';

const HEAVY = 'heavy';

/** Heavy residue under a class that does not take it off by itself. */
export const heavyUnderWeakClass: Check = ({ zones, factors }) => {
  const rules = residueRules(factors);
  return zones.flatMap((zone): Finding[] => {
    const rows = washesOf(zone).flatMap((wash) =>
      wash.rows.filter(
        (row) => row.material.masonry && residueOf(row) === HEAVY && needClass(row, rules) > wash.class,
      ),
    );
    if (rows.length === 0) return [];
    return [
      {
        check: 'heavy residue',
        what: `Heavy residue under ${classesInWords(zone, rows)}`,
        ...placed(zone.zone.name, rows),
        column: 'residue',
        why: 'The cleaner does not take it off: scrubbing has to, and may mark the face',
        todo: 'Scrape more before washing, mask what governs, or plan for the scrubbing that is priced',
        source: 'estimate',
      },
    ];
  });
};
