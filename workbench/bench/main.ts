import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { figureTable, isMissed, type Figure } from './figures';
import { parts } from './parts';
import { median } from './timing';

const SIZES = [1_000, 10_000, 100_000, 1_000_000];
const ROUNDS = 3;
const MIDDLE_ROWS = 'SCHEDULE, 10,000 rows, ns a row';
const MOST_ROWS = 'SCHEDULE, 1,000,000 rows, ns a row';

const { values: options, positionals } = parseArgs({
  options: {
    check: { type: 'boolean' },
    json: { type: 'boolean' },
    long: { type: 'boolean' },
    part: { type: 'string' },
  },
  allowPositionals: true,
});
if (options.part === undefined) bench();
else console.log(JSON.stringify(await parts[options.part]?.(Number(positionals[0]))));

/** Each part has a process of its own, so that none meets the memory and the habits of another. */
function inProcess(part: string, rows: number): Figure[] {
  const program = fileURLToPath(import.meta.url);
  const args = [...process.execArgv, program, '--part', part, String(rows)];
  return JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8' })) as Figure[];
}

/** The figures of several sizes, a round of all sizes after the other; of each the median. */
function inRounds(part: string, sizes: readonly number[]): Figure[] {
  const rounds = Array.from({ length: ROUNDS }, () => sizes.flatMap((rows) => inProcess(part, rows)));
  return (rounds[0] ?? []).map((figure, index) => ({
    ...figure,
    value: median(rounds.map((round) => round[index]?.value ?? NaN)),
  }));
}

function bench(): void {
  const ofSizes = inRounds('schedule', SIZES);
  const nsARow = (of: string): number => ofSizes.find((figure) => figure.name === of)?.value ?? NaN;
  const growth = nsARow(MOST_ROWS) / nsARow(MIDDLE_ROWS);
  const figures: Figure[] = [
    ...ofSizes,
    { name: 'time a row, 1,000,000 rows by 10,000', value: growth, most: 1.2 },
    ...inProcess('payload', 1_000),
    ...inProcess('payload', 5_000),
    ...inProcess('scattered', 10_000),
    ...inProcess('scattered', 1_000_000),
    ...inProcess('native', 1_000),
    ...(options.long ? inProcess('native', 10_000) : []),
    ...inProcess('formulas', 1_000),
    ...inRounds('recorder', [10_000]),
    ...inProcess('choices', 46),
    ...inProcess('edit', 300),
  ];
  if (options.json) console.log(JSON.stringify(figures));
  else console.log(figureTable(figures));
  if (options.check && figures.some(isMissed)) process.exitCode = 1;
}
