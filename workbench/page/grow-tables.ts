import {
  ICommandService,
  ObjectMatrix,
  type FUniver,
  type ICellData,
  type IRange,
  type Nullable,
  type Univer,
} from '@univerjs/presets';
import {
  SetRangeValuesMutation,
  type FWorksheet,
  type ISetRangeValuesMutationParams,
} from '@univerjs/presets/preset-sheets-core';
import { areaOfRange } from './area-of-range';
import type { Cells } from './cells';
import { hasTotals } from './tables';

/**
 * Has a table take in the rows that are typed or pasted right below it, as Excel does. A row that held something
 * before stays outside.
 * @param univer the spreadsheet, once it has a workbook
 * @param api the same spreadsheet
 * @param cells reads its cells
 */
export function growTables(univer: Univer, api: FUniver, cells: Cells): void {
  univer
    .__getInjector()
    .get(ICommandService)
    .onCommandExecuted(({ id, params }, options) => {
      if (id !== SetRangeValuesMutation.id || options?.fromFormula === true) return;
      const { unitId, subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
      const workbook = api.getWorkbook(unitId);
      const sheet = workbook?.getSheetBySheetId(subUnitId);
      if (!workbook || !sheet) return;
      const put = new ObjectMatrix(cellValue);
      for (const table of workbook.getTableList()) {
        if (table.subUnitId !== subUnitId || hasTotals(table.id)) continue;
        const { range } = table;
        let { endRow } = range;
        while (isNewRow(put, cells, sheet, { ...range, startRow: endRow + 1, endRow: endRow + 1 })) endRow++;
        if (endRow > range.endRow) void sheet.setTableRange(table.id, { ...range, endRow });
      }
    });
}

type Put = ObjectMatrix<Nullable<ICellData>>;

/** Whether all that a row holds has just been put there. */
function isNewRow(put: Put, cells: Cells, sheet: FWorksheet, row: IRange): boolean {
  if (row.startRow >= sheet.getMaxRows()) return false;
  const filled = (cells.values(sheet, areaOfRange(row))[0] ?? []).flatMap((content, place) =>
    content === '' ? [] : [row.startColumn + place],
  );
  return filled.length > 0 && filled.every((column) => holds(put.getValue(row.startRow, column)));
}

function holds(cell: Nullable<ICellData>): boolean {
  return [cell?.v, cell?.f, cell?.p].some((part) => part !== undefined && part !== null && part !== '');
}
