import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkBook } from '../../scripts/prove/check-book';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { openWorkbook } from '../../workbench/page/files/open-workbook';
import { saveWorkbook } from '../../workbench/page/files/save-workbook';
import { packArchive } from '../../workbench/xlsx/archive';
import { foreignFile } from '../workbench/page/files/foreign-file';
import { rawArchive, WALLS } from '../workbench/raw-workbook';

// Workbooks of three writers: a library, the page, and the format written out by hand. Any folder of workbooks:
// npx tsx scripts/prove/corpus.ts FOLDER

const ODD = {
  name: "Joe's",
  rows:
    '<row r="1"><c r="A1"><f>L:L*2</f><v>40</v></c><c r="B1"><f>GETPIVOTDATA("x",A1)</f><v>1</v></c><c r="L1"><v>20</v></c></row>' +
    '<row r="9"><c r="C9" t="str"><f t="array" ref="C9:C10">L1:L2</f><v>20</v></c></row><row r="10"><c r="C10"><v>0</v></c></row>',
};

async function byPage(): Promise<Uint8Array> {
  const opened = await openWorkbook(await foreignFile());
  return (await saveWorkbook(opened)).bytes;
}

const MADE: readonly (readonly [string, () => Promise<Uint8Array> | Uint8Array])[] = [
  ['a library', () => foreignFile()],
  ['a library, days from 1904', () => foreignFile(true)],
  ['the page', byPage],
  ['hand', () => packArchive(rawArchive([WALLS]))],
  ['hand, with formulas that are not worked out here', () => packArchive(rawArchive([ODD, WALLS]))],
];

describe('a workbook written by', () => {
  const bundle = loadBundle(join(import.meta.dirname, '..', '..', 'dist'));

  it.each(MADE)('%s keeps all that is not ours, on the command and on the page', async (_, make) => {
    expect(await checkBook(await make(), bundle)).toEqual({ outcome: 'held', why: '' });
  });

  it('nobody is refused in words', async () => {
    expect((await checkBook(Buffer.from('PK'), bundle)).outcome).toBe('refused');
  });
});

// Packages whose tests and examples bring workbooks: how many hold, and how many are refused in words.
const PACKAGES = [
  ['xlsx-stream-reader', 15, 0],
  // Two are protected by a password.
  ['xlsx-populate', 4, 2],
] as const;
// A larger one takes a minute; the script takes any.
const MOST_BYTES = 1_000_000;

describe('the workbooks of a package of others', () => {
  const bundle = loadBundle(join(import.meta.dirname, '..', '..', 'dist'));

  it.each(PACKAGES)('%s: %i hold, %i are refused', async (name, held, refused) => {
    const folder = join('node_modules', name);
    const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.xlsx'))
      .map((path) => join(folder, path))
      .filter((path) => statSync(path).size <= MOST_BYTES);
    const outcomes: string[] = [];
    for (const path of paths) {
      const { outcome, why } = await checkBook(readFileSync(path), bundle);
      outcomes.push(outcome);
      expect(['held', 'refused'], `${path}: ${why}`).toContain(outcome);
    }
    expect(outcomes.filter((outcome) => outcome === 'held')).toHaveLength(held);
    expect(outcomes.filter((outcome) => outcome === 'refused')).toHaveLength(refused);
  });
});

it('the script counts what became of the workbooks of a folder', () => {
  const folder = mkdtempSync(join(tmpdir(), 'washdown-corpus-'));
  writeFileSync(join(folder, 'good.xlsx'), packArchive(rawArchive([WALLS])));
  writeFileSync(join(folder, 'bad.xlsx'), 'no workbook');
  writeFileSync(join(folder, 'other.txt'), 'not looked at');
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scripts/prove/corpus.ts', folder],
    { encoding: 'utf8' },
  );
  rmSync(folder, { recursive: true });
  expect(stdout).toMatch(/^held 1\nrefused 1\nchanged 0\nfailed 0\nworkbooks 2,/);
  expect(stderr).toContain('bad.xlsx: The file is not a workbook');
  expect(status).toBe(0);
});
