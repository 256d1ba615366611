import { washesOf } from '../../hazards/washed';
import { startsAtNothing, type StartsAtNothing } from '../../rules/starts-at-nothing';
import type { Check, Checked } from '../finding';

/** What starts at nothing and was not stated, in one line. */
export const notPriced: Check = ({ zones, factors }) => {
  const missing = startsAtNothing.filter(
    (each) => isInJob(each, zones) && !each.ids.some((id) => factors.overridden(id)),
  );
  return missing.length === 0
    ? []
    : [
        {
          check: 'not priced',
          what: `Not stated, so nothing in the price: ${missing.map(({ words }) => words).join(', ')}`,
          where: 'factor table',
          why: 'Only you can know these; each starts at zero',
          todo: `State what the bid holds: ${missing.map(({ ids }) => ids.join(' or ')).join(', ')}; 0 means none`,
          source: 'yours',
        },
      ];
};

function isInJob({ of, class: ofClass }: StartsAtNothing, zones: Checked['zones']): boolean {
  if (ofClass !== undefined)
    return zones.some((zone) => washesOf(zone).some((wash) => wash.class === ofClass));
  return of === undefined || zones.some(({ totals }) => totals[of] > 0);
}
