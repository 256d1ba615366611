import { followHostTheme } from './host-theme';
import { OfficeWorkbook } from './office-workbook';
import type { WorkbookPort } from './port';

declare global {
  /** A workbook that a page without the host gives to the pane. */
  var washdownWorkbook: WorkbookPort | undefined;
}

/**
 * The workbook that the pane works on: the one that the page gives, or else the host's.
 * @returns the workbook; undefined where the page is opened outside of a spreadsheet
 */
export async function openWorkbook(): Promise<WorkbookPort | undefined> {
  if (globalThis.washdownWorkbook) return globalThis.washdownWorkbook;
  if (typeof Office === 'undefined') return undefined;
  const { host } = await Office.onReady();
  if (host !== Office.HostType.Excel) return undefined;
  followHostTheme();
  return new OfficeWorkbook();
}
