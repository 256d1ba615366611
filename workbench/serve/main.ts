import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { openBrowser } from './open-browser';
import { serveFiles } from './serve-files';

// The build puts the page together, with the demo workbooks beside it.
const PAGE = join(fileURLToPath(new URL('.', import.meta.url)), '..', '..', 'out', 'workbench');
const PORT = 3210;

const { values } = parseArgs({ options: { 'no-open': { type: 'boolean' } } });
const { address } = await serveFiles(PAGE, PORT);
const page = `${address}/workbench.html`;
console.log(`The workbench is at ${page}\nIt is served to this machine alone. Stop it with Ctrl+C.`);
if (!values['no-open'] && process.env['CI'] === undefined) openBrowser(page);
