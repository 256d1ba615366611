import { columnIds, columns, type Column, type ColumnId } from './columns';

/** The columns in which all rows of a group agree. */
export const columnsAlike: readonly ColumnId[] = columnIds.filter((id) => !isOfRow(columns[id]));

function isOfRow({ ofRow }: Column): boolean {
  return ofRow === true;
}
