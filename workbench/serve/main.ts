import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { writeDemos } from '../demo/write-demos';
import { loadBundle } from '../engine/load-bundle';
import { buildPage } from './build-page';
import { inPlaceOf } from './in-place-of';
import { openBrowser } from './open-browser';
import { serveFiles } from './serve-files';
import { stopWithStarter } from './stop-with-starter';

const ROOT = join(fileURLToPath(new URL('.', import.meta.url)), '..', '..');
const PAGE = join(ROOT, 'out', 'workbench');
const PORT = 3210;
const MOST_PORTS = 65_535;

const { values } = parseArgs({ options: { 'no-open': { type: 'boolean' }, port: { type: 'string' } } });
const wanted = values.port === undefined ? PORT : Number(values.port);
if (!Number.isInteger(wanted) || wanted < 0 || wanted > MOST_PORTS) {
  console.error(
    `"${values.port ?? ''}" is no port. Accepted: a whole number from 0 to ${String(MOST_PORTS)}.`,
  );
  process.exit(2);
}
stopWithStarter();
await inPlaceOf(PAGE, async (folder) => {
  await buildPage(ROOT, folder);
  await writeDemos(folder, loadBundle(join(ROOT, 'dist')));
});
const { address } = await serveFiles(PAGE, wanted, { start: '/workbench.html' });
const page = `${address}/workbench.html`;
console.log(`The workbench is at ${page}\nIt is served to this machine alone. Stop it with Ctrl+C.`);
if (!values['no-open'] && process.env['CI'] === undefined) openBrowser(page);
