import { DEFAULT_MORTAR } from '../../rules/mortars';
import { rowCheck } from '../finding';

/** Mortar type not stated. */
export const mortarDefault = rowCheck(
  (row) => !row.masked && row.mortar === undefined,
  () => ({
    check: 'default used',
    what: `Mortar is not stated: Type ${DEFAULT_MORTAR} is taken`,
    why: 'Stronger mortar needs more scraping and a stronger cleaner',
    todo: 'State the mortar type',
    source: 'practice',
  }),
);

/** Residue not stated. */
export const residueForetold = rowCheck(
  (row) => !row.masked && row.residue === undefined,
  () => ({
    check: 'default used',
    what: 'Residue is not stated: it is foretold from brushing',
    why: 'Residue decides scraping and the class that is needed',
    todo: 'Look at the wall and state the residue',
    source: 'estimate',
  }),
);

/** Height not stated, so that the row has no length. */
export const heightMissing = rowCheck(
  (row) => row.height === 0,
  () => ({
    check: 'default used',
    what: 'Height is not stated: the row adds nothing to the length of the zone',
    why: 'Moves along the wall follow from its length, and the edge of a masked row from its height',
    todo: 'State the height',
    source: 'estimate',
  }),
);
