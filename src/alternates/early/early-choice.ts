import type { ZoneEstimate } from '../../estimate/schedule';
import type { FactorsInForce } from '../../rules/read-factors';
import { netArea } from '../../walls/net-area';
import type { WallRow } from '../../walls/wall-row';
import type { ColumnId } from '../../walls/columns';
import type { Alternate, Edit } from '../alternate';

/** The bid as it is, before anything is laid. */
export interface OpenBid {
  /** Every row of the job. */
  readonly rows: readonly WallRow[];
  /** The zones asked for. */
  readonly zones: readonly ZoneEstimate[];
  readonly factors: FactorsInForce;
}

/** A kind of choice that somebody can still make: gives the alternates of it that apply to the bid. */
export type EarlyChoice = (bid: OpenBid) => Alternate[];

/**
 * Whether a row is masonry that the bid leaves clean.
 * @param row the wall row
 * @returns false for what is only protected, has no face, or is to stay unwashed
 */
export function isToBeClean(row: WallRow): boolean {
  return row.material.masonry && netArea(row) > 0 && row.mask !== 'only';
}

/**
 * Sets one column of some rows.
 * @param rows the rows
 * @param column the column
 * @param value as its cell takes it
 * @returns the edits
 */
export function setting(rows: readonly WallRow[], column: ColumnId, value: string): Edit[] {
  return rows.map(({ wall }) => ({ of: 'wall', wall, column, value }));
}
