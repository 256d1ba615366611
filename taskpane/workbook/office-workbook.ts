import { areaAddress, cellAddress, parseAddress, type Area } from '../../src/spreadsheet/address';
import { areaOf, areaUnder } from './block-area';
import { messageOf } from './message-of';
import { hostCell, hostRows } from './office-content';
import { partNamespace, partText, partXml } from './part-xml';
import {
  WriteFailed,
  type Block,
  type CellContent,
  type NameInfo,
  type PartName,
  type Place,
  type PrintLayout,
  type Progress,
  type ScannedBlock,
  type TableInfo,
  type WorkbookPort,
} from './port';

// A reading of this many cells is quick, and well below what the host hands over at once.
const CELLS_A_READING = 10_000;
// The host measures columns in points; a character of its standard font takes about so many.
const POINTS_A_CHARACTER = 5.7;
const CALCULATION_LOOKS = 240;
const CALCULATION_WAIT = 250;

// A batch that takes longer most likely waits for a cell that is being edited.
const PATIENCE = 1_500;

/** The workbook that the host has open. */
export class OfficeWorkbook implements WorkbookPort {
  private readonly waitingListeners = new Set<(waits: boolean) => void>();

  /**
   * Every batch waits until no cell is edited: without `delayForCellEdit` the host refuses it (platform documentation,
   * Excel.RunOptions).
   */
  private async run<Result>(batch: (context: Excel.RequestContext) => Promise<Result>): Promise<Result> {
    const told = { waits: false };
    const tell = (now: boolean) => {
      told.waits = now;
      for (const listener of this.waitingListeners) listener(now);
    };
    const timer = setTimeout(tell, PATIENCE, true);
    try {
      return await Excel.run({ delayForCellEdit: true }, batch);
    } finally {
      clearTimeout(timer);
      if (told.waits) tell(false);
    }
  }

  sheets(): Promise<string[]> {
    return this.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load('items/name');
      await context.sync();
      return worksheets.items.map(({ name }) => name);
    });
  }

  tables(): Promise<TableInfo[]> {
    return this.run(async (context) => {
      const { tables } = context.workbook;
      tables.load('items/name,items/showHeaders,items/showTotals');
      await context.sync();
      const found = tables.items
        .filter(({ showHeaders }) => showHeaders)
        .map((table) => {
          const range = table.getRange();
          const header = table.getHeaderRowRange();
          const { worksheet } = table;
          range.load('address');
          header.load('values');
          worksheet.load('name');
          return { table, range, header, worksheet };
        });
      await context.sync();
      return found.map(({ table, range, header, worksheet }) => ({
        name: table.name,
        sheet: worksheet.name,
        address: withoutSheet(range.address),
        headings: (header.values[0] ?? []).map(String),
        totals: table.showTotals,
      }));
    });
  }

  names(): Promise<NameInfo[]> {
    return this.run(async (context) => {
      const { names, worksheets } = context.workbook;
      names.load('items/name,items/formula');
      worksheets.load('items/name');
      await context.sync();
      const ofSheets = worksheets.items.map((worksheet) => {
        worksheet.names.load('items/name,items/formula');
        return { sheet: worksheet.name, names: worksheet.names };
      });
      await context.sync();
      return [
        ...names.items.map(({ name, formula }) => ({ name, refersTo: String(formula) })),
        ...ofSheets.flatMap(({ sheet, names: own }) =>
          own.items.map(({ name, formula }) => ({ name, sheet, refersTo: String(formula) })),
        ),
      ];
    });
  }

  readTable(name: string): Promise<CellContent[][]> {
    return this.run(async (context) => {
      const table = context.workbook.tables.getItemOrNullObject(name);
      table.load('isNullObject');
      await context.sync();
      if (table.isNullObject) throw new Error(`There is no table ${name} in this workbook.`);
      const range = table.getRange();
      range.load('address');
      await context.sync();
      return readValues(context, range, areaOf(withoutSheet(range.address)));
    });
  }

  readRange({ sheet, address }: Place): Promise<CellContent[][]> {
    return this.run(async (context) => {
      const range = (await worksheetOf(context, sheet)).getRange(address);
      return readValues(context, range, areaOf(address));
    });
  }

  readFormats({ sheet, address }: Place): Promise<string[][]> {
    return this.run(async (context) => {
      const range = (await worksheetOf(context, sheet)).getRange(address);
      range.load('numberFormat');
      await context.sync();
      return range.numberFormat as string[][];
    });
  }

  usedCells(sheet: string): Promise<Place | undefined> {
    return this.run(async (context) => {
      const used = (await worksheetOf(context, sheet)).getUsedRangeOrNullObject(true);
      used.load('isNullObject,address');
      await context.sync();
      return used.isNullObject ? undefined : { sheet, address: withoutSheet(used.address) };
    });
  }

  selection(): Promise<Place> {
    return this.run(async (context) => {
      const selected = context.workbook.getSelectedRange();
      const { worksheet } = selected;
      // Whole columns end where the sheet's cells end.
      const inUse = selected.getIntersectionOrNullObject(worksheet.getUsedRange());
      selected.load('address');
      worksheet.load('name');
      inUse.load('isNullObject,address');
      await context.sync();
      const address = withoutSheet(selected.address);
      const whole = parseAddress(address) === undefined && !inUse.isNullObject;
      return { sheet: worksheet.name, address: whole ? withoutSheet(inUse.address) : address };
    });
  }

  filledCells(blocks: readonly Block[]): Promise<Place[]> {
    return this.run(async (context) => {
      const sheets = await worksheetsOf(context, blocks);
      const under = blocks.flatMap((block) => {
        const worksheet = sheets.get(block.sheet);
        if (!worksheet) return [];
        const area = areaUnder(block);
        const range = worksheet.getRange(areaAddress(area));
        range.load('formulas');
        return [{ sheet: block.sheet, area, range }];
      });
      await context.sync();
      return under.flatMap(({ sheet, area, range }) =>
        (range.formulas as CellContent[][]).flatMap((row, down) =>
          row.flatMap((content, across) =>
            content === '' ? [] : [{ sheet, address: cellAddress(area.top + down, area.left + across) }],
          ),
        ),
      );
    });
  }

  async write(blocks: readonly Block[]): Promise<readonly string[]> {
    const before = await this.run((context) => stateUnder(context, blocks));
    try {
      await this.run((context) => writeContents(context, blocks));
    } catch (error) {
      throw new WriteFailed(messageOf(error, 'the reason is not known'), await this.takeBack(before));
    }
    try {
      await this.run(async (context) => {
        for (const block of blocks) setLooks(context.workbook.worksheets.getItem(block.sheet), block);
        await context.sync();
      });
      for (const { sheet, print } of blocks) if (print) await this.setPrint(sheet, print);
      return [];
    } catch (error) {
      const reason = messageOf(error, 'the reason is not known');
      return [`Widths and number formats could not all be set: ${reason}`];
    }
  }

  makePlain(places: readonly Place[]): Promise<void> {
    return this.run(async (context) => {
      const cells = places.map(({ sheet, address }) => {
        const cell = context.workbook.worksheets.getItem(sheet).getRange(address);
        // An Excel whose formulas fill one cell alone does not know of spills.
        const spill = spillsAreKnown() ? cell.getSpillingToRangeOrNullObject() : undefined;
        spill?.load('isNullObject');
        return { cell, spill };
      });
      await context.sync();
      for (const { cell, spill } of cells) {
        const filled = spill && !spill.isNullObject ? spill : cell;
        filled.copyFrom(filled, Excel.RangeCopyType.values);
      }
      await context.sync();
    });
  }

  addRows(name: string, rows: readonly (readonly CellContent[])[]): Promise<void> {
    return this.run(async (context) => {
      const table = context.workbook.tables.getItemOrNullObject(name);
      table.load('isNullObject');
      await context.sync();
      if (table.isNullObject) throw new Error(`There is no table ${name} in this workbook.`);
      table.rows.add(undefined, hostRows(rows));
      await context.sync();
    });
  }

  async *scan(progress: Progress, signal: AbortSignal): AsyncIterable<ScannedBlock> {
    const readings = await this.readings();
    for (const [done, { sheet, area }] of readings.entries()) {
      if (signal.aborted) return;
      progress(done, readings.length);
      const { formulas, values } = await this.run(async (context) => {
        const range = context.workbook.worksheets.getItem(sheet).getRange(areaAddress(area));
        range.load('formulas,values');
        await context.sync();
        return { formulas: range.formulas as CellContent[][], values: range.values as CellContent[][] };
      });
      yield { sheet, row: area.top, column: area.left, formulas, values };
    }
    progress(readings.length, readings.length);
  }

  goTo({ sheet, address }: Place): Promise<void> {
    return this.run(async (context) => {
      const worksheet = await worksheetOf(context, sheet);
      worksheet.activate();
      worksheet.getRange(address).select();
      await context.sync();
    });
  }

  readPart(name: PartName): Promise<string | undefined> {
    return this.run(async (context) => {
      const parts = context.workbook.customXmlParts.getByNamespace(partNamespace(name));
      parts.load('items/id');
      await context.sync();
      const last = parts.items.at(-1);
      if (!last) return undefined;
      const xml = last.getXml();
      await context.sync();
      return partText(xml.value);
    });
  }

  async writePart(name: PartName, text: string): Promise<boolean> {
    try {
      await this.run(async (context) => {
        const { customXmlParts } = context.workbook;
        const parts = customXmlParts.getByNamespace(partNamespace(name));
        parts.load('items/id');
        await context.sync();
        const last = parts.items.at(-1);
        if (last) last.setXml(partXml(name, text));
        else customXmlParts.add(partXml(name, text));
        await context.sync();
      });
      return (await this.readPart(name)) === text;
    } catch {
      // A host that cannot keep parts refuses in ways of its own; the caller offers a sheet.
      return false;
    }
  }

  onChanged(listener: () => void): () => void {
    // Nothing is asked of the host in an event: it may be refused there, and the change would be lost.
    const changed = (): Promise<void> => {
      listener();
      return Promise.resolve();
    };
    const added = this.run(async (context) => {
      const { worksheets } = context.workbook;
      const results = [worksheets.onChanged.add(changed), worksheets.onDeleted.add(changed)];
      await context.sync();
      return results;
    });
    const failed = (error: unknown) => {
      console.error(`Changes to the workbook are not followed. ${messageOf(error, '')}`);
    };
    added.catch(failed);
    return () => {
      added
        .then(async (results) => {
          for (const result of results) {
            await Excel.run(result.context, async (context) => {
              result.remove();
              await context.sync();
            });
          }
        })
        .catch(() => undefined);
    };
  }

  onWaiting(listener: (waits: boolean) => void): () => void {
    this.waitingListeners.add(listener);
    return () => {
      this.waitingListeners.delete(listener);
    };
  }

  calculatesByHand(): Promise<boolean> {
    return this.run(async (context) => {
      const { application } = context.workbook;
      application.load('calculationMode');
      await context.sync();
      return application.calculationMode === Excel.CalculationMode.manual;
    });
  }

  calculate(): Promise<void> {
    return this.run(async (context) => {
      const { application } = context.workbook;
      application.calculate(Excel.CalculationType.full);
      for (let look = 0; look < CALCULATION_LOOKS; look++) {
        application.load('calculationState');
        await context.sync();
        if (application.calculationState === Excel.CalculationState.done) return;
        await new Promise((resolve) => setTimeout(resolve, CALCULATION_WAIT));
      }
      throw new Error('The workbook is still calculating.');
    });
  }

  /** Takes back what a failed writing left, and names what is left all the same. */
  private async takeBack(before: readonly Under[]): Promise<string[]> {
    const left: string[] = [];
    for (const under of before) {
      const { sheet, wasThere, areas } = under;
      // Each sheet for itself: where one is protected the others are still put right.
      const done = await this.run((context) =>
        wasThere ? restore(context, under) : removeSheet(context, sheet),
      ).catch(() => false);
      if (done) continue;
      left.push(
        wasThere
          ? `cells ${areas.map(({ area }) => `${sheet}!${areaAddress(area)}`).join(', ')}`
          : `sheet ${sheet}`,
      );
    }
    return left;
  }

  /** In a batch of its own: an older host cannot, and what is written stays. */
  private async setPrint(
    sheet: string,
    { held, onePage, paper, repeatsFirstRow }: PrintLayout,
  ): Promise<void> {
    try {
      await this.run(async (context) => {
        const { pageLayout } = context.workbook.worksheets.getItem(sheet);
        const { landscape, portrait } = Excel.PageOrientation;
        pageLayout.orientation = held === 'sideways' ? landscape : portrait;
        pageLayout.zoom = { horizontalFitToPages: 1, ...(onePage === true && { verticalFitToPages: 1 }) };
        if (paper !== undefined) {
          pageLayout.paperSize = paper === 'letter' ? Excel.PaperType.letter : Excel.PaperType.a4;
        }
        if (repeatsFirstRow === true) pageLayout.setPrintTitleRows('$1:$1');
        await context.sync();
      });
    } catch {
      // The user sets the page in the host's own print dialog then.
    }
  }

  /** The cells in use of every sheet, cut into rows that are read at once. */
  private readings(): Promise<{ sheet: string; area: Area }[]> {
    return this.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load('items/name');
      await context.sync();
      const used = worksheets.items.map((worksheet) => {
        const range = worksheet.getUsedRangeOrNullObject(true);
        range.load('isNullObject,address');
        return { sheet: worksheet.name, range };
      });
      await context.sync();
      return used.flatMap(({ sheet, range }) => {
        const area = range.isNullObject ? undefined : parseAddress(withoutSheet(range.address));
        return area ? slabs(area).map((slab) => ({ sheet, area: slab })) : [];
      });
    });
  }
}

/** What stood where blocks are written. */
interface Under {
  readonly sheet: string;
  readonly wasThere: boolean;
  readonly tables: readonly string[];
  readonly areas: readonly { readonly area: Area; readonly contents: readonly (readonly CellContent[])[] }[];
}

async function stateUnder(context: Excel.RequestContext, blocks: readonly Block[]): Promise<Under[]> {
  const sheets = await worksheetsOf(context, blocks);
  const states: Under[] = [];
  for (const sheet of new Set(blocks.map((block) => block.sheet))) {
    const worksheet = sheets.get(sheet);
    const areas = worksheet ? blocks.filter((block) => block.sheet === sheet).map(areaUnder) : [];
    const read: { area: Area; contents: CellContent[][] }[] = [];
    for (const slab of areas.flatMap(slabs)) {
      if (worksheet) read.push({ area: slab, contents: await contentsOf(context, worksheet, slab) });
    }
    const tables = worksheet ? (await tablesOn(context, worksheet)).map(({ name }) => name) : [];
    states.push({ sheet, wasThere: worksheet !== undefined, tables, areas: read });
  }
  return states;
}

async function tablesOn(context: Excel.RequestContext, worksheet: Excel.Worksheet): Promise<Excel.Table[]> {
  worksheet.tables.load('items/name');
  await context.sync();
  return worksheet.tables.items;
}

/** Formulas and values as they can be written again: a text stays a text. */
async function contentsOf(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  area: Area,
): Promise<CellContent[][]> {
  const range = worksheet.getRange(areaAddress(area));
  range.load('formulas,values');
  await context.sync();
  const values = range.values as CellContent[][];
  return (range.formulas as CellContent[][]).map((row, down) =>
    row.map((content, across) => {
      const value = values[down]?.[across];
      const isFormula = typeof content === 'string' && content.startsWith('=') && content !== value;
      return isFormula ? content : hostCell(value ?? '');
    }),
  );
}

async function writeContents(context: Excel.RequestContext, blocks: readonly Block[]): Promise<void> {
  const sheets = await worksheetsOf(context, blocks);
  for (const block of blocks) {
    const worksheet = sheets.get(block.sheet) ?? context.workbook.worksheets.add(block.sheet);
    sheets.set(block.sheet, worksheet);
    const area = areaUnder(block);
    const rows = hostRows(block.rows);
    for (const slab of slabs(area)) {
      const part = rows.slice(slab.top - area.top, slab.bottom - area.top + 1);
      if (part.length > 0) worksheet.getRange(areaAddress(slab)).formulas = part;
      // A long block does not go over in one request.
      if (slab.bottom < area.bottom) await context.sync();
    }
    if (block.table !== undefined) {
      worksheet.tables.add(worksheet.getRange(areaAddress(area)), true).name = block.table;
    }
  }
  await context.sync();
}

async function removeSheet(context: Excel.RequestContext, sheet: string): Promise<boolean> {
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
  worksheet.load('isNullObject');
  await context.sync();
  if (!worksheet.isNullObject) worksheet.delete();
  await context.sync();
  return true;
}

async function restore(context: Excel.RequestContext, { sheet, areas, tables }: Under): Promise<boolean> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  // A table that was added may not have its name yet.
  for (const table of await tablesOn(context, worksheet)) {
    if (!tables.includes(table.name)) table.convertToRange();
  }
  for (const { area, contents } of areas) {
    const now = await contentsOf(context, worksheet, area);
    // A protected sheet, on which nothing was changed, would refuse.
    if (JSON.stringify(now) === JSON.stringify(contents)) continue;
    worksheet.getRange(areaAddress(area)).formulas = contents.map((row) => [...row]);
  }
  await context.sync();
  return true;
}

function setLooks(worksheet: Excel.Worksheet, block: Block): void {
  const range = worksheet.getRange(areaAddress(areaUnder(block)));
  if (block.heading === true) range.getRow(0).format.font.bold = true;
  for (const [address, format] of Object.entries(block.formats ?? {})) {
    const { top, left, bottom, right } = areaOf(address);
    const row = Array.from({ length: right - left + 1 }, () => format);
    worksheet.getRange(address).numberFormat = Array.from({ length: bottom - top + 1 }, () => row);
  }
  for (const address of block.bold ?? []) worksheet.getRange(address).format.font.bold = true;
  if (block.widths) {
    range.format.wrapText = true;
    block.widths.forEach((characters, place) => {
      range.getColumn(place).format.columnWidth = characters * POINTS_A_CHARACTER;
    });
  } else {
    range.format.autofitColumns();
  }
}

/** Values of cells, a long range in several answers: the host on the web hands over 5 MB at most. */
async function readValues(
  context: Excel.RequestContext,
  range: Excel.Range,
  area: Area,
): Promise<CellContent[][]> {
  const rows: CellContent[][] = [];
  for (const slab of slabs(area)) {
    const part =
      slab.bottom - slab.top === area.bottom - area.top ? range : range.worksheet.getRange(areaAddress(slab));
    part.load('values');
    await context.sync();
    rows.push(...(part.values as CellContent[][]));
  }
  return rows;
}

function spillsAreKnown(): boolean {
  return Office.context.requirements.isSetSupported('ExcelApi', '1.12');
}

async function worksheetsOf(
  context: Excel.RequestContext,
  blocks: readonly Block[],
): Promise<Map<string, Excel.Worksheet>> {
  const asked = [...new Set(blocks.map(({ sheet }) => sheet))].map((sheet) => {
    const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
    worksheet.load('isNullObject');
    return { sheet, worksheet };
  });
  await context.sync();
  return new Map(
    asked
      .filter(({ worksheet }) => !worksheet.isNullObject)
      .map(({ sheet, worksheet }) => [sheet, worksheet]),
  );
}

async function worksheetOf(context: Excel.RequestContext, sheet: string): Promise<Excel.Worksheet> {
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
  worksheet.load('isNullObject');
  await context.sync();
  if (worksheet.isNullObject) throw new Error(`There is no sheet ${sheet} in this workbook.`);
  return worksheet;
}

function slabs(area: Area): Area[] {
  const height = Math.max(1, Math.floor(CELLS_A_READING / (area.right - area.left + 1)));
  const found: Area[] = [];
  for (let top = area.top; top <= area.bottom; top += height) {
    found.push({ ...area, top, bottom: Math.min(area.bottom, top + height - 1) });
  }
  return found;
}

function withoutSheet(address: string): string {
  return address.slice(address.lastIndexOf('!') + 1).replace(/\$/g, '');
}
