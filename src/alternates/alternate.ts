import { comparable } from '../quantity/cell';
import type { ColumnId } from '../walls/columns';

/** A cell that an alternate sets, with the value as the host hands it over. */
export type Edit = (
  | { readonly of: 'wall'; readonly wall: string; readonly column: ColumnId }
  | { readonly of: 'factor'; readonly id: string }
) & {
  readonly value: unknown;
  /** Row within the table of alternates, its header being row 1; undefined for a choice that no table states. */
  readonly row?: number;
};

/** Another choice than that of the bid: cells that are set, all of them together, in the base alone. */
export interface Alternate {
  readonly name: string;
  readonly edits: readonly Edit[];
  /** What the reader must know of it. */
  readonly notes: readonly string[];
}

/**
 * The cell of an edit, to be compared by.
 * @param edit the edit
 * @returns the same text for the same cell
 */
export function cellKey(edit: Edit): string {
  return edit.of === 'wall' ? `${edit.wall}\n${edit.column}` : comparable(edit.id);
}
