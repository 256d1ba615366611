import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { NOTES_SHEET } from '../../taskpane/shared/kept-text';
import type { CellContent } from '../../taskpane/workbook/port';
import { call, lines, number, numberIn, type Line } from '../properties/call';
import { HOSTILE } from './bid';
import { overflow, PaneTests, picture, violations, type Look, type PlainContents } from './pane';

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

const HEADINGS = ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Mortar', 'Residue', 'Masked'];
const WALLS: readonly (readonly CellContent[])[] = [
  HEADINGS,
  ['F-1', 'Front', 1, 'Red clay brick', 800, 20, 'N', 'moderate', ''],
  ['F-2', 'Front', 2, 'Limestone', 60, 3, 'N', 'light', ''],
  ['F-3', 'Front', 3, 'Cast stone', 40, 1, 'N', 'light', 'never'],
  ['C-1', 'Court', 1, 'Red clay brick', 500, 10, 'N', 'moderate', ''],
  [HOSTILE.image, HOSTILE.zone, 1, 'Red clay brick', 400, 10, 'N', 'light', ''],
];
const FACTORS: readonly (readonly CellContent[])[] = [
  ['Factor', 'Value'],
  ['units', 'US'],
  ['price.labor', 55],
];

function book(more: Partial<PlainContents> = {}): PlainContents {
  const source = { walls: { table: 'Walls' }, factors: { table: 'Factors' } };
  return {
    ...more,
    sheets: {
      Walls: WALLS,
      Factors: FACTORS,
      [NOTES_SHEET]: [
        ['Kept for', 'Text'],
        ['source', JSON.stringify(source)],
      ],
      ...more.sheets,
    },
    tables: [
      { name: 'Walls', sheet: 'Walls', address: 'A1:I6' },
      { name: 'Factors', sheet: 'Factors', address: 'A1:B3' },
      ...(more.tables ?? []),
    ],
  };
}

const LADDER = 'Mask or govern';
const BASELINE = 'Baseline and changes';
const RANGES = 'Ranges';

/** Opens the pane at one part of the decisions. */
async function openPart(part: string, contents: PlainContents = book(), look: Look = {}): Promise<void> {
  ({ page } = await tests.open(contents, { width: 320, ...look }));
  await page.getByRole('tab', { name: 'Review' }).click();
  await openAlso(part);
}

/** Opens one more part, by the keyboard. */
async function openAlso(part: string): Promise<void> {
  await page.getByRole('button', { name: part, expanded: false }).focus();
  await page.keyboard.press('Enter');
}

const said = (text: string | RegExp) => page.getByRole('status').getByText(text).waitFor();
const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
const rows = (sheet: string, address: string) =>
  page.evaluate((place) => globalThis.testWorkbook.readRange(place), { sheet, address });
const sheets = () => page.evaluate(() => globalThis.testWorkbook.sheets());

/** A price as an American reads it. */
function price(value: number): string {
  return value.toFixed(2).replace(/\B(?=(\d{3})+\.)/g, ',');
}

/** A number to three digits. */
function threeDigits(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** A day of today, which may end while a test runs. */
function today(): string {
  return new Date().toLocaleDateString('sv-SE');
}

const LOOKS: Readonly<Record<string, Look>> = {
  light: { colorScheme: 'light' },
  dark: { colorScheme: 'dark' },
  'forced colours': { forcedColors: true },
};

it.each(Object.entries(LOOKS))('in %s all parts together are within the rules', async (name, look) => {
  await openPart(LADDER, book(), look);
  await page.getByText('The ladder as a table').click();
  await openAlso(BASELINE);
  await press('Save baseline');
  await said('Written.');
  await typeWall('D5', 'Limestone');
  await page.getByText('One change since').waitFor();
  await openAlso(RANGES);
  await press('Add a table of ranges');
  await said('enter your own figures');
  await press('Hide the message');
  await press('Work out the ranges');
  await said('half of the trials below');
  await picture(page, `decisions-${name}`.replace(/ /g, '-'));
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
});

async function typeWall(address: string, content: CellContent): Promise<void> {
  await page.evaluate(
    ([at, typed]) => {
      globalThis.testWorkbook.type({ sheet: 'Walls', address: at }, typed);
    },
    [address, content] as const,
  );
}

it('the ladder shows for each class hours and price, what is masked and washed afterwards or why not, and marks the cheapest', async () => {
  await openPart(LADDER);
  const rungs = page.locator('.rungs > li');
  const seen = async () => (await rungs.allInnerTexts()).map((text) => text.replace(/\s+/g, ' '));
  const options = lines('OPTIONS', WALLS, 'Front', FACTORS);
  const rates = (line: Line) => {
    const [area, hours] = [numberIn(line, 'Washed area'), numberIn(line, 'Labor-hours')];
    return `${price(numberIn(line, 'Price') / area)} per ft², ${threeDigits(area / hours)} ft² per labor-hour`;
  };
  const [asMarked = '', none = '', some = '', stone = ''] = options
    .slice(0, 4)
    .map(
      (line) =>
        `Labor-hours ${threeDigits(numberIn(line, 'Labor-hours'))} Price ${price(numberIn(line, 'Price'))} ${rates(line)} Price of the job ${price(numberIn(line, 'Price of the job'))}`,
    );
  // Limestone of class 1 holds the brick down; masked, it is washed afterwards.
  await expect
    .poll(seen)
    .toEqual([
      `As marked ${asMarked} Nothing masked.`,
      `Class 0, clear water ${none} Nothing masked.`,
      `Class 1, neutral detergent ${some} Nothing masked.`,
      `Class 2, buffered mild acid cheapest ${stone} Masked: F-2; masonry washed afterwards with class 1 (neutral detergent).`,
      'Class 3, buffered acid at full label strength Not offered: cannot be masked: F-3 (Cast stone).',
    ]);
  const saved = numberIn(options[0], 'Price of the job') - numberIn(options[3], 'Price of the job');
  await page
    .getByText(
      `Cheapest: class 2 (buffered mild acid) with F-2 masked, ${price(numberIn(options[3], 'Price of the job'))} for the job; ${price(saved)} less than as marked.`,
    )
    .waitFor();
  await page.getByText('The ladder as a table').click();
  const table = page.getByRole('table', { name: 'Mask or govern: Front' });
  await expect.poll(() => table.getByRole('row').count()).toBe(6);
  expect(
    await table
      .getByRole('row', { name: /^2 buffered mild acid F-2 class 1 \(neutral detergent\) 2 / })
      .count(),
  ).toBe(1);
});

it('the bars of the ladder are as long as their numbers', async () => {
  await openPart(LADDER);
  await page.locator('.rung-bar rect').first().waitFor();
  const bars = await page.locator('.rung-bar').evaluateAll((found) =>
    found.map((bar) => ({
      of: bar.firstElementChild?.textContent ?? '',
      width: bar.querySelector('rect')?.getBoundingClientRect().width ?? NaN,
    })),
  );
  const options = lines('OPTIONS', WALLS, 'Front', FACTORS).slice(0, 4);
  for (const of of ['Labor-hours', 'Price']) {
    const values = options.map((line) => numberIn(line, of));
    const widths = bars.filter((bar) => bar.of === of).map(({ width }) => width);
    const [most, width] = [Math.max(...values), Math.max(...widths)];
    expect(widths).toHaveLength(4);
    widths.forEach((each, index) => {
      expect(each / width).toBeCloseTo((values[index] ?? NaN) / most, 2);
    });
  }
});

it('the ladder is that of the zone chosen, whatever the zone is called', async () => {
  await openPart(LADDER);
  await page.getByLabel('Zone of the ladder').selectOption({ label: HOSTILE.zone });
  const options = lines('OPTIONS', WALLS, HOSTILE.zone, FACTORS);
  // There is nothing to mask, so that the zone is as cheap as it is marked.
  await page
    .getByText(`Cheapest: as marked, ${price(numberIn(options[0], 'Price of the job'))} for the job.`)
    .waitFor();
});

it('a baseline is kept beside what is there, and the walls are compared with it after a material has changed', async () => {
  const before = today();
  const taken = `Baseline ${before}`;
  await openPart(BASELINE, book({ sheets: { [taken]: [['mine']], Changes: [['mine too']] } }));
  await page.getByText('No baseline is saved').waitFor();
  await press('Save baseline');
  await said('Written.');
  const table = `Baseline_${before.replace(/-/g, '_')}`;
  expect(await page.evaluate((name) => globalThis.testWorkbook.readTable(name), table)).toEqual(WALLS);
  expect(await rows(taken, 'A1:A2')).toEqual([['mine'], ['']]);
  await page.getByText(`Nothing has changed since ${table}.`).waitFor();

  await typeWall('D5', 'Limestone');
  await page.getByText(`One change since ${table}`).waitFor();
  const changed = WALLS.map((row) => (row[0] === 'C-1' ? row.with(3, 'Limestone') : row));
  const whole = lines('CHANGES', WALLS, changed, FACTORS).at(-1);
  const item = (await page.locator('.changes li').innerText()).replace(/\s+/g, ' ');
  const text = (heading: string, unit: string): string => {
    const value = numberIn(whole, heading);
    const size = Math.abs(value);
    return `${value < 0 ? '−' : '+'}${heading === 'Price' ? price(size) : threeDigits(size)}${unit}`;
  };
  expect(item).toBe(
    [
      'C-1, changed Material: Red clay brick -> Limestone Class: Court 2 -> 1',
      `Water ${text('Water', ' gal')}`,
      'Masking no change',
      // 500 ft2 at 70 ft2/gal and 5% more: 7.5 gal of mix, 1 part in 65 in place of 1 in 9.
      `Concentrate −${threeDigits(7.5 / 9 - 7.5 / 65)} gal`,
      `Labor-hours ${text('Labor-hours', ' labor-hours')}`,
      `Price ${text('Price', '')}`,
    ].join(' '),
  );

  await press('Copy the changes to a new sheet');
  await said('as a formula');
  expect(await rows('Changes', 'A1')).toEqual([['mine too']]);
  const cell = await page.evaluate(() => globalThis.testWorkbook.cell({ sheet: 'Changes 2', address: 'A1' }));
  expect(cell.formula).toBe(`=WASH.CHANGES(${table}[#All],Walls[#All],Factors[#All])`);
  expect(await rows('Changes 2', 'A1:I3')).toEqual(call('CHANGES', WALLS, changed, FACTORS));
});

it('a second baseline of the day has a name of its own, and either can be compared with', async () => {
  await openPart(BASELINE);
  await press('Save baseline');
  await said('Written.');
  await typeWall('E5', 600);
  await page.getByText('One change since').waitFor();
  await press('Save baseline');
  await page.getByText(/Nothing has changed since Baseline_\d{4}_\d\d_\d\d_2\./).waitFor();
  const kept = page.getByRole('group', { name: 'Compare the walls with' }).getByRole('radio');
  await expect.poll(() => kept.count()).toBe(2);
  await kept.last().check();
  await page.getByText('Area: 500 ft² -> 600 ft²').waitFor();
});

it('a baseline that cannot be read any longer says where', async () => {
  await openPart(BASELINE);
  await press('Save baseline');
  await said('Written.');
  await typeWall('E5', 'about 500');
  await page.getByText(/^The walls: .*about 500/).waitFor();
});

const FEW_RANGES: Partial<PlainContents> = {
  sheets: {
    Spread: [
      ['Note', 'Factor', 'High', 'Low', 'Likely'],
      ['', 'price.labor', 80, 40, 50],
      ['', 'rinse.perArea', 0.7, 0.5, 0.6],
      ['', 'rate.maskOn', 200, 100, 150],
    ],
  },
  tables: [{ name: 'Spread', sheet: 'Spread', address: 'A1:E4' }],
};

it('ranges are drawn from a table of the workbook: the same seed, the same ranges', async () => {
  await openPart(RANGES, book(FEW_RANGES));
  await press('Work out the ranges');
  await said('half of the trials below');
  const shown = () => page.getByRole('region', { name: 'Ranges' }).getByRole('row').allInnerTexts();
  const first = await shown();
  await page.getByLabel(/^Seed/).fill('2');
  await press('Run again');
  await page.getByText('10,000 trials, seed 2').waitFor();
  const other = await shown();
  await page.getByLabel(/^Seed/).fill('1');
  await press('Run again');
  await page.getByText('10,000 trials, seed 1').waitFor();
  expect(await shown()).toEqual(first);
  expect(other).not.toEqual(first);

  // Three points of the price, labor alone being priced: the hours that each end of rinsing gives, times labor.
  const hours = (rinse: number) => {
    const factors = [...FACTORS, ['rinse.perArea', rinse], ['rate.maskOn', 150]];
    return number('LABORHOURS', WALLS, null, factors);
  };
  const cells = first.map((row) => row.split('\t'));
  expect(cells[0]).toEqual(['Range', 'Low', 'Likely', 'High']);
  expect(cells.find(([label]) => label === 'Price, three points')).toEqual([
    'Price, three points',
    price(hours(0.5) * 40),
    price(hours(0.6) * 50),
    price(hours(0.7) * 80),
  ]);

  const swings = (await page.locator('.swings > li').allInnerTexts()).map((text) =>
    text.replace(/\s+/g, ' '),
  );
  expect(swings.map((text) => text.split(',')[0])).toEqual(['price.labor', 'rinse.perArea', 'rate.maskOn']);
  expect(swings[0]).toContain(
    `${price(hours(0.6) * 40)} at its low, ${price(hours(0.6) * 80)} at its high: moves it by ${price(hours(0.6) * 40)}`,
  );
  expect(swings[2]).toContain('moves nothing here');
  expect(await overflow(page)).toBe(0);
});

it('ranges of a long job are stopped; nothing is shown then, and the draws can be run again', async () => {
  // No two walls are alike, so that none are put together and every draw works out them all.
  const many = Array.from({ length: 2000 }, (_, index) => [
    `W-${String(index)}`,
    `Zone ${String(index % 20)}`,
    'Red clay brick',
    100,
    10,
    5 + index / 100,
  ]);
  const long = book(FEW_RANGES);
  await openPart(RANGES, {
    ...long,
    sheets: {
      ...long.sheets,
      Walls: [['Wall', 'Zone', 'Material', 'Area', 'Height', 'Suction'], ...many],
    },
    tables: [
      { name: 'Walls', sheet: 'Walls', address: 'A1:F2001' },
      ...(long.tables ?? []).filter(({ name }) => name !== 'Walls'),
    ],
  });
  await press('Work out the ranges');
  await page.getByText(/^Trials: [1-9]\d* of 10000$/).waitFor();
  // A pane that answers within the draws can be left and come back to.
  await page.getByRole('tab', { name: 'Set up' }).click();
  await page.getByRole('tab', { name: 'Review' }).click();
  await press('Stop');
  await said('The trials were stopped.');
  expect(await page.locator('.swings').count()).toBe(0);
  await press('Work out the ranges');
  await page.getByRole('progressbar').waitFor();
});

it('a table of ranges is added with a few factors, and ranges that have become old say so', async () => {
  await openPart(RANGES, book({ sheets: { Ranges: [['mine']] } }));
  await press('Add a table of ranges');
  await said('Written.');
  expect(await rows('Ranges', 'A1')).toEqual([['mine']]);
  expect((await rows('Ranges 2', 'A1:D7')).map(([id]) => id)).toContain('price.labor');
  await press('Hide the message');
  await press('Work out the ranges');
  await said('half of the trials below');
  await typeWall('E2', 900);
  await page.getByText('The workbook has changed since').waitFor();
  expect(await sheets()).toContain('Ranges 2');
});

it('a seed or a range that cannot be read is said, and nothing is drawn', async () => {
  await openPart(RANGES, book(FEW_RANGES));
  await page.getByLabel(/^Seed/).fill('one');
  await press('Work out the ranges');
  await said('The seed must be a whole number');
  await page.getByLabel(/^Seed/).fill('1');
  await page.evaluate(() => {
    globalThis.testWorkbook.type({ sheet: 'Spread', address: 'D2' }, 60);
  });
  await press('Work out the ranges');
  await said('rising order');
  expect(await page.locator('.swings').count()).toBe(0);
});

it('the steps of a zone show the crew no price', async () => {
  ({ page } = await tests.open(book()));
  await page.getByRole('tab', { name: 'Steps' }).click();
  const panel = page.getByRole('tabpanel', { name: 'Steps' });
  await panel.getByText('Labor-hours by part').waitFor();
  expect(await panel.innerText()).not.toMatch(/price|\$/i);
});
