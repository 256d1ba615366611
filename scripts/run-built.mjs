import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { makeReady, root } from './built.mjs';

const [program, ...args] = process.argv.slice(2);
makeReady();
const loader = pathToFileURL(createRequire(join(root, 'package.json')).resolve('tsx')).href;
// npm starts scripts in the project's folder; file names mean those where the user stands.
const { status } = spawnSync(process.execPath, ['--import', loader, join(root, program), ...args], {
  cwd: process.env.INIT_CWD ?? process.cwd(),
  stdio: 'inherit',
});
process.exit(status ?? 1);
