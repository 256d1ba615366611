import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the project. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));

const SOURCES = [
  'src',
  'functions',
  'taskpane',
  'assets',
  'webpack.config.js',
  'manifest.xml',
  'package-lock.json',
];
const LOCK = join(root, 'package-lock.json');
const INSTALLED = join(root, 'node_modules', '.package-lock.json');
const BUILT = join(root, 'dist', 'functions.json');

function newest(path) {
  if (!existsSync(path)) return 0;
  const found = statSync(path);
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(found.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

/** What a step prints goes to the error output, so that the program's own output stays clean. */
function step(command, args) {
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 2, 2],
    // There npm is a script of the shell.
    shell: process.platform === 'win32',
  });
  if (error) console.error(error.message);
  if (status !== 0) process.exit(status ?? 1);
}

/** Installs the packages and builds the bundles where they are missing or older than what they are made of. */
export function makeReady() {
  if (newest(INSTALLED) < newest(LOCK)) {
    console.error('Installing packages...');
    step('npm', ['ci', '--loglevel=error']);
  }
  if (newest(BUILT) < Math.max(...SOURCES.map((name) => newest(join(root, name))))) {
    console.error('Building...');
    step('npm', ['run', 'build', '--loglevel=silent']);
  }
}
