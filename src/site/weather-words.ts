import type { FactorId } from '../rules/factors';
import type { FactorsInForce } from '../rules/read-factors';
import { factorAmount } from './amount';

const WEATHER = {
  air: 'weather.air',
  face: 'weather.surface',
  humidity: 'weather.humidity',
  wind: 'weather.wind',
} as const satisfies Record<string, FactorId>;

/**
 * The weather of the workbook in words.
 * @param factors the factors in force
 * @returns for example `air 68 °F, face 68 °F, humidity 50%, wind 6.21 mph`
 */
export function weatherWords(factors: FactorsInForce): string {
  const words = Object.entries(WEATHER).map(([name, id]) => `${name} ${factorAmount(id, factors)}`);
  const assumed = Object.values(WEATHER).some((id) => !factors.overridden(id));
  return words.join(', ') + (assumed ? ' (assumed, where the workbook does not say)' : '');
}
