import { rowCheck } from '../finding';

// Numbers rounded to a tenth of a per cent may fall this far short of a round opening.
const ROUNDING = 0.999;

/**
 * Openings whose perimeter is shorter than that of one circle of their area, the least that a shape can have (the
 * isoperimetric inequality).
 */
export const impossiblePerimeter = rowCheck(
  ({ openings, openingPerimeter }) =>
    openingPerimeter > 0 && openingPerimeter < ROUNDING * 2 * Math.sqrt(Math.PI * openings),
  () => ({
    check: 'opening perimeter',
    what: 'Opening perimeter is shorter than that of one round opening of the same area',
    why: 'No shape has a shorter edge: the area of the openings or their perimeter is wrong, and so are laps and tape',
    todo: 'Measure again; check whether the perimeter is that of one opening only, or in another unit',
    source: 'geometry',
    column: 'openingPerimeter',
  }),
);
