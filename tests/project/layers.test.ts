import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { afterEach, expect, it } from 'vitest';

const run = promisify(execFile);
const program = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
let made: string | undefined;

/** Cruises a small tree of its own under the project's rules, and tells which rules it breaks. */
async function brokenBy(files: Record<string, string>): Promise<string> {
  made = mkdtempSync(join(tmpdir(), 'layers-'));
  for (const [name, text] of Object.entries({ 'tsconfig.json': '{}', 'package.json': '{}', ...files })) {
    mkdirSync(join(made, name, '..'), { recursive: true });
    writeFileSync(join(made, name), text);
  }
  const roots = Object.keys(files).map((name) => name.split('/')[0] ?? name);
  const args = [
    program,
    '--config',
    resolve('.dependency-cruiser.cjs'),
    '--output-type',
    'err',
    ...new Set(roots),
  ];
  return run(process.execPath, args, { cwd: made }).then(
    ({ stdout }) => stdout,
    (error: unknown) => (error as { stdout: string }).stdout,
  );
}

afterEach(() => {
  if (made) rmSync(made, { recursive: true });
  made = undefined;
});

it('the project keeps its layers', async () => {
  const args = [program, '--config', '.dependency-cruiser.cjs', 'src', 'functions', 'taskpane', 'workbench'];
  const { stdout } = await run(process.execPath, args);
  expect(stdout).toContain('no dependency violations');
});

it('an arrow that points outwards is refused', async () => {
  const said = await brokenBy({
    'src/quantity/a.ts': "import { b } from '../estimate/b'; export const a = b;",
    'src/estimate/b.ts': 'export const b = 1;',
  });
  expect(said).toContain('quantity-looks-inward');
});

it('an import of a type alone is an arrow too', async () => {
  const said = await brokenBy({
    'src/quantity/a.ts': "import type { B } from '../estimate/b'; export type A = B;",
    'src/estimate/b.ts': 'export type B = number;',
  });
  expect(said).toContain('quantity-looks-inward');
});

it('the core is refused what the host has', async () => {
  const said = await brokenBy({
    'src/rules/a.ts': "import { readFileSync } from 'node:fs'; export const a = readFileSync;",
  });
  expect(said).toContain('core-knows-no-host');
});

it('a room of the pane is refused what another panel keeps', async () => {
  const said = await brokenBy({
    'taskpane/review/a.ts': "import { b } from '../decisions/b'; export const a = b;",
    'taskpane/decisions/b.ts': 'export const b = 1;',
  });
  expect(said).toContain('review-keeps-to-its-room');
});

it('what the panels share knows no panel', async () => {
  const said = await brokenBy({
    'taskpane/shared/a.ts': "import { b } from '../steps/b'; export const a = b;",
    'taskpane/steps/b.ts': 'export const b = 1;',
  });
  expect(said).toContain('shared-keeps-to-its-room');
});

it('every room of the pane has a rule', () => {
  const rooms = readdirSync('taskpane', { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const rules = readFileSync('.dependency-cruiser.cjs', 'utf8');
  expect(rooms.filter(({ name }) => !new RegExp(`^  '?${name}'?: \\[`, 'm').test(rules))).toEqual([]);
});
