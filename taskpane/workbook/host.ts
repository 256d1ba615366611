import { followHostTheme } from './host-theme';
import { OfficeWorkbook } from './office-workbook';
import type { WorkbookPort } from './port';

declare global {
  /** A workbook that a page without the host gives to the pane. */
  var washdownWorkbook: WorkbookPort | undefined;
}

/** Where the platform's script comes from; its other files come from the same server. */
export const PLATFORM_ADDRESS = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js';

/** The workbook, or why there is none: the page is outside of a spreadsheet, or the platform's script is not there. */
export type Opened = WorkbookPort | 'outside' | 'unreached';

/**
 * The workbook that the pane works on: the one that the page gives, or else the host's.
 * @returns the workbook, or why there is none; never, where the platform's script does not get its other files
 */
export async function openWorkbook(): Promise<Opened> {
  if (globalThis.washdownWorkbook) return globalThis.washdownWorkbook;
  if (typeof Office === 'undefined') return 'unreached';
  const { host } = await Office.onReady();
  if (host !== Office.HostType.Excel) return 'outside';
  followHostTheme();
  return new OfficeWorkbook();
}
