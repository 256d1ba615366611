import type { ColumnId } from './columns';
import type { WallRow } from './wall-row';

/**
 * What a row states in a column, as its cell would.
 * @param row the wall row
 * @param id the column
 * @returns a text, or a number in the base unit; undefined where a choice is not stated
 */
export function statedValue(row: WallRow, id: ColumnId): string | number | undefined {
  if (id === 'material') return row.material.name;
  if (id === 'brushed') return row.brushPriced ? 'priced' : row.brushed ? 'yes' : 'no';
  return id === 'masked' ? row.mask : row[id];
}
