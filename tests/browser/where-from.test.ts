import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { BID } from './bid';
import { overflow, PaneTests, picture, violations, type Look, type PlainContents } from './pane';

let tests: PaneTests;
let page: Page;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterEach(() => page.context().close());
afterAll(() => tests.stop());

const PRICED: PlainContents = {
  ...BID,
  sheets: {
    ...BID.sheets,
    Factors: [...(BID.sheets['Factors'] ?? []), ['price.labor', 58], ['price.profit', 8], ['mask.lap', 8]],
    Estimate: [
      ['South', '=WASH.LABORHOURS(Walls[#All],$A1,Factors[#All])'],
      ['Total', 100],
    ],
  },
  tables: [
    { name: 'Walls', sheet: 'Walls', address: 'A1:J6' },
    { name: 'Factors', sheet: 'Factors', address: 'A1:B6' },
  ],
  parts: { source: JSON.stringify({ walls: { table: 'Walls' }, factors: { table: 'Factors' } }) },
  shows: {},
};

async function open(look?: Look): Promise<void> {
  ({ page } = await tests.open(PRICED, look));
  await page.getByRole('tab', { name: 'Review' }).click();
  await page.getByRole('heading', { name: 'Where a number comes from' }).waitFor();
}

const branch = (name: RegExp | string) => page.locator('.tree summary').filter({ hasText: name }).first();
const amount = async (name: RegExp): Promise<number> =>
  Number((await branch(name).locator('.number').innerText()).replace(/[^\d.]/g, ''));

it('the price of the job opens into zones, parts, tasks, walls and factors, and a leaf goes to its cell', async () => {
  await open({ width: 320 });
  await page.getByRole('button', { name: 'Show where it comes from' }).click();
  await page.getByRole('heading', { name: 'Bid price of the whole job' }).waitFor();
  const [job, south, north] = [await amount(/^bid price/), await amount(/^South/), await amount(/^North/)];
  expect(south).toBeGreaterThan(0);
  expect(south + north).toBeCloseTo(job, 1);
  await branch(/^South/).click();
  // With the keyboard alone.
  await branch(/^Labor price/).focus();
  await page.keyboard.press('Enter');
  await page.getByText('= Labor-hours × price.labor').waitFor();
  expect(await amount(/^Labor price/)).toBeCloseTo((await amount(/^Labor-hours/)) * 58, 0);
  await page.getByRole('button', { name: 'Factors!B4' }).click();
  await page.getByRole('status').getByText('Factors, B4 is selected.').waitFor();
  await branch(/^Labor-hours/).click();
  await branch(/^Scrub hours/).click();
  await branch(/^S-2 lower/).click();
  await branch(/^net area/).click();
  await page.getByRole('button', { name: 'Walls!E3' }).click();
  await page.getByRole('status').getByText('Walls, E3 is selected.').waitFor();
  expect(await overflow(page)).toBe(0);
  expect(await violations(page)).toEqual([]);
  await page.getByRole('heading', { name: 'Where a number comes from' }).scrollIntoViewIfNeeded();
  await picture(page, 'where-from-320');
});

it('a source opens with its title, edition and address', async () => {
  await open({ colorScheme: 'dark' });
  await page.getByLabel('Number', { exact: true }).selectOption('time to dry');
  await page.getByRole('button', { name: 'Show where it comes from' }).click();
  await branch(/^evaporation/).click();
  const source = page.locator('.reason', { hasText: 'ACI 305R' }).first();
  await source.locator('summary').click();
  await source.getByText('Edition').waitFor();
  expect(await violations(page)).toEqual([]);
  await picture(page, 'where-from-dark');
});

it('the selected cell is the number that is shown; a cell without a Washdown formula says so', async () => {
  await open();
  await page.evaluate(() => {
    globalThis.testWorkbook.select({ sheet: 'Estimate', address: 'B1' });
  });
  await page.getByRole('button', { name: 'Use the selected cell' }).click();
  await page.getByRole('heading', { name: 'Labor-hours of South' }).waitFor();
  await page
    .getByText('=WASH.TRACE("labor-hours",Walls!$A$1:$J$6,"South",Factors!$A$1:$B$6)', { exact: true })
    .waitFor();
  const shown = await page.evaluate(
    () => globalThis.testWorkbook.cell({ sheet: 'Estimate', address: 'B1' }).value,
  );
  expect(await amount(/^Labor-hours/)).toBeCloseTo(Number(shown), 1);
  await page.evaluate(() => {
    globalThis.testWorkbook.select({ sheet: 'Estimate', address: 'B2' });
  });
  await page.getByRole('button', { name: 'Use the selected cell' }).click();
  await page.getByRole('status').getByText('There is no Washdown formula in Estimate!B2.').waitFor();
});

it('a cell in error says which input is to blame, and goes there', async () => {
  const walls = (BID.sheets['Walls'] ?? []).map((line) =>
    line.map((shown) => (shown === 'Limestone' ? 'Lime stome' : shown)),
  );
  ({ page } = await tests.open({
    ...PRICED,
    sheets: { ...PRICED.sheets, Walls: walls, Bid: [['Wash-down', '=Estimate!B1*2']] },
    shows: { 'Bid!B1': '#VALUE!' },
  }));
  await page.getByRole('tab', { name: 'Review' }).click();
  await page.evaluate(() => {
    globalThis.testWorkbook.select({ sheet: 'Bid', address: 'B1' });
  });
  await page.getByRole('button', { name: 'Use the selected cell' }).click();
  await page.locator('.notice', { hasText: 'Bid!B1 is in error because of Estimate!B1:' }).waitFor();
  await page.getByRole('button', { name: 'Walls!D4' }).click();
  await page.getByRole('status').getByText('Walls, D4 is selected.').waitFor();
});
