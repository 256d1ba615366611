import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { writeDemos } from '../demo/write-demos';
import { loadBundle } from '../engine/load-bundle';
import { buildPage } from './build-page';
import { openBrowser } from './open-browser';
import { serveFiles } from './serve-files';

const ROOT = join(fileURLToPath(new URL('.', import.meta.url)), '..', '..');
const PAGE = join(ROOT, 'out', 'workbench');
const PORT = 3210;

const { values } = parseArgs({ options: { 'no-open': { type: 'boolean' } } });
await buildPage(ROOT, PAGE);
await writeDemos(PAGE, loadBundle(join(ROOT, 'dist')));
const { address } = await serveFiles(PAGE, PORT);
const page = `${address}/workbench.html`;
console.log(`The workbench is at ${page}\nIt is served to this machine alone. Stop it with Ctrl+C.`);
if (!values['no-open'] && process.env['CI'] === undefined) openBrowser(page);
