import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { checkBook, OUTCOMES, type Outcome } from './check-book';

// Runs over the workbooks of a folder and counts what became of them. Build first: npm run build.

const [folder, ...more] = process.argv.slice(2);
if (folder === undefined || more.length > 0) {
  console.error('Which folder? npx tsx scripts/prove/corpus.ts FOLDER');
  process.exit(2);
}
const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .map((name) => join(folder, name))
  .filter((path) => /\.xl[st][xm]$/i.test(path) && statSync(path).isFile())
  .sort();
const bundle = loadBundle(join(import.meta.dirname, '..', '..', 'dist'));
const counts = new Map<Outcome, number>(OUTCOMES.map((outcome) => [outcome, 0]));
let slowest = 0;
for (const path of paths) {
  const start = performance.now();
  const { outcome, why } = await checkBook(readFileSync(path), bundle);
  slowest = Math.max(slowest, (performance.now() - start) / 1000);
  counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
  if (outcome !== 'held') console.error(`${outcome}  ${path}: ${why}`);
}
for (const [outcome, count] of counts) console.log(`${outcome} ${String(count)}`);
console.log(`workbooks ${String(paths.length)}, the slowest took ${slowest.toFixed(1)} s`);
process.exitCode = (counts.get('changed') ?? 0) + (counts.get('failed') ?? 0) > 0 ? 1 : 0;
