import { isStrong } from '../../rules/mortars';
import { rowCheck } from '../finding';

/** Type S or M mortar, which a veneer seldom needs and which cleans off hard. */
export const strongMortar = rowCheck(
  (row) => row.mortar !== undefined && isStrong(row.mortar),
  (_, rows) => ({
    check: 'strong mortar',
    what: `Mortar Type ${[...new Set(rows.map(({ mortar }) => mortar))].join(' and ')}`,
    why: 'Lower strength cleans off more easily; a veneer is normally Type N, Type S by region',
    todo: 'Confirm the type and its reason with the specification',
    source: 'practice',
    column: 'mortar',
  }),
);
