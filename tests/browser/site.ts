import type { Page } from 'playwright-core';
import { NOTES_SHEET } from '../../taskpane/shared/kept-text';
import type { MemoryWorkbook } from '../../taskpane/workbook/memory-workbook';
import type { CellContent } from '../../taskpane/workbook/port';
import { HEADINGS } from '../site/job';
import { HOSTILE } from './bid';
import type { OpenPane, PaneTests, PlainContents, Look } from './pane';

/** A zone under cleaner over a masked base, one under clear water, one whose labels would do harm. */
export const SITE_ROWS: readonly (readonly CellContent[])[] = [
  HEADINGS,
  ['S-1', 'Library south', 1, 'Red clay brick', 1200, 12, 140, 160, 4, 'N', 'moderate', 14, 'no', ''],
  ['S-2', 'Library south', 1, 'Cast stone', 240, 12, 0, 0, 0, 'N', 'light', 14, 'no', ''],
  ['S-3', 'Library south', 2, 'Red clay brick', 1000, 10, 80, 90, 0, 'S', 'heavy', 14, 'no', ''],
  ['S-4', 'Library south', 3, 'Limestone', 360, 3, 0, 0, 0, 'N', 'light', 14, 'yes', ''],
  ['C-1', 'Court', 1, 'Marble', 400, 8, 0, 0, 0, 'N', 'light', 3, 'no', ''],
  [HOSTILE.image, HOSTILE.zone, 1, 'Red clay brick', 4000, '', 0, 0, 0, 'N', 'light', '', 'no', ''],
];

/**
 * A workbook for the crew, whose pane knows its walls.
 * @param factors rows of the factor table
 * @param rows rows of the wall table, headings first
 * @returns the workbook
 */
export function siteBook(
  factors: readonly (readonly CellContent[])[] = [],
  rows: readonly (readonly CellContent[])[] = SITE_ROWS,
): PlainContents {
  const source = { walls: { table: 'Walls' }, factors: { table: 'Factors' } };
  // A sample was inspected, so that no wait of days stands before the steps.
  const sampled = factors.some(([id]) => id === 'sample.area') ? [] : [['sample.area', 20]];
  const factorRows = [['Factor', 'Value'], ['units', 'US'], ...sampled, ...factors];
  return {
    sheets: {
      Walls: rows,
      Factors: factorRows,
      [NOTES_SHEET]: [
        ['Kept for', 'Text'],
        ['source', JSON.stringify(source)],
      ],
    },
    tables: [
      { name: 'Walls', sheet: 'Walls', address: `A1:N${String(rows.length)}` },
      { name: 'Factors', sheet: 'Factors', address: `A1:B${String(factorRows.length)}` },
    ],
  };
}

/**
 * Opens the pane at one of the panels for the crew.
 * @param tests what opens panes
 * @param panel name of the panel
 * @param contents the workbook
 * @param look how the user looks at it
 * @returns the pane
 */
export async function openPanel(
  tests: PaneTests,
  panel: 'Steps' | 'Cautions',
  contents: PlainContents,
  look: Look = {},
): Promise<OpenPane> {
  const pane = await tests.open(contents, look);
  await showPanel(pane.page, panel);
  return pane;
}

/**
 * Shows a panel and waits for what it has read.
 * @param page the page
 * @param panel name of the panel
 */
export async function showPanel(page: Page, panel: 'Steps' | 'Cautions'): Promise<void> {
  await page.getByRole('tab', { name: panel }).click();
  await page.getByRole('heading', { name: panel, exact: true }).waitFor();
  // Other panels may still be reading.
  const shown = page.getByRole('tabpanel', { name: panel });
  await shown.getByText(/^Reading the/).waitFor({ state: 'detached' });
}

/**
 * Keeps a text in the workbook, as an earlier pane did.
 * @param page the page
 * @param text the text
 */
export async function keepSteps(page: Page, text: string): Promise<void> {
  await page.evaluate((kept) => globalThis.testWorkbook.writePart('steps', kept), text);
}

/**
 * The progress that the workbook keeps.
 * @param page the page
 * @returns its text
 */
export async function keptSteps(page: Page): Promise<string> {
  return page.evaluate(async () => (await globalThis.testWorkbook.readPart('steps')) ?? '');
}

/**
 * What cells of the workbook hold.
 * @param page the page
 * @param sheet name of the sheet
 * @param address the cells
 * @returns their values
 */
export function cellsOf(page: Page, sheet: string, address: string): Promise<CellContent[][]> {
  return page.evaluate((place) => globalThis.testWorkbook.readRange(place), { sheet, address });
}

/**
 * Types into a cell, as a user does.
 * @param page the page
 * @param address the cell of the sheet Walls
 * @param content what is typed
 */
export async function typeWall(page: Page, address: string, content: CellContent): Promise<void> {
  await page.evaluate(
    ([at, typed]) => {
      globalThis.testWorkbook.type({ sheet: 'Walls', address: at }, typed);
    },
    [address, content] as const,
  );
}

declare global {
  /** The workbook behind the pane of a browser test. */
  var testWorkbook: MemoryWorkbook;
}
