import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the project. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** The folder of the bundled commands. */
export const COMMANDS = join(root, 'out', 'commands');

/** The list of what the last build was made of. */
export const MADE_OF = join(COMMANDS, 'made-of.json');

const SOURCES = [
  'src',
  'functions',
  'taskpane',
  'workbench',
  'assets',
  'scripts',
  'webpack.config.js',
  'manifest.xml',
  'package.json',
  'package-lock.json',
];
const LOCK = 'package-lock.json';
const INSTALLED = join('node_modules', '.package-lock.json');
const BUILT = join('dist', 'functions.json');

function withContents(path) {
  if (!statSync(join(root, path)).isDirectory()) return [path];
  return [path, ...readdirSync(join(root, path)).flatMap((name) => withContents(join(path, name)))];
}

/** The files and folders that a build is made of; a folder is newer when a file comes or goes. */
export function madeOf() {
  return SOURCES.flatMap(withContents);
}

/** When a file or folder was changed last; one that is gone is taken for changed just now. */
function changed(path) {
  return statSync(join(root, path), { throwIfNoEntry: false })?.mtimeMs ?? Infinity;
}

/** When a file was written; 0 where there is none. */
function written(path) {
  return statSync(join(root, path), { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

function isBuilt() {
  if (!existsSync(MADE_OF) || !existsSync(join(root, BUILT))) return false;
  const { mtimeMs } = statSync(MADE_OF);
  return JSON.parse(readFileSync(MADE_OF, 'utf8')).every((path) => changed(path) <= mtimeMs);
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
  if (written(INSTALLED) < written(LOCK)) {
    console.error('Installing packages...');
    step('npm', ['ci', '--loglevel=error']);
  }
  if (!isBuilt()) {
    console.error('Building...');
    step('npm', ['run', 'build', '--loglevel=silent']);
  }
}
