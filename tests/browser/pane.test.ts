import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BID } from './bid';
import { overflow, PaneTests, picture, PLATFORM_SCRIPT, violations, type Look } from './pane';

let tests: PaneTests;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterAll(() => tests.stop());

const TABS = ['Set up', 'Steps', 'Cautions', 'Review'] as const;
const WITH_SOURCE = {
  ...BID,
  parts: { source: JSON.stringify({ walls: { table: 'Walls' }, factors: { table: 'Factors' } }) },
};
const LOOKS: Readonly<Record<string, Look>> = {
  light: { colorScheme: 'light' },
  dark: { colorScheme: 'dark' },
  'forced colours': { forcedColors: true },
};

describe.each(Object.entries(LOOKS))('in %s', (name, look) => {
  it.each(TABS)(
    '%s has no violation of accessibility rules, and needs no sideways scrolling',
    async (tab) => {
      const { page, errors } = await tests.open(WITH_SOURCE, { ...look, width: 320 });
      await page.getByRole('tab', { name: tab }).click();
      const panel = page.getByRole('tabpanel', { name: tab });
      await panel.getByRole('heading', { level: 2 }).waitFor();
      if (tab === 'Review') {
        await panel.getByRole('button', { name: 'Review the workbook' }).click();
        await panel.getByText('things to look at').waitFor();
      }
      await picture(page, `${tab}-${name}`.toLowerCase().replace(/ /g, '-'));
      expect(await violations(page)).toEqual([]);
      expect(await overflow(page)).toBe(0);
      expect(errors).toEqual([]);
    },
  );
});

describe('the tabs', () => {
  it('are one stop of the tab key; arrows, Home and End move among them', async () => {
    const { page } = await tests.open(WITH_SOURCE);
    const selected = () => page.getByRole('tab', { selected: true }).textContent();
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    await page.keyboard.press('Tab');
    await expect.poll(focused).toBe('Set up');
    const moves = [
      ['ArrowRight', 'Steps'],
      ['ArrowRight', 'Cautions'],
      ['ArrowRight', 'Review'],
      ['ArrowRight', 'Set up'],
      ['ArrowLeft', 'Review'],
      ['Home', 'Set up'],
      ['End', 'Review'],
    ] as const;
    for (const [key, tab] of moves) {
      await page.keyboard.press(key);
      await expect.poll(selected).toBe(tab);
      await expect.poll(focused).toBe(tab);
    }
    await page.getByRole('button', { name: 'Review the workbook' }).waitFor();
    await page.keyboard.press('Tab');
    await expect.poll(focused).toBe('Review the workbook');
  });

  it('leave the top right corner to the host', async () => {
    const { page } = await tests.open(WITH_SOURCE, { width: 320 });
    const boxes = await Promise.all(TABS.map((name) => page.getByRole('tab', { name }).boundingBox()));
    for (const box of boxes) expect(box && box.x + box.width).toBeLessThanOrEqual(320 - 34);
  });
});

it('what has the focus can be seen, in every look', async () => {
  for (const look of Object.values(LOOKS)) {
    const { page } = await tests.open(WITH_SOURCE, look);
    // While the walls are read the pane has fewer stops.
    await page.getByRole('button', { name: 'Insert', exact: true }).waitFor();
    for (let stop = 0; stop < 6; stop++) {
      await page.keyboard.press('Tab');
      const outline = await page.evaluate(() => {
        const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement ?? document.body);
        return { outlineStyle, width: parseFloat(outlineWidth) };
      });
      expect(outline.outlineStyle).not.toBe('none');
      expect(outline.width).toBeGreaterThanOrEqual(2);
    }
  }
});

it('nothing is asked for but the files of the pane and the script of the platform', async () => {
  const { page, requests } = await tests.open(WITH_SOURCE);
  const own = new URL(page.url()).origin;
  for (const tab of TABS) {
    await page.getByRole('tab', { name: tab }).click();
    await page.getByRole('tabpanel', { name: tab }).getByRole('heading', { level: 2 }).waitFor();
  }
  await page.getByRole('button', { name: 'Review the workbook' }).click();
  await page.getByRole('status').getByText('things to look at').waitFor();
  await page.getByRole('button', { name: 'Copy to a new sheet' }).last().click();
  await page.getByRole('status').getByText('is on the sheet').waitFor();
  const others = requests.filter((url) => !url.startsWith(`${own}/`));
  expect(others).toEqual([PLATFORM_SCRIPT]);
});

it('the content policy of the page allows no inline script, no eval and no other server', async () => {
  const { page } = await tests.open(WITH_SOURCE);
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toContain('unsafe');
  const blocked = await page.evaluate(async () => {
    const script = document.createElement('script');
    script.textContent = 'globalThis.ranInline = true';
    document.head.append(script);
    const fetched = await fetch('https://example.com/').then(
      () => 'fetched',
      () => 'refused',
    );
    return { inline: 'ranInline' in globalThis, fetched };
  });
  expect(blocked).toEqual({ inline: false, fetched: 'refused' });
});

describe('where the platform’s script cannot be reached', () => {
  it('pane and functions say which address is blocked', async () => {
    const { page, errors } = await tests.openWithoutPlatform();
    await page.getByRole('alert').getByText(PLATFORM_SCRIPT).waitFor();
    expect(errors.join(' ')).toContain(
      `The WASH functions are not loaded: ${PLATFORM_SCRIPT} cannot be reached.`,
    );
  });

  it('or what it loads itself cannot, the pane says so after a while', async () => {
    const waiting = 'globalThis.Office = { onReady: () => new Promise(() => undefined) }';
    const { page } = await tests.openWithoutPlatform(waiting);
    await page.clock.runFor(10_000);
    await page.getByRole('alert').getByText(PLATFORM_SCRIPT).waitFor();
  });
});

it('the pane says that the workbook lets it wait, until it answers', async () => {
  const { page } = await tests.open(WITH_SOURCE);
  const letWait = (waits: boolean) =>
    page.evaluate((now) => {
      globalThis.testWorkbook.letWait(now);
    }, waits);
  await letWait(true);
  await page.getByRole('alert').getByText('Is a cell being edited?').waitFor();
  await letWait(false);
  await page.getByRole('alert').waitFor({ state: 'detached' });
});
