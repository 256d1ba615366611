import { CommandType, ICommandService, type Univer } from '@univerjs/presets';
import { SetFormulaCalculationResultMutation } from '@univerjs/presets/preset-sheets-core';

// What the spreadsheet does on its own, and what only changes how it is looked at.
const NOT_A_CHANGE =
  /^(?:formula\.|doc\.|sheet\.mutation\.(?:set-worksheet-row-auto-height|set-worksheet-activate))/;

/** Knows whether the workbook has changed since it was opened or saved. */
export class UnsavedChanges {
  #unsaved = false;

  /**
   * Watches a spreadsheet.
   * @param univer the spreadsheet
   */
  constructor(univer: Univer) {
    univer
      .__getInjector()
      .get(ICommandService)
      .onCommandExecuted(({ id, type }, options) => {
        if (type !== CommandType.MUTATION || options?.fromFormula === true) return;
        if (id === SetFormulaCalculationResultMutation.id || NOT_A_CHANGE.test(id)) return;
        this.#unsaved = true;
      });
  }

  /** Whether there is work that would be lost. */
  get unsaved(): boolean {
    return this.#unsaved;
  }

  /** Takes down that the file holds what the page shows. */
  saved(): void {
    this.#unsaved = false;
  }
}
