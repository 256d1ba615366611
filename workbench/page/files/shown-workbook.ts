import type { IWorkbookData } from '@univerjs/presets';
import type { CellContent, NameInfo, PartName, Place } from '../../../taskpane/workbook/port';

/** A table with its heading row and, where it has one, its totals row, both within the address. */
export interface ShownTable extends Place {
  readonly name: string;
  readonly totals: boolean;
}

/** What an array formula fills: its cell is the top left one of the address, or the only one. */
export interface ShownSpill extends Place {
  /** As many rows and columns as the address has; an error as its text, '' where a cell is blank. */
  readonly values: readonly (readonly CellContent[])[];
}

/**
 * A workbook as the page shows it. Formulas are as a person types them. A sheet keeps its id in the snapshot for as
 * long as it lives: by it a renamed sheet is found again in the file.
 */
export interface ShownWorkbook {
  /** What the spreadsheet takes and gives; cells that a formula fills from elsewhere hold no value here. */
  readonly snapshot: IWorkbookData;
  readonly tables: readonly ShownTable[];
  readonly names: readonly NameInfo[];
  /** Names that the spreadsheet cannot have beside those, since it knows each name once. */
  readonly keptNames?: readonly NameInfo[];
  readonly spills: readonly ShownSpill[];
  /** Texts kept in the workbook's custom XML parts. */
  readonly parts: Readonly<Partial<Record<PartName, string>>>;
}

/** A workbook as it was opened. */
export interface OpenedWorkbook extends ShownWorkbook {
  /** Kinds of things that the file holds and the page does not show, in plain words. */
  readonly notShown: readonly string[];
}

/** A workbook as it was saved. */
export interface SavedWorkbook {
  readonly bytes: Uint8Array;
  /** Kinds of things that the original holds and the saved file does not, in plain words. */
  readonly lost: readonly string[];
}
