import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { resultUnit } from '../../functions/result-unit';
import { loadBundle } from '../engine/load-bundle';
import { runEstimate } from './run';
import { watch } from './watch';

const DIST = join(fileURLToPath(new URL('.', import.meta.url)), '..', '..', 'dist');

// Libraries may print; standard output is for the estimate alone.
console.log = console.error;

const rest = watch();
process.exitCode = await runEstimate(process.argv.slice(2), {
  bundle: () => loadBundle(DIST),
  unitOf: resultUnit,
  print: (text) => process.stdout.write(text),
  warn: (text) => process.stderr.write(text),
});
await rest();
