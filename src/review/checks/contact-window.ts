import type { Check } from '../finding';

/** A wall that cannot be washed within the dwell. */
export const noContactWindow: Check = ({ zones }) =>
  zones.flatMap(({ zone, finding }) =>
    finding === undefined
      ? []
      : [
          {
            check: 'contact window',
            what: finding,
            where: zone.name,
            why: 'Cleaner that is rinsed too soon or too late stains or does not clean',
            todo: 'Change the factors that it names, or use another cleaner with its own dwell; there are no hours until then',
            source: 'tn20',
          },
        ],
  );
