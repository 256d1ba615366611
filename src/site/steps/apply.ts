import { appliedUnderPressure } from '../../hazards/jet';
import { tooWindy } from '../../hazards/weather';
import { amount, factorAmount } from '../amount';
import { weatherHazardWords } from '../hazard-words';
import { factorFact } from '../step-facts';
import type { StepBuilder, StepSite } from '../step';
import { applyFacts } from './wash-facts';
import { warmthFacts } from './weather-facts';
import { applyHold } from './weather-hold';

/** One patch at a time, so that all of it stays within the dwell. */
export const apply: StepBuilder = (site) => {
  const { zone, factors, first } = site;
  if (first === undefined || first.class === 0) return undefined;
  return {
    id: 'apply',
    title: 'Apply',
    todo: [
      'Start the dwell clock with the first stroke.',
      'Cover one patch; do not overlap a patch that is already washed.',
      'Go on with the next patch only after this one is scrubbed and rinsed.',
      ...(first.walls.some(({ how }) => how.passes > 1)
        ? ['Where a wall takes more than one pass, apply, scrub and rinse it again.']
        : []),
      ...applyCautions(site),
    ],
    facts: [
      ...applyFacts(first, factors),
      factorFact('Minimum passes', 'cleaner.applications', factors),
      factorFact('Maximum pressure to apply it with', 'apply.pressure', factors),
      factorFact('Maximum wind to spray in', 'limit.wind', factors),
      ...warmthFacts(factors),
      factorFact('Too hot for cleaner at', 'limit.surface', factors),
    ],
    hold: first.finding ?? applyHold(zone, factors),
    mayOverrule: first.finding === undefined,
    source: 'tn20',
    kind: 'published',
  };
};

/**
 * What stands against spraying, in sentences.
 * @param site the zone and the factors in force
 * @returns what to do about wind and pressure; none where all is well
 */
export function applyCautions({ zone, factors }: Pick<StepSite, 'zone' | 'factors'>): string[] {
  const wind = tooWindy(zone, factors);
  const most = appliedUnderPressure(zone, factors);
  return [
    ...(wind.length > 0
      ? [
          `Do not spray: ${weatherHazardWords(wind, factors)}, more than ${factorAmount('limit.wind', factors)}. Apply it with a brush, screen the work, or wait.`,
        ]
      : []),
    ...(most === undefined
      ? []
      : [
          `Use a brush, or lower the pressure: the workbook has set more than ${amount(most, 'pressure', factors.system)}.`,
        ]),
  ];
}
