import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { openBrowser } from './open-browser';
import { serveFiles } from './serve-files';
import { stopWithStarter } from './stop-with-starter';

// The build puts the page together, with the demo workbooks beside it.
const PAGE = join(fileURLToPath(new URL('.', import.meta.url)), '..', '..', 'out', 'workbench');
const PORT = 3210;
const MOST_PORTS = 65_535;

const { values } = parseArgs({ options: { 'no-open': { type: 'boolean' }, port: { type: 'string' } } });
const wanted = values.port === undefined ? PORT : Number(values.port);
if (!Number.isInteger(wanted) || wanted < 0 || wanted > MOST_PORTS) {
  console.error(
    `"${values.port ?? ''}" is not a port. Accepted: a whole number from 0 to ${String(MOST_PORTS)}.`,
  );
  process.exit(2);
}
stopWithStarter();
const { address } = await serveFiles(PAGE, wanted, { start: '/workbench.html' });
const page = `${address}/workbench.html`;
console.log(`The workbench is at ${page}\nIt is served to this machine alone. Stop it with Ctrl+C.`);
if (!values['no-open'] && process.env['CI'] === undefined) openBrowser(page);
