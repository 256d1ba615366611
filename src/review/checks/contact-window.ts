import type { Check } from '../finding';

/** No patch keeps the cleaner within its dwell. */
export const noContactWindow: Check = ({ zones }) =>
  zones.flatMap(({ zone, finding }) =>
    finding === undefined
      ? []
      : [
          {
            check: 'contact window',
            what: finding,
            where: zone.name,
            why: 'Cleaner that dries on the wall, or is rinsed too soon or too late, stains or does not clean',
            todo: 'Wait for better weather and change the weather factors, or take another cleaner and its dwell; there are no crew-hours until then',
            source: 'tn20',
          },
        ],
  );
