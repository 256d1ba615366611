import { areaAddress, cellAddress, parseAddress, type Area } from '../../src/review/audit/address';
import { areaOf, areaUnder } from './block-area';
import { hostRows } from './office-content';
import { partNamespace, partText, partXml } from './part-xml';
import type {
  Block,
  CellContent,
  NameInfo,
  PartName,
  Place,
  Progress,
  ScannedBlock,
  TableInfo,
  WorkbookPort,
} from './port';

// A reading of this many cells is quick, and well below what the host hands over at once.
const CELLS_A_READING = 10_000;
// The host measures columns in points; a character of its standard font takes about so many.
const POINTS_A_CHARACTER = 5.7;
const CALCULATION_LOOKS = 240;
const CALCULATION_WAIT = 250;

/** The workbook that the host has open. */
export class OfficeWorkbook implements WorkbookPort {
  sheets(): Promise<string[]> {
    return Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load('items/name');
      await context.sync();
      return worksheets.items.map(({ name }) => name);
    });
  }

  tables(): Promise<TableInfo[]> {
    return Excel.run(async (context) => {
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
    return Excel.run(async (context) => {
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
    return Excel.run(async (context) => {
      const table = context.workbook.tables.getItemOrNullObject(name);
      table.load('isNullObject');
      await context.sync();
      if (table.isNullObject) throw new Error(`There is no table ${name} in this workbook.`);
      const range = table.getRange();
      range.load('values');
      await context.sync();
      return range.values as CellContent[][];
    });
  }

  readRange({ sheet, address }: Place): Promise<CellContent[][]> {
    return Excel.run(async (context) => {
      const range = (await worksheetOf(context, sheet)).getRange(address);
      range.load('values');
      await context.sync();
      return range.values as CellContent[][];
    });
  }

  selection(): Promise<Place> {
    return Excel.run(async (context) => {
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
    return Excel.run(async (context) => {
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

  async write(blocks: readonly Block[]): Promise<void> {
    await Excel.run(async (context) => {
      const sheets = await worksheetsOf(context, blocks);
      for (const block of blocks) {
        const worksheet = sheets.get(block.sheet) ?? context.workbook.worksheets.add(block.sheet);
        sheets.set(block.sheet, worksheet);
        writeBlock(worksheet, block);
      }
      await context.sync();
    });
    for (const { sheet, onePage } of blocks) if (onePage === true) await this.printOnOnePage(sheet);
  }

  addRows(name: string, rows: readonly (readonly CellContent[])[]): Promise<void> {
    return Excel.run(async (context) => {
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
      const { formulas, values } = await Excel.run(async (context) => {
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
    return Excel.run(async (context) => {
      const worksheet = await worksheetOf(context, sheet);
      worksheet.activate();
      worksheet.getRange(address).select();
      await context.sync();
    });
  }

  readPart(name: PartName): Promise<string | undefined> {
    return Excel.run(async (context) => {
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
      await Excel.run(async (context) => {
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

  onChanged(listener: (place: Place) => void): () => void {
    const added = Excel.run(async (context) => {
      const result = context.workbook.worksheets.onChanged.add(async ({ worksheetId, address }) => {
        const sheet = await Excel.run(async (inner) => {
          const worksheet = inner.workbook.worksheets.getItem(worksheetId);
          worksheet.load('name');
          await inner.sync();
          return worksheet.name;
        });
        listener({ sheet, address });
      });
      await context.sync();
      return result;
    });
    return () => {
      void added.then((result) =>
        Excel.run(result.context, async (context) => {
          result.remove();
          await context.sync();
        }),
      );
    };
  }

  calculate(): Promise<void> {
    return Excel.run(async (context) => {
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

  /** In a batch of its own: an older host cannot, and what is written stays. */
  private async printOnOnePage(sheet: string): Promise<void> {
    try {
      await Excel.run(async (context) => {
        const { pageLayout } = context.workbook.worksheets.getItem(sheet);
        pageLayout.orientation = Excel.PageOrientation.landscape;
        pageLayout.zoom = { horizontalFitToPages: 1, verticalFitToPages: 1 };
        await context.sync();
      });
    } catch {
      // The user sets the page in the host's own print dialog then.
    }
  }

  /** The cells in use of every sheet, cut into rows that are read at once. */
  private readings(): Promise<{ sheet: string; area: Area }[]> {
    return Excel.run(async (context) => {
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

function writeBlock(worksheet: Excel.Worksheet, block: Block): void {
  const range = worksheet.getRange(areaAddress(areaUnder(block)));
  range.formulas = hostRows(block.rows);
  if (block.table !== undefined) worksheet.tables.add(range, true).name = block.table;
  if (block.heading === true) range.getRow(0).format.font.bold = true;
  for (const [address, format] of Object.entries(block.formats ?? {})) {
    const { top, left, bottom, right } = areaOf(address);
    const row = Array.from({ length: right - left + 1 }, () => format);
    worksheet.getRange(address).numberFormat = Array.from({ length: bottom - top + 1 }, () => row);
  }
  if (block.widths) {
    range.format.wrapText = true;
    block.widths.forEach((characters, place) => {
      range.getColumn(place).format.columnWidth = characters * POINTS_A_CHARACTER;
    });
  } else {
    range.format.autofitColumns();
  }
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
