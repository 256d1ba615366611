import type { FUniver } from '@univerjs/presets';
import type { FWorkbook } from '@univerjs/presets/preset-sheets-core';
import { AddSheetTableMutation } from '@univerjs/presets/preset-sheets-table';
import { areaAddress, parseAddress } from '../../src/spreadsheet/address';
import type { TableInfo } from '../../taskpane/workbook/port';
import { areaOfRange } from './area-of-range';

/**
 * The tables of a workbook.
 * @param workbook the workbook
 * @returns their names, places and headings
 */
export function tablesOf(workbook: FWorkbook): TableInfo[] {
  return workbook.getTableList().flatMap(({ name, subUnitId, range, columns, id }) => {
    const sheet = workbook.getSheetBySheetId(subUnitId);
    if (!sheet) return [];
    return {
      name,
      sheet: sheet.getSheetName(),
      address: areaAddress(areaOfRange(range)),
      headings: columns.map(({ displayName }) => displayName),
      totals: hasTotals(id),
    };
  });
}

// The spreadsheet has no totals row yet, so that the id says that the last row is one.
const TOTALS = ' with totals';

/**
 * Whether the last row of a table is one of totals.
 * @param id id of the table
 * @returns whether it is
 */
export function hasTotals(id: string): boolean {
  return id.endsWith(TOTALS);
}

/**
 * Adds a table over cells that are there.
 * @param api the spreadsheet
 * @param workbook its workbook
 * @param table the table
 * @returns once it is there
 */
export async function addTable(api: FUniver, workbook: FWorkbook, table: TableInfo): Promise<void> {
  const sheet = workbook.getSheetByName(table.sheet);
  const area = parseAddress(table.address);
  if (!sheet || !area) throw new Error(`There is no place ${table.sheet}!${table.address} for a table.`);
  // The command of the menu refuses a table with the name of a sheet, which Excel allows.
  await api.executeCommand(AddSheetTableMutation.id, {
    unitId: workbook.getId(),
    subUnitId: sheet.getSheetId(),
    name: table.name,
    header: [...table.headings],
    range: {
      startRow: area.top - 1,
      startColumn: area.left - 1,
      endRow: area.bottom - 1,
      endColumn: area.right - 1,
    },
    tableId: `table ${table.name}${table.totals ? TOTALS : ''}`,
    options: { showHeader: true },
  });
}
