import { readdirSync, readFileSync } from 'node:fs';
import type { IncomingMessage, OutgoingHttpHeaders, RequestListener } from 'node:http';
import { extname, join } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.xml': 'application/xml',
};

/** Who may use the files besides the pages among them. */
export interface Audience {
  /** Whether pages of others may read and frame them, as Excel on the web does with an add-in that is tried. */
  readonly others?: boolean;
  /** Where `/` leads, from the folder. */
  readonly start?: string;
}

interface Answer {
  readonly status: number;
  readonly headers: OutgoingHttpHeaders;
  readonly body?: Uint8Array;
}

// A page of somebody else may lead its own name here; by name we are only known to this machine.
const OWN_NAMES = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/i;

const ALWAYS: OutgoingHttpHeaders = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
};
const FOR_OWN: OutgoingHttpHeaders = {
  'content-security-policy': "frame-ancestors 'self'",
  'cross-origin-resource-policy': 'same-origin',
};
// Excel on the web reads functions.json from a page of its own, and shows the pane in one.
const FOR_OTHERS: OutgoingHttpHeaders = {
  'access-control-allow-origin': '*',
  'cross-origin-resource-policy': 'cross-origin',
};

function refusal(status: number, why: string, headers: OutgoingHttpHeaders = {}): Answer {
  const body = Buffer.from(`${why}\n`);
  return { status, headers: { 'content-type': 'text/plain; charset=utf-8', ...headers }, body };
}

function pathOf(target: string): string | undefined {
  if (!target.startsWith('/') || target.startsWith('//')) return undefined;
  try {
    return new URL(target, 'http://localhost').pathname;
  } catch {
    return undefined;
  }
}

function answer(folder: string, { start }: Audience, request: IncomingMessage): Answer {
  if (!OWN_NAMES.test(request.headers.host ?? '')) {
    return refusal(421, 'This server answers to localhost alone.');
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return refusal(405, 'Files are only read here.', { allow: 'GET, HEAD' });
  }
  const path = pathOf(request.url ?? '');
  if (path === undefined) return refusal(400, 'There is no such address.');
  if (path === '/' && start !== undefined) return { status: 302, headers: { location: start } };
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));
  const file = files.find((known) => known === join(folder, path));
  if (file === undefined) return refusal(404, 'There is no such file.');
  const type = TYPES[extname(file)] ?? 'application/octet-stream';
  return { status: 200, headers: { 'content-type': type }, body: readFileSync(file) };
}

/**
 * Answers requests of this machine with the files of a folder and nothing outside of it.
 * @param folder the folder
 * @param audience who may use the files
 * @returns what a server calls; whatever the request, it answers and goes on
 */
export function filesOf(folder: string, audience: Audience = {}): RequestListener {
  return (request, response) => {
    let found: Answer;
    try {
      found = answer(folder, audience, request);
    } catch {
      found = refusal(500, 'The file cannot be read.');
    }
    const { status, headers, body = new Uint8Array() } = found;
    response.writeHead(status, {
      ...ALWAYS,
      ...(audience.others ? FOR_OTHERS : FOR_OWN),
      ...headers,
      'content-length': body.length,
    });
    response.end(request.method === 'HEAD' ? undefined : body);
  };
}
