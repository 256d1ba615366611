import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { BID, FOREIGN, HOSTILE } from './bid';
import { overflow, PaneTests, picture, violations } from './pane';

let tests: PaneTests;
let page: Page;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterEach(async () => {
  expect(await page.evaluate(() => 'harmed' in globalThis)).toBe(false);
  await page.context().close();
});
afterAll(() => tests.stop());

const focused = () =>
  page.evaluate(() => {
    const element = document.activeElement;
    const labels = element instanceof HTMLInputElement || element instanceof HTMLSelectElement;
    return (labels ? element.labels?.[0]?.textContent : element?.textContent)?.trim() ?? '';
  });

/** Presses the tab key until a control has the focus. */
async function tabTo(name: string | RegExp): Promise<void> {
  for (let stop = 0; stop < 60; stop++) {
    await page.keyboard.press('Tab');
    const text = await focused();
    if (typeof name === 'string' ? text === name : name.test(text)) return;
  }
  throw new Error(`The tab key does not come to ${String(name)}.`);
}

const cell = (sheet: string, address: string) =>
  page.evaluate((place) => globalThis.testWorkbook.cell(place), { sheet, address });

it('a new estimate is put in and worked out by the keyboard alone', async () => {
  ({ page } = await tests.open({ sheets: { Sheet1: [] } }, { width: 320 }));
  await picture(page, 'first-run');
  await tabTo(/^US/);
  await page.keyboard.press('ArrowDown');
  await tabTo('Add the sheets');
  await page.keyboard.press('Enter');
  await page.getByRole('status').getByText('Written.').waitFor();
  await picture(page, 'new-estimate');
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
  expect(await page.evaluate(() => globalThis.testWorkbook.sheets())).toEqual([
    'Sheet1',
    'Walls',
    'Factors',
    'Estimate',
    'Checks',
  ]);
  expect((await cell('Factors', 'B2')).value).toBe('SI');
  const water = await cell('Estimate', 'B3');
  expect(water.formula).toBe('=WASH.WATER(Walls[#All],,Factors[#All])');
  expect(water.value).toBeGreaterThan(0);
  expect((await cell('Estimate', 'C3')).value).toBe('L');
  await tabTo('Go there');
  await page.keyboard.press('Enter');
  await page.getByRole('status').getByText('Walls, A2 is selected.').waitFor();
  await page.getByRole('tab', { name: 'Steps' }).click();
  await page.getByText('Elevation of Example zone').waitFor({ state: 'attached' });
});

it('names that are taken are left alone', async () => {
  ({ page } = await tests.open(BID));
  await page.getByRole('button', { name: 'Add the sheets' }).click();
  await page.getByText('Sheet Walls 2: the table Walls2').first().waitFor();
  expect((await cell('Walls', 'A2')).value).toBe('S-1 upper');
  expect((await cell('Estimate 2', 'B3')).formula).toBe('=WASH.WATER(Walls2[#All],,Factors2[#All])');
});

it('walls under headings of somebody else are matched, looked over, corrected and used', async () => {
  ({ page } = await tests.open(FOREIGN, { width: 320 }));
  await page.evaluate(() => {
    globalThis.testWorkbook.select({ sheet: 'Take off', address: 'A3:G5' });
  });
  await page.getByRole('button', { name: 'Use selected cells' }).click();
  const chosen = (name: string) =>
    page.getByLabel(name, { exact: true }).evaluate((select) => {
      const { selectedOptions } = select as HTMLSelectElement;
      return selectedOptions[0]?.textContent;
    });
  await expect.poll(() => chosen('Wall needed')).toBe('Mark');
  expect(await chosen('Material needed')).toBe('Masonry');
  expect(await chosen('Area needed')).toBe('Gross area (sf)');
  expect(await chosen('Height')).toBe('Ht.');
  expect(await chosen('Level')).toBe('Floor');
  expect(await chosen('Age')).toBe('not here');
  await page.getByLabel('Zone', { exact: true }).selectOption('Elevation side');
  await page.getByText('2 walls in 2 zones can be read.').waitFor();
  await picture(page, 'match-headings');
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
  await page.getByRole('button', { name: 'Use these walls' }).click();
  await page.getByRole('status').getByText('Written.').waitFor();
  expect((await cell('Headings', 'A2')).value).toBe('Wall');
  expect((await cell('Headings', 'B2')).value).toBe('Mark');
  const kept = await page.evaluate(() => globalThis.testWorkbook.readPart('source'));
  expect(JSON.parse(kept ?? '')).toEqual({
    walls: { sheet: 'Take off', address: 'A3:G5' },
    factors: { table: 'Factors' },
    headings: { table: 'Headings' },
  });
  for (const tab of ['Steps', 'Cautions', 'Set up'] as const) {
    await page.getByRole('tab', { name: tab }).click();
    await page.getByRole('tabpanel', { name: tab }).getByRole('heading', { level: 2 }).waitFor();
    expect(await page.locator('[role=tabpanel] img, [role=tabpanel] script').count()).toBe(0);
  }
  await page.getByRole('tab', { name: 'Steps' }).click();
  await page.getByLabel('Zone', { exact: true }).last().selectOption(HOSTILE.zone);
  const steps = page.getByRole('tabpanel', { name: 'Steps' });
  await steps.getByText(HOSTILE.image).locator('visible=true').first().waitFor();
  await picture(page, 'hostile-labels');
  expect(await overflow(page)).toBe(0);
});

it('what cannot be read is named with its cell', async () => {
  ({ page } = await tests.open({
    sheets: {
      Walls: [
        ['Wall', 'Material', 'Area'],
        ['A', 'Red clay brick', 100],
        ['B', 'Red clay brick', 'much'],
      ],
    },
    tables: [{ name: 'Walls', sheet: 'Walls', address: 'A1:C3' }],
  }));
  await page.getByLabel('Table of the walls').selectOption('Walls');
  await page.getByText('Row 3 (B), column Area: "much" cannot be used.').waitFor();
  await page.getByRole('button', { name: 'Go to C3' }).click();
  await page.getByRole('status').getByText('Walls, C3 is selected.').waitFor();
  expect(await page.evaluate(() => globalThis.testWorkbook.wentTo)).toEqual({
    sheet: 'Walls',
    address: 'C3',
  });
});

const SOURCE = {
  ...BID,
  parts: { source: JSON.stringify({ walls: { table: 'Walls' }, factors: { table: 'Factors' } }) },
};

it('a filled cell is not overwritten before the user has said so', async () => {
  ({ page } = await tests.open(SOURCE, { width: 320 }));
  await page.getByLabel('What').selectOption('TAPE');
  await page.getByLabel('Zone', { exact: true }).selectOption('a row for each zone');
  await page.getByLabel('Top left cell').fill('Estimate!D2');
  await page.getByRole('button', { name: 'Insert', exact: true }).click();
  await page.getByText('2 cells are filled').waitFor();
  await page.getByText('Estimate!D2, Estimate!D3').waitFor();
  await picture(page, 'ask-before-overwriting');
  await expect.poll(focused).toBe('2 cells are filled');
  const before = await cell('Estimate', 'D2');
  await page.getByRole('button', { name: 'Leave them' }).click();
  expect(await cell('Estimate', 'D2')).toEqual(before);
  await page.getByRole('button', { name: 'Insert', exact: true }).click();
  await page.getByRole('button', { name: 'Overwrite them' }).click();
  await page.getByRole('status').getByText('2 rows at Estimate!D2.').waitFor();
  expect((await cell('Estimate', 'D2')).value).toBe('South');
  expect((await cell('Estimate', 'E3')).formula).toBe('=WASH.TAPE(Walls[#All],$D3,Factors[#All])');
});

it('a result that would run into filled cells is not put in', async () => {
  ({ page } = await tests.open(SOURCE));
  await page.getByLabel('What').selectOption('SCHEDULE');
  await page.getByLabel('Top left cell').fill('Walls!L5');
  await page.getByRole('button', { name: 'Insert', exact: true }).click();
  await page.getByRole('status').getByText('1 formula at Walls!L5.').waitFor();
  await page.getByLabel('Top left cell').fill('Walls!L4');
  await page.getByRole('button', { name: 'Insert', exact: true }).click();
  await page.getByRole('status').getByText('are filled. Choose another cell.').waitFor();
  expect(await cell('Walls', 'L4')).toEqual({ value: '' });
});

it('a workbook that keeps nothing is offered a sheet for it', async () => {
  ({ page } = await tests.open({ sheets: { Sheet1: [] }, keepsParts: false }, { width: 320 }));
  await page.getByRole('button', { name: 'Add the sheets' }).click();
  await page.getByText('does not save where its wall table is').waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Add the sheet', exact: true }).click();
  await page.getByRole('status').getByText('Saved on the sheet Washdown notes.').waitFor();
  expect((await cell('Washdown notes', 'A2')).value).toBe('source');
});

it('a page to send and a day plan are added as sheets, and follow the walls', async () => {
  ({ page } = await tests.open(SOURCE, { width: 320 }));
  await page.getByRole('button', { name: 'Add the bid page' }).click();
  await page.getByRole('status').getByText('Sheet Bid page: the page to send.').waitFor();
  await picture(page, 'pages-to-send');
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
  expect((await cell('Bid page', 'A3')).formula).toBe('=WASH.BIDPAGE(Walls[#All],,Factors[#All])');
  // 1,200 and 980 of red brick, nothing taken off.
  expect((await cell('Bid page', 'B3')).value).toContain('South: wash 2,180 ft² of red clay brick');
  await page.evaluate(() => {
    globalThis.testWorkbook.type({ sheet: 'Walls', address: 'E2' }, 1000);
  });
  expect((await cell('Bid page', 'B3')).value).toContain('South: wash 1,980 ft² of red clay brick');
  await page.getByRole('button', { name: 'Add the day plan' }).click();
  await page.getByRole('status').getByText('Sheet Day plan: what is done').waitFor();
  expect([(await cell('Day plan', 'A2')).value, (await cell('Day plan', 'B2')).value]).toEqual([1, 'South']);
  // From the top down, each wall of the zone on a day of its own or with others.
  const days = await page.evaluate(() =>
    globalThis.testWorkbook.readRange({ sheet: 'Day plan', address: 'B2:C40' }),
  );
  const south = days.filter(([zone]) => zone === 'South').map(([, walls]) => String(walls));
  expect(south[0]).toContain('S-1 upper');
  const order = ['S-1 upper', 'S-2 lower', 'S-3 base'].map((wall) =>
    south.findIndex((walls) => walls.includes(wall)),
  );
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(order).not.toContain(-1);
});

/** A bid with titles over merged cells, an elevation that stands once for its walls, a subtotal and a total. */
const UNDER_TITLES = {
  sheets: {
    Bid: [
      ['BID 417', '', '', '', ''],
      ['Facade wash-down', '', 'Date', 'Nov 3', ''],
      [],
      ['Elevation', 'Mark', 'Type', 'Qty SF', 'Crew note'],
      ['North', 'N-1', 'Split-face CMU', 900, ''],
      ['North', 'N-2', 'Buff brick', 400, 'x'],
      ['Subtotal', '', '', 1300, ''],
      ['South', 'S-1', 'Fieldstuff', 700, ''],
      ['TOTAL', '', '', 2000, ''],
      ['Prices are firm for 30 days'],
    ],
  },
};

it('walls below titles are found, and read again after each correction and each change of a cell', async () => {
  ({ page } = await tests.open(UNDER_TITLES, { width: 320 }));
  await page.getByRole('button', { name: 'Use this sheet' }).click();
  await page.getByText('Formulas name them Bid!$A$4:$E$8.').waitFor();
  await page.getByText('Rows 1 to 3 above the headings are left alone.').waitFor();
  await page.getByText('Row 9 (“TOTAL”) and what is below it are left out.').waitFor();
  const refused = page.getByRole('region', { name: 'What cannot be read' });
  const read = page.getByText('can be read.');
  // The subtotal has no mark, and the last wall a material that nobody knows.
  await refused
    .getByText('Row 7 of the sheet, column Wall: "Subtotal", which would count its walls twice')
    .waitFor();
  await refused.getByText('"Fieldstuff" cannot be used.').waitFor();
  await page.getByText('Not used: Crew note.').waitFor();
  await picture(page, 'walls-below-titles');
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
  await page.getByLabel('Last row of the walls').fill('6');
  await page.keyboard.press('Tab');
  await page.getByText('Row 7 (“Subtotal”) and what is below it are left out.').waitFor();
  await page.getByText('2 walls in 1 zone can be read.').waitFor();
  expect(await refused.count()).toBe(0);
  await page.getByLabel('Material needed').selectOption('not here');
  await refused.getByText('No heading is matched to Material, which every wall needs.').waitFor();
  expect(await read.count()).toBe(0);
  await page.getByLabel('Material needed').selectOption('Type');
  await read.waitFor();
  await page.evaluate(() => {
    globalThis.testWorkbook.type({ sheet: 'Bid', address: 'D5' }, 'much');
  });
  await refused.getByText('"much" cannot be used').waitFor();
  expect(await read.count()).toBe(0);
  await page.evaluate(() => {
    globalThis.testWorkbook.type({ sheet: 'Bid', address: 'D5' }, 950);
  });
  await read.waitFor();
  expect(await refused.count()).toBe(0);
  await page.getByRole('button', { name: 'Use these walls' }).click();
  await page.getByRole('status').getByText('Written.').waitFor();
  const headings = await page.evaluate(() => globalThis.testWorkbook.readTable('Headings'));
  expect(headings.slice(1)).toEqual([
    ['Wall', 'Mark'],
    ['Zone', 'Elevation'],
    ['Material', 'Type'],
    ['Area', 'Qty SF'],
  ]);
});

it('own rates go from the form into the table, and nothing that stands there is lost unasked', async () => {
  ({ page } = await tests.open(SOURCE, { width: 320 }));
  const written = () => page.evaluate(() => globalThis.testWorkbook.readTable('Factors'));
  await page.getByText('Factors', { exact: true }).click();
  await page.getByText('The table has two columns: there is none for notes.').waitFor();
  const size = page.getByLabel('team.size', { exact: true });
  expect(await size.inputValue()).toBe('3');
  await page.getByText('Starting value: 2 people. Minimum 1, maximum 20 people.').waitFor();
  await size.fill('30');
  await page.getByText('30 cannot be used. Accepted: a whole number from 1 to 20 people.').waitFor();
  await picture(page, 'factor-form');
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
  await page.getByRole('button', { name: 'Write 1 change' }).click();
  await page.getByRole('status').getByText('Nothing was written. team.size: 30 cannot be used.').waitFor();
  await size.fill('4');
  await page.getByText('Markups, minimum price and price range').click();
  await page.getByLabel('price.overhead', { exact: true }).fill('12%');
  await page.getByRole('button', { name: 'Write 2 changes' }).click();
  const question = page.getByRole('region', { name: 'Values are changed' });
  await question.getByText('team.size: 3 → 4').waitFor();
  expect((await written()).slice(1)).toEqual([
    ['units', 'US'],
    ['team.size', 3],
  ]);
  await question.getByRole('button', { name: 'Change them' }).click();
  await page.getByRole('status').getByText('Written.').waitFor();
  expect((await written()).slice(1)).toEqual([
    ['units', 'US'],
    ['team.size', 4],
    ['price.overhead', 12],
  ]);
  await expect.poll(() => size.inputValue()).toBe('4');
});

it('what is inserted has its unit, its words and a format of its own, and says why it is in error', async () => {
  ({ page } = await tests.open(SOURCE, { width: 320 }));
  await page.getByLabel('What').selectOption('CLASS');
  await page.getByText('its words go beside it').waitFor();
  await page.getByLabel('Zone', { exact: true }).selectOption('a row for each zone');
  await page.getByLabel('Top left cell').fill('Wash page!A2');
  await page.getByRole('button', { name: 'Insert', exact: true }).click();
  await page.getByText('The sheet Wash page is added.').first().waitFor();
  const row = [await cell('Wash page', 'A2'), await cell('Wash page', 'B2'), await cell('Wash page', 'C2')];
  // Limestone bears class 1, a neutral detergent.
  expect(row.map(({ value }) => value)).toEqual(['South', 1, 'neutral detergent']);
  await page.getByLabel('What').selectOption('BIDPRICE');
  await page.getByText('In your money.').waitFor();
  await page.getByLabel('Zone', { exact: true }).selectOption('the whole job');
  await page.getByLabel('Top left cell').fill('Wash page!E2');
  await page.getByRole('button', { name: 'Insert', exact: true }).click();
  const report = page.getByRole('group', { name: 'Written' });
  await report.getByText('E2 is an error, #VALUE!. The price of labor is not given.').waitFor();
  await picture(page, 'inserted-in-error');
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
});
