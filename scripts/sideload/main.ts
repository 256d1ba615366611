import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:https';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { certificate, CERTIFICATES } from './certificate';
import { filesOf } from '../../workbench/serve/files-of';
import { thisMachine } from './machine';
import { register, unregister } from './register';

const STANDARD_PORT = '3000';
const MOST_PORT = 65_535;
const DIST = join(import.meta.dirname, '..', '..', 'dist');
const MANIFEST = join(DIST, 'manifest.xml');

function remove(): void {
  console.log(unregister(thisMachine, MANIFEST));
  console.log(`The certificate stays: npx ${CERTIFICATES} uninstall removes it.`);
}

function portOf(given: string): number {
  const port = Number(given);
  if (Number.isInteger(port) && port >= 1 && port <= MOST_PORT) return port;
  throw new Error(
    `"${given}" is not a port. Accepted: --port with a whole number from 1 to ${String(MOST_PORT)}.`,
  );
}

async function serve(port: number): Promise<void> {
  const address = `https://localhost:${String(port)}`;
  if (!readFileSync(MANIFEST, 'utf8').includes(`"${address}/`)) {
    throw new Error(
      `dist/ was built for another address than ${address}: npm run build -- --env url=${address}`,
    );
  }
  const server = createServer(certificate(thisMachine), filesOf(DIST, { others: true })).listen(
    port,
    'localhost',
  );
  await once(server, 'listening').catch((error: unknown) => {
    const { code } = error as NodeJS.ErrnoException;
    throw code === 'EADDRINUSE'
      ? new Error(`The port ${String(port)} is taken. Accepted: --port with another one.`)
      : error;
  });
  console.log(register(thisMachine, MANIFEST, address));
  console.log(
    `\nServing dist/ at ${address}. Ctrl+C ends it; npm run sideload -- --remove removes the add-in.`,
  );
}

try {
  const { values } = parseArgs({
    options: {
      remove: { type: 'boolean', default: false },
      port: { type: 'string', default: STANDARD_PORT },
    },
  });
  const port = portOf(values.port);
  if (values.remove) remove();
  else await serve(port);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
