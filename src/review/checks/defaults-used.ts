import { isWashedRow } from '../../hazards/washed';
import { DEFAULT_MORTAR } from '../../rules/mortars';
import { rowCheck } from '../finding';
import { shownFactor } from '../shown';

/** Mortar type not stated. */
export const mortarDefault = rowCheck(
  (row) => isWashedRow(row) && row.material.masonry && row.mortar === undefined,
  () => ({
    check: 'default used',
    what: `Mortar is not stated: Type ${DEFAULT_MORTAR} is assumed`,
    why: 'Stronger mortar needs more scraping and a stronger cleaner',
    todo: 'State the mortar type',
    source: 'practice',
    column: 'mortar',
  }),
);

/** Residue not stated. */
export const residueAssumed = rowCheck(
  (row) => isWashedRow(row) && row.material.masonry && row.residue === undefined,
  () => ({
    check: 'default used',
    what: 'Residue is not stated: it is assumed from brushing',
    why: 'Residue decides scraping and the class that is needed',
    todo: 'Look at the wall and state the residue',
    source: 'estimate',
    column: 'residue',
  }),
);

/** Height not stated, so that of a lift is taken. */
export const heightMissing = rowCheck(
  (row) => row.height === 0,
  (_, __, { factors }) => ({
    check: 'default used',
    what: `Height is not stated: that of a lift is assumed, ${shownFactor(factors, 'access.lift')}`,
    why: 'Moves, what lies below and the scaffold follow from the height, and the edge of a masked row too',
    todo: 'State the height',
    source: 'estimate',
    column: 'height',
  }),
);

/** Openings without a perimeter, so that of their square is taken. */
export const openingPerimeterMissing = rowCheck(
  (row) => !row.masked && row.openings > 0 && row.openingPerimeter === 0,
  () => ({
    check: 'default used',
    what: 'Opening perimeter is not stated: that of one square is assumed, the shortest that a rectangle can have',
    why: 'Laps and tape run along the perimeter of every opening',
    todo: 'State the opening perimeter',
    source: 'estimate',
    column: 'openingPerimeter',
  }),
);

/** Residue that was seen and brushing that foretells it, both stated. */
export const residueAndBrushed = rowCheck(
  // Brushing that is priced here is stated for its price.
  (row) => row.residue !== undefined && row.brushedStated && !row.brushPriced,
  () => ({
    check: 'stated twice',
    what: 'Residue and Brushed are both stated: Residue counts',
    why: 'Brushing is only a guide to the residue; what was seen holds, and brushing counts no second time',
    todo: 'Leave one of them blank, or check that Residue is what is left after brushing',
    source: 'rows',
    column: 'residue',
  }),
);
