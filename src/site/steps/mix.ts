import { cleanerUse } from '../../estimate/cleaner';
import { className } from '../../rules/cleaner-classes';
import { factorFact, resultFact } from '../step-facts';
import { acidOnCalcareous } from '../../hazards/cleaner-on-wall';
import { takesAcid } from '../../hazards/washed';
import { materialsNamed, wallsNamed } from '../named';
import type { StepBuilder } from '../step';
import { applyHold } from './weather-hold';

/** The cleaner is mixed as its label says. */
export const mix: StepBuilder = ({ zone, factors }) => {
  const used = zone.governing?.classToUse ?? 0;
  const use = cleanerUse(used, factors);
  if (used === 0 || use === undefined) return undefined;
  const { patch, totals } = zone;
  const calcareous = acidOnCalcareous(zone);
  const ofPatch = patch ? (patch.area / use.coverage) * use.coats : undefined;
  return {
    id: 'mix',
    title: `Mix the cleaner: class ${String(used)}, ${className(used)}`,
    todo: [
      "Check the drum against the label and the safety data sheet: the label's dilution holds.",
      takesAcid(zone)
        ? 'Put the water in first, then pour the concentrate into it. Wear what the safety data sheet names.'
        : 'Wear what the safety data sheet names.',
      'Mix no more than the next patches take, and label what it is mixed in.',
      ...(calcareous.length > 0
        ? [
            `Mix no acid for ${materialsNamed(calcareous)} (${wallsNamed(calcareous)}) without the written word of the maker of the unit and an accepted sample.`,
          ]
        : []),
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
    hold: applyHold(zone, factors),
    source: 'practice',
    kind: 'common practice',
  };
};
