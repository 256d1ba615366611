import { resultFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { alkaliFacts, collectFacts } from './runoff-facts';

/** Masking comes off after the final rinse, the wall still wet or not, and what ran off is dealt with. */
export const clear: StepBuilder = ({ zone, factors }) => {
  const { totals } = zone;
  const hasFixtures = zone.zone.rows.some(({ masked, fixtures }) => !masked && fixtures > 0);
  const alkali = totals.bicarbonate + totals.sodaAsh > 0;
  return {
    id: 'clear',
    title: 'Unmask and clean up',
    todo: [
      'Rinse the masking before it comes off. Rinse off at once what got under it.',
      'The wall need not be dry for this.',
      ...(hasFixtures ? ['Have the licensed person re-energize the fixtures.'] : []),
      ...(totals.runoff > 0
        ? ['Dispose of collected water as the local authority and the safety data sheet direct.']
        : []),
      ...(totals.glassHours > 0 ? ['Give the glass its final clean.'] : []),
      ...(alkali ? ['Add alkali slowly, in the open, and measure the pH before and after.'] : []),
    ],
    facts: [
      ...(totals.unmaskHours === 0
        ? []
        : [resultFact('Time to unmask', totals.unmaskHours, 'laborHours', 'maskOff', factors)]),
      ...(totals.glassHours > 0
        ? [resultFact('Final clean of the glass', totals.glassHours, 'laborHours', 'glass', factors)]
        : []),
      ...collectFacts(zone, factors),
      ...alkaliFacts(zone, factors),
    ],
    source: 'practice',
    kind: 'common practice',
  };
};
