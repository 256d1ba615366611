import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { resultUnit } from '../../functions/result-unit';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { runEstimate } from '../../workbench/estimate/run';

const BUILT = resolve('out/commands');
const DEMO = resolve('out/workbench/demo-bid-us.xlsx');

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'built-'));
  copyFileSync(DEMO, join(folder, 'bid.xlsx'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

/** Runs the estimate as npm does for somebody who stands in the folder. */
function estimate(...args: string[]) {
  return spawnSync(process.execPath, ['scripts/run-command.mjs', 'estimate', ...args], {
    encoding: 'utf8',
    env: { ...process.env, INIT_CWD: folder },
  });
}

/** A bundle and what it cannot start without. */
function startsWith(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  const text = readFileSync(join(BUILT, file), 'utf8');
  for (const [, part = ''] of text.matchAll(/^(?:import|export)\b[^"']*["']\.\/([^"']+)["'];$/gm)) {
    startsWith(part, seen);
  }
  return seen;
}

describe('the estimate that was built', () => {
  it('gives the numbers and the file that its source gives', async () => {
    const { status, stdout } = estimate('bid.xlsx', '--out', 'built.xlsx', '--json');
    expect(status).toBe(0);
    let printed = '';
    const source = join(folder, 'source.xlsx');
    await runEstimate([join(folder, 'bid.xlsx'), '--out', source, '--json'], {
      bundle: () => loadBundle(resolve('dist')),
      unitOf: resultUnit,
      print: (text) => {
        printed += text;
      },
      warn: () => undefined,
    });
    expect(JSON.parse(stdout)).toEqual(JSON.parse(printed));
    expect(readFileSync(join(folder, 'built.xlsx')).equals(readFileSync(source))).toBe(true);
  });

  it('refuses a file that is not there, with nothing on its output', () => {
    const { status, stdout, stderr } = estimate('nothing.xlsx');
    expect([status, stdout, stderr]).toEqual([1, '', 'nothing.xlsx: There is no such file.\n']);
  });

  it("does not start with the spreadsheet's engine", () => {
    const holds = (file: string) => readFileSync(join(BUILT, file), 'utf8').includes('UniverFormulaEngine');
    const first = [...startsWith('estimate.mjs')];
    expect(first.length).toBeGreaterThan(1);
    expect(first.filter(holds)).toEqual([]);
    const whole = /import\("\.\/([^"]+)"\)/.exec(readFileSync(join(BUILT, 'estimate.mjs'), 'utf8'))?.[1];
    expect([...startsWith(whole ?? '')].some(holds)).toBe(true);
  });
});
