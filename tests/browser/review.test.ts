import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { BID, HOSTILE } from './bid';
import { PaneTests, picture, violations, type PlainContents } from './pane';

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

async function review(contents: PlainContents): Promise<void> {
  ({ page } = await tests.open(contents));
  await page.getByRole('tab', { name: 'Review' }).click();
  await page.getByRole('button', { name: 'Review the workbook' }).click();
}

const cell = (sheet: string, address: string) =>
  page.evaluate((place) => globalThis.testWorkbook.cell(place), { sheet, address });

/** The cells and sentences listed under a heading. */
async function listed(heading: RegExp): Promise<string[]> {
  const section = page.locator('section', { has: page.getByRole('heading', { name: heading }) });
  return section
    .locator('li')
    .evaluateAll((items) =>
      items.map(
        (item) =>
          `${item.querySelector('button')?.textContent ?? ''} ${item.querySelector('p')?.textContent ?? ''}`,
      ),
    );
}

it('what was typed over, out of date, wrong or not followed is listed, and each goes to its cell', async () => {
  await review(BID);
  await page.getByRole('heading', { name: 'Typed over (1)' }).waitFor();
  expect(await listed(/^Typed over/)).toEqual(['Estimate!B3 Holds 400 where a formula belongs.']);
  const [outOfDate] = await listed(/^Out of date/);
  expect(outOfDate).toMatch(/^Estimate!C2 Shows 1\.25; the formula gives \d/);
  expect(await listed(/^Shows an error/)).toHaveLength(1);
  expect(await listed(/^Not checked/)).toEqual([
    'Estimate!B6 Not checked: it uses OFFSET, which Review does not work out.',
  ]);
  expect(await listed(/^Values of your own/)).toEqual([
    'Factors!B3 team.size is 3 people; the starting value is 2 people.',
  ]);
  await page.getByRole('button', { name: 'Estimate!B3' }).click();
  await page.getByRole('status').getByText('Estimate, B3 is selected.').waitFor();
  expect(await page.evaluate(() => globalThis.testWorkbook.wentTo)).toEqual({
    sheet: 'Estimate',
    address: 'B3',
  });
});

it('one wrong material is one finding at its cell, with the cells in error because of it', async () => {
  const sheets = {
    ...BID.sheets,
    Walls: (BID.sheets['Walls'] ?? []).map((line) =>
      line.map((shown) => (shown === 'Limestone' ? 'Lime stome' : shown)),
    ),
  };
  await review({ sheets, tables: BID.tables ?? [] });
  await page.getByRole('heading', { name: /^Shows an error \(1\) high severity/ }).waitFor();
  const section = page.locator('section', { has: page.getByRole('heading', { name: /^Shows an error/ }) });
  await section.getByText('"Lime stome" cannot be used').waitFor();
  // Nine formulas but for the typed-over one, and the zone that there is not.
  await section.getByText('9 cells show an error because of it').click();
  await section.getByRole('button', { name: 'Estimate!C3' }).click();
  await page.getByRole('status').getByText('Estimate, C3 is selected.').waitFor();
  expect(await violations(page)).toEqual([]);
  await section.scrollIntoViewIfNeeded();
  await picture(page, 'review-one-cause');
});

it('a review goes onto a dated sheet, its texts as texts', async () => {
  const sheets = { ...BID.sheets, Estimate: [[HOSTILE.zone, `=WASH.WATER(Walls[#All],$A1)`]] };
  const { tables } = BID;
  await review({ sheets, tables: tables ?? [] });
  await page.getByText('No wall is in the zone').first().waitFor();
  expect(await page.locator('[role=tabpanel] script').count()).toBe(0);
  await page.getByRole('button', { name: 'Copy to a new sheet' }).click();
  await page.getByRole('status').getByText('The review is on the sheet Washdown review.').waitFor();
  expect(await cell('Washdown review', 'A1')).toEqual({ value: 'Washdown review' });
  expect(String((await cell('Washdown review', 'B1')).value)).toMatch(/\d{4}/);
  const formula = await cell('Washdown review', 'F6');
  expect(formula).toEqual({ value: '=WASH.WATER(Walls[#All],$A1)' });
});

it('what was typed over is known from the last review, until it is accepted', async () => {
  const sheets = { ...BID.sheets, Estimate: [['South', '=WASH.WATER(Walls[#All],$A1)']] };
  await review({ sheets, tables: BID.tables ?? [] });
  await page.getByRole('status').getByText('1 of 1 formula shows what it should').waitFor();
  await page.evaluate(() => {
    globalThis.testWorkbook.type({ sheet: 'Estimate', address: 'B1' }, 1000);
  });
  for (let times = 0; times < 2; times++) {
    await page.getByRole('button', { name: 'Review again' }).click();
    await page.getByText('Holds 1000 where a formula belongs.').waitFor();
  }
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Accept the cells as they are' }).click();
  await page.getByRole('status').getByText('Accepted').waitFor();
  await page.getByRole('button', { name: 'Review again' }).click();
  await page.getByRole('status').getByText('There is no Washdown formula').waitFor();
  await expect.poll(() => page.getByText('Holds 1000').count()).toBe(0);
});

it('5,000 formulas are reviewed with progress, and can be stopped', async () => {
  const zones = ['South', 'North'];
  const rows = Array.from({ length: 1000 }, (_, index) => {
    const row = String(index + 1);
    const zone = zones[index % 2] ?? '';
    const calls = ['WATER', 'TAPE', 'MASKING', 'CREWHOURS', 'CLEANER'];
    return [zone, ...calls.map((name) => `=WASH.${name}(Walls[#All],$A${row},Factors[#All])`)];
  });
  ({ page } = await tests.open({
    ...BID,
    sheets: { ...BID.sheets, Estimate: rows },
    shows: {},
    worksOut: false,
  }));
  await page.getByRole('tab', { name: 'Review' }).click();
  const button = page.getByRole('button', { name: 'Review the workbook' });
  await button.evaluate((start: HTMLButtonElement) => {
    // Stops as soon as there is something to stop, however fast the machine is.
    new MutationObserver((_, observer) => {
      if (start.textContent !== 'Stop') return;
      observer.disconnect();
      start.click();
    }).observe(start, { childList: true, characterData: true, subtree: true });
  });
  await button.click();
  await page.getByRole('status').getByText('The review was stopped.').waitFor();
  expect(await page.getByRole('progressbar').count()).toBe(0);
  await button.focus();
  await page.keyboard.press('Enter');
  // The focus has not gone away.
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.textContent))
    .toMatch(/^(Stop|Review again)$/);
  // Nothing has worked these formulas out: each is listed.
  await page.getByRole('heading', { name: 'Shows an error (5000)' }).waitFor();
  expect(await listed(/^Shows an error/)).toHaveLength(25);
  await page.getByRole('button', { name: 'Show 25 more' }).first().click();
  await expect.poll(() => listed(/^Shows an error/)).toHaveLength(50);
  await picture(page, 'review-5000');
});

it('in a copy the formulas become values, after it was asked whether this is the copy', async () => {
  const sheets = { ...BID.sheets, Estimate: [['South', '=WASH.TAPE(Walls[#All],$A1)', '=B1*2']] };
  ({ page } = await tests.open({ sheets, tables: BID.tables ?? [], calculatesByHand: true }));
  await page.getByRole('tab', { name: 'Review' }).click();
  const shown = await cell('Estimate', 'B1');
  await page.getByRole('button', { name: 'Replace formulas by values' }).click();
  await page.getByText('To be replaced by plain values: 1 formula on Estimate.').waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Replace them' }).click();
  await page.getByRole('status').getByText('1 formula replaced by values.').waitFor();
  expect(shown.formula).toBe('=WASH.TAPE(Walls[#All],$A1)');
  expect(await cell('Estimate', 'B1')).toEqual({ value: shown.value });
  expect((await cell('Estimate', 'C1')).formula).toBe('=B1*2');
  await page.getByRole('button', { name: 'Review the workbook' }).click();
  await page.getByText('This workbook is set to manual calculation').waitFor();
});
