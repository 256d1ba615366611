import type { IWorkbookData } from '@univerjs/presets';
import {
  LocaleType,
  Univer,
  UniverFormulaEnginePlugin,
  UniverInstanceType,
  UniverSheetsPlugin,
} from '../../../../workbench/engine/univer';
import type { ShownWorkbook } from '../../../../workbench/page/files/shown-workbook';

/**
 * Puts a workbook into the spreadsheet, without a window, and takes it out again.
 * @param shown the workbook
 * @returns as the spreadsheet gives it back
 */
export function throughSpreadsheet<T extends ShownWorkbook>(shown: T): T {
  const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} } });
  try {
    univer.registerPlugin(UniverFormulaEnginePlugin);
    univer.registerPlugin(UniverSheetsPlugin);
    const unit = univer.createUnit(UniverInstanceType.UNIVER_SHEET, structuredClone(shown.snapshot));
    const snapshot = structuredClone((unit as unknown as { save(): IWorkbookData }).save());
    return { ...shown, snapshot };
  } finally {
    univer.dispose();
  }
}
