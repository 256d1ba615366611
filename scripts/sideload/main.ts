import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:https';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { certificate, CERTIFICATES } from './certificate';
import { filesOf } from '../../workbench/serve/files-of';
import { thisMachine } from './machine';
import { register, unregister } from './register';

const PORT = 3000;
const ADDRESS = `https://localhost:${String(PORT)}`;
const DIST = join(import.meta.dirname, '..', '..', 'dist');
const MANIFEST = join(DIST, 'manifest.xml');

function remove(): void {
  console.log(unregister(thisMachine, MANIFEST));
  console.log(`The certificate stays: npx ${CERTIFICATES} uninstall takes it away.`);
}

async function serve(): Promise<void> {
  if (!readFileSync(MANIFEST, 'utf8').includes(`"${ADDRESS}/`)) {
    throw new Error(`dist/ was built for another address than ${ADDRESS}: npm run build`);
  }
  const server = createServer(certificate(thisMachine), filesOf(DIST, { others: true })).listen(
    PORT,
    'localhost',
  );
  await once(server, 'listening');
  console.log(register(thisMachine, MANIFEST));
  console.log(
    `\nServing dist/ at ${ADDRESS}. Ctrl+C ends it; npm run sideload -- --remove takes the add-in away.`,
  );
}

try {
  const { values } = parseArgs({ options: { remove: { type: 'boolean', default: false } } });
  if (values.remove) remove();
  else await serve();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
