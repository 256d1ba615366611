// Takes the place of the platform's script in the pane: the workbook is the one on the page around it.
import type { WorkbookPort } from '../../taskpane/workbook/port';

const around = globalThis.parent as unknown as { washdownWorkbook: WorkbookPort | undefined };
globalThis.washdownWorkbook = around.washdownWorkbook;
Object.assign(globalThis, {
  // The page around runs the functions itself.
  CustomFunctions: { associate: () => undefined, Error, ErrorCode: {} },
});
