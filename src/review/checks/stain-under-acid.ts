import { classInWords, GENTLEST_ACID } from '../../rules/cleaner-classes';
import { materialNames, rowCheck } from '../finding';

/** Light or manganese-coloured brick that meets an acid cleaner. */
export const stainUnderAcid = rowCheck(
  (row, { governing }) =>
    !row.masked &&
    row.material.group === 'light brick' &&
    governing !== undefined &&
    governing.classToUse >= GENTLEST_ACID,
  ({ governing }, rows) => ({
    check: 'stain under acid',
    what: `${materialNames(rows)} under ${classInWords(governing?.classToUse)}`,
    why: 'Acid can bring out vanadium or manganese stain that rinsing does not take off',
    todo: 'Ask the brick maker, try the sample area first, or choose a milder class by the factor cleaner.class',
    source: 'tn20-older',
  }),
);
