import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { raised, type VersionFiles } from './raise';

const root = join(import.meta.dirname, '..', '..');
const NAMES = [
  'package.json',
  'package-lock.json',
  'manifest.xml',
  'CHANGELOG.md',
  'src/rules/version.ts',
] as const;

try {
  const { values, positionals } = parseArgs({
    options: { rules: { type: 'boolean' } },
    allowPositionals: true,
  });
  const files = Object.fromEntries(
    NAMES.map((name) => [name, readFileSync(join(root, name), 'utf8')]),
  ) as VersionFiles;
  const next = raised(files, positionals.join(' '), values.rules === true);
  for (const name of NAMES) writeFileSync(join(root, name), next[name]);
  console.log(
    `Version ${positionals.join(' ')} stands in ${NAMES.join(', ')}. Next: npm test, then a commit and its tag.`,
  );
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
