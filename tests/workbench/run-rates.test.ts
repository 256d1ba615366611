import ExcelJS from 'exceljs';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { runRatesCommand } from '../../workbench/rates/run';

type Cells = (string | number | null)[][];

const WALLS: Cells = [
  ['Wall', 'Zone', 'Material', 'Area', 'Residue', 'Mortar', 'Access'],
  ['front', 'A', 'Red clay brick', 5000, 'light', 'N', 'ground'],
];
const HEAD = ['Date', 'Zone', 'Task', 'Area', 'Hours'];

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'rates-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

async function write(name: string, tables: Readonly<Record<string, Cells>>): Promise<string> {
  const workbook = new ExcelJS.Workbook();
  for (const [table, [head = [], ...rows]] of Object.entries(tables)) {
    workbook.addWorksheet(`${table} of the job`).addTable({
      name: table,
      ref: 'B3',
      columns: head.map((heading) => ({ name: String(heading) })),
      rows,
    });
  }
  const path = join(folder, name);
  writeFileSync(path, new Uint8Array(await workbook.xlsx.writeBuffer()));
  return path;
}

async function run(...args: string[]) {
  let [out, said] = ['', ''];
  const code = await runRatesCommand(args, {
    print: (text) => {
      out += text;
    },
    warn: (text) => {
      said += text;
    },
  });
  return { code, out, said };
}

/** Net 600 ft2/h is the starting rate: 50 of 60 minutes are worked. */
const scraped = (ratio: number, day = 46145): Cells[number] => [
  day,
  'A',
  'scrape',
  1000,
  (1000 / 500) * ratio,
];

describe('the rates of a folder', () => {
  it('pools its jobs, says what each shows, and writes none of them', async () => {
    const one = await write('one.xlsx', { Walls: WALLS, Actuals: [HEAD, scraped(2), scraped(2)] });
    const two = await write('two.xlsx', {
      Walls: WALLS,
      Actuals: [HEAD, scraped(2, 46150), [46151, 'A', 'move', null, 3]],
    });
    await write('bid.xlsx', { Walls: WALLS });
    writeFileSync(join(folder, '~$one.xlsx'), 'lock');
    const before = [one, two].map((path) => readFileSync(path));
    const { code, out, said } = await run(folder);
    expect(code).toBe(0);
    const line = out.split('\n').find((each) => each.startsWith('rate.scrape.light')) ?? '';
    const [, jobs, entries, start, pooled] = line.split(/ {2,}/);
    expect([jobs, entries, start]).toEqual(['2', '3', '600']);
    expect(Number(pooled)).toBeGreaterThan(300);
    expect(Number(pooled)).toBeLessThan(600);
    expect(out).toMatch(/^ {2}one\.xlsx +2 +300 *$/m);
    expect(out).toMatch(/^ {2}two\.xlsx +1 +300 *$/m);
    expect(said).toContain('bid.xlsx: no table Actuals, left out.');
    expect(said).toContain('two.xlsx: entries that show no rate: 1.');
    expect(
      [one, two]
        .map((path) => readFileSync(path))
        .every((bytes, place) => bytes.equals(before[place] ?? bytes)),
    ).toBe(true);
  });

  it('judges each job by its own factors, and starts from the starting value', async () => {
    const own: Cells = [
      ['Factor', 'Value'],
      ['units', 'SI'],
      ['rate.scrape.light', 20],
    ];
    // 20 m2 a net hour, of which 5/6 are worked, twice as long.
    const walls = WALLS.map((row, index) => (index === 0 ? row : row.with(3, 400)));
    await write('si.xlsx', { Walls: walls, Factors: own, Actuals: [HEAD, [46145, 'A', 'scrape', 100, 12]] });
    const { out } = await run(folder);
    expect(out).toMatch(/^ {2}si\.xlsx +1 +10 *$/m);
    // 600 ft2 is 55.74 m2.
    expect(out).toMatch(/^rate\.scrape\.light +1 +1 +55\.74 /m);
  });

  it('writes a table of factors that the functions read, with a note', async () => {
    await write('one.xlsx', { Walls: WALLS, Actuals: [HEAD, scraped(2)] });
    const target = join(folder, 'firm.xlsx');
    const { code, said } = await run(folder, '--out', target);
    expect([code, said]).toEqual([0, `Factors written to ${target}\n`]);
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(target);
    const rows = (book.getWorksheet('Factors')?.getSheetValues() ?? [])
      .slice(1)
      .map((row) => (row as unknown[]).slice(1));
    const factors = readFactors(rows);
    expect(factors.note('rate.scrape.light')).toBe('from 1 entry of 1 job to May 3, 2026');
    expect(factors.value('rate.scrape.light')).toBeLessThan(readFactors(null).value('rate.scrape.light'));
    // It is there now, and is not written over; nor is it a job.
    const again = await run(folder, '--out', target);
    expect(again.code).toBe(1);
    expect(again.said).toContain('is there already');
    expect((await run(folder)).said).toContain('firm.xlsx: no table Actuals');
  });

  it('says which workbook cannot be read, and reads the others', async () => {
    await write('good.xlsx', { Walls: WALLS, Actuals: [HEAD, scraped(1)] });
    await write('bad.xlsx', { Walls: WALLS, Actuals: [HEAD, [46145, 'B', 'scrape', 10, 1]] });
    await write('alone.xlsx', { Actuals: [HEAD, scraped(1)] });
    writeFileSync(join(folder, 'broken.xlsx'), 'no workbook');
    const { code, out, said } = await run(folder);
    expect(code).toBe(1);
    expect(said).toContain('bad.xlsx: Row 2, column Zone: "B" cannot be used.');
    expect(said).toContain('alone.xlsx: There is a table Actuals, and no table Walls');
    expect(said).toContain('broken.xlsx: ');
    expect(out).toContain('good.xlsx');
  });

  it('refuses a command line that it does not understand', async () => {
    for (const args of [[], ['a', 'b'], ['a', '--all'], ['a', '--out'], [join(folder, 'nowhere')]])
      expect((await run(...args)).code).toBe(2);
    expect((await run('--help')).code).toBe(0);
    mkdirSync(join(folder, 'empty'));
    expect((await run(join(folder, 'empty'))).out).toBe('No entry shows a rate.\n');
  });
});
