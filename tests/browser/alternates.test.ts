import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { NOTES_SHEET } from '../../taskpane/shared/kept-text';
import { lines, numberIn } from '../properties/call';
import { overflow, PaneTests, picture, violations } from './pane';

let tests: PaneTests;
let page: Page;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterEach(() => page.context().close());
afterAll(() => tests.stop());

const WALLS = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Mortar', 'Residue', 'Masked'],
  ['F-1', 'Front', 'Red clay brick', 800, 20, 'N', 'moderate', ''],
  ['F-2', 'Front', 'Limestone', 60, 3, 'N', 'light', ''],
];
const FACTORS = [
  ['Factor', 'Value'],
  ['units', 'US'],
  ['price.labor', 55],
];

async function openPart(part: string): Promise<void> {
  const source = { walls: { table: 'Walls' }, factors: { table: 'Factors' } };
  const kept = [
    ['Kept for', 'Text'],
    ['source', JSON.stringify(source)],
  ];
  ({ page } = await tests.open(
    {
      sheets: { Walls: WALLS, Factors: FACTORS, [NOTES_SHEET]: kept },
      tables: [
        { name: 'Walls', sheet: 'Walls', address: 'A1:H3' },
        { name: 'Factors', sheet: 'Factors', address: 'A1:B3' },
      ],
    },
    { width: 320 },
  ));
  await page.getByRole('tab', { name: 'Review' }).click();
  await page.getByRole('button', { name: part, expanded: false }).focus();
  await page.keyboard.press('Enter');
}

const said = (text: string | RegExp) => page.getByRole('status').getByText(text).waitFor();
const press = async (name: string) => {
  await page.getByRole('button', { name, exact: true }).focus();
  await page.keyboard.press('Enter');
};
const rows = (sheet: string, address: string) =>
  page.evaluate((place) => globalThis.testWorkbook.readRange(place), { sheet, address });

it('shows the open choices as bars with words, inserts them, and takes one of the user', async () => {
  await openPart('Alternates');
  const items = page.locator('.alternates > li');
  await items.first().waitFor();
  const spilled = lines('ALTERNATES', WALLS, null, null, FACTORS);
  const expected = spilled.slice(1, -1).map((line) => {
    const value = numberIn(line, 'Add or deduct');
    const size = Math.abs(value)
      .toFixed(2)
      .replace(/\B(?=(\d{3})+\.)/g, ',');
    return value === 0 ? 'no change' : `${value < 0 ? 'deduct −' : 'add +'}${size}`;
  });
  expect(await items.locator('.added .number').allInnerTexts()).toEqual(expected);
  expect(await page.getByText('The engineer and the code choose the mortar.').count()).toBeGreaterThan(1);
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
  await picture(page, 'pane-alternates');

  await press('Insert the picked lines as a table');
  await said('The table Alternates');
  expect((await rows('Alternates', 'A1:D1'))[0]).toEqual(['Alternate', 'Wall', 'Column', 'Value']);
  await press('Make a page for the owner');
  await said('Alternates for the owner');
  expect((await rows('Alternates worked out', 'A1:B3')).flat()).toContain('Base bid');

  await page.getByText('An alternate of your own').click();
  await page.getByLabel('Name of the alternate').fill('Less brick');
  await page.getByLabel('Walls: one or more').selectOption('F-1');
  await page.getByLabel('Column').selectOption({ label: 'Area' });
  await page.getByLabel('Value').fill('about 500');
  await press('Add the alternate');
  await said('about 500');
  await page.getByLabel('Value').fill('500');
  await press('Add the alternate');
  await said('Added to the table Alternates: 1 row.');
  const table = await page.evaluate(() => globalThis.testWorkbook.readTable('Alternates'));
  expect(table.at(-1)).toEqual(['Less brick', 'F-1', 'Area', 500]);
  await items.getByText('Less brick').waitFor();
  expect(await violations(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
});

it('the ladder shows the Masked cells that a line would change, asks, and sets them', async () => {
  await openPart('Mask or govern');
  await press('Class 2, buffered mild acid');
  const question = page.getByRole('region', { name: 'Masked cells would change' });
  await question.getByText('F-2: blank → yes (Walls!H3)').waitFor();
  expect(await violations(page)).toEqual([]);
  await press('Leave them');
  await said('Nothing was written.');
  expect(await rows('Walls', 'H3')).toEqual([['']]);
  await press('Class 2, buffered mild acid');
  await press('Set them');
  await said('One Masked cell is set in Front');
  expect(await rows('Walls', 'H2:H3')).toEqual([[''], ['yes']]);
  expect(await overflow(page)).toBe(0);
});
