import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';

/** Runs one test file in a folder of its own, and gives the last line that is said of it. */
function closingLineOf(text: string): string | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'closing-line-'));
  try {
    writeFileSync(join(folder, 'a.test.js'), text);
    const program = resolve('node_modules/vitest/vitest.mjs');
    const options = ['--root', folder, '--globals', '--reporter', resolve('tests/closing-line.ts')];
    const { stdout } = spawnSync(process.execPath, [program, 'run', ...options], { encoding: 'utf8' });
    return stdout.trim().split('\n').at(-1);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

it.each([
  ['a test that fails', "it('a', () => {}); it('b', () => { throw new Error('b'); });", '1 passed, 1 failed'],
  [
    'a hook',
    "describe('a', () => { beforeAll(() => { throw new Error('a'); }); it('b', () => {}); });",
    '0 passed, 1 failed',
  ],
  ['an import', "import './missing'; it('a', () => {});", '0 passed, 1 failed'],
  [
    'a throw after its test',
    "it('a', () => { setTimeout(() => { throw new Error('a'); }); }); it('b', () => new Promise((done) => setTimeout(done, 50)));",
    '2 passed, 1 failed',
  ],
])('the closing line counts %s', (_, text, line) => {
  expect(closingLineOf(text)).toBe(line);
});
