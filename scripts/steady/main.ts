import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { failureCounts, failuresOf, type RunReport } from './failures';

const USE = 'npm run test:steady -- --runs 20 --busy 2';
const ROOT = join(import.meta.dirname, '..', '..');
const VITEST = join(ROOT, 'node_modules', 'vitest', 'vitest.mjs');
// Ends with this process, however that ends.
const BUSY = 'const parent = process.ppid; while (process.ppid === parent);';

/** A whole number of the command line. */
function whole(option: string, text: string, least: number): number {
  const number = Number(text);
  if (Number.isInteger(number) && number >= least) return number;
  throw new Error(`--${option} must be a whole number, ${String(least)} or more, not "${text}": ${USE}`);
}

/** Runs the browser tests once, and gives the tests that failed. */
function runOnce(report: string): string[] {
  rmSync(report, { force: true });
  const args = ['run', '--project', 'browser', '--reporter=json', `--outputFile=${report}`];
  const { status } = spawnSync(process.execPath, [VITEST, ...args], { cwd: ROOT, stdio: 'ignore' });
  if (!existsSync(report)) return ['the test runner: it gave no report'];
  const failed = failuresOf(JSON.parse(readFileSync(report, 'utf8')) as RunReport, ROOT);
  return failed.length === 0 && status !== 0
    ? ['the test runner: something failed outside of a file']
    : failed;
}

function steady(runs: number, busy: number): string[][] {
  const folder = mkdtempSync(join(tmpdir(), 'washdown-steady-'));
  const spinning: ChildProcess[] = Array.from({ length: busy }, () =>
    spawn(process.execPath, ['-e', BUSY], { stdio: 'ignore' }),
  );
  const stop = (): void => {
    for (const each of spinning) each.kill();
    rmSync(folder, { recursive: true, force: true });
  };
  process.once('exit', stop);
  // A child that this process waited for would keep it from ever ending.
  for (const each of spinning) each.unref();
  return Array.from({ length: runs }, (_, index) => {
    const start = performance.now();
    const failed = runOnce(join(folder, 'report.json'));
    const seconds = ((performance.now() - start) / 1000).toFixed(0);
    console.log(`run ${String(index + 1)} of ${String(runs)}: ${String(failed.length)} failed, ${seconds} s`);
    for (const name of failed) console.log(`  ${name}`);
    return failed;
  });
}

try {
  const { values } = parseArgs({
    options: { runs: { type: 'string', default: '20' }, busy: { type: 'string', default: '2' } },
  });
  const runs = steady(whole('runs', values.runs, 1), whole('busy', values.busy, 0));
  console.log(failureCounts(runs).join('\n'));
  process.exitCode = runs.some((failed) => failed.length > 0) ? 1 : 0;
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 2;
}
