import { areaAddress, cellAddress, type Area } from '../../src/spreadsheet/address';
import { areaOf, areaUnder } from './block-area';
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
} from './port';

interface StoredCell {
  readonly formula?: string;
  readonly value: CellContent;
  /** Whether a formula in another cell fills this one. */
  readonly spilled?: boolean;
}

interface StoredTable {
  readonly name: string;
  readonly sheet: string;
  area: Area;
}

/** What a memory workbook is made of. */
export interface Contents {
  /** Rows of each sheet from A1; a text that starts with `=` is a formula. */
  readonly sheets: Readonly<Record<string, readonly (readonly CellContent[])[]>>;
  readonly tables?: readonly ({ readonly name: string } & Place)[];
  readonly names?: readonly NameInfo[];
  /** Works a formula out: a value, or rows that fill the cells below and beside. */
  readonly evaluate?: (formula: string, at: Place, workbook: MemoryWorkbook) => Evaluated;
  /** What cells show at first, by their place such as `Estimate!B4`, whatever their formulas give. */
  readonly shows?: Readonly<Record<string, CellContent>>;
  /** Number formats of cells, by their place such as `Factors!B4`. */
  readonly formats?: Readonly<Record<string, string>>;
  /** Texts that the workbook keeps from before. */
  readonly parts?: Partial<Record<PartName, string>>;
  /** True where formulas are worked out only when the workbook is told to. */
  readonly calculatesByHand?: boolean;
  /** False for a host that does not keep the texts it is given. */
  readonly keepsParts?: boolean;
}

/** What a formula gives. */
export type Evaluated = CellContent | readonly (readonly CellContent[])[];

const SCANNED_ROWS = 200;
const NOT_WORKED_OUT = '#NAME?';

/** A workbook in memory behind the same port as the host's: for tests, and for a page without a spreadsheet. */
export class MemoryWorkbook implements WorkbookPort {
  /** Where the pane last went. */
  wentTo: Place | undefined;
  private readonly cells = new Map<string, Map<string, StoredCell>>();
  private readonly tableList: StoredTable[] = [];
  private readonly parts = new Map<PartName, string>();
  private readonly listeners = new Set<() => void>();
  private readonly waitingListeners = new Set<(waits: boolean) => void>();
  private selected: Place;

  /**
   * Fills the workbook.
   * @param contents sheets, tables and names
   */
  constructor(private readonly contents: Contents) {
    for (const [sheet, rows] of Object.entries(contents.sheets)) {
      this.cells.set(sheet, new Map());
      this.put({ sheet, address: 'A1', rows: rows.map((row) => row.map(typed)) });
    }
    for (const { name, sheet, address } of contents.tables ?? []) {
      this.tableList.push({ name, sheet, area: areaOf(address) });
    }
    for (const [name, text] of Object.entries(contents.parts ?? {})) this.parts.set(name as PartName, text);
    this.selected = { sheet: Object.keys(contents.sheets)[0] ?? '', address: 'A1' };
    this.evaluateAll();
    for (const [place, value] of Object.entries(contents.shows ?? {})) this.show(place, value);
  }

  /**
   * Selects cells, as a user does.
   * @param place the cells
   */
  select(place: Place): void {
    this.selected = place;
  }

  /**
   * Types into one cell, as a user does.
   * @param place the cell
   * @param content a value or a formula
   */
  type(place: Place, content: CellContent): void {
    this.put({ ...place, rows: [[typed(content)]] });
    this.evaluateAll();
    for (const listener of this.listeners) listener();
  }

  /**
   * What a cell holds.
   * @param place the cell
   * @returns its formula where it has one, and its value
   */
  cell(place: Place): StoredCell {
    return this.sheet(place.sheet).get(place.address) ?? { value: '' };
  }

  /**
   * Every cell in use.
   * @returns the cells, rectangle by rectangle
   */
  blocks(): ScannedBlock[] {
    return [...this.cells.keys()].flatMap((sheet) =>
      this.usedAreas(sheet).map((area) => ({
        sheet,
        row: area.top,
        column: area.left,
        formulas: this.read(sheet, area, ({ formula, value }) => formula ?? value),
        values: this.values(sheet, area),
      })),
    );
  }

  /**
   * The tables.
   * @returns their names and places
   */
  tableInfos(): TableInfo[] {
    return this.tableList.map(({ name, sheet, area }) => ({
      name,
      sheet,
      address: areaAddress(area),
      headings: (this.values(sheet, { ...area, bottom: area.top })[0] ?? []).map(String),
      totals: false,
    }));
  }

  sheets(): Promise<string[]> {
    return Promise.resolve([...this.cells.keys()]);
  }

  tables(): Promise<TableInfo[]> {
    return Promise.resolve(this.tableInfos());
  }

  names(): Promise<NameInfo[]> {
    return Promise.resolve([...(this.contents.names ?? [])]);
  }

  readTable(name: string): Promise<CellContent[][]> {
    const found = this.tableList.find((table) => table.name.toLowerCase() === name.toLowerCase());
    if (!found) return Promise.reject(new Error(`There is no table ${name}.`));
    return Promise.resolve(this.values(found.sheet, found.area));
  }

  readRange({ sheet, address }: Place): Promise<CellContent[][]> {
    return new Promise((resolve) => {
      resolve(this.values(sheet, areaOf(address)));
    });
  }

  readFormats({ sheet, address }: Place): Promise<string[][]> {
    const { top, left, bottom, right } = areaOf(address);
    const formats = this.contents.formats ?? {};
    return Promise.resolve(
      count(top, bottom).map((row) =>
        count(left, right).map((column) => formats[`${sheet}!${cellAddress(row, column)}`] ?? 'General'),
      ),
    );
  }

  usedCells(sheet: string): Promise<Place | undefined> {
    return new Promise((resolve) => {
      const slabs = this.usedAreas(sheet);
      const [first] = slabs;
      const address = first && areaAddress({ ...first, bottom: slabs.at(-1)?.bottom ?? first.bottom });
      resolve(address === undefined ? undefined : { sheet, address });
    });
  }

  selection(): Promise<Place> {
    return Promise.resolve(this.selected);
  }

  filledCells(blocks: readonly Block[]): Promise<Place[]> {
    const filled = blocks.flatMap((block) =>
      this.cells.has(block.sheet)
        ? cellsOf(block).filter(({ sheet, address }) => this.sheet(sheet).has(address))
        : [],
    );
    return Promise.resolve(filled.map(({ sheet, address }) => ({ sheet, address })));
  }

  write(blocks: readonly Block[]): Promise<readonly string[]> {
    for (const block of blocks) {
      if (!this.cells.has(block.sheet)) this.cells.set(block.sheet, new Map());
      this.put(block);
      if (block.table !== undefined) {
        this.tableList.push({ name: block.table, sheet: block.sheet, area: areaUnder(block) });
      }
    }
    this.evaluateAll();
    for (const listener of this.listeners) listener();
    return Promise.resolve([]);
  }

  makePlain(places: readonly Place[]): Promise<void> {
    for (const { sheet, address } of places) {
      const cells = this.sheet(sheet);
      const given = this.contents.evaluate?.(cells.get(address)?.formula ?? '', { sheet, address }, this);
      const rows = Array.isArray(given) ? (given as CellContent[][]) : [['']];
      for (const filled of cellsOf({ sheet, address, rows })) {
        const { value } = cells.get(filled.address) ?? { value: '' };
        cells.set(filled.address, { value });
      }
    }
    for (const listener of this.listeners) listener();
    return Promise.resolve();
  }

  async addRows(name: string, rows: readonly (readonly CellContent[])[]): Promise<void> {
    const table = this.tableList.find((each) => each.name.toLowerCase() === name.toLowerCase());
    if (!table) throw new Error(`There is no table ${name}.`);
    const { area, sheet } = table;
    const address = cellAddress(area.bottom + 1, area.left);
    table.area = { ...area, bottom: area.bottom + rows.length };
    await this.write([{ sheet, address, rows }]);
  }

  async *scan(progress: Progress, signal: AbortSignal): AsyncIterable<ScannedBlock> {
    const blocks = this.blocks();
    for (const [index, block] of blocks.entries()) {
      await Promise.resolve();
      if (signal.aborted) return;
      yield block;
      progress(index + 1, blocks.length);
    }
  }

  goTo(place: Place): Promise<void> {
    return new Promise((resolve) => {
      this.sheet(place.sheet);
      this.wentTo = place;
      this.selected = place;
      resolve();
    });
  }

  readPart(name: PartName): Promise<string | undefined> {
    return Promise.resolve(this.parts.get(name));
  }

  writePart(name: PartName, text: string): Promise<boolean> {
    const keeps = this.contents.keepsParts ?? true;
    if (keeps) this.parts.set(name, text);
    return Promise.resolve(keeps);
  }

  onChanged(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  }

  onWaiting(listener: (waits: boolean) => void): () => void {
    this.waitingListeners.add(listener);
    return () => {
      this.waitingListeners.delete(listener);
    };
  }

  /**
   * Lets the pane wait, as a host does while a cell is edited.
   * @param waits whether it waits
   */
  letWait(waits: boolean): void {
    for (const listener of this.waitingListeners) listener(waits);
  }

  calculatesByHand(): Promise<boolean> {
    return Promise.resolve(this.contents.calculatesByHand ?? false);
  }

  calculate(): Promise<void> {
    this.evaluateAll();
    return Promise.resolve();
  }

  private sheet(name: string): Map<string, StoredCell> {
    const found = this.cells.get(name);
    if (!found) throw new Error(`There is no sheet ${name}.`);
    return found;
  }

  private values(sheet: string, area: Area): CellContent[][] {
    return this.read(sheet, area, ({ value }) => value);
  }

  private read(sheet: string, area: Area, of: (cell: StoredCell) => CellContent): CellContent[][] {
    const cells = this.sheet(sheet);
    return count(area.top, area.bottom).map((row) =>
      count(area.left, area.right).map((column) => of(cells.get(cellAddress(row, column)) ?? { value: '' })),
    );
  }

  private put(block: Block): void {
    const cells = this.sheet(block.sheet);
    for (const { address, content } of cellsOf(block)) {
      if (typeof content === 'object') {
        cells.set(address, { formula: content.formula, value: NOT_WORKED_OUT });
      } else if (content === '') cells.delete(address);
      else cells.set(address, { value: content });
    }
  }

  private show(place: string, value: CellContent): void {
    const end = place.lastIndexOf('!');
    const cells = this.sheet(place.slice(0, end));
    const address = place.slice(end + 1);
    cells.set(address, { ...cells.get(address), value });
  }

  private evaluateAll(): void {
    const { evaluate } = this.contents;
    if (!evaluate) return;
    for (const cells of this.cells.values()) {
      for (const [address, { spilled }] of cells) if (spilled) cells.delete(address);
    }
    for (const [sheet, cells] of this.cells) {
      for (const [address, { formula }] of [...cells]) {
        if (formula !== undefined) this.fill(sheet, address, formula, evaluate);
      }
    }
  }

  private fill(
    sheet: string,
    address: string,
    formula: string,
    evaluate: NonNullable<Contents['evaluate']>,
  ): void {
    const cells = this.sheet(sheet);
    const given = evaluate(formula, { sheet, address }, this);
    const rows = Array.isArray(given) ? (given as CellContent[][]) : [[given as CellContent]];
    const [anchor, ...others] = cellsOf({ sheet, address, rows });
    const blocked = others.some((other) => cells.has(other.address));
    const value = anchor?.content as CellContent;
    cells.set(address, { formula, value: blocked ? '#SPILL!' : value });
    if (blocked) return;
    for (const other of others) {
      cells.set(other.address, { value: other.content as CellContent, spilled: true });
    }
  }

  private usedAreas(sheet: string): Area[] {
    const areas = [...this.sheet(sheet).keys()].map(areaOf);
    if (areas.length === 0) return [];
    const used = {
      top: Math.min(...areas.map(({ top }) => top)),
      left: Math.min(...areas.map(({ left }) => left)),
      bottom: Math.max(...areas.map(({ bottom }) => bottom)),
      right: Math.max(...areas.map(({ right }) => right)),
    };
    return count(0, Math.floor((used.bottom - used.top) / SCANNED_ROWS)).map((index) => {
      const top = used.top + index * SCANNED_ROWS;
      return { ...used, top, bottom: Math.min(used.bottom, top + SCANNED_ROWS - 1) };
    });
  }
}

/** As a user types: `=` starts a formula, an apostrophe a text. */
function typed(content: CellContent): CellContent | Formula {
  if (typeof content !== 'string') return content;
  if (content.startsWith("'")) return content.slice(1);
  return content.startsWith('=') ? { formula: content } : content;
}

function cellsOf({ sheet, address, rows }: Block): (Place & { content: CellContent | Formula })[] {
  const { top, left } = areaOf(address);
  return rows.flatMap((row, down) =>
    row.map((content, across) => ({ sheet, address: cellAddress(top + down, left + across), content })),
  );
}

function count(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}
