import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { NOTES_SHEET } from '../../taskpane/shared/kept-text';
import type { CellContent } from '../../taskpane/workbook/port';
import { overflow, PaneTests, picture, SCREENS, violations, type Look, type PlainContents } from './pane';
import { cellsOf, keptSteps, showPanel, typeWall } from './site';

let tests: PaneTests;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterAll(() => tests.stop());

type Rows = readonly (readonly CellContent[])[];

const wall = (label: string, zone: string, area: number): CellContent[] => [
  ...[label, zone, 'Red clay brick', area, 10, 'N', 'light', 14],
];
const WALLS: Rows = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Mortar', 'Residue', 'Age'],
  wall('N-1', 'North', 100),
  wall('N-2', 'North', 400),
  wall('N-3', 'North', 900),
  wall('N-4', 'North', 1000),
  wall('S-1', 'South', 600),
];
const FACTORS: Rows = [
  ['Factor', 'Value', 'Note'],
  ['units', 'US', ''],
  ['sample.area', 20, ''],
  ['price.labor', 50, ''],
  ['rate.scrape.light', 60, 'first bid'],
];
const RATE_CELLS = 'A5:C5';
const HOURS_OF_SCRAPING = '=WASH.LABORHOURS(Walls[#All],"North",Factors[#All],"scrape")';
const HEADINGS = ['Date', 'Zone', 'Wall', 'Task', 'Area', 'Hours', 'Water', 'Cleaner', 'Note'];

interface Tables {
  readonly factors?: Rows;
  readonly actuals?: Rows;
  /** Our column and the heading here. */
  readonly headings?: Rows;
}

function book({ factors = FACTORS, actuals, headings }: Tables = {}): PlainContents {
  const source = {
    walls: { table: 'Walls' },
    factors: { table: 'Factors' },
    ...(headings ? { headings: { table: 'Headings' } } : {}),
  };
  const width = (rows: Rows) => String.fromCharCode('A'.charCodeAt(0) + (rows[0]?.length ?? 1) - 1);
  const place = (name: string, rows: Rows) => ({
    name,
    sheet: name,
    address: `A1:${width(rows)}${String(rows.length)}`,
  });
  return {
    sheets: {
      Walls: WALLS,
      Factors: factors,
      Estimate: [
        ['Hours of scraping, North', HOURS_OF_SCRAPING],
        ['Hours of the job', '=WASH.LABORHOURS(Walls[#All],,Factors[#All])'],
        ['Price of the job', '=WASH.BIDPRICE(Walls[#All],,Factors[#All])'],
      ],
      ...(actuals ? { Actuals: actuals } : {}),
      ...(headings ? { Headings: headings } : {}),
      [NOTES_SHEET]: [
        ['Kept for', 'Text'],
        ['source', JSON.stringify(source)],
      ],
    },
    tables: [
      place('Walls', WALLS),
      place('Factors', factors),
      ...(actuals ? [place('Actuals', actuals)] : []),
      ...(headings ? [place('Headings', headings)] : []),
    ],
  };
}

// 3 May 2026 as the spreadsheet counts.
const THIRD_OF_MAY = 46_145;

async function open(contents: PlainContents = book(), look: Look = {}): Promise<Page> {
  const { page } = await tests.open(contents, { width: 320, ...look });
  await page.clock.setFixedTime(new Date('2026-05-03T12:00:00'));
  await showPanel(page, 'Steps');
  return page;
}

const said = (page: Page, text: string | RegExp) => page.getByRole('status').getByText(text).waitFor();
const press = (page: Page, button: string) => page.getByRole('button', { name: button, exact: true }).click();
const tick = (page: Page, title: string) => page.getByRole('checkbox', { name: `Done: ${title}` });
const step = (page: Page, title: string) => page.locator('.step').filter({ has: tick(page, title) });
const form = (page: Page) => page.getByRole('form', { name: 'Record this work?' });
const sheets = (page: Page) => page.evaluate(() => globalThis.testWorkbook.sheets());
const estimate = async (page: Page) =>
  (await cellsOf(page, 'Estimate', 'B1:B3')).map(([value]) => Number(value)) as [number, number, number];

/** Ticks steps; what they offer to be recorded is not wanted. */
async function pass(page: Page, ...titles: string[]): Promise<void> {
  await page.getByLabel('Your name').fill('R. Mason');
  for (const title of titles) {
    await tick(page, title).click();
    await step(page, title).getByText('✓ Done.').waitFor();
  }
}

const openProgress = (page: Page) =>
  page.getByRole('button', { name: 'Progress against the estimate' }).click();
const task = (page: Page, name: string) =>
  page.locator('.task-list li').filter({ has: page.getByText(name, { exact: true }) });

/** Fills the form that is offered, and records it. */
async function record(page: Page, { wall: label, hours }: { wall: string; hours: string }): Promise<void> {
  await form(page).getByLabel('Zone or wall').selectOption(label);
  await form(page).getByLabel('Labor-hours').fill(hours);
  await press(page, 'Record');
  await said(page, 'Recorded in');
}

async function openRates(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Review' }).click();
  await page.getByRole('button', { name: 'Rates from recorded work' }).click();
}

describe('price, wash, learn', () => {
  it('what is recorded on the walls gives rates, and the rates move the estimate of what remains', async () => {
    const page = await open();
    // 2,400 ft2 at 60 ft2 a net labor-hour, 50 of 60 minutes net.
    const [scraping, hours, price] = await estimate(page);
    expect(scraping).toBeCloseTo(48, 9);
    // Each zone is billed in whole cents.
    expect(price).toBeCloseTo(50 * hours, 1);
    await page.getByRole('tab', { name: 'Review' }).click();
    await page.getByRole('button', { name: 'Baseline and changes' }).click();
    await press(page, 'Save baseline');
    await said(page, 'Written.');
    const baseline = (await sheets(page)).find((name) => name.startsWith('Baseline')) ?? '';
    const kept = await cellsOf(page, baseline, 'A1:H6');
    expect(kept).toEqual(WALLS);

    await page.getByRole('tab', { name: 'Steps' }).click();
    await pass(page, 'Age of the wall', 'Sample area', 'Protection up', 'Scrape and brush');
    // What nobody has measured is not offered as measured.
    await expect.poll(() => form(page).getByLabel('Area').inputValue()).toBe('2400');
    expect(await form(page).getByLabel('Labor-hours').inputValue()).toBe('');
    await form(page)
      .getByText('The estimate has 48 labor-hours for the 2400 ft² that are not recorded yet.')
      .waitFor();
    expect(await sheets(page)).not.toContain('Actuals');
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    await picture(page, 'actuals-offer-light');
    await form(page).getByLabel('Zone or wall').selectOption('N-1');
    expect(await form(page).getByLabel('Area').inputValue()).toBe('100');
    // Net 2, 12 and 22.5 hours on 100, 400 and 900 ft2: a known answer of the core.
    await record(page, { wall: 'N-1', hours: '2.4' });
    await said(page, 'Recorded in the new table Actuals on the sheet Actuals.');

    await openProgress(page);
    await task(page, 'Scrape').getByText('4%: 100 ft² of 2400 ft², 46 of 48 labor-hours left').waitFor();
    for (const [label, booked] of [
      ['N-2', '14.4'],
      ['N-3', '27'],
    ] as const) {
      await press(page, 'Record other work');
      await record(page, { wall: label, hours: booked });
    }
    // 1,400 of 2,400 ft2 earn 28 of 48 hours; 2.4 + 14.4 + 27 = 43.8 are worked. 28 / 43.8 = 0.639.
    const line = task(page, 'Scrape');
    await line.getByText('58%: 1400 ft² of 2400 ft², 20 of 48 labor-hours left').waitFor();
    await line.getByText('Behind plan: 28 planned hours earned for 43.8 worked, index 0.64.').waitFor();
    const lines = await cellsOf(page, 'Actuals', 'A1:I4');
    expect(lines).toEqual([
      HEADINGS,
      [THIRD_OF_MAY, 'North', 'N-1', 'scrape', 100, 2.4, '', '', ''],
      [THIRD_OF_MAY, 'North', 'N-2', 'scrape', 400, 14.4, '', '', ''],
      [THIRD_OF_MAY, 'North', 'N-3', 'scrape', 900, 27, '', '', ''],
    ]);

    await openRates(page);
    const rate = page.locator('.rate').filter({ hasText: 'rate.scrape.light' });
    await rate.getByText('1400 ft² in 43.8 labor-hours').waitFor();
    // Unit times of 0.0198293 (0.0159693 to 0.0246224) h/ft2, weight 0.354839; 1,400 ft2 by 36.5 net hours.
    const facts = (await rate.locator('dl > div').allInnerTexts()).map((text) => text.replace(/\s+/g, ' '));
    expect(facts).toEqual([
      '3 entries 1400 ft² in 43.8 labor-hours',
      'Stated value 60 ft²/labor-h',
      'From the entries alone 38.36 ft²/labor-h',
      'Blended 50.43 ft²/labor-h',
      'Its 80% range 40.61 to 62.62 ft²/labor-h',
      'Weight of the entries 35%',
    ]);
    await press(page, 'Use these rates');
    await said(page, 'Tick the rates that you want to use first.');
    await rate.getByRole('checkbox').check();
    await press(page, 'Use these rates');
    await page
      .getByText(
        'rate.scrape.light: 60 ft²/labor-h, noted “first bid” → 50.43 ft²/labor-h, noted “from 3 entries to May 3, 2026”',
      )
      .waitFor();
    expect(await cellsOf(page, 'Factors', RATE_CELLS)).toEqual([['rate.scrape.light', 60, 'first bid']]);
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    await picture(page, 'actuals-rates-light');
    await press(page, 'Write them');
    await said(page, 'Written. rate.scrape.light is 50.43 now');
    expect(await cellsOf(page, 'Factors', RATE_CELLS)).toEqual([
      ['rate.scrape.light', 50.43, 'from 3 entries to May 3, 2026'],
    ]);
    await rate.getByText('would count them twice').waitFor();

    // 2,400 ft2 / 50.43 ft2 a net hour / (50/60) = 57.109; the 1,000 ft2 that remain 23.795, 20 before.
    const after = await estimate(page);
    expect(after[0]).toBeCloseTo((2400 / 50.43) * (60 / 50), 9);
    expect(after[2]).toBeCloseTo(50 * after[1], 1);
    // South has 600 ft2 more to scrape.
    expect(after[1] - hours).toBeGreaterThan((3000 / 50.43 - 3000 / 60) * (60 / 50));
    await page.getByRole('tab', { name: 'Steps' }).click();
    await line.getByText('58%: 1400 ft² of 2400 ft², 23.8 of 57.1 labor-hours left').waitFor();
    expect(await cellsOf(page, baseline, 'A1:H6')).toEqual(kept);
  });

  it('writes over no value that has changed since it was shown', async () => {
    const actuals = [HEADINGS, [THIRD_OF_MAY, 'North', '', 'scrape', 2400, 60, '', '', '']];
    const page = await open(book({ actuals }));
    await openRates(page);
    await page.locator('.rate').getByRole('checkbox').check();
    await press(page, 'Use these rates');
    await page.getByText('rate.scrape.light: 60 ft²/labor-h, noted “first bid” → ').waitFor();
    await page.evaluate(() => {
      globalThis.testWorkbook.type({ sheet: 'Factors', address: 'B5' }, 58);
    });
    await press(page, 'Write them');
    await said(page, 'Nothing was written: the factor table has changed since it was shown.');
    await page.getByText('rate.scrape.light: now 58 ft²/labor-h, noted “first bid” → ').waitFor();
    expect(await cellsOf(page, 'Factors', 'B5:C5')).toEqual([[58, 'first bid']]);
    await press(page, 'Leave them');
    await said(page, 'Nothing was written.');
    expect(await cellsOf(page, 'Factors', 'B5:C5')).toEqual([[58, 'first bid']]);
  });

  it('says what stands against it, and writes nothing', async () => {
    const actuals = [HEADINGS, [THIRD_OF_MAY, 'North', '', 'scrape', 2400, 60, '', '', '']];
    // 0.6 is 60 where the cell shows a percent; 50.43 would be 5043.
    const factors = FACTORS.map(([id, value, note]) => [
      id ?? '',
      id === 'rate.scrape.light' ? 0.6 : (value ?? ''),
      note ?? '',
    ]);
    const page = await open({ ...book({ factors, actuals }), formats: { 'Factors!B5': '0%' } });
    await openRates(page);
    await page.locator('.rate').getByRole('checkbox').check();
    await press(page, 'Use these rates');
    await press(page, 'Write them');
    await said(page, 'Nothing was written. The cell of rate.scrape.light shows a percent.');
    expect(await cellsOf(page, 'Factors', RATE_CELLS)).toEqual([['rate.scrape.light', 0.6, 'first bid']]);
  });

  it('a factor that the form leaves at its start is told with its starting value', async () => {
    const factors = [...FACTORS.slice(0, 3), ['rate.scrape.light', 'start', '']];
    const actuals = [HEADINGS, [THIRD_OF_MAY, 'North', '', 'scrape', 2400, 4.8, '', '', '']];
    const page = await open(book({ factors, actuals }));
    await openRates(page);
    await page.locator('.rate').getByRole('checkbox').check();
    await press(page, 'Use these rates');
    await page.getByText('rate.scrape.light: starting value 600 ft²/labor-h → ').waitFor();
  });

  it.each([
    ['of three columns gets a row with its note', 3],
    ['of two columns gets a row, and the note that it cannot keep is told', 2],
  ])('a factor table %s', async (_, columns) => {
    const factors = FACTORS.slice(0, 3).map((row) => row.slice(0, columns));
    // Hours as in the estimate show the starting value, 600 ft2 a net hour: 2,400 / 600 x 60 / 50.
    const actuals = [HEADINGS, [THIRD_OF_MAY, 'North', '', 'scrape', 2400, 4.8, '', '', '']];
    const page = await open(book({ factors, actuals }));
    await openRates(page);
    await page.locator('.rate').getByText('Starting value').waitFor();
    await page.locator('.rate').getByRole('checkbox').check();
    await press(page, 'Use these rates');
    await page.getByText('rate.scrape.light: starting value 600 ft²/labor-h, no row yet → ').waitFor();
    expect(await page.getByText('the notes are not saved').count()).toBe(columns === 2 ? 1 : 0);
    await press(page, 'Write them');
    await said(page, 'Written.');
    const [id, value, note] = (await cellsOf(page, 'Factors', 'A4:C4'))[0] ?? [];
    expect([id, note]).toEqual(['rate.scrape.light', columns === 2 ? '' : 'from 1 entry to May 3, 2026']);
    // The estimate reads the row: 2,400 ft2 at the new value.
    expect((await estimate(page))[0]).toBeCloseTo((2400 / Number(value)) * (60 / 50), 9);
  });
});

describe('work that is offered to be recorded', () => {
  it('is written only where somebody records it', async () => {
    const page = await open();
    await pass(page, 'Age of the wall', 'Sample area', 'Protection up', 'Scrape and brush', 'Pre-wet');
    expect(await form(page).count()).toBe(2);
    for (const left of [1, 0]) {
      await form(page).first().getByRole('button', { name: 'Not now' }).click();
      await said(page, 'Nothing was recorded.');
      await expect.poll(() => form(page).count()).toBe(left);
    }
    expect(await sheets(page)).not.toContain('Actuals');
    const scraped = step(page, 'Scrape and brush');
    await scraped.getByRole('button', { name: 'Scrape and brush' }).click();
    await scraped.getByLabel('Note').fill('dry');
    await press(page, 'Save the note');
    await scraped.getByText(': dry').waitFor();
    expect(await form(page).count()).toBe(0);
    // Ticked again, it is offered again; taken back, it is not.
    await tick(page, 'Pre-wet').click();
    await step(page, 'Pre-wet').getByText('Undone by R. Mason').waitFor();
    expect(await form(page).count()).toBe(0);
    await tick(page, 'Pre-wet').click();
    await form(page).waitFor();
  });

  it('goes under the headings of the user, and leaves other columns alone', async () => {
    const page = await open(
      book({
        actuals: [
          ['Shift', 'Worked', 'Work', 'Façade', 'Zone', 'When', 'Area'],
          ['early', 3, 'prewet', '', 'South', THIRD_OF_MAY - 1, 600],
        ],
        headings: [
          ['Our column', 'Heading here'],
          ['Date', 'When'],
          ['Task', 'Work'],
          ['Hours', 'Worked'],
        ],
      }),
    );
    await pass(page, 'Age of the wall', 'Sample area', 'Protection up', 'Scrape and brush');
    await form(page).getByText('It goes to the end of the table Actuals.').waitFor();
    await form(page).getByLabel('Labor-hours').fill('55');
    await press(page, 'Record');
    await said(page, 'Recorded in the table Actuals.');
    expect(await cellsOf(page, 'Actuals', 'A2:G3')).toEqual([
      ['early', 3, 'prewet', '', 'South', THIRD_OF_MAY - 1, 600],
      ['', 55, 'scrape', '', 'North', THIRD_OF_MAY, 2400],
    ]);
  });

  it('says what cannot be used, or has no column, and writes nothing', async () => {
    const actuals = [
      ['Date', 'Zone', 'Task', 'Area', 'Hours'],
      [THIRD_OF_MAY, 'South', 'prewet', 600, 1],
    ];
    const page = await open(book({ actuals }));
    await pass(page, 'Age of the wall', 'Sample area', 'Protection up', 'Scrape and brush');
    await press(page, 'Record');
    await said(page, /^Hours: .* cannot be used. Accepted: hours above 0, or water or cleaner above 0/);
    await form(page).getByLabel('Labor-hours').fill('a day');
    await press(page, 'Record');
    await said(page, /^Hours: "a day" cannot be used. Accepted: blank, or a number/);
    await form(page).getByLabel('Labor-hours').fill('55');
    await form(page).getByLabel('Note').fill('rained');
    await press(page, 'Record');
    await said(page, 'The table of the recorded work has no column Note. Add it.');
    expect(await cellsOf(page, 'Actuals', 'A3:E3')).toEqual([['', '', '', '', '']]);
  });

  it('a patch that the dwell clock has timed is its part of the wash, and gone once it is struck', async () => {
    const page = await open();
    await pass(page, 'Age of the wall');
    await press(page, 'Start: first stroke');
    await page.getByRole('timer').waitFor();
    await page.clock.setFixedTime(new Date('2026-05-03T12:09:00'));
    await press(page, 'Stop: the patch is rinsed');
    const patches = Number(/has (\d+) patches/.exec(await page.getByText('The zone has').innerText())?.[1]);
    // A team of two for 9 minutes; an equal part of the zone, to three digits and never more.
    expect(await form(page).getByLabel('Labor-hours').inputValue()).toBe('0.3');
    const area = Number(await form(page).getByLabel('Area').inputValue());
    expect(area).toBeLessThanOrEqual(2400 / patches);
    expect(area).toBeGreaterThan((2400 / patches) * 0.99);
    expect(await form(page).getByLabel('Task').inputValue()).toBe('wash');
    // A second patch is offered beside the first.
    await press(page, 'Start: first stroke');
    await page.getByRole('timer').waitFor();
    await page.clock.setFixedTime(new Date('2026-05-03T12:15:00'));
    await press(page, 'Stop: the patch is rinsed');
    await expect.poll(() => form(page).count()).toBe(2);
    expect(await form(page).nth(1).getByLabel('Labor-hours').inputValue()).toBe('0.2');
    await page.getByText('Patches timed').click();
    await page
      .getByRole('button', { name: /^Delete the patch of/ })
      .first()
      .click();
    await expect.poll(() => form(page).count()).toBe(1);
    expect(await form(page).getByLabel('Labor-hours').inputValue()).toBe('0.2');
  });

  it('recorded work that cannot be read is told with its cell, and the steps go on', async () => {
    const actuals = [HEADINGS, [THIRD_OF_MAY, 'Attic', '', 'scrape', 10, 1, '', '', '']];
    const page = await open(book({ actuals }));
    await page.getByText('The recorded work cannot be read').waitFor();
    await page.getByText(/Row 2, column Zone: "Attic" cannot be used/).waitFor();
    await pass(page, 'Age of the wall', 'Sample area', 'Protection up', 'Scrape and brush');
    expect(await form(page).count()).toBe(0);
  });
});

describe('conditions of the workbook', () => {
  it('are overruled with the name of who signs and a reason, which are kept, printed and can be withdrawn', async () => {
    const page = await open();
    await typeWall(page, 'H2', 2);
    const age = step(page, 'Age of the wall');
    await age.getByText('Too young: N-1.').first().waitFor();
    await age.getByRole('button', { name: 'Overrule this condition' }).click();
    await age.getByLabel('Name of the person who signs').fill('A. Signer');
    await press(page, 'Overrule it');
    await said(page, 'Nothing is overruled without the name of the person who signs, and a reason.');
    await age.getByLabel('Reason').fill('mortar tested');
    await press(page, 'Overrule it');
    await age
      .getByText(/^Overruled by A. Signer, May 3, 2026.*: mortar tested. The condition: Too young: N-1./)
      .waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    await pass(page, 'Age of the wall');
    await age.getByText('Overruled by A. Signer').waitFor();
    expect(JSON.parse(await keptSteps(page))).toMatchObject({
      zones: [
        { records: [{ step: 'age', done: true, overruled: { who: 'A. Signer', why: 'mortar tested' } }] },
      ],
    });
    await picture(page, 'steps-overruled-light');
    await page.emulateMedia({ media: 'print' });
    expect(await age.getByText('Overruled by A. Signer').isVisible()).toBe(true);
    await page.emulateMedia({ media: 'screen' });
    await page.getByRole('button', { name: 'Withdraw: Age of the wall' }).click();
    await step(page, 'Sample area').getByText('Waits for "Age of the wall".').waitFor();
    expect(await tick(page, 'Age of the wall').isChecked()).toBe(false);
  });

  it('a sample waits for seven days from the tick of its wash', async () => {
    const factors = FACTORS.filter(([id]) => id !== 'sample.area');
    const page = await open(book({ factors }));
    await pass(page, 'Age of the wall');
    await step(page, 'Sample area').getByText('Waits for "Sample washed".').waitFor();
    await pass(page, 'Sample washed');
    await step(page, 'Sample area').getByText('Too early: wait until May 10, 2026').waitFor();
    await page.clock.setFixedTime(new Date('2026-05-10T12:00:00'));
    await page.getByLabel('Zone').first().selectOption('South');
    await page.getByLabel('Zone').first().selectOption('North');
    await pass(page, 'Sample area');
  });

  it('a zone with all steps done says so and leads to the next', async () => {
    const page = await open();
    await page.getByLabel('Your name').fill('R. Mason');
    const boxes = page.getByRole('checkbox', { name: /^Done: / });
    const count = await boxes.count();
    for (let place = 0; place < count; place += 1) {
      await boxes.nth(place).click();
      await expect.poll(() => boxes.nth(place).isChecked()).toBe(true);
    }
    await page.getByText('Every step of North is done.').waitFor();
    const zones = page.getByLabel('Zone').first().locator('option');
    expect(await zones.allInnerTexts()).toEqual(['North: all steps done', 'South: not begun']);
    await press(page, 'Go on with South');
    await expect.poll(() => page.getByLabel('Zone').first().inputValue()).toBe('South');
  });
});

describe('progress to look at', () => {
  const actuals: Rows = [
    HEADINGS,
    [THIRD_OF_MAY, 'North', 'N-1', 'scrape', 100, 2.4, '', '', ''],
    [THIRD_OF_MAY, 'North', 'N-2', 'scrape', 400, 14.4, '', '', ''],
    [THIRD_OF_MAY, 'North', 'N-2', 'scrape', 400, 5, '', '', 'twice'],
    [THIRD_OF_MAY, 'North', '', 'prewet', 1200, 2.5, 110, '', ''],
    [THIRD_OF_MAY, 'North', '', 'apply', 1200, 3, 20, 0.3, ''],
    [THIRD_OF_MAY, 'North', '', 'rinse', 1200, 2.6, 500, '', ''],
    [THIRD_OF_MAY, 'South', '', 'scrape', 900, 14, '', '', 'more than there is'],
  ];

  it.each<[string, Look]>([
    ['light', {}],
    ['dark', { colorScheme: 'dark' }],
    ['high-contrast', { forcedColors: true }],
    ['wide', { width: 1280 }],
  ])('has no violation, no sideways scrolling and no price: %s', async (called, look) => {
    const page = await open(book({ actuals }), look);
    await openProgress(page);
    await page.getByRole('heading', { name: 'The whole job' }).waitFor();
    const progress = page.locator('.progress');
    await progress.getByText('N-2: 800 ft² recorded of 400 ft². It counts as done once').waitFor();
    await progress.getByText('scrape: South: 900 ft² recorded of 600 ft².').waitFor();
    // 2.4 + 14.4 + 5 worked on the walls by name; 2 + 8 of their hours are earned.
    await task(page, 'N-2')
      .getByText('Behind plan: 8 planned hours earned for 19.4 worked, index 0.41.')
      .waitFor();
    await progress.getByText('North: not begun. Next: Age of the wall').waitFor();
    expect(await progress.innerText()).not.toMatch(/price|\$/i);
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    await page.setViewportSize({ width: look.width ?? 320, height: 3000 });
    await progress.screenshot({ path: join(SCREENS, `progress-${called}.png`) });
    if (called === 'light') {
      await page.setViewportSize({ width: 440, height: 2400 });
      await progress.screenshot({ path: join(SCREENS, 'pane-progress.png') });
    }
    await page.getByRole('button', { name: 'South', exact: true }).click();
    await expect.poll(() => page.getByLabel('Zone').first().inputValue()).toBe('South');
    await page.getByRole('heading', { name: 'Zone South' }).waitFor();
  });
});

describe('rates to look at', () => {
  const hours = (area: number, factor: number) => (area / 600) * 1.2 * factor;
  const scraped = (label: string, area: number, factor: number): CellContent[] => [
    ...[THIRD_OF_MAY, 'North', label, 'scrape', area, hours(area, factor), '', '', ''],
  ];
  const actuals: Rows = [
    HEADINGS,
    ...['N-1', 'N-2', 'N-3', 'N-4'].map((label, place) => scraped(label, 100, 1 + place / 50)),
    scraped('N-4', 300, 9),
    [THIRD_OF_MAY, 'North', '', 'rinse', 1200, 3.5, '', '', ''],
    [THIRD_OF_MAY, 'North', '', 'move', '', 1, '', '', ''],
    [THIRD_OF_MAY, 'South', '', 'scrape', '', 2, '', '', ''],
  ];

  it.each<[string, Look]>([
    ['light', {}],
    ['dark', { colorScheme: 'dark' }],
    ['high-contrast', { forcedColors: true }],
    ['wide', { width: 1280 }],
  ])('have no violation and no sideways scrolling: %s', async (called, look) => {
    const page = await open(book({ factors: FACTORS.slice(0, 4), actuals }), look);
    await openRates(page);
    // Four entries within 6% of the estimate, and one of nine times as long.
    await page.getByText('Far from the others, counted anyway: row 6 of Actuals.').waitFor();
    await page.getByText('No single rate sets the hours of move.').waitFor();
    await page.getByText('No rate without an area: row 9.').waitFor();
    for (const box of await page.locator('.rate').getByRole('checkbox').all()) await box.check();
    await press(page, 'Use these rates');
    await page.getByRole('button', { name: 'Write them' }).waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    await page.setViewportSize({ width: look.width ?? 320, height: 2000 });
    await page.locator('.rates').screenshot({ path: join(SCREENS, `rates-${called}.png`) });
  });
});
