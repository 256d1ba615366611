import { resultFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** Scrubbing makes up for a cleaner that is milder than the residue calls for. */
export const scrub: StepBuilder = ({ zone, factors }) => {
  const { governing, totals } = zone;
  if (governing === undefined || totals.scrubHours === 0) return undefined;
  return {
    id: 'scrub',
    title: 'Scrub',
    todo: [
      'Scrub what the cleaner does not take off, with a soft brush that is not metal, while the wall is wet.',
      'Stop where the face starts to wear.',
    ],
    facts: [
      rowsFact('Held down by', governing.governors.map(({ name }) => name).join(', ')),
      resultFact(
        'Classes short, at most',
        governing.mostNeed - governing.classToUse,
        'class',
        'shortfall',
        factors,
      ),
      resultFact('Time', totals.scrubHours, 'crewHours', 'scrub', factors),
    ],
    source: 'tn20',
    kind: 'published',
  };
};
