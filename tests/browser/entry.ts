// Takes the place of the platform's script in the browser tests, and puts a workbook in memory behind the pane's port.
import { MemoryWorkbook, type Contents } from '../../taskpane/workbook/memory-workbook';
import { evaluate } from '../taskpane/evaluate';

declare global {
  /** What the workbook is made of; set by the test before the page loads. */
  var testContents: Contents & { readonly worksOut?: boolean };
  var testWorkbook: MemoryWorkbook;
}

const { worksOut = true, ...contents } = globalThis.testContents;
globalThis.testWorkbook = new MemoryWorkbook(worksOut ? { ...contents, evaluate } : contents);
globalThis.washdownWorkbook = globalThis.testWorkbook;
Object.assign(globalThis, {
  CustomFunctions: { associate: () => undefined, Error, ErrorCode: {} },
});
