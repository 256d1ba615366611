import { mkdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import type { Contents } from '../../taskpane/workbook/memory-workbook';
import { launchChromium, PATIENCE } from './chromium';
import { serveFiles, type FileServer } from '../../workbench/serve/serve-files';

/** The platform's script, the one address outside of this machine that the pane may ask for. */
export const PLATFORM_SCRIPT = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js';

/** Where pictures go; `PICTURES=docs/pictures` renews those of the docs. */
export const SCREENS = resolve(process.env['PICTURES'] ?? 'out/screens');
const AXE = readFileSync(resolve('node_modules/axe-core/axe.min.js'), 'utf8');

/** How a user looks at the pane. */
export interface Look {
  readonly colorScheme?: 'light' | 'dark';
  readonly forcedColors?: boolean;
  readonly width?: number;
  readonly height?: number;
}

/** The contents of a workbook that can be handed to the page. */
export type PlainContents = Omit<Contents, 'evaluate'> & {
  /** False where the formulas of the workbook are not worked out. */
  readonly worksOut?: boolean;
};

/** An open pane. */
export interface OpenPane {
  readonly page: Page;
  /** Every address that the page asked for. */
  readonly requests: readonly string[];
  /** Errors and refusals that the page reported. */
  readonly errors: readonly string[];
}

/** A browser and the built pane, for the tests of one file. */
export class PaneTests {
  private constructor(
    private readonly browser: Browser,
    private readonly server: FileServer,
    private readonly stub: string,
  ) {}

  /**
   * Starts the browser and serves the built pane.
   * @returns what opens panes
   */
  static async start(): Promise<PaneTests> {
    const [browser, server, bundle] = await Promise.all([
      launchChromium(),
      serveFiles(resolve('dist')),
      build({
        entryPoints: [resolve('tests/browser/entry.ts')],
        bundle: true,
        write: false,
        format: 'iife',
        target: 'es2022',
      }),
    ]);
    return new PaneTests(browser, server, bundle.outputFiles[0]?.text ?? '');
  }

  /**
   * Opens the pane where the platform's script is blocked, or where what the script loads itself is.
   * @param body what comes in place of the script; undefined where nothing comes
   * @returns the page, its clock in the test's hand, and the errors that it reported
   */
  async openWithoutPlatform(body?: string): Promise<OpenPane> {
    const page = await this.browser.newPage();
    const errors: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') errors.push(message.text());
    });
    await page.clock.install();
    await page.route(PLATFORM_SCRIPT, (route) =>
      body === undefined ? route.abort() : route.fulfill({ contentType: 'text/javascript', body }),
    );
    await page.goto(`${this.server.address}/taskpane.html`);
    return { page, requests: [], errors };
  }

  /** Closes the browser and the server. */
  async stop(): Promise<void> {
    await this.browser.close();
    await this.server.close();
  }

  /**
   * Opens the pane on a workbook in memory.
   * @param contents the workbook
   * @param look how the user looks at it
   * @returns the page, and what it asked for
   */
  async open(contents: PlainContents, look: Look = {}): Promise<OpenPane> {
    const context = await this.browser.newContext({
      viewport: { width: look.width ?? 350, height: look.height ?? 800 },
      colorScheme: look.colorScheme ?? 'light',
      forcedColors: look.forcedColors === true ? 'active' : 'none',
      reducedMotion: 'reduce',
      locale: 'en-US',
    });
    context.setDefaultTimeout(PATIENCE);
    const page = await context.newPage();
    const requests: string[] = [];
    const errors: string[] = [];
    page.on('request', (request) => {
      requests.push(request.url());
    });
    page.on('pageerror', (error) => errors.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') errors.push(message.text());
    });
    await page.route(PLATFORM_SCRIPT, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: this.stub }),
    );
    await page.addInitScript((made) => {
      (globalThis as unknown as { testContents: unknown }).testContents = made;
    }, contents);
    await page.goto(`${this.server.address}/taskpane.html`);
    await page.getByRole('tab', { name: 'Set up' }).waitFor();
    return { page, requests, errors };
  }
}

/**
 * What is wrong with the accessibility of a page as it is.
 * @param page the page
 * @returns a line for each violation
 */
export async function violations(page: Page): Promise<string[]> {
  // Evaluated by the browser's tools, so that the page's content policy stays as strict as it is.
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: {
        run: () => Promise<{ violations: { id: string; help: string; nodes: { html: string }[] }[] }>;
      };
    };
    const { violations: found } = await axe.run();
    return found.flatMap(({ id, help, nodes }) => nodes.map(({ html }) => `${id}: ${help}: ${html}`));
  });
}

/**
 * How far the content is wider than the pane.
 * @param page the page
 * @returns pixels; 0 where nothing has to be scrolled sideways
 */
export function overflow(page: Page): Promise<number> {
  return page.evaluate(() => {
    const scrolled = [document.documentElement, ...document.querySelectorAll('[role=tabpanel]')];
    return Math.max(...scrolled.map(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth));
  });
}

/**
 * Keeps a picture of the pane for people to look at, as high as what it shows.
 * @param page the page
 * @param name name of the picture
 */
export async function picture(page: Page, name: string): Promise<void> {
  mkdirSync(SCREENS, { recursive: true });
  const size = page.viewportSize() ?? { width: 350, height: 800 };
  const hidden = await page.evaluate(() => {
    const shown = document.querySelector('[role=tabpanel]:not([hidden])');
    return shown ? shown.scrollHeight - shown.clientHeight : 0;
  });
  await page.setViewportSize({ ...size, height: size.height + hidden });
  await page.screenshot({ path: join(SCREENS, `${name}.png`) });
  await page.setViewportSize(size);
}
