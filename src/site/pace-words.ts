import type { Standing } from '../actuals/earned-value';
import type { System } from '../quantity/systems';
import { amount, rounded } from './amount';

const DIGITS = 2;

/**
 * How the hours stand against the plan, as it is told on site.
 * @param standing the labor-hours
 * @returns for example `Behind plan: 50 planned hours earned for 60 worked, index 0.83`
 */
export function paceInWords(standing: Standing): string {
  const { earned, actual } = standing;
  const booked = `${rounded(actual)} worked`;
  const both = `${rounded(earned)} planned hours earned for ${booked}`;
  return inWords(standing, { booked, both, better: 'Ahead of plan', worse: 'Behind plan' });
}

/**
 * How the water or the cleaner that is used stands against the plan.
 * @param standing the volume
 * @param system the display system
 * @returns for example `More than planned: 500 gal used where 450 gal were planned, index 0.90`
 */
export function useInWords(standing: Standing, system: System): string {
  const booked = `${amount(standing.actual, 'volume', system)} used`;
  const both = `${booked} where ${amount(standing.earned, 'volume', system)} were planned`;
  return inWords(standing, { booked, both, better: 'Less than planned', worse: 'More than planned' });
}

function inWords(
  { earned, index }: Standing,
  { booked, both, better, worse }: Readonly<Record<'booked' | 'both' | 'better' | 'worse', string>>,
): string {
  if (index === undefined) return 'Nothing is recorded yet';
  if (earned === 0) return `${booked}, nothing earned yet`;
  const shown = index.toFixed(DIGITS);
  // What is called on plan is what the index shows.
  const place = Number(shown) === 1 ? 'As planned' : Number(shown) > 1 ? better : worse;
  return `${place}: ${both}, index ${shown}`;
}
