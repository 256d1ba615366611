import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { FUniver } from '@univerjs/presets';
import ExcelJS from 'exceljs';
import type { Browser, FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/spreadsheet/address';
import { areaOf } from '../../taskpane/workbook/block-area';
import type { CellContent, WorkbookPort } from '../../taskpane/workbook/port';
import type { PageBook } from '../../workbench/page/page-book';
import { launchChromium, PATIENCE } from './chromium';
import { SCREENS } from './pane';
import { serveWorkbench } from './serve-workbench';

// The page as `npm start` serves it: the built add-in in a spreadsheet, in a real browser.

let command: ChildProcess;
let address: string;
let browser: Browser;
let page: Page;
let pane: FrameLocator;
let requests: string[];
let errors: string[];
// Dates of a workbook count days, the day 1970-01-01 as this one.
const UNIX_EPOCH = 25569;
const MS_A_DAY = 86_400_000;
const folder = mkdtempSync(join(tmpdir(), 'washdown-workbench-'));
const SCREEN = { width: 1400, height: 900 };
/** Whether the page shows the demo as it was opened: then the next test goes on with it. */
let isAsOpened = false;

beforeAll(async () => {
  ({ command, address } = await serveWorkbench(['scripts/run-command.mjs', 'start', '--no-open']));
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  command.kill();
  rmSync(folder, { recursive: true });
});
beforeEach(async () => {
  const isReady = isAsOpened;
  isAsOpened = false;
  if (isReady) return;
  const context = await browser.newContext({
    viewport: SCREEN,
    locale: 'en-US',
    acceptDownloads: true,
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  context.setDefaultTimeout(PATIENCE);
  page = await context.newPage();
  requests = [];
  errors = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.goto(address);
  await said('Opened demo-bid-us.xlsx.');
  pane = page.frameLocator('#pane');
});
afterEach(async () => {
  const elsewhere = requests.filter(
    (url) => !/^(data|blob):/.test(url) && !url.startsWith(new URL(address).origin),
  );
  expect(elsewhere).toEqual([]);
  expect(errors).toEqual([]);
  if (!isAsOpened) await page.context().close();
});

const said = (text: string) => page.locator('#said').getByText(text).waitFor();
const picture = (name: string) => page.screenshot({ path: join(SCREENS, `${name}.png`) });

type Host = typeof globalThis & { washdownWorkbook: WorkbookPort };
type Shown = { washdownWorkbook: { book: PageBook; api: FUniver } };

function values(sheet: string, range: string): Promise<CellContent[][]> {
  return page.evaluate((place) => (globalThis as Host).washdownWorkbook.readRange(place), {
    sheet,
    address: range,
  });
}

async function value(sheet: string, cell: string): Promise<CellContent> {
  return (await values(sheet, cell))[0]?.[0] ?? '';
}

/** What a cell comes to show, once the spreadsheet has taken up what was typed. */
const shows = (sheet: string, cell: string) => expect.poll(() => value(sheet, cell));

async function goTo(sheet: string, cell: string): Promise<void> {
  await page.evaluate((place) => (globalThis as Host).washdownWorkbook.goTo(place), { sheet, address: cell });
  await page.locator('#__editor___INTERNAL_EDITOR__DOCS_NORMAL').focus();
  await expect.poll(selection).toEqual({ sheet, address: cell });
}

const FUNCTION_LIST = 'ul[data-u-comp=sheets-formula-editor]';

const selection = () => page.evaluate(() => (globalThis as Host).washdownWorkbook.selection());

/** Types cells from one to the right, as a person does, who looks where the cursor is. */
async function type(sheet: string, cell: string, texts: readonly string[]): Promise<void> {
  await goTo(sheet, cell);
  const { top, left } = areaOf(cell);
  const cursorAt = async (place: number) => {
    await expect.poll(selection).toEqual({ sheet, address: cellAddress(top, left + place) });
    await page.waitForFunction(
      () => !(globalThis as unknown as Shown).washdownWorkbook.book.workbook.isCellEditing(),
    );
  };
  for (const [place, text] of texts.entries()) {
    await cursorAt(place);
    if (text === '') await page.keyboard.press('Delete');
    else await page.keyboard.type(text, { delay: 10 });
    // While the list of functions is there, Tab takes one of it.
    if (text.startsWith('=')) await page.locator(FUNCTION_LIST).waitFor({ state: 'hidden' });
    await page.keyboard.press('Tab');
  }
  await cursorAt(texts.length);
}

async function openTab(name: string): Promise<void> {
  await pane.getByRole('tab', { name }).click();
}

async function inPane(button: string): Promise<void> {
  await pane.getByRole('button', { name: button, exact: true }).click();
}

/** Saves the workbook and reads the file with a library of its own. */
async function saved(): Promise<{ path: string; book: ExcelJS.Workbook }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save .xlsx' }).click();
  const path = join(folder, 'saved.xlsx');
  await (await download).saveAs(path);
  const book = new ExcelJS.Workbook();
  await book.xlsx.readFile(path);
  return { path, book };
}

describe('the demo bid', () => {
  it.each(['demo-bid-us.xlsx', 'demo-bid-metric.xlsx'])(
    '%s comes to what its file holds, every cell of every sheet',
    async (name) => {
      if (name !== 'demo-bid-us.xlsx') await page.getByLabel('Demo').selectOption(name);
      await said(`Opened ${name}.`);
      const file = new ExcelJS.Workbook();
      await file.xlsx.readFile(resolve('out/workbench', name));
      let compared = 0;
      for (const sheet of file.worksheets) {
        const last = sheet.getCell(sheet.rowCount, sheet.columnCount).address;
        const shown = await values(sheet.name, `A1:${last}`);
        for (const [row, cells] of shown.entries()) {
          for (const [column, content] of cells.entries()) {
            const cell = sheet.getCell(row + 1, column + 1);
            const held = (cell.formula ? cell.result : cell.value) ?? '';
            const kept =
              held instanceof Date
                ? held.getTime() / MS_A_DAY + UNIX_EPOCH
                : typeof held === 'object' && 'error' in held
                  ? held.error
                  : held;
            const place = `${sheet.name}!${cell.address}`;
            if (typeof kept === 'number') {
              expect(Math.abs(Number(content) - kept), place).toBeLessThanOrEqual(1e-9 * Math.abs(kept));
            } else expect([place, content]).toEqual([place, kept]);
            compared++;
          }
        }
      }
      expect(compared).toBeGreaterThan(1000);
      if (name === 'demo-bid-us.xlsx') {
        await goTo('Estimate', 'A1');
        await picture('workbench-demo');
        isAsOpened = true;
      } else {
        // Wide enough for every column.
        await page.setViewportSize({ width: 2100, height: 700 });
        await goTo('Options', 'A1');
        await picture('workbench-options');
      }
    },
  );

  it('a material of one wall moves the class, the water, the hours and the bid line', async () => {
    const walls = await values('Walls', 'A1:D46');
    const row = walls.findIndex(([, zone]) => zone === 'Library north') + 1;
    const before = (await values('Estimate', 'B5:M5'))[0] ?? [];
    const bid = Number(await value('Bid', 'F19'));
    const total = Number(await value('Estimate', 'M8'));
    await type('Walls', `D${String(row)}`, ['Limestone']);
    await shows('Estimate', 'B5').toBe(1);
    const after = (await values('Estimate', 'B5:M5'))[0] ?? [];
    // Limestone bears class 1 (FACTORS, materials); the zone was washed with class 2.
    expect([before.slice(0, 2), after.slice(0, 3)]).toEqual([
      [2, 2],
      [1, 1, 'Limestone'],
    ]);
    const [water, hours] = [3, 6];
    expect(after[water]).not.toBeCloseTo(Number(before[water]), 3);
    expect(Number(after[hours])).toBeGreaterThan(Number(before[hours]));
    const change = Number(await value('Estimate', 'M8')) - total;
    expect(change).toBeGreaterThan(0);
    expect(Number(await value('Bid', 'F19'))).toBeCloseTo(bid + change, 1);

    // The workbook says where its walls are, so that the pane can be used at once.
    await openTab('Review');
    await inPane('Review the workbook');
    await pane
      .getByText(/of \d+ formulas show what they should/)
      .first()
      .waitFor();
  });

  it('only the formulas that an edit touches are worked out', async () => {
    /** Changes a cell, and gives how many formulas were worked out for it. */
    const workedOut = async (sheet: string, cell: string, content: string | number): Promise<number> => {
      await page.evaluate(
        ([name, address, put]) => {
          const { book, api } = (globalThis as unknown as Shown).washdownWorkbook;
          Object.assign(globalThis, { workedOut: 0 });
          api.getFormula().calculationProcessing(({ totalFormulasToCalculate }) => {
            Object.assign(globalThis, { workedOut: totalFormulasToCalculate });
          });
          book.workbook.getSheetByName(name)?.getRange(address).setValue(put);
        },
        [sheet, cell, content] as const,
      );
      await shows(sheet, cell).toBe(content);
      return page.evaluate(() => (globalThis as unknown as { workedOut: number }).workedOut);
    };
    const file = new ExcelJS.Workbook();
    await file.xlsx.readFile(resolve('out/workbench/demo-bid-us.xlsx'));
    const formulas = file.worksheets.flatMap((sheet) => {
      const found: string[] = [];
      sheet.eachRow((row) => {
        row.eachCell(({ formula }) => {
          if (formula) found.push(formula);
        });
      });
      return found;
    });
    const ofWalls = formulas.filter((formula) => formula.includes('Walls[#All]'));
    expect(await workedOut('Bid', 'H60', 'a note')).toBe(0);
    const touched = await workedOut('Walls', 'E3', 777);
    expect(touched).toBeGreaterThanOrEqual(ofWalls.length);
    expect(touched).toBeLessThan(formulas.length);
  });

  it('a row that is put into the table counts at once, and again when it changes', async () => {
    expect(await value('Schedule', 'K1')).toBe('Washed area (ft²)');
    const before = Number(await value('Schedule', 'K2'));
    const masking = Number(await value('Estimate', 'F8'));
    await page.evaluate(() => {
      const { book } = (globalThis as unknown as Shown).washdownWorkbook;
      book.workbook.getSheetByName('Walls')?.insertRowsAfter(2, 1);
    });
    await type('Walls', 'A4', ['LS-02a', 'Library south', '2', 'Red clay brick', '100']);
    await shows('Schedule', 'K2').toBeCloseTo(before + 100, 9);
    await type('Walls', 'E4', ['250']);
    await shows('Schedule', 'K2').toBeCloseTo(before + 250, 9);
    // The last row is still within the table: of the masked gates, every ft2 more is one of film more, with its laps.
    expect(await value('Estimate', 'F8')).toBeCloseTo(masking, 9);
    const gates = Number(await value('Walls', 'E47'));
    await type('Walls', 'E47', [String(gates + 100)]);
    await shows('Estimate', 'F8').toBeGreaterThan(masking + 100 - 1e-9);
  });

  it('a row that is typed or pasted below the table joins it', async () => {
    const before = Number(await value('Schedule', 'K2'));
    expect((await values('Walls', 'A46:A48')).map(([wall]) => wall !== '')).toEqual([true, false, false]);
    await type('Walls', 'A47', ['LS-20', 'Library south', '2', 'Red clay brick', '100']);
    await shows('Schedule', 'K2').toBeCloseTo(before + 100, 9);

    const [, zone, , , area, , openings] = (await values('Walls', 'A3:G3'))[0] ?? [];
    expect(zone).toBe('Library south');
    await goTo('Walls', 'A3:P3');
    await page.keyboard.press('Control+C');
    await goTo('Walls', 'A48');
    await page.keyboard.press('Control+V');
    await shows('Walls', 'B48').toBe('Library south');
    await type('Walls', 'A48', ['LS-21']);
    await shows('Schedule', 'K2').toBeCloseTo(before + 100 + Number(area) - Number(openings), 9);

    // Apart from the table by a row at first, and then with something in it that was there before.
    await type('Walls', 'A50', ['a note']);
    await type('Walls', 'A49', ['LS-22']);
    await shows('Schedule', 'K2').toBe('');
    await type('Walls', 'C50', ['2']);
    await type('Walls', 'A49', ['']);
    await shows('Schedule', 'K2').toBeCloseTo(before + 100 + Number(area) - Number(openings), 9);
    const { book } = await saved();
    expect(book.getWorksheet('Walls')?.getTable('Walls')).toMatchObject({ table: { tableRef: 'A1:P49' } });
  });

  it('what is copied can be pasted at once, however slow the clipboard is in the background', async () => {
    await page.evaluate(() => {
      navigator.clipboard.write = () => new Promise(() => undefined);
    });
    const walls = (await values('Walls', 'A3:A4')).flat();
    for (const [place, wall] of walls.entries()) {
      await goTo('Walls', `A${String(3 + place)}:P${String(3 + place)}`);
      await page.keyboard.press('Control+C');
      await goTo('Walls', `A${String(60 + place)}`);
      await page.keyboard.press('Control+V');
      await shows('Walls', `A${String(60 + place)}`).toBe(wall);
    }
  });

  it('what is being typed stays while results arrive', async () => {
    // Other sheets have results at the row and column of this cell.
    await goTo('Walls', 'D4');
    await page.keyboard.type('Lime');
    await page.evaluate(() => (globalThis as Host).washdownWorkbook.calculate());
    await page.keyboard.type('stone');
    await page.keyboard.press('Tab');
    await expect.poll(selection).toEqual({ sheet: 'Walls', address: 'E4' });
    await shows('Walls', 'D4').toBe('Limestone');
  });

  it('a file that is no workbook is refused in a sentence, and the bid stays', async () => {
    await page
      .locator('#file')
      .setInputFiles({ name: 'notes.xlsx', mimeType: 'text/plain', buffer: Buffer.from('not a workbook') });
    await said('Accepted: an .xlsx workbook');
    expect(await value('Bid', 'F19')).toBeGreaterThan(0);
    isAsOpened = true;
  });

  it('a material that is not known is an error that says where', async () => {
    await type('Walls', 'D3', ['Limestoone']);
    await goTo('Estimate', 'E4');
    await page
      .locator('#reason')
      .getByText('E4 #VALUE! Row 3 (LS-02 third floor, bays 1-4), column Material: "Limestoone"')
      .waitFor();
    await picture('workbench-error');

    // It goes with the cell that is selected, and comes back with it, in a workbook that is opened later too.
    await goTo('Estimate', 'A4');
    await expect.poll(() => page.locator('#reason').isHidden()).toBe(true);
    await goTo('Estimate', 'E4');
    await page.locator('#reason').getByText('E4 #VALUE! Row 3').waitFor();
    await page.locator('#file').setInputFiles((await saved()).path);
    await said('Opened saved.xlsx.');
    await goTo('Estimate', 'F4');
    await page.locator('#reason').getByText('F4 #VALUE! Row 3').waitFor();
    await goTo('Estimate', 'A4');
    await expect.poll(() => page.locator('#reason').isHidden()).toBe(true);
    await goTo('Estimate', 'F4');
    await page.locator('#reason').getByText('F4 #VALUE! Row 3').waitFor();
  });
});

it('the frame of the page follows a dark screen, the workbook keeps the looks of its file', async () => {
  await page.emulateMedia({ colorScheme: 'dark' });
  const looks = (selector: string) =>
    page.locator(selector).evaluate((element) => {
      const { color, backgroundColor, colorScheme } = getComputedStyle(element);
      return { color, backgroundColor, colorScheme };
    });
  expect((await looks('body')).backgroundColor).toBe('rgb(27, 31, 35)');
  expect((await looks('body')).color).toBe('rgb(230, 232, 234)');
  expect((await looks('#spreadsheet')).colorScheme).toBe('light');
  await picture('workbench-dark');
});

describe('on a phone', () => {
  it.each([320, 360, 480])(
    'the pane has the whole width of %i px, and the workbook is shown on demand',
    async (width) => {
      await page.setViewportSize({ width, height: 740 });
      const box = await page.locator('#pane').boundingBox();
      expect([box?.x, box?.width]).toEqual([0, width]);
      expect(await page.locator('#spreadsheet').isVisible()).toBe(false);
      await openTab('Steps');
      await pane.getByRole('heading', { name: 'Steps', exact: true }).waitFor();
      await picture(`phone-steps-${String(width)}`);
      await openTab('Cautions');
      await pane.getByRole('heading', { name: 'Cautions', exact: true }).waitFor();
      expect(
        await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
      ).toBe(0);
      await page.getByRole('button', { name: 'Show the workbook' }).click();
      expect(await page.locator('#pane').isVisible()).toBe(false);
      expect((await page.locator('#spreadsheet').boundingBox())?.width).toBe(width);
      await picture(`phone-workbook-${String(width)}`);
      await page.getByRole('button', { name: 'Show the pane' }).click();
      expect(await page.locator('#pane').isVisible()).toBe(true);
      await page.setViewportSize(SCREEN);
      isAsOpened = true;
    },
  );
});

it('work that the crew records in the pane goes to the end of the demo’s table, and moves its sheet of progress', async () => {
  const tables = () => page.evaluate(() => (globalThis as Host).washdownWorkbook.tables());
  const actuals = (await tables()).find(({ name }) => name === 'Actuals');
  if (!actuals) throw new Error('The demo has no recorded work.');
  const { bottom } = areaOf(actuals.address);
  const progress = await values('Progress', 'A1:H80');
  const [headings = []] = progress;
  const job = progress.findIndex(([zone]) => zone === 'Job');
  const column = headings.indexOf('Actual hours');
  const before = Number(progress[job]?.[column]);
  expect(before).toBeGreaterThan(0);

  await openTab('Steps');
  await pane.getByRole('button', { name: 'Progress against the estimate', expanded: false }).click();
  await pane.getByRole('heading', { name: 'The whole job' }).waitFor();
  await inPane('Record other work');
  const form = pane.getByRole('form', { name: 'Record this work?' });
  await form.getByLabel('Task').selectOption('move');
  await form.getByLabel('Area').fill('');
  await form.getByLabel('Labor-hours').fill('1.25');
  await inPane('Record');
  await pane.getByRole('status').getByText('Recorded in the table Actuals.').waitFor();
  const [line = []] = await values('Actuals', `A${String(bottom + 1)}:I${String(bottom + 1)}`);
  expect(line.slice(2, 6)).toEqual(['', 'move', '', 1.25]);
  expect(areaOf((await tables()).find(({ name }) => name === 'Actuals')?.address ?? '').bottom).toBe(
    bottom + 1,
  );
  await shows('Progress', cellAddress(job + 1, column + 1)).toBeCloseTo(before + 1.25, 9);
});

it('an estimator, a PM and a reviewer work on one workbook', async () => {
  // The estimator: from an empty workbook, by Set up.
  await page.getByRole('button', { name: 'New workbook' }).click();
  await said('New workbook.');
  await inPane('Add the sheets');
  await pane.getByRole('status').getByText('Written.').waitFor();
  await picture('workbench-set-up');
  await type('Walls', 'A2', ['South', 'Front', '1', 'Red clay brick', '1000', '10', '', '']);
  for (const row of ['3', '4'])
    await type(
      'Walls',
      `A${row}`,
      Array.from({ length: 14 }, () => ''),
    );
  // Two pre-wets of 3.0333 L/m2 (tests/estimate/hand-worked-wall.test.ts) on 92.903 m2, 0.6 gal/ft2 of rinse, and of
  // 1 gal of mix on 70 ft2 8 parts in 9; 5% of all that once more.
  await shows('Estimate', 'B3').toBeCloseTo(
    1.05 * ((3.033335 * 92.90304) / 3.785411784 + 600 + (1000 / 70) * (8 / 9)),
    2,
  );
  // About 15.5 h of washing and 4 h of scraping (tests/estimate/sizes-to-expect.test.ts), and what is around them.
  const hours = Number(await value('Estimate', 'B7'));
  expect(hours).toBeGreaterThan(19.5);
  // B8 is the area per labor-hour, of 1,000 ft2. Two persons.
  expect(await value('Estimate', 'B9')).toBeCloseTo(hours / 2, 9);
  await goTo('Estimate', 'B3');
  await picture('workbench-estimator');

  // The PM: keeps a baseline, changes the material, reads what it did.
  await openTab('Review');
  await pane.getByRole('button', { name: 'Baseline and changes', expanded: false }).click();
  await inPane('Save baseline');
  await pane.getByText('Nothing has changed since').waitFor();
  await type('Walls', 'D2', ['Limestone']);
  await pane.getByText('One change since').waitFor();
  const change = pane.locator('.changes li');
  await change.getByText('Class: Front 2 -> 1').waitFor();
  const baseline = await page.evaluate(async () => {
    const tables = await (globalThis as Host).washdownWorkbook.tables();
    return tables.find(({ name }) => name.startsWith('Baseline'))?.name ?? '';
  });
  await type('Sheet1', 'A1', [`=WASH.CHANGES(${baseline}[#All],Walls[#All],Factors[#All])`]);
  await shows('Sheet1', 'A1').toBe('Wall');
  const [headings = [], line = [], whole = []] = await values('Sheet1', 'A1:H3');
  expect(line.slice(0, 2)).toEqual(['South', 'changed']);
  expect(whole[0]).toBe('Total change');
  // 1000 ft2 at 70 ft2/gal, and 5% once more, is 15 gal of mix: 1 part in 9 of it before, 1 part in 65 with class 1.
  const concentrate = headings.findIndex((heading) => String(heading).startsWith('Concentrate'));
  expect(line[concentrate]).toBeCloseTo(15 / 65 - 15 / 9, 9);
  expect(whole[concentrate]).toBeCloseTo(15 / 65 - 15 / 9, 9);
  await picture('workbench-pm');

  // The reviewer: a number was typed over a formula.
  await type('Estimate', 'B3', ['400']);
  await shows('Estimate', 'B3').toBe(400);
  await inPane('Review the workbook');

  await pane.getByRole('heading', { name: 'Typed over (1)' }).waitFor();
  await pane.getByText('Holds 400 where a formula belongs.').waitFor();
  await goTo('Walls', 'A1');
  await pane.getByRole('button', { name: 'Estimate!B3' }).click();
  await expect.poll(selection).toEqual({ sheet: 'Estimate', address: 'B3' });
  await picture('workbench-reviewer');

  // The file that is saved holds all of it, and opens again.
  const { path, book } = await saved();
  expect(book.getWorksheet('Estimate')?.getCell('B3').value).toBe(400);
  const masking = book.getWorksheet('Estimate')?.getCell('B5');
  expect(masking?.formula).toBe('_xldudf_WASH_MASKING(Walls[#All],,Factors[#All])');
  expect([masking?.numFmt, book.getWorksheet('Estimate')?.getCell('E15').numFmt]).toEqual([
    '#,##0.00',
    '#,##0.00',
  ]);
  await page.locator('#file').setInputFiles(path);
  await said('Opened saved.xlsx.');
  expect(await value('Estimate', 'B3')).toBe(400);
  expect((await values('Sheet1', 'A1:H3'))[1]).toEqual(line);
  await openTab('Steps');
  await pane.getByRole('option', { name: 'Front' }).waitFor({ state: 'attached' });
});
