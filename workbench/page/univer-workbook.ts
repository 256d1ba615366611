import { CellValueType, type FUniver, type ICellData } from '@univerjs/presets';
import { SetFormulaCalculationResultMutation, type FWorksheet } from '@univerjs/presets/preset-sheets-core';
import { areaAddress, cellAddress, type Area } from '../../src/spreadsheet/address';
import { areaOf, areaUnder } from '../../taskpane/workbook/block-area';
import type {
  Block,
  CellContent,
  Formula,
  NameInfo,
  PartName,
  Place,
  Progress,
  ScannedBlock,
  TableInfo,
  WorkbookPort,
} from '../../taskpane/workbook/port';
import { areaOfRange } from './area-of-range';
import type { Calculation } from './calculation';
import type { Cells } from './cells';
import type { PageBook } from './page-book';
import { ROOM } from './room';
import { addTable, hasTotals, tablesOf } from './tables';

const SCANNED_ROWS = 200;
const PIXELS_A_CHARACTER = 8;
const PADDING_PIXELS = 8;
const LEAST_CHARACTERS = 8;
const MOST_CHARACTERS = 40;
// How much is seen before a cell that the pane goes to.
const ROWS_ABOVE = 8;
const COLUMNS_BEFORE = 4;

/** The workbook on the page behind the port that the pane knows. */
export class UniverWorkbook implements WorkbookPort {
  /**
   * Adapts a spreadsheet.
   * @param api the spreadsheet
   * @param cells reads its cells
   * @param calculation knows when it has worked everything out
   * @param book the workbook
   * @param cellShown told when a cell is to be seen
   */
  constructor(
    private readonly api: FUniver,
    private readonly cells: Cells,
    private readonly calculation: Calculation,
    private readonly book: PageBook,
    private readonly cellShown: () => void,
  ) {}

  sheets(): Promise<string[]> {
    return Promise.resolve(this.book.workbook.getSheets().map((sheet) => sheet.getSheetName()));
  }

  tables(): Promise<TableInfo[]> {
    return Promise.resolve(tablesOf(this.book.workbook));
  }

  names(): Promise<NameInfo[]> {
    const { workbook } = this.book;
    return Promise.resolve(
      workbook.getDefinedNames().map((defined) => {
        const sheet = workbook.getSheetBySheetId(defined.getLocalSheetId() ?? '')?.getSheetName();
        return {
          name: defined.getName(),
          refersTo: `=${defined.getFormulaOrRefString().replace(/^=/, '')}`,
          ...(sheet === undefined ? {} : { sheet }),
        };
      }),
    );
  }

  async readTable(name: string): Promise<CellContent[][]> {
    const found = tablesOf(this.book.workbook).find(
      (table) => table.name.toLowerCase() === name.toLowerCase(),
    );
    if (!found) throw new Error(`There is no table ${name} in this workbook.`);
    return this.readRange(found);
  }

  async readRange({ sheet, address }: Place): Promise<CellContent[][]> {
    await this.calculation.settled();
    return this.cells.values(this.sheet(sheet), areaOf(address));
  }

  readFormats({ sheet, address }: Place): Promise<string[][]> {
    return Promise.resolve(this.rangeOf(this.sheet(sheet), areaOf(address)).getNumberFormats());
  }

  async usedCells(sheet: string): Promise<Place | undefined> {
    await this.calculation.settled();
    const used = this.cells.used(this.sheet(sheet));
    return used && { sheet, address: areaAddress(used) };
  }

  selection(): Promise<Place> {
    const { workbook } = this.book;
    const range = workbook.getActiveRange();
    const sheet = workbook.getActiveSheet().getSheetName();
    if (!range) return Promise.resolve({ sheet, address: 'A1' });
    return Promise.resolve({
      sheet,
      address: areaAddress(areaOfRange(range.getRange())),
    });
  }

  filledCells(blocks: readonly Block[]): Promise<Place[]> {
    return Promise.resolve(
      blocks.flatMap((block) => {
        const sheet = this.book.workbook.getSheetByName(block.sheet);
        if (!sheet) return [];
        const { top, left, bottom, right } = areaUnder(block);
        // A sheet ends somewhere; beyond it nothing is filled.
        const area = {
          top,
          left,
          bottom: Math.min(bottom, sheet.getMaxRows()),
          right: Math.min(right, sheet.getMaxColumns()),
        };
        return this.cells
          .values(sheet, area)
          .flatMap((row, down) =>
            row.flatMap((content, across) =>
              content === '' ? [] : { sheet: block.sheet, address: cellAddress(top + down, left + across) },
            ),
          );
      }),
    );
  }

  async write(blocks: readonly Block[]): Promise<readonly string[]> {
    for (const block of blocks) await this.writeBlock(block);
    await this.calculation.settled();
    return [];
  }

  async makePlain(places: readonly Place[]): Promise<void> {
    await this.calculation.settled();
    for (const { sheet, address } of places) {
      const found = this.sheet(sheet);
      const area = areaOf(address);
      const filled =
        this.cells.spills(found).find((spill) => spill.area.top === area.top && spill.area.left === area.left)
          ?.area ?? area;
      const values = this.cells.values(found, filled);
      this.rangeOf(found, filled).setValues(values.map((row) => row.map((value) => cellOf(value))));
    }
    await this.calculation.settled();
  }

  async *scan(progress: Progress, signal: AbortSignal): AsyncIterable<ScannedBlock> {
    await this.calculation.settled();
    const readings = this.book.workbook.getSheets().flatMap((sheet) => {
      const used = this.cells.used(sheet);
      return used ? slabs(used).map((area) => ({ sheet, area })) : [];
    });
    for (const [done, { sheet, area }] of readings.entries()) {
      await new Promise((resolve) => setTimeout(resolve));
      if (signal.aborted) return;
      progress(done, readings.length);
      const values = this.cells.values(sheet, area);
      const formulas = this.cells
        .formulas(sheet, area)
        .map((row, down) =>
          row.map((formula, across) => (formula === '' ? (values[down]?.[across] ?? '') : formula)),
        );
      yield { sheet: sheet.getSheetName(), row: area.top, column: area.left, formulas, values };
    }
    progress(readings.length, readings.length);
  }

  goTo({ sheet, address }: Place): Promise<void> {
    this.cellShown();
    const found = this.sheet(sheet);
    const { top, left } = areaOf(address);
    found.activate();
    this.rangeOf(found, areaOf(address)).activate();
    found.scrollToCell(Math.max(0, top - ROWS_ABOVE), Math.max(0, left - COLUMNS_BEFORE));
    return Promise.resolve();
  }

  readPart(name: PartName): Promise<string | undefined> {
    return Promise.resolve(this.book.parts.get(name));
  }

  writePart(name: PartName, text: string): Promise<boolean> {
    this.book.parts.set(name, text);
    return Promise.resolve(true);
  }

  onChanged(listener: () => void): () => void {
    const added = this.api.addEvent(this.api.Event.SheetValueChanged, ({ payload }) => {
      // As with the host, what formulas come to is no change of the workbook.
      if (payload.id !== SetFormulaCalculationResultMutation.id) listener();
    });
    return () => {
      added.dispose();
    };
  }

  /** The page answers at any time. */
  onWaiting(): () => void {
    return () => undefined;
  }

  calculatesByHand(): Promise<boolean> {
    return Promise.resolve(false);
  }

  async calculate(): Promise<void> {
    this.api.getFormula().executeCalculation();
    await this.calculation.settled();
  }

  private sheet(name: string): FWorksheet {
    const found = this.book.workbook.getSheetByName(name);
    if (!found) throw new Error(`There is no sheet ${name} in this workbook.`);
    return found;
  }

  private rangeOf(sheet: FWorksheet, { top, left, bottom, right }: Area) {
    return sheet.getRange(top - 1, left - 1, bottom - top + 1, right - left + 1);
  }

  async addRows(name: string, rows: readonly (readonly CellContent[])[]): Promise<void> {
    const { workbook } = this.book;
    const table = workbook.getTableList().find((each) => each.name.toLowerCase() === name.toLowerCase());
    const sheet = table && workbook.getSheetBySheetId(table.subUnitId);
    if (!table || !sheet) throw new Error(`There is no table ${name} in this workbook.`);
    if (hasTotals(table.id)) throw new Error(`The table ${name} ends with totals: add the rows yourself.`);
    const { left, bottom } = areaOfRange(table.range);
    const block = { sheet: sheet.getSheetName(), address: cellAddress(bottom + 1, left), rows };
    const filled = await this.filledCells([block]);
    if (filled.length > 0) throw new Error(`The cells below the table ${name} are filled.`);
    await this.write([block]);
    await sheet.setTableRange(table.id, { ...table.range, endRow: table.range.endRow + rows.length });
  }

  private async writeBlock(block: Block): Promise<void> {
    const { workbook } = this.book;
    const sheet = workbook.getSheetByName(block.sheet) ?? workbook.insertSheet(block.sheet, { sheet: ROOM });
    const area = areaUnder(block);
    if (sheet.getMaxRows() < area.bottom) sheet.setRowCount(area.bottom);
    if (sheet.getMaxColumns() < area.right) sheet.setColumnCount(area.right);
    const width = area.right - area.left + 1;
    const rows = block.rows.length === 0 ? [[]] : block.rows;
    this.rangeOf(sheet, area).setValues(
      rows.map((row) => Array.from({ length: width }, (_, column) => cellOf(row[column] ?? ''))),
    );
    const { heading, table, widths } = block;
    for (const [address, format] of Object.entries(block.formats ?? {})) {
      this.rangeOf(sheet, areaOf(address)).setNumberFormat(format);
    }
    if (heading === true) this.rangeOf(sheet, { ...area, bottom: area.top }).setFontWeight('bold');
    for (const address of block.bold ?? []) this.rangeOf(sheet, areaOf(address)).setFontWeight('bold');
    if (widths) this.rangeOf(sheet, area).setWrap(true);
    for (let column = 0; column < width; column++) {
      const place = area.left - 1 + column;
      const characters = widths ? (widths[column] ?? LEAST_CHARACTERS) : widest(block.rows, column);
      const pixels = characters * PIXELS_A_CHARACTER + PADDING_PIXELS;
      // What else stands in the column may need more.
      sheet.setColumnWidth(place, widths ? pixels : Math.max(pixels, sheet.getColumnWidth(place)));
    }
    if (widths) sheet.setRowAutoHeight(area.top - 1, area.bottom - area.top + 1);
    if (table !== undefined) {
      await addTable(this.api, workbook, {
        name: table,
        sheet: block.sheet,
        address: areaAddress(area),
        headings: (block.rows[0] ?? []).map((title) => (typeof title === 'object' ? '' : String(title))),
        totals: false,
      });
    }
  }
}

function cellOf(content: CellContent | Formula): ICellData {
  if (typeof content === 'object') return { f: content.formula, v: null, t: null, p: null };
  const blank = { f: null, si: null, p: null };
  if (content === '') return { ...blank, v: null, t: null };
  if (typeof content === 'boolean') return { ...blank, v: content ? 1 : 0, t: CellValueType.BOOLEAN };
  const t = typeof content === 'number' ? CellValueType.NUMBER : CellValueType.STRING;
  return { ...blank, v: content, t };
}

function widest(rows: Block['rows'], column: number): number {
  const lengths = rows.map((row) => {
    const content = row[column] ?? '';
    return typeof content === 'object' ? LEAST_CHARACTERS : String(content).length;
  });
  return Math.min(MOST_CHARACTERS, Math.max(LEAST_CHARACTERS, ...lengths));
}

function slabs(area: Area): Area[] {
  const found: Area[] = [];
  for (let top = area.top; top <= area.bottom; top += SCANNED_ROWS) {
    found.push({ ...area, top, bottom: Math.min(area.bottom, top + SCANNED_ROWS - 1) });
  }
  return found;
}
