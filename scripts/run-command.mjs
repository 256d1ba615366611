import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { COMMANDS, makeReady } from './built.mjs';

// In this process and from its bundle: somebody waits for it.
const [command, ...args] = process.argv.slice(2);
makeReady();
const program = join(COMMANDS, `${command}.mjs`);
process.argv = [process.execPath, program, ...args];
// npm starts scripts in the project's folder; file names mean those where the user stands.
if (process.env.INIT_CWD !== undefined) process.chdir(process.env.INIT_CWD);
await import(pathToFileURL(program).href);
