import type { FUniver } from '@univerjs/presets';
import { cellAddress } from '../../src/review/audit/address';
import { isErrorCode } from '../xlsx/cell-value';
import type { Reasons } from './worksheet-functions';

/**
 * Shows why the selected cell is in error, as the host does on a click.
 * @param api the spreadsheet
 * @param reasons the messages of the functions
 * @param line where to show them
 */
export function showReasons(api: FUniver, reasons: Reasons, line: HTMLElement): void {
  const look = (): void => {
    const cell = api.getActiveWorkbook()?.getActiveCell();
    const value = cell?.getRawValue();
    const inError = typeof value === 'string' && isErrorCode(value);
    const reason =
      cell && inError ? reasons.of(cell.getSheetId(), cell.getRow(), cell.getColumn()) : undefined;
    line.hidden = reason === undefined;
    line.textContent =
      cell && reason !== undefined
        ? `${cellAddress(cell.getRow() + 1, cell.getColumn() + 1)} ${String(value)} ${reason}`
        : '';
  };
  api.addEvent(api.Event.SelectionChanged, look);
  api.getFormula().calculationResultApplied(look);
}
