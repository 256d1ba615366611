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
            todo: 'Change the weather factors to those of a better time of day, or the dwell to the label of another cleaner; the crew-hours have no value until then',
            source: 'tn20',
          },
        ],
  );
