import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import type { Browser, FrameLocator, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import type { CellContent, WorkbookPort } from '../../taskpane/workbook/port';
import { launchChromium, PATIENCE } from './chromium';
import { SCREENS } from './pane';
import { serveWorkbench } from './serve-workbench';

// From a bid of somebody else's to a bid line that the totals take in, on the page of the workbench. Every click and key
// of the user is counted. The times of the keystroke-level model (Card, Moran and Newell, Communications of the ACM
// 23 (7), 1980, 396-410; as the page on GOMS of the computer science department of Hamburg University lists them), in
// seconds: pointing with the mouse, its button, a key of one who does not type for a living, a hand that goes over, and
// the thought before each click.
const POINT = 1.1;
const BUTTON = 0.2;
const KEY = 0.28;
const HAND_OVER = 0.4;
const THOUGHT = 1.35;
const LIMIT = 120;

let command: ChildProcess;
let address: string;
let browser: Browser;
let page: Page;
let pane: FrameLocator;
const folder = mkdtempSync(join(tmpdir(), 'washdown-first-hour-'));

beforeAll(async () => {
  ({ command, address } = await serveWorkbench(['scripts/run-command.mjs', 'start', '--no-open']));
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  command.kill();
  rmSync(folder, { recursive: true });
});

/** What a user does, and how long that takes by the model. */
class User {
  clicks = 0;
  keys = 0;
  hands = 0;

  get seconds(): number {
    return this.clicks * (THOUGHT + POINT + BUTTON) + this.keys * KEY + this.hands * HAND_OVER;
  }

  async click(what: Locator): Promise<void> {
    await what.click();
    this.clicks++;
  }

  /** Opens a list and takes one of it. */
  async choose(list: Locator, one: string): Promise<void> {
    await list.selectOption(one);
    this.clicks += 2;
  }

  async type(field: Locator, text: string): Promise<void> {
    await this.click(field);
    await field.pressSequentially(text);
    this.keys += text.length;
    // To the keys and back.
    this.hands += 2;
  }
}

// No drawing but that of this job has it.
const OWN_NAME = 'Veneer FV-2';
const WALLS: readonly (readonly CellContent[])[] = [
  ['North', 'N-1', 'Red clay brick', 1860, 24, 310, 260],
  ['North', 'N-2', 'Split-face CMU', 720, 8, 96, 60],
  ['East', 'E-1', 'Red clay brick', 1420, 24, 180, 150],
  ['East', 'E-2', 'Burnished block', 640, 8, 0, 0],
  ['South', 'S-1', OWN_NAME, 1980, 24, 420, 330],
];

/** A bid as estimators keep them: titles over merged cells, headings of its own, trade names, a total, a percent. */
async function foreignBid(): Promise<string> {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet('Take-off');
  sheet.addRows([
    ['Masonry restoration and cleaning'],
    ['School annex, bid set of March'],
    [],
    ['Elevation', 'Mark', 'Type', 'Qty SF', 'Ht ft', 'Openings SF', 'Openings LF', 'Remarks'],
    ...WALLS.map((row) => [...row]),
    ['TOTAL', '', '', { formula: 'SUM(D5:D9)' }],
  ]);
  sheet.mergeCells('A1:H1');
  sheet.mergeCells('A2:H2');
  const bid = book.addWorksheet('Bid');
  bid.addRows([
    ['Bid summary'],
    [],
    ['Item', 'Amount'],
    ['Repointing', 18400],
    ['Final wash-down'],
    ['Sealants', 7300],
    ['Subtotal', { formula: 'SUM(B4:B6)' }],
    ['Overhead', 0.1],
    ['Total', { formula: 'B7*(1+B8)' }],
  ]);
  bid.mergeCells('A1:B1');
  bid.getCell('B8').numFmt = '0%';
  const path = join(folder, 'annex.xlsx');
  await book.xlsx.writeFile(path);
  return path;
}

/** The price of the same walls under our own headings and names. */
function expectedPrice(): number {
  const walls = [
    ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter'],
    ...WALLS.map(([zone, wall, material, ...sizes]) => [
      wall,
      zone,
      material === OWN_NAME ? 'Red clay brick' : material,
      ...sizes,
    ]),
  ];
  const factors = [
    ['team.size', 3],
    ['price.labor', 64],
    ['price.cleaner.2', 27.5],
    ['price.profit', 8],
  ];
  const { run } = worksheetFunctions.find(({ name }) => name === 'BIDPRICE') ?? {};
  return Number(run?.([walls, null, factors]));
}

const value = (sheet: string, cell: string): Promise<CellContent> =>
  page.evaluate(
    (place) =>
      (globalThis as unknown as { washdownWorkbook: WorkbookPort }).washdownWorkbook
        .readRange(place)
        .then((rows) => rows[0]?.[0] ?? ''),
    { sheet, address: cell },
  );

it('from a bid of somebody else to a linked total with own rates takes less than two minutes of clicks and keys', async () => {
  page = await browser.newPage({ viewport: { width: 1280, height: 900 }, locale: 'en-US' });
  page.setDefaultTimeout(PATIENCE);
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(address);
  await page.locator('#said').getByText('Opened demo-bid-us.xlsx.').waitFor();
  const user = new User();
  pane = page.frameLocator('#pane');
  await page.locator('#file').setInputFiles(await foreignBid());
  // The button, the file, and Open.
  user.clicks += 3;
  await page.locator('#said').getByText('Opened annex.xlsx.').waitFor();
  // 18,400 and 7,300, and 10% on them.
  expect(await value('Bid', 'B9')).toBeCloseTo(28270, 9);

  await user.click(pane.getByRole('button', { name: 'Use this sheet' }));
  await pane.getByText(`"${OWN_NAME}" cannot be used.`).waitFor();
  await user.choose(pane.getByLabel(`“${OWN_NAME}” is`), 'Red clay brick');
  await pane.getByText('5 walls in 3 zones can be read.').waitFor();
  await pane.getByText('Row 10 (“TOTAL”) and what is below it are left out.').waitFor();
  await pane.getByText('Not used: Remarks.').waitFor();
  await user.click(pane.getByRole('button', { name: 'Use these walls' }));
  await pane.getByRole('status').getByText('Written.').waitFor();
  await page.screenshot({ path: join(SCREENS, 'first-hour-walls.png') });

  await user.click(pane.getByText('Factors', { exact: true }));
  await user.type(pane.getByLabel('team.size', { exact: true }), '3');
  await user.click(pane.getByText('Prices and rental'));
  await user.type(pane.getByLabel('price.labor', { exact: true }), '64');
  await user.type(pane.getByLabel('price.cleaner.2', { exact: true }), '27.50');
  await user.click(pane.getByText('Markups, minimum price and price range'));
  await user.type(pane.getByLabel('price.profit', { exact: true }), '8%');
  await page.screenshot({ path: join(SCREENS, 'first-hour-factors.png') });
  await user.click(pane.getByRole('button', { name: 'Write 4 changes' }));
  await pane
    .getByRole('group', { name: 'Written' })
    .getByText('price.labor: the starting value → 64')
    .waitFor();

  await user.choose(pane.getByLabel('What'), 'BIDPRICE');
  await user.type(pane.getByLabel('Top left cell'), 'Bid!B5');
  await user.click(pane.getByRole('button', { name: 'Insert', exact: true }));
  await pane.getByRole('status').getByText('1 formula at Bid!B5.').waitFor();

  const price = expectedPrice();
  expect(price).toBeGreaterThan(1000);
  await expect.poll(() => value('Bid', 'B5')).toBeCloseTo(price, 6);
  expect(await value('Bid', 'B9')).toBeCloseTo((18400 + price + 7300) * 1.1, 6);
  // A price looks like one, in a cell that had no look of its own.
  const format = page.evaluate(() =>
    (globalThis as unknown as { washdownWorkbook: WorkbookPort }).washdownWorkbook.readFormats({
      sheet: 'Bid',
      address: 'B5',
    }),
  );
  expect(await format).toEqual([['#,##0.00']]);
  await user.click(
    pane.getByRole('region', { name: 'Insert formulas' }).getByRole('button', { name: 'Go there' }),
  );
  await page.screenshot({ path: join(SCREENS, 'first-hour-1280.png') });
  await page.setViewportSize({ width: 320, height: 740 });
  await page.screenshot({ path: join(SCREENS, 'first-hour-320.png') });
  expect(errors).toEqual([]);

  expect([user.clicks, user.keys, user.hands]).toEqual([20, 16, 10]);
  expect(user.seconds).toBeLessThan(LIMIT);
  await page.close();
});
