import type { Univer } from '@univerjs/presets';
import { IEditorBridgeService } from '@univerjs/presets/preset-sheets-core';

/**
 * Keeps what is being typed into a cell while results arrive. The spreadsheet (0.25.1) takes a result for any sheet's
 * cell at the same row and column as a change of the cell that is edited, and then forgets what was typed so far.
 * @param univer the spreadsheet, once it has a workbook
 */
export function keepWhatIsTyped(univer: Univer): void {
  const editor = univer.__getInjector().get(IEditorBridgeService);
  const refresh = editor.refreshEditCellState.bind(editor);
  editor.refreshEditCellState = () => {
    if (!editor.isVisible().visible) refresh();
  };
}
