import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HOSTILE } from './bid';
import { NOTES_SHEET as NOTES } from '../../taskpane/shared/kept-text';
import { overflow, PaneTests, picture, SCREENS, violations } from './pane';
import { cellsOf, keepSteps, keptSteps, openPanel, showPanel, SITE_ROWS, siteBook, typeWall } from './site';

let tests: PaneTests;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterAll(() => tests.stop());

const steps = (contents = siteBook(), look = {}) => openPanel(tests, 'Steps', contents, look);
const tick = (page: Page, title: string) => page.getByRole('checkbox', { name: `Done: ${title}` });
const step = (page: Page, title: string) => page.locator('.step').filter({ has: tick(page, title) });
const name = (page: Page) => page.getByLabel('Your name');
const said = (page: Page) => page.locator('.said');

/** Ticks steps one after the other. */
async function pass(page: Page, ...titles: string[]): Promise<void> {
  await name(page).fill('R. Mason');
  for (const title of titles) {
    await tick(page, title).click();
    await step(page, title).getByText('✓ Done.').waitFor();
    expect(await tick(page, title).isChecked()).toBe(true);
  }
}

/** Presses Tab until an element has the focus, as somebody without a mouse does. */
async function tabTo(page: Page, wanted: ReturnType<Page['locator']>): Promise<void> {
  for (let presses = 0; presses < 120; presses++) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('It cannot be reached with Tab.');
}

describe('steps to look at', () => {
  it.each([
    ['light', { width: 320 }],
    ['dark', { width: 350, colorScheme: 'dark' as const }],
    ['high-contrast', { width: 320, forcedColors: true }],
  ])('have no violation and no sideways scrolling: %s', async (called, look) => {
    const { page, errors } = await steps(siteBook(), look);
    expect(await violations(page)).toEqual([]);
    await picture(page, `site-steps-${called}`);
    await pass(page, 'Age of the wall');
    await page.getByRole('button', { name: 'Start: first stroke' }).click();
    await page.getByRole('timer').waitFor();
    const closed = page.locator('.steps [aria-expanded=false]');
    while ((await closed.count()) > 0) await closed.first().click();
    await page.getByText('The picture as a table').click();
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    await picture(page, `site-steps-open-${called}`);
    expect(errors).toEqual([]);
  });

  it('carry the numbers of the workbook, and change with it', async () => {
    const { page } = await steps();
    const mix = step(page, 'Mix the cleaner: class 2, buffered mild acid');
    await expect.poll(() => mix.count()).toBe(1);
    await page.getByLabel('Zone').selectOption('Court');
    await page.getByText('This zone is washed with clear water').waitFor();
    expect(await page.getByText('Dwell clock').count()).toBe(0);
    await expect.poll(() => page.locator('.step').count()).toBe(8);
    await typeWall(page, 'M6', 'yes');
    await page.getByText('uncovered and washed afterwards').waitFor();
    await typeWall(page, 'M6', 'only');
    await page.getByText('Nothing is washed here: every wall of the zone is masked.').waitFor();
    await typeWall(page, 'D6', 'Cheese');
    await page.getByText('The steps cannot be shown, because the walls cannot be read.').waitFor();
    await typeWall(page, 'D6', 'Marble');
    await page.getByText('Nothing is washed here').waitFor();
  });

  it('are printed whole, without what is for the screen', async () => {
    const { page } = await steps();
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByText('Never let').count()).toBe(0);
    expect(await page.getByText('Cover one patch').isVisible()).toBe(true);
    expect(await page.getByText('Zone: Library south').isVisible()).toBe(true);
    for (const gone of ['Print', 'Start: first stroke', 'Copy to a new sheet']) {
      expect(await page.getByRole('button', { name: gone }).isVisible()).toBe(false);
    }
    expect(await name(page).isVisible()).toBe(false);
  });

  it('show hostile labels as the texts that they are', async () => {
    const { page, errors } = await steps();
    await page.getByLabel('Zone').selectOption(HOSTILE.zone);
    await page.getByText(`Not drawn, because area or height is not stated: ${HOSTILE.image}.`).waitFor();
    await page
      .getByText(`Age not stated${HOSTILE.image}`)
      .or(page.getByText(HOSTILE.image))
      .first()
      .waitFor();
    expect(await page.locator('.steps img').count()).toBe(0);
    expect(await page.evaluate(() => 'harmed' in globalThis)).toBe(false);
    expect(errors).toEqual([]);
  });
});

describe('gates', () => {
  it('are passed one after the other, by keyboard alone', async () => {
    const { page } = await tests.open(siteBook());
    await page.getByRole('tab', { name: 'Set up' }).focus();
    await page.keyboard.press('ArrowRight');
    await tick(page, 'Age of the wall').waitFor();

    await tabTo(page, tick(page, 'Age of the wall'));
    await page.keyboard.press('Space');
    await expect.poll(() => said(page).innerText()).toContain('Enter your name first');
    await page.keyboard.type('R. Mason');

    await tabTo(page, tick(page, 'Sample area'));
    await page.keyboard.press('Space');
    await expect.poll(() => said(page).innerText()).toContain('Sample area: Waits for "Age of the wall".');
    expect(await tick(page, 'Sample area').isChecked()).toBe(false);

    for (const title of ['Age of the wall', 'Sample area', 'Protection up', 'Scrape and brush']) {
      await name(page).focus();
      await tabTo(page, tick(page, title));
      await page.keyboard.press('Space');
      await step(page, title).getByText('✓ Done. R. Mason').waitFor();
      expect(await tick(page, title).isChecked()).toBe(true);
    }
    await page.keyboard.press('Space');
    await step(page, 'Scrape and brush').getByText('Undone by R. Mason').waitFor();
  });

  it('hold back what the workbook itself does not allow', async () => {
    const { page } = await steps(siteBook([['weather.air', 30]]));
    await page.getByLabel('Zone').selectOption('Court');
    await name(page).fill('R. Mason');
    await tick(page, 'Age of the wall').click({ force: true });
    await expect.poll(() => said(page).innerText()).toContain('Too young: C-1');
    expect(await tick(page, 'Age of the wall').isChecked()).toBe(false);
    await typeWall(page, 'L6', 8);
    await step(page, 'Age of the wall').getByText('To do').waitFor();
    await pass(page, 'Age of the wall', 'Sample area', 'Protection up');
    await step(page, 'Wash with clear water, top to bottom').getByText('Too cold: air at 30 °F').waitFor();
  });

  it('are to be passed again when a wall is washed that was masked', async () => {
    const { page } = await steps();
    await typeWall(page, 'M5', 'only');
    await page.getByText('Out of scope: S-4').waitFor();
    await pass(page, 'Age of the wall', 'Sample area', 'Protection up');
    await typeWall(page, 'M5', 'no');
    await step(page, 'Age of the wall')
      .getByText('New in the workbook since then: S-4. Check again.')
      .waitFor();
    await step(page, 'Scrape and brush').getByText('Waits for "Age of the wall".').waitFor();
    await pass(page, 'Age of the wall');
    // Limestone now holds the cleaner down.
    await step(page, 'Sample area')
      .getByText('New in the workbook since then: class 1, Limestone. Check again.')
      .waitFor();
  });
});

describe('progress', () => {
  it('is kept, read back, and survives a renamed zone', async () => {
    const first = await steps();
    await step(first.page, 'Age of the wall').getByLabel('Note').fill('laid in April');
    await pass(first.page, 'Age of the wall');
    const kept = await keptSteps(first.page);
    await first.page.close();

    const renamed = SITE_ROWS.map((row) => row.map((cell) => (cell === 'Library south' ? 'Façade 1' : cell)));
    const { page } = await tests.open(siteBook([], renamed));
    await keepSteps(page, kept);
    await showPanel(page, 'Steps');
    await expect.poll(() => page.getByLabel('Zone').inputValue()).toBe('Façade 1');
    await step(page, 'Age of the wall').getByText('✓ Done. R. Mason').waitFor();
    await step(page, 'Age of the wall').getByText(': laid in April').waitFor();
    await pass(page, 'Sample area');
    expect(JSON.parse(await keptSteps(page))).toMatchObject({
      zones: [{ zone: 'Façade 1', records: [{ step: 'age' }, { step: 'sample' }] }],
    });
  });

  it('of a zone that is gone is kept and told', async () => {
    const first = await steps();
    await pass(first.page, 'Age of the wall');
    const kept = await keptSteps(first.page);
    const { page } = await tests.open(siteBook([], [SITE_ROWS[0] ?? [], SITE_ROWS[5] ?? []]));
    await keepSteps(page, kept);
    await showPanel(page, 'Steps');
    await page
      .getByText('Progress of zones that are no longer in the workbook: Library south (1 step).')
      .waitFor();
  });

  it('takes what another person ticked meanwhile', async () => {
    const { page } = await steps();
    await pass(page, 'Age of the wall');
    const other = JSON.parse(await keptSteps(page)) as { zones: { records: { who: string }[] }[] };
    for (const { records } of other.zones) for (const record of records) record.who = 'A. Other';
    await keepSteps(page, JSON.stringify(other));
    await page.evaluate(() => window.dispatchEvent(new Event('focus')));
    await step(page, 'Age of the wall').getByText('✓ Done. A. Other').waitFor();
  });

  it('that cannot be read is left as it is until it is put aside', async () => {
    const { page } = await tests.open(siteBook());
    const text = '{"form":1,"zones":[{"zone":7}]}';
    await keepSteps(page, text);
    await showPanel(page, 'Steps');
    await page.getByText('cannot be read: zone 1, clock is not text. It is left as it is').waitFor();
    expect(await page.getByRole('checkbox').count()).toBe(0);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Copy it to a new sheet' }).click();
    await page.getByRole('button', { name: 'Start over' }).waitFor();
    expect(await cellsOf(page, 'Washdown steps, unread', 'A2')).toEqual([[text]]);
    expect(await keptSteps(page)).toBe(text);
    await page.getByRole('button', { name: 'Start over' }).click();
    await pass(page, 'Age of the wall');
  });

  it('that the workbook does not keep is told, and kept on a sheet', async () => {
    const { Walls = [], Factors = [] } = siteBook().sheets;
    const { page } = await tests.open({ ...siteBook(), sheets: { Walls, Factors }, keepsParts: false });
    await page.getByLabel('Table of the walls').selectOption('Walls');
    await page.getByLabel('Table of the factors').selectOption('Factors');
    await page.getByRole('button', { name: 'Use these walls' }).click();
    await showPanel(page, 'Steps');
    await name(page).fill('R. Mason');
    await tick(page, 'Age of the wall').click();
    await page.getByText('This workbook does not save the progress').waitFor();
    await tick(page, 'Sample area').click();
    await step(page, 'Sample area').getByText('✓ Done.').waitFor();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Save it on a sheet' }).click();
    await page.getByText('This workbook does not save the progress').waitFor({ state: 'detached' });
    await pass(page, 'Protection up');
    const lines = await cellsOf(page, NOTES, 'A2:B3');
    expect(lines.find(([owner]) => owner === 'steps')?.[1]).toMatch(/"age".*"sample".*"protection"/);
  });

  it('goes onto a new sheet, where no label is a formula', async () => {
    const { page } = await steps();
    await pass(page, 'Age of the wall');
    await page.getByRole('button', { name: 'Copy to a new sheet' }).click();
    await expect.poll(() => said(page).innerText()).toContain('The steps are on the sheet Washdown steps.');
    const rows = await cellsOf(page, 'Washdown steps', 'A1:J80');
    expect(rows[0]?.slice(0, 4)).toEqual(['Zone', 'Step', 'What', 'Value']);
    expect(rows.find((row) => row[1] === 'Age of the wall')?.slice(6, 8)).toEqual(['done', 'R. Mason']);
    expect(rows.flat().some((cell) => String(cell).startsWith('='))).toBe(false);
  });
});

describe('the dwell clock', () => {
  const clock = (page: Page) => page.locator('.dwell-clock');
  const alert = (page: Page) => clock(page).getByRole('alert').innerText();

  const timeIs = (page: Page, time: string) => page.clock.setFixedTime(new Date(`2026-05-04T${time}Z`));

  it('waits for the age of the wall', async () => {
    const { page } = await steps();
    await page.getByRole('button', { name: 'Start: first stroke' }).click({ force: true });
    expect(await page.getByRole('timer').count()).toBe(0);
    await expect.poll(() => clock(page).innerText()).toContain('Waits for "Age of the wall".');
  });

  it('warns at minimum and maximum dwell, in words, and keeps the patch', async () => {
    const { page } = await steps();
    await pass(page, 'Age of the wall');
    await timeIs(page, '08:00:00');
    await page.getByRole('button', { name: 'Start: first stroke' }).click();
    await expect.poll(() => alert(page)).toBe('Let it dwell until 3 min, and keep it wet.');
    await timeIs(page, '08:02:59');
    await expect.poll(() => page.getByRole('timer').innerText()).toBe('2:59');
    await expect.poll(() => clock(page).innerText()).toContain('Dwelling');
    await timeIs(page, '08:03:00');
    // Patches of 5 / (0.11859 + 0.14167) and, heavy residue of Type S, 5 / (0.11859 + 0.41312) ft2.
    await expect
      .poll(() => alert(page))
      .toContain('Minimum dwell reached. Start to rinse at 4.64 to 4.83 min');
    await picture(page, 'site-steps-dwell-within');
    await clock(page).screenshot({ path: join(SCREENS, 'crew-dwell.png') });
    await timeIs(page, '08:05:01');
    await expect
      .poll(() => alert(page))
      .toBe(
        'Rinse now: the maximum dwell of 5 min is over where you began; the last spot by 5.94 min on this clock.',
      );
    await expect.poll(() => clock(page).innerText()).toContain('Too long: rinse now');
    expect(await violations(page)).toEqual([]);
    await picture(page, 'site-steps-dwell-over');

    await page.getByRole('tab', { name: 'Cautions' }).click();
    await timeIs(page, '08:20:00');
    await expect
      .poll(() => said(page).innerText())
      .toContain('Library south: Rinse now, with plenty of water');
    await page.getByRole('tab', { name: 'Steps' }).click();

    await page.getByRole('button', { name: 'Stop: the patch is rinsed' }).click();
    await page.getByText('Timed so far: 1.').waitFor();
    expect(JSON.parse(await keptSteps(page))).toMatchObject({
      zones: [
        { clock: '', dwells: [{ start: '2026-05-04T08:00:00.000Z', stop: '2026-05-04T08:20:00.000Z' }] },
      ],
    });
  });

  it('warns when the wall would dry first', async () => {
    // 0.02 mm at 0.311 kg/m2/h: 3.86 min, before the maximum dwell of 5 min. Misted until then, it is dry 3.86 min later.
    const { page } = await steps(siteBook([['weather.film', 0.02]]));
    await pass(page, 'Age of the wall');
    await timeIs(page, '08:00:00');
    await page.getByRole('button', { name: 'Start: first stroke' }).click();
    await timeIs(page, '08:03:30');
    await expect.poll(() => clock(page).innerText()).toContain('Within its dwell');
    await expect.poll(() => alert(page)).toContain('Mist it at 3.86 min at the latest, then every 3.86 min.');
    await timeIs(page, '08:08:52');
    await expect.poll(() => alert(page)).toContain('the cleaner may have dried, 3.86 min in this weather');
    await expect.poll(() => clock(page).innerText()).toContain('Dry: rinse now');
    await picture(page, 'site-steps-dwell-dried');
  });

  it('goes on after the pane was closed, and is told of in other zones', async () => {
    const first = await steps();
    await pass(first.page, 'Age of the wall');
    await first.page.getByRole('button', { name: 'Start: first stroke' }).click();
    await first.page.getByRole('timer').waitFor();
    const kept = await keptSteps(first.page);
    const { page } = await tests.open(siteBook());
    await keepSteps(page, kept);
    await showPanel(page, 'Steps');
    await page.getByRole('timer').waitFor();
    await page.getByLabel('Zone').selectOption(HOSTILE.zone);
    await page.getByText('The dwell clock is running in Library south, since').waitFor();
    await typeWall(page, 'D2', 'Cheese');
    await page.getByText('The steps cannot be shown').waitFor();
    await page.getByText('The dwell clock is running in Library south, since').waitFor();
  });

  it('does not start where no patch stays within the dwell', async () => {
    const { page } = await steps(
      siteBook([
        ['rate.apply', 1],
        ['cleaner.class', 2],
      ]),
    );
    await pass(page, 'Age of the wall');
    // The smallest patch, 8 ft2, takes 8 min to cover.
    await expect.poll(() => clock(page).innerText()).toContain('Wall S-1 has no contact window');
    await page.getByRole('button', { name: 'Start: first stroke' }).click({ force: true });
    expect(await page.getByRole('timer').count()).toBe(0);
  });
});
