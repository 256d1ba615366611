import { unmaskedGlassOrMetal as unmasked } from '../../hazards/cleaner-on-wall';
import { hazardCheck, materialNames } from '../finding';

/** Glass or metal that is washed along with the wall. */
export const unmaskedGlassOrMetal = hazardCheck(unmasked, (_, rows) => ({
  check: 'unmasked glass or metal',
  what: `${materialNames(rows)} is not masked`,
  why: 'Glass, coatings and metal finishes are usually covered; unmasked they are washed and hold the cleaner down',
  todo: 'Mask the rows, or keep them in the washed set on purpose',
  source: 'practice',
  column: 'masked',
}));
