import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, expect, it } from 'vitest';

const run = promisify(execFile);
const program = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');

/** Small trees, each of which breaks a rule; they have no file in common. */
const trees: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  outwards: {
    'src/quantity/a.ts': "import { b } from '../estimate/b'; export const a = b;",
    'src/estimate/b.ts': 'export const b = 1;',
  },
  'type alone': {
    'src/quantity/c.ts': "import type { B } from '../estimate/d'; export type A = B;",
    'src/estimate/d.ts': 'export type B = number;',
  },
  host: {
    'src/rules/a.ts': "import { readFileSync } from 'node:fs'; export const a = readFileSync;",
  },
  'another panel': {
    'taskpane/review/a.ts': "import { b } from '../decisions/b'; export const a = b;",
    'taskpane/decisions/b.ts': 'export const b = 1;',
  },
  panels: {
    'taskpane/shared/a.ts': "import { b } from '../steps/b'; export const a = b;",
    'taskpane/steps/b.ts': 'export const b = 1;',
  },
};

let said: readonly string[] = [];

/** Cruises the small trees under the project's rules, all at once: the program takes long to start. */
beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), 'layers-'));
  const files = Object.assign(
    { 'tsconfig.json': '{}', 'package.json': '{}' },
    ...Object.values(trees),
  ) as Record<string, string>;
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const args = [program, '--config', resolve('.dependency-cruiser.cjs'), '--output-type', 'err'];
  const printed = await run(process.execPath, [...args, 'src', 'taskpane'], { cwd: folder }).then(
    ({ stdout }) => stdout,
    (error: unknown) => (error as { stdout: string }).stdout,
  );
  rmSync(folder, { recursive: true });
  said = printed.split('\n');
});

/** What is said of the files of a tree: the rules that they break. */
function brokenBy(tree: string): string {
  const files = Object.keys(trees[tree] ?? {});
  return said.filter((line) => files.some((file) => line.includes(file))).join('\n');
}

it('the project keeps its layers', async () => {
  const args = [program, '--config', '.dependency-cruiser.cjs', 'src', 'functions', 'taskpane', 'workbench'];
  const { stdout } = await run(process.execPath, args);
  expect(stdout).toContain('no dependency violations');
});

it('an arrow that points outwards is refused', () => {
  expect(brokenBy('outwards')).toContain('quantity-looks-inward');
});

it('an import of a type alone is an arrow too', () => {
  expect(brokenBy('type alone')).toContain('quantity-looks-inward');
});

it('the core is refused what the host has', () => {
  expect(brokenBy('host')).toContain('core-knows-no-host');
});

it('a room of the pane is refused what another panel keeps', () => {
  expect(brokenBy('another panel')).toContain('review-keeps-to-its-room');
});

it('what the panels share knows no panel', () => {
  expect(brokenBy('panels')).toContain('shared-keeps-to-its-room');
});

it('every room of the pane has a rule', () => {
  const rooms = readdirSync('taskpane', { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const rules = readFileSync('.dependency-cruiser.cjs', 'utf8');
  expect(rooms.filter(({ name }) => !new RegExp(`^  '?${name}'?: \\[`, 'm').test(rules))).toEqual([]);
});
