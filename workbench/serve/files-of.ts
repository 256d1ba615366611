import { readdirSync, readFileSync } from 'node:fs';
import type { RequestListener } from 'node:http';
import { extname, join } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.xml': 'application/xml',
};

/**
 * Answers requests with the files of a folder and nothing outside of it.
 * @param folder the folder
 * @returns what a server calls
 */
export function filesOf(folder: string): RequestListener {
  return (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'https://localhost');
    const files = readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => join(parentPath, name));
    const file = files.find((known) => known === join(folder, pathname));
    if (file === undefined) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {
      'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
      // Excel on the web reads functions.json from a page of its own.
      'access-control-allow-origin': '*',
      'cache-control': 'no-store',
    });
    response.end(readFileSync(file));
  };
}
