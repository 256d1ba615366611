import type { ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchChromium, PATIENCE } from './chromium';
import { SCREENS } from './pane';
import { serveWorkbench } from './serve-workbench';

let command: ChildProcess;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  const served = await serveWorkbench(['scripts/run-command.mjs', 'start', '--no-open']);
  ({ command } = served);
  browser = await launchChromium();
  page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
  page.setDefaultTimeout(PATIENCE);
  await page.goto(served.address);
  await page.locator('#said').getByText('Opened demo-bid-us.xlsx.').waitFor();
});
afterAll(async () => {
  await browser.close();
  command.kill();
});

/** What has the focus, in the page and in the pane. */
const focused = () =>
  page.evaluate(() => {
    const own = document.activeElement;
    const inside = (own as HTMLIFrameElement | null)?.contentDocument?.activeElement;
    return own?.id === 'pane'
      ? `pane ${inside?.textContent ?? ''}`.trim()
      : own?.closest('#spreadsheet')
        ? 'sheet'
        : (own?.id ?? '');
  });

it('F6 goes from the sheet to the pane and back, each time to where the focus was', async () => {
  const pane = page.frameLocator('#pane');
  await pane.getByRole('tab', { name: 'Review' }).waitFor();
  const tab = await pane.locator('[role=tab][aria-selected=true]').textContent();
  await page.mouse.click(400, 400);
  await page.keyboard.press('ArrowDown');
  const before = await page.evaluate(() => document.activeElement?.tagName);
  await page.keyboard.press('F6');
  expect(await focused()).toBe(`pane ${String(tab)}`);
  await page.keyboard.press('ArrowRight');
  const next = await focused();
  expect(next).toMatch(/^pane /);
  expect(next).not.toBe(`pane ${String(tab)}`);
  await page.screenshot({ path: join(SCREENS, 'workbench-f6.png') });
  await page.keyboard.press('F6');
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe(before);
  expect(await focused()).not.toMatch(/^pane/);
  await page.keyboard.press('F6');
  expect(await focused()).toBe(next);
  await page.keyboard.press('F6');
  await page.locator('#save').focus();
  await page.keyboard.press('F6');
  await page.keyboard.press('F6');
  expect(await focused()).toBe('save');
});
