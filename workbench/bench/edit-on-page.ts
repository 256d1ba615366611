import { join } from 'node:path';
import ExcelJS from 'exceljs';
import type { Page } from 'playwright-core';
import { launchChromium } from '../../tests/browser/chromium';
import type { WorkbookPort } from '../../taskpane/workbook/port';
import type { PageBook } from '../page/page-book';
import { columnIds } from '../../src/walls/columns';
import { serveFiles } from '../serve/serve-files';
import { madeFactors, madeWalls } from './made-walls';
import { median } from './timing';

const PAGE = join(import.meta.dirname, '..', '..', 'out', 'workbench');
// Each of them moves with every washed area.
const FUNCTIONS = ['WATER', 'CREWHOURS', 'RUNOFF', 'BIDPRICE'];
const LINES = 15;
const AREA = columnIds.indexOf('area');
const EDITS = 15;
// The first ones meet code that has not been made fast yet.
const UNCOUNTED = 5;
// A row below the headings that is washed.
const WASHED_ROW = 2;

/** A workbook of made walls with 60 formulas over them: four quantities of the job, 15 times. */
async function editedBook(rows: number): Promise<Buffer> {
  const book = new ExcelJS.Workbook();
  const put = (sheet: string, [header = [], ...lines]: readonly (readonly unknown[])[]) =>
    book.addWorksheet(sheet).addTable({
      name: sheet,
      ref: 'A1',
      headerRow: true,
      columns: header.map((name) => ({ name: String(name) })),
      rows: lines.map((line) => header.map((_, column) => line[column] ?? '')),
    });
  put('Walls', madeWalls(rows));
  put('Factors', [['Factor', 'Value'], ...madeFactors]);
  const estimate = book.addWorksheet('Estimate');
  for (let line = 1; line <= LINES; line++) {
    FUNCTIONS.forEach((name, column) => {
      const formula = `_xldudf_WASH_${name}(Walls[#All],,Factors[#All])`;
      estimate.getCell(line, column + 1).value = { formula };
    });
  }
  return Buffer.from(await book.xlsx.writeBuffer());
}

/** Milliseconds from an edit of an area until every formula shows what it comes to, the median of some edits. */
async function timeOfEdit(page: Page, rows: number): Promise<number> {
  const name = `made-${String(rows)}.xlsx`;
  await page.locator('#file').setInputFiles({ name, mimeType: '', buffer: await editedBook(rows) });
  await page.locator('#said').getByText(`Opened ${name}.`).waitFor();
  const times = await page.evaluate(
    async ({ edits, row, area, lines, columns }) => {
      const port = globalThis.washdownWorkbook as unknown as WorkbookPort & { book: PageBook };
      const walls = port.book.workbook.getSheetByName('Walls');
      const shown = port.book.workbook.getSheetByName('Estimate')?.getRange(0, 0, lines, columns);
      const times: number[] = [];
      for (let edit = 1; edit <= edits; edit++) {
        const before = (shown?.getValues() ?? []).flat();
        const start = performance.now();
        walls?.getRange(row, area).setValue(1000 + edit);
        await new Promise<void>((done) => {
          const timer = setInterval(() => {
            const now = (shown?.getValues() ?? []).flat();
            if (now.every((value, place) => value !== before[place])) {
              clearInterval(timer);
              done();
            }
          }, 1);
        });
        times.push(performance.now() - start);
        await port.readRange({ sheet: 'Walls', address: 'A1' });
      }
      return times;
    },
    { edits: EDITS, row: WASHED_ROW, area: AREA, lines: LINES, columns: FUNCTIONS.length },
  );
  return median(times.slice(UNCOUNTED));
}

/**
 * Times an edit on the workbench page, in tables of several sizes.
 * @param sizes rows of the tables
 * @returns milliseconds of each
 */
export async function editsOnPage(sizes: readonly number[]): Promise<number[]> {
  const server = await serveFiles(PAGE);
  const browser = await launchChromium();
  try {
    const page = await browser.newPage();
    // The edits of the workbook before are not saved, and the page asks.
    page.on('dialog', (dialog) => void dialog.accept());
    await page.goto(`${server.address}/workbench.html`);
    await page.locator('#said').getByText('Opened').waitFor();
    const times: number[] = [];
    for (const rows of sizes) times.push(await timeOfEdit(page, rows));
    return times;
  } finally {
    await browser.close();
    await server.close();
  }
}
