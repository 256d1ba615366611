import { factorFact, resultFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** One patch at a time, so that all of it stays within the dwell. */
export const apply: StepBuilder = ({ zone, factors }) => {
  if (zone.governing === undefined || zone.governing.classToUse === 0) return undefined;
  const { patch, patches } = zone;
  return {
    id: 'apply',
    title: 'Apply',
    todo: [
      'Start the dwell clock with the first stroke.',
      'Cover one patch; do not overlap a patch that is already washed.',
      'Go on with the next patch only after this one is rinsed.',
    ],
    facts: patch
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
      : [factorFact('Applied at', 'rate.apply', factors)],
    hold: zone.finding,
    source: 'tn20',
    kind: 'published',
  };
};
