import type { ColumnId, ValueOf } from './columns';
import type { Mask } from './masks';

/** What the row says word by word, and other fields say in the words of the rules. */
type InOtherWords = 'brushed' | 'masked';

/**
 * One row of wall data, read and checked: a field for each column, in base units. A number is 0, a text empty and a
 * choice undefined where it is not stated.
 */
export interface WallRow extends Readonly<{
  [Id in Exclude<ColumnId, InOtherWords>]: ValueOf<Id>;
}> {
  /** Row within the range, its header being row 1. */
  readonly row: number;
  /** Sum of the edges of masked rows that are put together as one, m; left out for a row by itself. */
  readonly edge?: number | undefined;
  readonly brushed: boolean;
  /** Whether the daily brush-down is priced in this bid. */
  readonly brushPriced: boolean;
  /** Whether the row says if it was brushed down. */
  readonly brushedStated: boolean;
  /** Covered while its zone is washed: its mask is yes or only. */
  readonly masked: boolean;
  /** As the row states it. */
  readonly mask: Mask;
  /** The row cannot be masked. */
  readonly neverMasked: boolean;
}
