import { resultFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { scrubFacts } from './wash-facts';

/** The brush takes what the cleaner leaves, patch by patch and within the dwell. */
export const scrub: StepBuilder = ({ zone, factors, first }) => {
  const { governing, classToUse, totals } = zone;
  if (governing === undefined || classToUse === undefined || !first?.walls.some(({ how }) => how.scrub > 0))
    return undefined;
  const heldDown = classToUse === governing.ceiling && governing.mostNeed > classToUse;
  return {
    id: 'scrub',
    title: first.class === 0 ? 'Scrub' : 'Scrub, within the dwell',
    todo: [
      ...(first.class === 0
        ? []
        : ['Scrub each patch as soon as it is covered; the dwell goes on meanwhile.']),
      'Scrub what the cleaner does not take off, with a soft brush that is not metal, while the wall is wet.',
      'Stop where the face starts to wear.',
    ],
    facts: [
      ...scrubFacts(first, factors),
      ...(heldDown ? [rowsFact('Limited by', governing.governors.map(({ name }) => name).join(', '))] : []),
      resultFact('Class that the heaviest residue needs', governing.mostNeed, 'class', 'mostNeed', factors),
      resultFact('Time, whole zone', totals.scrubHours, 'laborHours', 'washPart', factors),
    ],
    source: 'practice',
    kind: 'common practice',
  };
};
