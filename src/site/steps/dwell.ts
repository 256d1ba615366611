import { dryingTime } from '../../estimate/drying';
import { driesEarly } from '../../hazards/cleaner-on-wall';
import { factorFact, resultFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { dryingFacts } from './weather-facts';

/** The cleaner works for its dwell, and never dries. */
export const dwell: StepBuilder = ({ zone, factors }) => {
  if (zone.governing === undefined || zone.governing.classToUse === 0) return undefined;
  const dries = dryingTime(factors);
  return {
    id: 'dwell',
    title: 'Let it work',
    todo: [
      'Watch the wall, not only the clock: rinse at once where the cleaner starts to dry.',
      ...(driesEarly(zone, factors) === undefined
        ? []
        : ['It dries before the most dwell is over: wash smaller areas, in shade, or at a cooler hour.']),
      'The clock counts from the first stroke of a patch. This step is done when the last patch has been rinsed.',
    ],
    facts: [
      factorFact('Least dwell', 'dwell.least', factors),
      factorFact('Most dwell', 'dwell.most', factors),
      ...(Number.isFinite(dries)
        ? [resultFact('Dry in this weather after', dries, 'minutes', 'timeToDry', factors)]
        : []),
      ...dryingFacts(factors),
      ...(zone.patch
        ? [
            resultFact('Wait after the last stroke', zone.patch.wait, 'minutes', 'wait', factors),
            resultFact('Start to rinse, on the clock', zone.patch.firstContact, 'minutes', 'wait', factors),
          ]
        : []),
    ],
    hold: zone.finding,
    source: 'practice',
    kind: 'common practice',
  };
};
