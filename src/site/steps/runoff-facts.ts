import type { ZoneEstimate } from '../../estimate/schedule';
import type { FactorsInForce } from '../../rules/read-factors';
import type { StepFact } from '../step';
import { resultFact } from '../step-facts';

/**
 * The water that runs off a zone, as facts of a step.
 * @param zone the zone
 * @param factors the factors in force
 * @returns its volume; none where none is collected
 */
export function collectFacts({ totals }: ZoneEstimate, factors: FactorsInForce): StepFact[] {
  return totals.runoff > 0
    ? [resultFact('Water to collect', totals.runoff, 'volume', 'runoff', factors)]
    : [];
}

/**
 * The alkali that neutralises what runs off a zone, as facts of a step.
 * @param zone the zone
 * @param factors the factors in force
 * @returns the mass of each alkali that is used
 */
export function alkaliFacts({ totals }: ZoneEstimate, factors: FactorsInForce): StepFact[] {
  return [
    ...(totals.bicarbonate > 0
      ? [resultFact('Sodium bicarbonate, at most', totals.bicarbonate, 'mass', 'bicarbonate', factors)]
      : []),
    ...(totals.sodaAsh > 0
      ? [resultFact('Soda ash, at most', totals.sodaAsh, 'mass', 'sodaAsh', factors)]
      : []),
  ];
}
