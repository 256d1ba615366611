import { wallsNamed } from '../named';
import { factorFact, resultFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { preWetFacts } from './wash-facts';
import { warmthFacts } from './weather-facts';
import { applyHold } from './weather-hold';

/** A wet wall takes up little of the cleaner. */
export const preWet: StepBuilder = ({ zone, factors, first }) => {
  const facts = first ? preWetFacts(first, factors) : [];
  if (first === undefined || facts.length === 0) return undefined;
  const keptWet = first.walls.some(({ how }) => how.below > 0);
  return {
    id: 'pre-wet',
    title: 'Pre-wet',
    todo: [
      'Wet the patch and the masonry below it, pass after pass, until the face takes up little more.',
      'Keep both wet until the final rinse. Another pass does no harm.',
      ...(applyHold(zone, factors) === undefined
        ? []
        : ['Do not start on another patch: the weather holds the cleaner back.']),
    ],
    facts: [
      ...facts,
      ...(keptWet ? [factorFact('Wet what lies below every', 'below.interval', factors)] : []),
      ...(zone.zone.below.length > 0 ? [rowsFact('Below, in other zones', wallsNamed(zone.zone.below))] : []),
      resultFact('Water, whole zone', zone.totals.preWetWater, 'volume', 'prewetWater', factors),
      ...warmthFacts(factors),
    ],
    source: 'tn20',
    kind: 'published',
  };
};
