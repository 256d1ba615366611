import { cleanerUse } from '../../estimate/cleaner';
import { className, GENTLEST_ACID } from '../../rules/cleaner-classes';
import { factorFact, resultFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** The cleaner is mixed as its label says. */
export const mix: StepBuilder = ({ zone, factors }) => {
  const used = zone.governing?.classToUse ?? 0;
  const use = cleanerUse(used, factors);
  if (used === 0 || use === undefined) return undefined;
  const { patch, totals } = zone;
  const ofPatch = patch ? (patch.area / use.coverage) * use.coats : undefined;
  return {
    id: 'mix',
    title: `Mix the cleaner: class ${String(used)}, ${className(used)}`,
    todo: [
      "Check the drum against the label and the safety data sheet: the label's dilution holds.",
      used >= GENTLEST_ACID
        ? 'Put the water in first, then pour the concentrate into it. Wear what the safety data sheet names.'
        : 'Wear what the safety data sheet names.',
      'Mix no more than the next patches take.',
    ],
    facts: [
      factorFact('Parts of water to 1 of concentrate', `cleaner.dilution.${used}`, factors),
      ...(ofPatch === undefined
        ? []
        : [
            resultFact('Mix for one patch', ofPatch, 'volume', 'cleanerMix', factors),
            resultFact('Concentrate in it', ofPatch / (1 + use.dilution), 'volume', 'concentrate', factors),
          ]),
      resultFact('Concentrate, whole zone', totals.concentrate, 'volume', 'concentrate', factors),
      resultFact('Water in the mix, whole zone', totals.mixWater, 'volume', 'mixWater', factors),
    ],
    source: 'practice',
    kind: 'common practice',
  };
};
