import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HOSTILE } from './bid';
import { overflow, PaneTests, picture, violations } from './pane';
import { cellsOf, openPanel, siteBook, typeWall } from './site';

let tests: PaneTests;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterAll(() => tests.stop());

const cautions = (contents = siteBook(), look = {}) => openPanel(tests, 'Cautions', contents, look);

describe('cautions', () => {
  it.each([
    ['light', { width: 320 }],
    ['dark', { width: 350, colorScheme: 'dark' as const }],
    ['high-contrast', { width: 320, forcedColors: true }],
  ])('have no violation and no sideways scrolling: %s', async (called, look) => {
    const { page, errors } = await cautions(siteBook([['nozzle.pressure', 1500]]), look);
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    expect(errors).toEqual([]);
    await picture(page, `site-cautions-${called}`);
  });

  it('start with label, safety data sheet, local codes and licensed practice', async () => {
    const { page } = await cautions();
    const lines = page.locator('.caution-text');
    await lines.first().waitFor();
    const texts = await lines.allInnerTexts();
    const first = ["product's label", 'safety data sheet', 'local codes', 'people licensed for them'];
    first.forEach((words, index) => {
      expect(texts[index]).toContain(words);
    });
  });

  it('follow the workbook', async () => {
    const { page } = await cautions();
    const young = page.locator('.caution-lines li.stop').filter({ hasText: 'Wait: masonry' });
    await young.getByText('Wait: masonry is washed when it is 7 days old or more.').waitFor();
    await young.getByText('Court: C-1: 3 days old').waitFor();
    await typeWall(page, 'L6', 9);
    await young.waitFor({ state: 'detached' });
    await typeWall(page, 'D2', 'Cheese');
    await page.getByText('The cautions cannot be shown, because the walls cannot be read.').waitFor();
    expect(await violations(page)).toEqual([]);
  });

  it('show hostile labels as the texts that they are, on the pane and on a sheet', async () => {
    const { page, errors } = await cautions();
    await page.getByText(`${HOSTILE.zone}: ${HOSTILE.image}: height not stated`).first().waitFor();
    await page.getByRole('button', { name: 'Copy to a new sheet' }).click();
    await page.getByText('The cautions are on the sheet Washdown cautions.').waitFor();
    const rows = await cellsOf(page, 'Washdown cautions', 'A1:G120');
    expect(rows[0]?.slice(0, 3)).toEqual(['Topic', 'Stop', 'Caution']);
    expect(rows[1]?.[2]).toContain("product's label");
    expect(rows.find(([topic, stop]) => topic === 'The wall itself' && stop === 'stop')?.slice(3, 5)).toEqual(
      ['3 days old', 'Court: C-1'],
    );
    expect(rows.flat().some((cell) => String(cell).startsWith('='))).toBe(false);
    expect(await page.locator('.cautions img').count()).toBe(0);
    expect(await page.evaluate(() => 'harmed' in globalThis)).toBe(false);
    expect(errors).toEqual([]);
  });

  it('are printed without what is for the screen', async () => {
    const { page } = await cautions();
    await page.emulateMedia({ media: 'print' });
    await page.getByText('Never let cleaner dry on the wall.').waitFor();
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    expect(await page.getByRole('tablist').isVisible()).toBe(false);
  });
});
