import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { zipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { packArchive, partBytes, partText, type Archive } from '../../workbench/xlsx/archive';
import { rawArchive, WALLS, type RawSheet } from '../workbench/raw-workbook';

// Files that ask for more than there is. Each comes to a sentence or to values within the bounds of the command; what
// it took is printed. Those that take long too: HOSTILE=all npx vitest run tests/prove/hostile.test.ts

const ALL = process.env['HOSTILE'] === 'all';

const ESTIMATE = resolve('out/commands/estimate.mjs');
const MEGABYTE = 2 ** 20;
// Below what the command gives up at (watch.ts): each is refused or worked out, and none given up.
const MOST_MEGABYTES = 2048;
const folder = mkdtempSync(join(tmpdir(), 'washdown-hostile-'));
const preload = join(folder, 'usage.cjs');
writeFileSync(
  preload,
  `process.on('exit', () => process.stdout.write('USED ' + process.resourceUsage().maxRSS));`,
);
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** A book of the walls and a sheet with formulas in the first column. */
function withFormulas(formulas: readonly string[], extra = '', attributes = ''): Archive {
  const rows = formulas.map(
    (formula, index) =>
      `<row r="${String(index + 1)}"><c r="A${String(index + 1)}"><f${attributes}>${formula}</f><v>1</v></c></row>`,
  );
  return rawArchive([GOOD, { name: 'Bid', rows: rows.join('') }], extra);
}

const MASKING = '_xldudf_WASH_MASKING(Walls!A1:D2)';
const GOOD: RawSheet = {
  ...WALLS,
  rows:
    '<row r="1">' +
    ['Wall', 'Zone', 'Material', 'Area']
      .map((text, index) => `<c r="${'ABCD'.charAt(index)}1" t="inlineStr"><is><t>${text}</t></is></c>`)
      .join('') +
    '</row><row r="2">' +
    ['W1', 'South', 'Limestone']
      .map((text, index) => `<c r="${'ABCD'.charAt(index)}2" t="inlineStr"><is><t>${text}</t></is></c>`)
      .join('') +
    '<c r="D2"><v>100</v></c></row>',
  tables: [],
};

function withParts(count: number, megabytes: number, blanks = 0): Uint8Array {
  const parts = new Map(withFormulas([MASKING]));
  const large = new Uint8Array(megabytes * MEGABYTE).fill(0x20);
  for (let number = 1; number <= count; number += 1) parts.set(`xl/media/large${String(number)}.bin`, large);
  const path = 'xl/worksheets/sheet1.xml';
  const spaces = ' '.repeat(blanks * MEGABYTE);
  parts.set(path, partBytes(partText(parts, path).replace('<sheetData>', `<sheetData>${spaces}`)));
  return zipSync(Object.fromEntries(parts), { level: 1 });
}

function rows(count: number, cell: (row: number) => string): RawSheet {
  const lines: string[] = [];
  for (let row = 1; row <= count; row += 1) lines.push(`<row r="${String(row)}">${cell(row)}</row>`);
  return { name: 'Long', rows: lines.join('') };
}

const BID: RawSheet = { name: 'Bid', rows: `<row r="1"><c r="A1"><f>${MASKING}</f></c></row>` };
const chain = (length: number): string[] =>
  Array.from({ length }, (_, index) => (index === 0 ? '1' : `A${String(index)}+1`));

type Made = readonly [string, () => Uint8Array, RegExp];

const FILES: readonly Made[] = [
  ['a part of 200 MB', () => withParts(1, 200), /unpacks to 200 MB\. Accepted: 128 MB at most/],
  ['10,001 parts', () => withParts(10_001, 0), /parts\. Accepted: 10000 at most/],
  [
    '1,048,576 rows',
    () => packArchive(rawArchive([GOOD, BID, rows(1_048_576, () => '')])),
    /has more than 1,000,000 rows and cells/,
  ],
  [
    'a Washdown formula over A90:XFD1048576',
    () => packArchive(withFormulas(['_xldudf_WASH_MASKING(A90:XFD1048576)'])),
    /reads 17,178,411,008 cells\. Accepted: 5,000,000/,
  ],
  [
    'an array formula of A90:XFD1048576',
    () => packArchive(withFormulas([MASKING], '', ' t="array" ref="A90:XFD1048576"')),
    /fills 17,178,411,008 cells\. Accepted: 1,048,576/,
  ],
  [
    'an ordinary formula over A90:XFD1048576 of ours',
    () => packArchive(withFormulas([MASKING, 'SUM(A90:XFD1048576)*A1'])),
    /cannot be worked out here[\s\S]*SUM\(A90:XFD1048576\)\*A1/,
  ],
  [
    '10,000 names',
    () =>
      packArchive(
        withFormulas(
          [MASKING],
          `<definedNames>${Array.from({ length: 10_000 }, (_, i) => `<definedName name="n${String(i)}">n${String(i + 1)}+1</definedName>`).join('')}</definedNames>`,
        ),
      ),
    /1 Washdown cell/,
  ],
  [
    'a chain of 60,000 cells that nobody asks for',
    () => packArchive(withFormulas([...chain(60_000), MASKING])),
    /1 Washdown cell/,
  ],
  [
    'a chain of 60,000 cells below ours',
    () => packArchive(withFormulas([MASKING, ...chain(60_000).slice(1)])),
    /depend on 60,000 formulas/,
  ],
  [
    'a formula of 4,000 terms',
    () => packArchive(withFormulas([`${'1+'.repeat(4000)}${MASKING}`])),
    /too long to be worked out here/,
  ],
  [
    'a formula 1,000 levels deep',
    () => packArchive(withFormulas([`${'('.repeat(1000)}${MASKING}${')'.repeat(1000)}`])),
    /too long to be worked out here/,
  ],
];

const LARGE: readonly Made[] = [
  ['20 parts of 20 MB', () => withParts(20, 20), /unpacks to 401 MB\. Accepted: 256 MB at most/],
  ['2 parts of 125 MB', () => withParts(2, 125), /1 Washdown cell/],
  ['a sheet of 120 MB of blanks', () => withParts(1, 100, 120), /1 Washdown cell/],
  [
    '999,000 empty rows',
    () => packArchive(rawArchive([GOOD, BID, rows(999_000, () => '')])),
    /1 Washdown cell/,
  ],
  [
    '990,000 cells in 9,900 rows',
    () =>
      packArchive(
        rawArchive([
          GOOD,
          BID,
          rows(9_900, (row) =>
            Array.from({ length: 100 }, (_, c) => `<c><v>${String(row * c)}</v></c>`).join(''),
          ),
        ]),
      ),
    /1 Washdown cell/,
  ],
];

describe('a file of', () => {
  it.each([...FILES, ...(ALL ? LARGE : [])])('%s', (name, make, says) => {
    const file = join(folder, 'hostile.xlsx');
    writeFileSync(file, make());
    const start = performance.now();
    const { status, signal, stdout, stderr } = spawnSync(
      process.execPath,
      ['--require', preload, ESTIMATE, file, '--out', join(folder, 'out.xlsx')],
      { encoding: 'utf8', maxBuffer: 64 * MEGABYTE },
    );
    const seconds = (performance.now() - start) / 1000;
    const [, used] = /USED (\d+)$/.exec(stdout) ?? [];
    console.log(
      `${name}: exit ${String(status)}, ${seconds.toFixed(1)} s, at most ${String(Math.round(Number(used) / 1024))} MB`,
    );
    expect(stdout + stderr).toMatch(says);
    expect(stderr).not.toMatch(/\n\s+at /);
    expect(signal).toBeNull();
    expect(Number(used) / 1024).toBeLessThan(MOST_MEGABYTES);
  });
});
