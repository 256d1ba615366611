import type { FactorsInForce } from '../../rules/read-factors';
import type { StepFact } from '../step';
import { factorFact } from '../step-facts';

/**
 * How warm it is, and how warm it has to be before water goes on a wall, as facts of a step.
 * @param factors the factors in force
 * @returns the facts
 */
export function warmthFacts(factors: FactorsInForce): StepFact[] {
  return [...airAndFace(factors), factorFact('Minimum temperature to wash at', 'limit.air', factors)];
}

/**
 * The weather that dries the cleaner, as facts of a step.
 * @param factors the factors in force
 * @returns the facts
 */
export function dryingFacts(factors: FactorsInForce): StepFact[] {
  return [
    ...airAndFace(factors),
    factorFact('Relative humidity', 'weather.humidity', factors),
    factorFact('Wind', 'weather.wind', factors),
  ];
}

function airAndFace(factors: FactorsInForce): StepFact[] {
  return [factorFact('Air', 'weather.air', factors), factorFact('Face', 'weather.surface', factors)];
}
