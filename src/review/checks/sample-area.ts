import { sampleMissing } from '../../hazards/cleaner-on-wall';
import type { Check } from '../finding';
import { shownFactor } from '../shown';

/** No sample area, or too small a one, has been washed and looked at. */
export const sampleAreaMissing: Check = ({ zones, factors }) => {
  if (!zones.some((zone) => sampleMissing(zone, factors))) return [];
  return [
    {
      check: 'sample area',
      what:
        factors.value('sample.area') === 0
          ? 'No sample area has been inspected'
          : `The sample area is only ${shownFactor(factors, 'sample.area')}`,
      where: 'factor sample.area',
      why: 'Only a sample on this wall, inspected when dry, shows what cleaner and method do to it',
      todo: `Wash ${shownFactor(factors, 'sample.least')} of each material, inspect it when dry, and state the area in the factor sample.area`,
      source: 'tn20',
    },
  ];
};
