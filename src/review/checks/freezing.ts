import type { Check } from '../finding';
import { shownFactor } from '../shown';

/** Air or face too cold to wash. */
export const tooCold: Check = ({ factors }) =>
  (['weather.air', 'weather.surface'] as const)
    .filter((id) => factors.value(id) < factors.value('limit.air'))
    .map((id) => ({
      check: 'freezing',
      what: `${id === 'weather.air' ? 'Air' : 'Face'} at ${shownFactor(factors, id)}, the coldest is ${shownFactor(factors, 'limit.air')}`,
      where: `factor ${id}`,
      why: 'A saturated wall that freezes spalls, and cleaners do not work in the cold',
      todo: 'Wait for weather that stays above it until the wall is dry, or heat and enclose',
      source: 'trade-site',
    }));
