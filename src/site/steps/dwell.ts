import { driesEarly, driesTooSoon } from '../../hazards/cleaner-on-wall';
import { amount } from '../amount';
import { resultFact } from '../step-facts';
import type { StepBuilder, StepSite } from '../step';
import { dwellFacts } from './wash-facts';
import { dryingFacts } from './weather-facts';

/** The cleaner works for its dwell, and never dries. */
export const dwell: StepBuilder = (site) => {
  const { zone, factors, first } = site;
  if (first === undefined || first.class === 0) return undefined;
  return {
    id: 'dwell',
    title: 'Dwell',
    todo: [
      'Watch the wall, not only the clock: rinse at once where the cleaner starts to dry.',
      ...mistTodo(site),
      'The clock counts from the first stroke of a patch. This step is done when the last patch has been rinsed.',
    ],
    facts: [
      ...dwellFacts(first, factors),
      ...dryingFacts(factors),
      ...(zone.totals.mistWater > 0
        ? [resultFact('Mist water, whole zone', zone.totals.mistWater, 'volume', 'mist', factors)]
        : []),
    ],
    hold: first.finding,
    source: 'practice',
    kind: 'common practice',
  };
};

/**
 * How a cleaner that dries early is kept wet, in sentences.
 * @param site the zone and the factors in force
 * @returns what to do; none where it stays wet by itself
 */
export function mistTodo({ zone, factors }: Pick<StepSite, 'zone' | 'factors'>): string[] {
  const dries = driesEarly(zone, factors);
  if (dries === undefined) return [];
  const every = amount(dries, 'minutes', factors.system);
  return [
    `It dries before the maximum dwell is over: mist it at least every ${every}, or wash smaller areas, in shade, or at a cooler time of day.`,
    ...(driesTooSoon(zone, factors) === undefined
      ? []
      : ['Without misting, it dries before the minimum dwell is over: apply it only with water on hand.']),
  ];
}
