import { ICommandService } from '@univerjs/presets';
import { SetSelectionsOperation } from '@univerjs/presets/preset-sheets-core';
import { cellAddress } from '../../src/spreadsheet/address';
import { errorCode } from '../../src/spreadsheet/cell-error';
import type { Spreadsheet } from './spreadsheet';
import type { Reasons } from './worksheet-functions';

/**
 * Shows why the selected cell is in error, as the host does on a click.
 * @param spreadsheet the spreadsheet, once it has a workbook
 * @param spreadsheet.univer its services
 * @param spreadsheet.api the same spreadsheet
 * @param reasons the messages of the functions
 * @param line where to show them
 */
export function showReasons({ univer, api }: Spreadsheet, reasons: Reasons, line: HTMLElement): void {
  const look = (): void => {
    const cell = api.getActiveWorkbook()?.getActiveCell();
    const value = cell?.getRawValue();
    const inError = typeof value === 'string' && errorCode(value) !== undefined;
    const reason =
      cell && inError ? reasons.of(cell.getSheetId(), cell.getRow(), cell.getColumn()) : undefined;
    line.hidden = reason === undefined;
    line.textContent =
      cell && reason !== undefined
        ? `${cellAddress(cell.getRow() + 1, cell.getColumn() + 1)} ${String(value)} ${reason}`
        : '';
  };
  univer
    .__getInjector()
    .get(ICommandService)
    .onCommandExecuted(({ id }) => {
      if (id === SetSelectionsOperation.id) look();
    });
  api.getFormula().calculationResultApplied(look);
}
