import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cautionSheet } from '../../src/site/caution-sheet';
import { stepChecklist } from '../../src/site/step-checklist';
import { estimated } from '../site/job';
import { overflow, PaneTests, picture, SCREENS, violations } from './pane';
import { cellsOf, keepSteps, keptSteps, openPanel, showPanel, SITE_ROWS, siteBook, typeWall } from './site';

let tests: PaneTests;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterAll(() => tests.stop());

const ZONE = 'Library south';
const WALLS = ['S-1', 'S-2', 'S-3', 'S-4'];
// Paper less the margins of the style sheet, at 96 px an inch.
const PX_PER_MM = 96 / 25.4;
const PAPERS = [
  { format: 'Letter', width: 215.9, height: 279.4 },
  { format: 'A4', width: 210, height: 297 },
] as const;
const MARGINS = { sides: 24, ends: 27 };

const wording = (page: Page) => page.locator('.crew-page');
const PRICED = [
  ['price.labor', 55],
  ['price.water', 0.02],
];

async function crewPage(look = {}, kept = '') {
  const { page, errors } = await tests.open(siteBook(PRICED), look);
  if (kept !== '') await keepSteps(page, kept);
  await showPanel(page, 'Steps');
  await page.getByRole('button', { name: "Crew's page to print" }).click();
  await page.getByRole('heading', { name: `Crew's page: ${ZONE}` }).waitFor();
  return { page, errors };
}

describe("the crew's page", () => {
  it.each([
    ['light', { width: 320 }],
    ['dark', { width: 350, colorScheme: 'dark' as const }],
  ])('is read on a phone too, without sideways scrolling: %s', async (called, look) => {
    const { page, errors } = await crewPage(look);
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    await picture(page, `crew-page-${called}`);
    expect(errors).toEqual([]);
  });

  it('names each wall, has each step and each caution of the zone, and no price', async () => {
    const { page } = await crewPage();
    const text = await wording(page).innerText();
    for (const wall of WALLS) expect(text).toContain(wall);
    expect(text).not.toContain('C-1');
    const { zones, factors } = estimated(
      SITE_ROWS.slice(1).map((row) => [...row]),
      [['units', 'US'], ['sample.area', 20], ...PRICED],
    );
    const zone = zones.find(({ zone: { name } }) => name === ZONE);
    if (zone === undefined) throw new Error('no zone');
    const cautions = cautionSheet([zone], factors, zones);
    expect(cautions.length).toBeGreaterThan(30);
    for (const caution of cautions) expect(text).toContain(caution.text);
    for (const step of stepChecklist(zone, zones, factors).steps) {
      expect(text).toContain(step.title);
      for (const sentence of step.todo) expect(text).toContain(sentence);
    }
    expect(text).not.toMatch(/\bprices?\b|\bmoney\b|\$|USD/i);
  });

  it('names the walls in the picture, and says what each is beside it', async () => {
    const { page } = await crewPage();
    const drawn = await page.locator('.crew-page .print-only g.wall text').allTextContents();
    expect(drawn).toEqual(['1 S-1', '2 S-2', '3 S-3', '4 S-4']);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.crew-page .key').innerText()).toContain('washed, sets the class: S-2');
    expect(await page.locator('.crew-page .elevation tbody tr').count()).toBe(4);
  });

  it('is for the walls of today, and brings what they take', async () => {
    const { page } = await crewPage();
    const bring = (label: string) => page.locator('.bring li').filter({ hasText: label });
    const all = await bring('Water, with that of the mix').innerText();
    await page.getByRole('checkbox', { name: 'S-3' }).check();
    await expect.poll(() => page.locator('.today li').allInnerTexts()).toEqual(['S-3']);
    await expect.poll(() => bring('Water, with that of the mix').innerText()).not.toBe(all);
    expect(await page.locator('.crew-page .print-only g.wall.other-day').count()).toBe(3);
  });

  it.each(PAPERS)('fits $format paper, and no step is cut in half', async ({ format, width, height }) => {
    const room = {
      width: Math.floor((width - MARGINS.sides) * PX_PER_MM),
      height: Math.floor((height - MARGINS.ends) * PX_PER_MM),
    };
    const { page } = await crewPage(room);
    await page.emulateMedia({ media: 'print' });
    expect(await overflow(page)).toBe(0);
    const whole = await page
      .locator('.crew-step, .crew-page .caution-lines > li, .crew-page .bring > li, .crew-page svg[role=img]')
      .evaluateAll((parts) =>
        parts.map((part) => ({
          broken: getComputedStyle(part).breakInside,
          high: part.getBoundingClientRect().height,
        })),
      );
    expect(whole.length).toBeGreaterThan(50);
    // What asks not to be broken, and is lower than a page, is moved to the next page as a whole.
    for (const { broken, high } of whole) {
      expect(broken).toBe('avoid');
      expect(high).toBeLessThan(room.height);
    }
    // A table's head is what each sheet repeats.
    const head = page.locator('.sheets > thead');
    expect(await head.innerText()).toContain(`Crew's page: ${ZONE}`);
    expect(await head.evaluate((part) => getComputedStyle(part).display)).toBe('table-header-group');
    expect(await head.evaluate((part) => part.getBoundingClientRect().height)).toBeLessThan(room.height / 4);
    const pdf = await page.pdf({ format, preferCSSPageSize: false });
    mkdirSync(SCREENS, { recursive: true });
    const sheet = { x: 0, y: 0, ...room };
    if (format === 'Letter')
      await page.screenshot({ path: join(SCREENS, 'crew-page-paper.png'), clip: sheet });
    if (process.env['PICTURES'] === undefined) writeFileSync(join(SCREENS, `crew-page-${format}.pdf`), pdf);
    const pages = pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(2);
    expect(pages).toBeLessThan(9);
  });

  it('leaves what is for the screen off the paper, and goes back', async () => {
    const { page } = await crewPage();
    await page.emulateMedia({ media: 'print' });
    for (const gone of ['Print', 'Copy to a new sheet', 'Back to the steps'])
      expect(await page.getByRole('button', { name: gone }).isVisible()).toBe(false);
    expect(await page.getByText("Today's walls (all").isVisible()).toBe(false);
    expect(await page.getByText('Foreman: ____').isVisible()).toBe(true);
    await page.emulateMedia({ media: 'screen' });
    await page.getByRole('button', { name: 'Back to the steps' }).click();
    await page.getByRole('checkbox', { name: 'Done: Age of the wall' }).waitFor();
  });

  it('goes onto a sheet', async () => {
    const { page } = await crewPage();
    await page.getByRole('button', { name: 'Copy to a new sheet' }).click();
    await page.getByText("The crew's page is on the sheet Washdown crew page.").waitFor();
    const rows = await cellsOf(page, 'Washdown crew page', 'A1:F250');
    expect(rows[0]).toEqual(['Part', 'No.', 'Done', 'What', 'Value', 'Source']);
    const walls = rows.filter(([part]) => part === "Today's walls").map(([, , , wall]) => wall);
    expect(walls).toEqual(WALLS);
    expect(rows.flat().join(' ')).not.toMatch(/\bprices?\b|\bmoney\b|\$|USD/i);
  });
});

describe('inspection', () => {
  const tick = (page: Page, title: string) => page.getByRole('button', { name: title });
  const press = (where: Page | Locator, name: string) =>
    where.getByRole('button', { name, exact: true }).click();

  it('a second clean that was kept here goes to the recorded work, once', async () => {
    const { page } = await tests.open(siteBook(), { width: 320, height: 2600 });
    const zone = { zone: ZONE, walls: WALLS, records: [], dwells: [], clock: '' };
    const clean = {
      wall: 'S-1',
      hours: 2.25,
      why: 'haze',
      who: 'A. Other',
      when: '2026-05-20T10:00:00.000Z',
    };
    await keepSteps(page, JSON.stringify({ form: 1, zones: [{ ...zone, secondCleans: [clean] }] }));
    await showPanel(page, 'Steps');
    const look = page
      .locator('.step')
      .filter({ has: page.getByRole('checkbox', { name: /^Done: Inspect/ }) });
    await look.getByRole('button').first().click();
    await press(look, 'Record this one');
    await press(look, 'Record');
    await look.getByText('S-1: 2.25 labor-hours, May 20, 2026').waitFor();
    await expect.poll(() => look.getByText('Kept here, and not in the recorded work').count()).toBe(0);
    const [, row] = await cellsOf(page, 'Actuals', 'A1:I2');
    expect(row?.slice(1, 6)).toEqual([ZONE, 'S-1', 'reclean', '', 2.25]);
    expect(row?.[8]).toBe('Second clean, A. Other: haze');
    expect(JSON.parse(await keptSteps(page))).toMatchObject({ zones: [{ secondCleans: [] }] });
  });

  it('keeps what was agreed on the sample, a punch list and a second clean, and shows them on the page', async () => {
    const { page, errors } = await openPanel(tests, 'Steps', siteBook(), { width: 320, height: 2600 });
    await tick(page, '2. Sample area').click();
    await page.getByRole('button', { name: 'Record the acceptance' }).click();
    await page.getByText('Fill in “Accepted by” first.').waitFor();
    await page.getByLabel('Accepted by').fill('the architect');
    await page.getByLabel('Date accepted').fill('2026-05-02');
    await page.getByLabel('Viewed from').fill('20 ft');
    await page.getByLabel('Light').fill('open shade');
    await page.getByRole('button', { name: 'Record the acceptance' }).click();
    await page.getByText('Enter your name first').waitFor();
    await page.getByLabel('Your name').fill('R. Mason');
    await page.getByRole('button', { name: 'Record the acceptance' }).click();
    const agreed = 'Accepted by the architect on May 2, 2026, viewed dry from 20 ft in open shade.';
    await page
      .getByRole('region', { name: 'Agreed on the sample panel' })
      .getByText(agreed)
      .first()
      .waitFor();

    const look = page
      .locator('.step')
      .filter({ has: page.getByRole('checkbox', { name: /^Done: Inspect/ }) });
    await look.getByRole('button').first().click();
    await look.getByText(agreed).waitFor();
    await look.getByLabel('Wall').first().selectOption('S-1');
    await look.getByLabel('What to fix').fill('streak below the sill');
    await look.getByLabel('Photo, if any').fill('IMG 12');
    await look.getByRole('button', { name: 'Add to the punch list' }).click();
    await look.getByText('1 open, 0 done.').waitFor();
    await press(look, 'Record a second clean');
    const form = look.getByRole('form', { name: 'Record this work?' });
    expect(await form.getByLabel('Task').inputValue()).toBe('reclean');
    expect(await form.getByLabel('Area').count()).toBe(0);
    await form.getByLabel('Zone or wall').selectOption('S-1');
    await form.getByLabel('Labor-hours').fill('two');
    await form.getByLabel('Note').fill('Second clean, R. Mason: haze');
    await press(form, 'Record');
    await page.getByRole('status').getByText('Hours: "two" cannot be used.').waitFor();
    await form.getByLabel('Labor-hours').fill('2.5');
    expect(await violations(page)).toEqual([]);
    expect(await overflow(page)).toBe(0);

    // What is typed outlasts walls that cannot be read, another zone, and the crew's page.
    await typeWall(page, 'D2', 'Cheese');
    await page.getByText('The steps cannot be shown').waitFor();
    await typeWall(page, 'D2', 'Red clay brick');
    await page.getByLabel('Zone').first().selectOption('Court');
    await page.getByLabel('Zone').first().selectOption(ZONE);
    await press(page, "Crew's page to print");
    await press(page, 'Back to the steps');
    expect(await form.getByLabel('Labor-hours').inputValue()).toBe('2.5');
    expect(await form.getByLabel('Note').inputValue()).toBe('Second clean, R. Mason: haze');
    await press(form, 'Record');
    await look.getByText(/^S-1: 2.5 labor-hours, /).waitFor();
    await look.screenshot({ path: join(SCREENS, 'crew-inspection.png') });
    const [head, row] = await cellsOf(page, 'Actuals', 'A1:I2');
    expect(head?.slice(3, 6)).toEqual(['Task', 'Area', 'Hours']);
    expect(row?.slice(1)).toEqual([ZONE, 'S-1', 'reclean', '', 2.5, '', '', 'Second clean, R. Mason: haze']);

    // An item brings its wall and its words along.
    await press(look, 'Record its second clean');
    expect(await form.getByLabel('Zone or wall').inputValue()).toBe('S-1');
    expect(await form.getByLabel('Note').inputValue()).toBe('Second clean, R. Mason: streak below the sill');
    await form.getByLabel('Labor-hours').fill('1');
    expect(await violations(page)).toEqual([]);
    await press(form, 'Record');
    await look.getByText(/^S-1: 1 labor-hour, /).waitFor();
    const [second] = await cellsOf(page, 'Actuals', 'A3:I3');
    expect(second?.slice(2)).toEqual([
      'S-1',
      'reclean',
      '',
      1,
      '',
      '',
      'Second clean, R. Mason: streak below the sill',
    ]);

    for (const title of ['Age of the wall', 'Sample area', 'Protection up']) {
      await page.getByRole('checkbox', { name: `Done: ${title}` }).click();
      await page.getByRole('checkbox', { name: `Done: ${title}`, checked: true }).waitFor();
    }
    const signOff = page.getByRole('checkbox', { name: 'Done: Inspect when dry' });
    const open = 'Open on the punch list: S-1: streak below the sill. Close what is done first.';
    await signOff.click({ force: true });
    await page.getByRole('status').getByText(`Inspect when dry: ${open}`).waitFor();
    expect(await signOff.isChecked()).toBe(false);
    await look.getByText(open).waitFor();
    await look.getByRole('button', { name: 'Overrule this condition' }).waitFor();
    await look.screenshot({ path: join(SCREENS, 'crew-sign-off-held.png') });
    const zones = page.getByLabel('Zone').first().locator('option');
    expect(await zones.first().innerText()).toContain('1 punch item open');
    await press(page, "Crew's page to print");
    await page.locator('.crew-step').filter({ hasText: 'Inspect when dry' }).getByText(open).waitFor();
    await press(page, 'Back to the steps');

    await look.getByRole('checkbox', { name: /streak below the sill/ }).click();
    await look.getByText('0 open, 1 done.').waitFor();
    await signOff.click();
    await page.getByRole('checkbox', { name: 'Done: Inspect when dry', checked: true }).waitFor();
    expect(await zones.first().innerText()).not.toContain('punch');

    const kept = await keptSteps(page);
    expect(JSON.parse(kept)).toMatchObject({
      zones: [
        {
          agreed: { approvedBy: 'the architect', dry: true, who: 'R. Mason' },
          punch: [{ wall: 'S-1', what: 'streak below the sill', closed: { who: 'R. Mason' } }],
        },
      ],
    });
    const next = await crewPage({}, kept);
    await next.page.getByText(agreed).waitFor();
    await next.page.getByText('S-1: streak below the sill. Photo IMG 12. Found by R. Mason').waitFor();
    expect(errors).toEqual([]);
  });
});
