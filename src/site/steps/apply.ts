import { appliedUnderPressure } from '../../hazards/jet';
import { tooWindy } from '../../hazards/weather';
import { amount, factorAmount } from '../amount';
import { weatherHazardWords } from '../hazard-words';
import { factorFact, resultFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { warmthFacts } from './weather-facts';
import { applyHold } from './weather-hold';

/** One patch at a time, so that all of it stays within the dwell. */
export const apply: StepBuilder = ({ zone, factors }) => {
  if (zone.governing === undefined || zone.governing.classToUse === 0) return undefined;
  const { patch, patches } = zone;
  const wind = tooWindy(zone, factors);
  const most = appliedUnderPressure(zone, factors);
  return {
    id: 'apply',
    title: 'Apply',
    todo: [
      'Start the dwell clock with the first stroke.',
      'Cover one patch; do not overlap a patch that is already washed.',
      'Go on with the next patch only after this one is rinsed.',
      ...(wind.length > 0
        ? [
            `Do not spray: ${weatherHazardWords(wind, factors)}, more than ${factorAmount('limit.wind', factors)}. Put it on with a brush, screen the work, or wait.`,
          ]
        : []),
      ...(most === undefined
        ? []
        : [
            `Use a brush, or lower the pressure: the workbook has set more than ${amount(most, 'pressure', factors.system)}.`,
          ]),
    ],
    facts: [
      factorFact('Pressure to put it on with, at most', 'apply.pressure', factors),
      factorFact('Most wind to spray in', 'limit.wind', factors),
      ...warmthFacts(factors),
      factorFact('Too hot for cleaner from', 'limit.surface', factors),
      ...(patch
        ? [
            resultFact('Patch, at most', patch.area, 'area', 'patch', factors),
            resultFact('Patches in the zone', patches, 'count', 'patches', factors),
            factorFact('Applied at', 'rate.apply', factors),
            resultFact(
              'One patch is covered in',
              patch.area / factors.value('rate.apply'),
              'minutes',
              'applyHours',
              factors,
            ),
            factorFact('Coats', 'cleaner.applications', factors),
          ]
        : [factorFact('Applied at', 'rate.apply', factors)]),
    ],
    hold: zone.finding ?? applyHold(zone, factors),
    source: 'tn20',
    kind: 'published',
  };
};
