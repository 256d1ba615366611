/** What a cell holds: a number, a text, TRUE or FALSE; '' where it is blank; an error as its text, for example `#NAME?`. */
export type CellContent = string | number | boolean;

/** A formula to write, with `=`. A text is never taken for one: a label that starts with `=` stays a label. */
export interface Formula {
  readonly formula: string;
}

/** Where cells stand: the name of the sheet, and an address such as `B2:D9`, without `$` or sheet. */
export interface Place {
  readonly sheet: string;
  readonly address: string;
}

/** A table of the workbook with a heading row; its address includes that row, and the totals row where there is one. */
export interface TableInfo extends Place {
  readonly name: string;
  readonly headings: readonly string[];
  readonly totals: boolean;
}

/** A defined name; `sheet` where it belongs to one sheet alone. */
export interface NameInfo {
  readonly name: string;
  readonly sheet?: string;
  /** What it stands for, with `=`: for example `=Sheet1!$A$1:$B$9`. */
  readonly refersTo: string;
}

/** How a sheet prints: one page wide. */
export interface PrintLayout {
  readonly held: 'upright' | 'sideways';
  /** Whether it prints on one page, however small that is. */
  readonly onePage?: boolean;
  /** The paper; left out, that of the printer. */
  readonly paper?: 'letter' | 'a4';
  /** Whether the first row is printed on each page. */
  readonly repeatsFirstRow?: boolean;
}

/** Cells to write: the address of the top left one, and rows of values or formulas; '' leaves a cell blank. */
export interface Block {
  readonly sheet: string;
  readonly address: string;
  readonly rows: readonly (readonly (CellContent | Formula)[])[];
  /** Name of the table that the block becomes, its first row being the headings. */
  readonly table?: string;
  /** Whether the first row is set in bold. */
  readonly heading?: boolean;
  /** Cells of the sheet that are set in bold, by address. */
  readonly bold?: readonly string[];
  /** Widths of the columns in characters; their text is wrapped. Without them a column fits its content. */
  readonly widths?: readonly number[];
  /** How its sheet prints, where the host can set that. */
  readonly print?: PrintLayout;
  /** Number formats of cells of the sheet, by address; also of cells that a formula will fill. */
  readonly formats?: Readonly<Record<string, string>>;
}

/** A rectangle of cells as a scan hands it over; row and column are those of its top left cell, from 1. */
export interface ScannedBlock {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** Formulas with `=`; where a cell has none, its value. */
  readonly formulas: readonly (readonly CellContent[])[];
  readonly values: readonly (readonly CellContent[])[];
}

/** How far a long reading is. */
export type Progress = (done: number, total: number) => void;

/** A named text kept in the workbook file, for example `source` or `steps`. */
export type PartName = 'source' | 'formulas' | 'steps' | 'rules';

/** Everything that the pane asks of the workbook. No more of the host is known outside of its adapters. */
export interface WorkbookPort {
  /** The sheets, in order. */
  sheets(): Promise<string[]>;
  tables(): Promise<TableInfo[]>;
  names(): Promise<NameInfo[]>;
  /** The values of a table with its heading row; rejects where the table is not there. */
  readTable(name: string): Promise<CellContent[][]>;
  /** The values of cells; rejects where the sheet is not there. */
  readRange(place: Place): Promise<CellContent[][]>;
  /** The number formats of cells, such as `0%`; rejects where the sheet is not there. */
  readFormats(place: Place): Promise<string[][]>;
  /** The cells in use of a sheet; undefined where there are none. Rejects where the sheet is not there. */
  usedCells(sheet: string): Promise<Place | undefined>;
  selection(): Promise<Place>;
  /** Those cells under the blocks that are not blank: whoever writes asks about them first. */
  filledCells(blocks: readonly Block[]): Promise<Place[]>;
  /**
   * Writes all blocks, and adds the sheets that are not there. It overwrites. Gives sentences on looks that could not be
   * set, such as widths. Where contents cannot be written it takes back what it can and rejects with `WriteFailed`.
   */
  write(blocks: readonly Block[]): Promise<readonly string[]>;
  /** Puts the values of formulas, spills and all, in the place of the formulas. */
  makePlain(places: readonly Place[]): Promise<void>;
  /** Adds rows to the end of a table, which then holds them; rejects where the table is not there. */
  addRows(table: string, rows: readonly (readonly CellContent[])[]): Promise<void>;
  /** Every cell in use, rectangle by rectangle. Ends early, without an error, when the signal is aborted. */
  scan(progress: Progress, signal: AbortSignal): AsyncIterable<ScannedBlock>;
  goTo(place: Place): Promise<void>;
  /** The text kept under a name, or undefined where there is none. */
  readPart(name: PartName): Promise<string | undefined>;
  /** Keeps a text and reads it back: false where the host did not keep it, so that the caller offers a sheet. */
  writePart(name: PartName, text: string): Promise<boolean>;
  /** Calls back after cells changed or a sheet was deleted; returns what ends that. */
  onChanged(listener: () => void): () => void;
  /** Calls back when the workbook lets the pane wait, for example while a cell is edited, and when it answers again. */
  onWaiting(listener: (waits: boolean) => void): () => void;
  /** Whether the workbook works formulas out only when it is told to. */
  calculatesByHand(): Promise<boolean>;
  /** Has the host work all formulas out again. */
  calculate(): Promise<void>;
}

/** Nothing, or not all, could be written. */
export class WriteFailed extends Error {
  override readonly name = 'WriteFailed';

  /**
   * Says what is left in the workbook.
   * @param reason why it failed, as the host says it
   * @param left what could not be taken back, for example `sheet Walls`; empty where the workbook is as it was
   */
  constructor(
    reason: string,
    readonly left: readonly string[],
  ) {
    super(reason);
  }
}
