import type { Area } from './address';
import type { CellValue } from './cell-value';

/** A cell as the file has it. */
export interface BookCell {
  readonly row: number;
  readonly column: number;
  /** The value that the file holds; null where a formula was never calculated. */
  readonly value: CellValue;
  /** Number format of a cell that shows a percent. */
  readonly percent?: string;
  /** Formula as stored, without `=`; a shared one already moved to this cell. */
  readonly formula?: string;
  /** Cells that an array formula filled when the file was saved. */
  readonly array?: Area;
  /** Number of the shared formula group that the cell belongs to. */
  readonly shared?: string;
  /** A what-if table: filled by the spreadsheet, not by a formula that can be run here. */
  readonly dataTable?: true;
}

/** A worksheet. */
export interface BookSheet {
  readonly name: string;
  /** Path of its part inside the file. */
  readonly part: string;
  /** Cells by address. */
  readonly cells: ReadonlyMap<string, BookCell>;
}

/** A table of a worksheet. */
export interface BookTable {
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
  readonly columns: readonly string[];
  readonly headerRows: number;
  readonly totalsRows: number;
}

/** A defined name. */
export interface BookName {
  readonly name: string;
  readonly formula: string;
  /** The sheet it is limited to. */
  readonly sheet?: string;
}

/** What a workbook file holds, as far as recalculating needs it. */
export interface Book {
  readonly sheets: readonly BookSheet[];
  readonly tables: readonly BookTable[];
  readonly names: readonly BookName[];
}
