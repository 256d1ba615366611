import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeEach, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'pre-commit-'));
const clone = join(folder, 'clone');

function git(...args: string[]): { status: number | null; said: string } {
  const { status, stdout, stderr } = spawnSync('git', args, { cwd: clone, encoding: 'utf8' });
  return { status, said: stdout + stderr };
}

const write = (name: string, text: string) => {
  writeFileSync(join(clone, name), text);
};
const commit = () =>
  git('-c', 'user.name=A', '-c', 'user.email=a@example.com', 'commit', '--message', 'A file');

beforeEach(() => {
  rmSync(clone, { recursive: true, force: true });
  mkdirSync(clone);
  for (const name of ['.githooks', '.prettierrc.json', 'package.json']) {
    cpSync(resolve(name), join(clone, name), { recursive: true });
  }
  write('eslint.config.js', "export default [{ rules: { 'no-debugger': 'error' } }];\n");
  git('init');
  git('config', 'core.hooksPath', '.githooks');
});

afterAll(() => {
  rmSync(folder, { recursive: true });
});

it('what is staged must be in format, and nothing else', () => {
  symlinkSync(resolve('node_modules'), join(clone, 'node_modules'));
  write('good.json', '{ "a": 1 }\n');
  write('bad.json', '{"a":1}');
  git('add', 'good.json');
  expect(commit().status).toBe(0);
  git('add', 'bad.json');
  const { status, said } = commit();
  expect(status).not.toBe(0);
  expect(said).toContain('bad.json');
});

it('what is staged must pass the lint', () => {
  symlinkSync(resolve('node_modules'), join(clone, 'node_modules'));
  write('stops.js', 'debugger;\n');
  git('add', 'stops.js');
  const { status, said } = commit();
  expect(status).not.toBe(0);
  expect(said).toContain('no-debugger');
});

it('without the packages everything can be committed', () => {
  write('bad.json', '{"a":1}');
  git('add', 'bad.json');
  expect(commit().status).toBe(0);
});
