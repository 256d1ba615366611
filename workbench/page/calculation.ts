import { CommandType, ICommandService, type Univer } from '@univerjs/presets';
import { FormulaCalculationSessionService } from '@univerjs/presets/preset-sheets-core';

// The spreadsheet starts to work out a tenth of a second after the last change, and starts again as soon as what it
// was at has stopped.
const QUIET = 250;
const STOPPING = 5000;

/** Knows when the spreadsheet has worked everything out. */
export class Calculation {
  #changed = true;
  #settling: Promise<void> | undefined;

  /**
   * Watches a spreadsheet.
   * @param univer the spreadsheet
   */
  constructor(private readonly univer: Univer) {
    univer
      .__getInjector()
      .get(ICommandService)
      .onCommandExecuted(({ type }) => {
        if (type === CommandType.MUTATION) this.#changed = true;
      });
  }

  /**
   * Ends when everything is worked out; at once where nothing has changed.
   * @returns once the cells show what their formulas give
   */
  settled(): Promise<void> {
    this.#settling ??= this.#settle().finally(() => {
      this.#settling = undefined;
    });
    return this.#settling;
  }

  async #settle(): Promise<void> {
    // A change stops what is being worked out, and it starts again: it has ended when no more of it starts.
    while (this.#changed) {
      this.#changed = false;
      const session = this.univer.__getInjector().get(FormulaCalculationSessionService);
      const { id, stopped } = session.state;
      await session.waitForLatestApplied(undefined, stopped ? STOPPING : QUIET);
      if (session.state.id !== id) this.#changed = true;
    }
  }
}
