import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import prettier from 'prettier';
import { tidy } from '../src/quantity/shown-number';
import type { PublishedCheck, SourceChecks } from '../tests/published/check';
import { checkedParts, checkedSources } from '../tests/published/sources';

const target = join(dirname(dirname(fileURLToPath(import.meta.url))), 'docs', 'published-checks.md');

const DIGITS = 7;
const SAME = 1e-9;

function shown(value: number): string {
  return String(tidy(value, DIGITS));
}

function difference({ relation, value }: PublishedCheck, ours: number): string {
  if (relation !== undefined) return 'within the bound';
  const off = ours - value;
  return Math.abs(off) <= SAME * Math.max(1, Math.abs(value)) ? '0' : String(tidy(off, 2));
}

function line(check: PublishedCheck): string {
  const { what, value, unit, mark, relation, because, second, reading } = check;
  const ours = check.ours();
  const bound = relation === undefined ? '' : `${relation} `;
  const kind = [mark, ...(reading ? ['a reading'] : []), ...(second ? [`also by ${second.by}`] : [])].join(
    '; ',
  );
  return `| ${what} | ${bound}${shown(value)} ${unit} | ${shown(ours)} | ${difference(check, ours)} | ${because} | ${kind} |`;
}

function section({ document, edition, section: part, checks }: SourceChecks): string {
  const where = [edition, part].filter((text) => text !== '').join('; ');
  return [
    `### ${document}`,
    ...(where === '' ? [] : [`${where}.`]),
    [
      '| what | value | ours | difference | may differ, or what differs | kind |',
      '| --- | --- | --- | --- | --- | --- |',
      ...checks.map(line),
    ].join('\n'),
  ].join('\n\n');
}

/**
 * The table of the checks against published values, made from the checks themselves.
 * @returns its text
 */
export async function freshTable(): Promise<string> {
  const all = checkedSources.flatMap(({ checks }) => checks);
  const count = (mark: PublishedCheck['mark']): string =>
    String(all.filter((check) => check.mark === mark).length);
  const intro = [
    '# Checks against values from outside the project',
    `Made by \`npx tsx scripts/write-published-table.ts\` from \`tests/published/checks\`, and run by the tests. ${String(all.length)} values: ${count('published')} published (read in the source or in a page that quotes it), ${count('computed')} computed (worked out from such values), ${count('from memory')} from memory (each with a second way beside it), ${count('common practice')} common practice; ${String(all.filter(({ reading }) => reading).length)} of them are readings.`,
    'A bound ("at most", "at least") is a limit that our value must stay within. Any other value must match as closely as it is known. A reading only says that our table holds what the source says: it guards against typing errors and proves no rule.',
  ];
  const parts = checkedParts.flatMap(({ title, text: says, sources }) => [
    `## ${title}`,
    says,
    ...sources.map(section),
  ]);
  const text = [...intro, ...parts].join('\n\n');
  const options = await prettier.resolveConfig(target);
  return prettier.format(text, { ...options, parser: 'markdown' });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, await freshTable());
}
