import { mistings } from '../../estimate/mist';
import { driesTooSoon } from '../../hazards/cleaner-on-wall';
import type { Check } from '../finding';
import { shownFactor, shownValue } from '../shown';

/** A cleaner that is dry before its minimum dwell: misting is priced, once for the job. */
export const dryBeforeLeast: Check = ({ zones, factors }) => {
  const dries = zones.map((zone) => driesTooSoon(zone, factors)).find((time) => time !== undefined);
  return dries === undefined
    ? []
    : [
        {
          check: 'drying',
          what: `The cleaner dries after ${shownValue(dries, 'minutes', factors)}, before its minimum dwell of ${shownFactor(factors, 'dwell.least')}: ${shownValue(mistings(factors), 'count', factors)} mistings per pass are priced`,
          where: 'factor weather.surface',
          why: 'Cleaner that dries on the wall stains, and only water keeps it working',
          todo: 'Wait for better weather and change the weather factors, or have someone mist the whole time',
          source: 'tn20',
        },
      ];
};
