import { acidOnCalcareous, stainUnderAcid as stained } from '../../hazards/cleaner-on-wall';
import { classesInWords, hazardCheck, materialNames } from '../finding';

/** Light or manganese-colored brick that meets an acid cleaner. */
export const stainUnderAcid = hazardCheck(stained, (zone, rows) => ({
  check: 'stain under acid',
  what: `${materialNames(rows)} under ${classesInWords(zone, rows)}`,
  why: 'Acid can bring out vanadium or manganese stain that rinsing does not take off',
  todo: 'Ask the brick maker, try the sample area first, or choose a milder class by the factor cleaner.class',
  source: 'masonry-construction',
  column: 'material',
}));

/** Concrete or other calcareous masonry that meets an acid cleaner. */
export const acidOnConcrete = hazardCheck(acidOnCalcareous, (zone, rows) => ({
  check: 'acid on concrete',
  what: `${materialNames(rows)} under ${classesInWords(zone, rows)}`,
  why: 'Acid dissolves concrete and lime: a public specification allows no acidic cleaner on them',
  todo: 'Choose class 1 (neutral detergent) by the factor cleaner.class, or get written approval from the unit manufacturer and an accepted sample',
  source: 'ufgs-04900',
  column: 'material',
}));
