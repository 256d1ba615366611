import { parseAddress } from '../../spreadsheet/address';
import { NotFollowed } from '../../spreadsheet/not-followed';
import { BadSelection, selectedCells } from '../../spreadsheet/table-selection';
import type { AuditedTable, SheetArea } from './audited-book';

/**
 * The cells of a table reference.
 * @param table the table
 * @param selection what stands in the brackets, for example `#All` or `[#This Row],[Area]`
 * @param row the row of the formula that asks
 * @returns the area
 * @throws {NotFollowed} where the table has no such column or part
 */
export function tableArea(table: AuditedTable, selection: string, row: number): SheetArea {
  const area = parseAddress(table.address);
  if (!area) throw new NotFollowed(`the place of the table ${table.name} cannot be read`);
  const shape = { ...table, ...area, headerRows: 1, totalsRows: table.totals ? 1 : 0 };
  try {
    return { sheet: table.sheet, ...selectedCells(shape, selection, row) };
  } catch (cause) {
    if (cause instanceof BadSelection) throw new NotFollowed(`the table ${cause.what}`);
    throw cause;
  }
}
