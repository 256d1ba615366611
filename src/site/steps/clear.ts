import { resultFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** Masking comes off, and what ran off is dealt with. */
export const clear: StepBuilder = ({ zone, factors }) => {
  const { totals } = zone;
  const alkali = totals.bicarbonate + totals.sodaAsh > 0;
  return {
    id: 'clear',
    title: 'Unmask and clear up',
    todo: [
      'Rinse the masking before it comes off, then rinse what lay under it where anything got in.',
      'Give fixtures back to the licensed person who made them dead.',
      ...(totals.runoff > 0
        ? ['Dispose of collected water as the local authority and the safety data sheet say.']
        : []),
      ...(alkali ? ['Add alkali little by little, in the open, and measure the pH before and after.'] : []),
    ],
    facts: [
      resultFact('Time to unmask', totals.unmaskHours, 'crewHours', 'maskOff', factors),
      ...(totals.runoff > 0
        ? [resultFact('Water to collect', totals.runoff, 'volume', 'runoff', factors)]
        : []),
      ...(totals.bicarbonate > 0
        ? [resultFact('Sodium bicarbonate, at most', totals.bicarbonate, 'mass', 'alkali', factors)]
        : []),
      ...(totals.sodaAsh > 0
        ? [resultFact('Soda ash, at most', totals.sodaAsh, 'mass', 'alkali', factors)]
        : []),
    ],
    source: 'practice',
    kind: 'common practice',
  };
};
