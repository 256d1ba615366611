import { isPriced } from '../../estimate/price';
import type { Check } from '../finding';
import { shownFactor, shownValue } from '../shown';

/** Price per washed area of the whole job, where all of it is asked for, against the span that the user states. */
export const priceOutsideSpan: Check = ({ zones, job, factors }) => {
  if (zones.length < job.length || !isPriced(factors)) return [];
  const sum = (of: 'washedArea' | 'price') => zones.reduce((total, { totals }) => total + totals[of], 0);
  const rate = sum('price') / sum('washedArea');
  const isBelow = factors.overridden('price.span.least') && rate < factors.value('price.span.least');
  const isAbove = factors.overridden('price.span.most') && rate > factors.value('price.span.most');
  if (!Number.isFinite(rate) || (!isBelow && !isAbove)) return [];
  const id = isBelow ? 'price.span.least' : 'price.span.most';
  return [
    {
      check: 'price per area',
      what: `Price ${shownValue(rate, 'moneyPerArea', factors)} over all, ${isBelow ? 'below the lowest' : 'above the highest'} that you state, ${shownFactor(factors, id)}`,
      where: 'the whole job',
      why: 'A price per area outside of your usual range is more often a mistake than a bargain',
      todo: 'Look for a unit, an area, a price or a markup that is wrong, or change the factors price.span.least and price.span.most',
      source: 'yours',
    },
  ];
};
