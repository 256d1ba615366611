import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';

it('a run ends with its ten slowest tests, each with its file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'slowest-'));
  try {
    writeFileSync(
      join(folder, 'a.test.js'),
      `it.each(Array.from({ length: 11 }, (_, index) => index))('quick %s', () => {});
       it('slow', () => new Promise((done) => setTimeout(done, 300)));`,
    );
    const program = resolve('node_modules/vitest/vitest.mjs');
    const options = ['--root', folder, '--globals', '--reporter', resolve('tests/slowest.ts')];
    const { stdout } = spawnSync(process.execPath, [program, 'run', ...options], { encoding: 'utf8' });
    const [title, first, ...others] = stdout.trim().split('\n').slice(-11);
    expect(title).toBe('The slowest tests:');
    expect(first).toMatch(/^\s*\d+\.\d s {2}a\.test\.js: slow$/);
    expect(others).toHaveLength(9);
    for (const line of others) expect(line).toMatch(/^\s*\d+\.\d s {2}a\.test\.js: quick \d+$/);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
