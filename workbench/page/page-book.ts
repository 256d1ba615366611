import type { FWorkbook } from '@univerjs/presets/preset-sheets-core';
import type { ShownWorkbook } from './files/shown-workbook';
import type { PartName } from '../../taskpane/workbook/port';

/** The workbook that the page shows. */
export interface PageBook {
  readonly workbook: FWorkbook;
  /** Texts that the workbook keeps. */
  readonly parts: Map<PartName, string>;
  /** Names of the file that the spreadsheet cannot have. */
  readonly keptNames: ShownWorkbook['names'];
  /** The file that it was opened from. */
  readonly original?: Uint8Array;
}
