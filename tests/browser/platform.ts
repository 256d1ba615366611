import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';

/** An error in a cell, as the host hands it to the platform's script. */
export const cellError = (code: string) => ({ type: 'CustomFunctionError', code });

/** One call of a worksheet function, as a cell makes it: an argument left out is null. */
export interface Call {
  readonly name: string;
  readonly args: readonly unknown[];
}

/** What the host is told of a call: a result, or a code and a message. */
export interface Told {
  readonly done: boolean;
  readonly value: unknown;
  /** 7 is #VALUE!, 1 is #N/A. */
  readonly code?: number;
}

// Bits of the flags that go with a call: the function takes errors.
const TAKES_ERRORS = 4;
const ORIGIN = 'https://bid.example';
const CALLS = 3;
const CALL = 1000;

declare global {
  /** What the platform's script sent to its host. */
  var sentToHost: { readonly id: number; readonly message: { readonly body: unknown } }[];
  /** Where the platform's script finds its host. */
  var _richApiNativeBridge: {
    sendMessageToHost: (text: string) => void;
    onMessageFromHost?: (text: string) => void;
  };
}

/**
 * The platform's own dispatcher of worksheet functions, from the registry's package, with our built bundle in it. The
 * host alone is played: it sends calls over the bridge that the desktop's host uses, and takes the results down.
 */
export class Dispatcher {
  private constructor(
    private readonly page: Page,
    private readonly takesErrors: boolean,
  ) {}

  /**
   * Loads the platform's script and the bundle into a page.
   * @param browser the browser
   * @returns the dispatcher
   */
  static async start(browser: Browser): Promise<Dispatcher> {
    const page = await browser.newPage();
    const served: Readonly<Record<string, string>> = {
      'host.html': '<script src="custom-functions-runtime.js"></script><script src="functions.js"></script>',
      'custom-functions-runtime.js': read(
        'node_modules/@microsoft/office-js/dist/custom-functions-runtime.js',
      ),
      'functions.js': read('dist/functions.js'),
      'functions-more.js': read('dist/functions-more.js'),
    };
    await page.route(`${ORIGIN}/**`, (route) => {
      const name = new URL(route.request().url()).pathname.slice(1);
      const contentType = name.endsWith('.js') ? 'text/javascript' : 'text/html';
      return route.fulfill(name in served ? { contentType, body: served[name] ?? '' } : { status: 404 });
    });
    await page.addInitScript(() => {
      globalThis.sentToHost = [];
      globalThis._richApiNativeBridge = {
        sendMessageToHost: (text) => {
          const request = JSON.parse(text) as (typeof sentToHost)[number];
          globalThis.sentToHost.push(request);
          const message = { statusCode: 200, headers: {}, body: { Results: [] } };
          const answer = JSON.stringify({ id: request.id, type: 2, message });
          setTimeout(() => globalThis._richApiNativeBridge.onMessageFromHost?.(answer));
        },
      };
    });
    await page.goto(`${ORIGIN}/host.html`);
    const listed = JSON.parse(read('dist/functions.json')) as Record<string, unknown>;
    return new Dispatcher(page, listed['allowErrorForDataTypeAny'] === true);
  }

  /**
   * Makes calls, as the host does. Where the metadata do not allow it, an error in an argument is the result and the
   * function is not called (platform documentation, "Manually create JSON metadata", allowErrorForDataTypeAny).
   * @param calls the calls
   * @returns what the host is told of each, in their order
   */
  async call(calls: readonly Call[]): Promise<Told[]> {
    const kept = calls.map(({ args }) => (this.takesErrors ? undefined : firstError(args)));
    const entries = calls.flatMap(({ name, args }, id) =>
      kept[id] === undefined ? [[1, CALL, '', [id, name, args, 'Bid!A1', TAKES_ERRORS], id]] : [],
    );
    await this.page.evaluate(
      (text) => {
        globalThis.sentToHost = [];
        globalThis._richApiNativeBridge.onMessageFromHost?.(text);
      },
      JSON.stringify({ type: CALLS, message: { entries } }),
    );
    if (entries.length > 0) await this.page.waitForFunction(() => globalThis.sentToHost.length > 0);
    const sent = await this.page.evaluate(() => globalThis.sentToHost.map(({ message }) => message.body));
    const told = new Map(sent.flatMap(resultsIn));
    return calls.map((_, id) => told.get(id) ?? { done: false, value: kept[id] });
  }
}

function read(file: string): string {
  return readFileSync(resolve(file), 'utf8');
}

function firstError(args: unknown): string | undefined {
  if (Array.isArray(args)) return args.map(firstError).find((code) => code !== undefined);
  return args !== null && typeof args === 'object' ? (args as { code: string }).code : undefined;
}

/** The results in a request of the platform's script: id, whether done, value, code. */
function resultsIn(body: unknown): [number, Told][] {
  const results: [number, Told][] = [];
  const look = (part: unknown): void => {
    if (!Array.isArray(part)) {
      if (part !== null && typeof part === 'object') Object.values(part).forEach(look);
    } else if (typeof part[0] === 'number' && typeof part[1] === 'boolean') {
      const [id, done, value, code] = part as [number, boolean, unknown, unknown];
      results.push([id, { done, value, ...(done ? {} : { code: Number(code) }) }]);
    } else part.forEach(look);
  };
  look(body);
  return results;
}
