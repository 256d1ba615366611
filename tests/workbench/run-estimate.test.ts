import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { RULES_VERSION } from '../../src/rules/version';
import { readKeptTexts } from '../../workbench/xlsx/kept-parts';
import { runEstimate } from '../../workbench/estimate/run';
import { openArchive, packArchive, partText } from '../../workbench/xlsx/archive';
import { fakeBundle, fakeUnit } from './fake-bundle';
import { rawArchive, rawFile, WALLS, type RawSheet } from './raw-workbook';

const BID: RawSheet = {
  name: 'Bid',
  rows:
    '<row r="1"><c r="A1"><f>_xldudf_WASH_WATER(Walls[#All])</f></c><c r="B1"><f>ROUND(WASH.WATER(Walls[#All]),0)</f></c><c r="C1"><f>WASH.WATER(Walls[#All],"West")</f></c><c r="D1"><f>1+1</f></c></row>' +
    '<row r="3"><c r="A3"><f>WASH.MIXED()</f></c></row>',
};

let folder = '';
let out = '';
let err = '';

async function run(...args: string[]): Promise<number> {
  out = '';
  err = '';
  return runEstimate(args, {
    bundle: fakeBundle,
    unitOf: fakeUnit,
    print: (text) => (out += text),
    warn: (text) => (err += text),
  });
}

function file(name: string, bytes: Uint8Array | string): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'washdown-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

describe('npm run estimate', () => {
  it('prints one JSON object and nothing else on standard output', async () => {
    const path = file('bid.xlsx', rawFile([WALLS, BID]));
    expect(await run(path, '--json')).toBe(0);
    expect(JSON.parse(out)).toEqual({
      cells: [
        { sheet: 'Bid', cell: 'A1', formula: '=WASH.WATER(Walls[#All])', value: 360, unit: 'gal' },
        { sheet: 'Bid', cell: 'B1', formula: '=ROUND(WASH.WATER(Walls[#All]),0)', value: 360, unit: '' },
        {
          sheet: 'Bid',
          cell: 'C1',
          formula: '=WASH.WATER(Walls[#All],"West")',
          error: '#N/A',
          message: 'No wall in zone West.',
          unit: 'gal',
        },
        {
          sheet: 'Bid',
          cell: 'A3',
          formula: '=WASH.MIXED()',
          value: [
            [1, '#N/A'],
            ['007', ''],
          ],
          unit: '',
        },
      ],
    });
    expect(out.trimEnd()).not.toContain('\n');
  });

  it('prints the estimate a zone, asking for it where the workbook has no schedule', async () => {
    expect(await run(file('bid.xlsx', rawFile([WALLS, BID])))).toBe(0);
    expect(out).toContain('Zone: South\n  Water, gal  300\n\nZone: North\n  Water, gal  60\n');
    expect(out).toContain('4 Washdown cells, 1 with an error:');
    expect(out).toContain('Bid!C1  =WASH.WATER(Walls[#All],"West")\n      #N/A No wall in zone West.');
  });

  it('writes to the file itself, or to another and leaves the first alone', async () => {
    const bytes = rawFile([WALLS, BID]);
    const path = file('bid.xlsx', bytes);
    const other = join(folder, 'other.xlsx');
    expect(await run(path, '--out', other)).toBe(0);
    expect(readFileSync(path)).toEqual(Buffer.from(bytes));
    expect(await run(path, '--in-place')).toBe(0);
    expect(readFileSync(path)).toEqual(readFileSync(other));
    expect(readFileSync(path)).not.toEqual(Buffer.from(bytes));
    expect(readdirSync(folder).sort()).toEqual(['bid.xlsx', 'other.xlsx']);
    // The file says under which rules its values were worked out.
    const written = openArchive(readFileSync(other));
    expect(readKeptTexts(written, 'xl/workbook.xml')).toEqual({ rules: RULES_VERSION });
  });

  it('writes a copy without formulas beside, and lists what in it still needs the add-in', async () => {
    const sheet: RawSheet = {
      name: 'Bid',
      rows:
        '<row r="1"><c r="A1" s="3"><f>_xldudf_WASH_WATER(Walls[#All])</f></c><c r="B1"><f t="shared" ref="B1:B2" si="1">ROUND(WASH.WATER(Walls[#All])/7,0)&amp;" gal"</f></c><c r="C1"><f>A1+1</f></c><c r="D1"><f>Total+1</f></c></row>' +
        '<row r="2"><c r="B2"><f t="shared" si="1"/></c></row>' +
        '<row r="4"><c r="A4"><f>WASH.SCHEDULE(Walls[#All])</f></c><c r="D4"><f>SUM(_xlfn.ANCHORARRAY(A4))</f></c><c r="E4"><f>_xldudf_OTHER_THING(WASH.WATER(Walls[#All]))</f></c></row>',
    };
    const names =
      '<definedNames><definedName name="Total">_xldudf_WASH_WATER(Walls!$A$1:$C$4)</definedName></definedNames>';
    const parts = new Map(rawArchive([WALLS, sheet], names));
    const part = 'xl/worksheets/sheet2.xml';
    const rules =
      '<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>WASH.WATER(Walls[#All])&gt;5</formula></cfRule><cfRule type="expression" priority="2"><formula>A1&gt;5</formula></cfRule></conditionalFormatting><dataValidations count="1"><dataValidation type="custom" sqref="A1"><formula1>A1&lt;_xldudf_WASH_TAPE(Walls[#All])</formula1></dataValidation></dataValidations>';
    parts.set(part, Buffer.from(partText(parts, part).replace('</sheetData>', `</sheetData>${rules}`)));
    const bytes = packArchive(parts);
    const path = file('bid.xlsx', bytes);
    const copy = join(folder, 'plain.xlsx');
    expect(await run(path, '--out', copy, '--values')).toBe(0);
    expect(readFileSync(path)).toEqual(Buffer.from(bytes));
    const plain = partText(openArchive(readFileSync(copy)), part);
    expect(plain).toContain('<row r="1"><c r="A1" s="3"><v>360</v></c>');
    // 360 / 7 = 51.4
    const text = '<is><t xml:space="preserve">51 gal</t></is>';
    expect(plain).toContain(`<c r="B1" t="inlineStr">${text}</c>`);
    expect(plain).toContain(`<c r="B2" t="inlineStr">${text}</c>`);
    expect(plain).toContain('<c r="C1"><f>A1+1</f><v>361</v></c><c r="D1"><v>361</v></c>');
    expect(plain).toContain(
      '<row r="5"><c r="A5" t="inlineStr"><is><t xml:space="preserve">South</t></is></c><c r="B5"><v>300</v></c></row>',
    );
    expect(plain).toContain('<c r="D4"><v>360</v></c>');
    expect(err).toContain('7 formulas replaced by their values');
    expect(err).toContain('Bid!E4 has no value yet and is blank.');
    expect(err).toContain('The name Total stands for WASH.WATER(Walls!$A$1:$C$4), which needs the add-in.');
    expect(err).toContain('a conditional format calls WASH.WATER(Walls[#All])>5');
    expect(err).toContain('a validation calls A1<WASH.TAPE(Walls[#All])');
    expect(err).not.toContain('A1>5');
  });

  it('says what keeps its old value', async () => {
    const rows =
      '<row r="1"><c r="A1"><f>WASH.WATER(Walls[#All])</f></c><c r="B1"><f>_xldudf_OTHER_THING(A1)</f><v>4</v></c></row>';
    expect(await run(file('bid.xlsx', rawFile([WALLS, { name: 'Bid', rows }])), '--json')).toBe(0);
    expect(err).toContain('They keep the value that they had');
    expect(JSON.parse(out)).toMatchObject({
      left: [{ sheet: 'Bid', cell: 'B1', formula: '=_xldudf_OTHER_THING(A1)' }],
    });
  });

  it.each([
    ['nothing.xlsx', '', 'The file is empty'],
    ['text.xlsx', 'Wall,Area', 'it is not a zip file'],
    ['old.xls', Buffer.from('d0cf11e0a1b11ae1', 'hex'), 'protected by a password'],
    ['cut.xlsx', rawFile([WALLS, BID]).slice(0, 500), 'its zip cannot be read'],
    ['parcel.zip', packArchive(new Map([['a.txt', Buffer.from('a')]])), 'a zip file but not a workbook'],
    ['plain.xlsx', rawFile([WALLS]), 'no Washdown formula'],
    [
      'broken.xlsx',
      packArchive(
        new Map([...rawArchive([WALLS, BID]), ['xl/workbook.xml', Buffer.from('<workbook><sheets>')]]),
      ),
      'xl/workbook.xml cannot be read',
    ],
    [
      'gone.xlsx',
      packArchive(
        new Map([...rawArchive([WALLS, BID])].filter(([path]) => path !== 'xl/worksheets/sheet2.xml')),
      ),
      'xl/worksheets/sheet2.xml is missing',
    ],
  ])('says what is wrong with %s and leaves it alone', async (name, bytes, reason) => {
    const path = file(name, bytes);
    expect(await run(path, '--json')).toBe(1);
    expect(out).toBe('');
    expect(err).toContain(path);
    expect(err).toContain(reason);
    expect(readFileSync(path)).toEqual(Buffer.from(bytes));
    expect(readdirSync(folder)).toEqual([name]);
  });

  it('says that a file is missing or a folder', async () => {
    expect(await run(join(folder, 'none.xlsx'))).toBe(1);
    expect(err).toContain('There is no such file');
    expect(await run(folder)).toBe(1);
    expect(err).toContain('This is a folder');
  });

  it.each([
    [[], 'Which workbook?'],
    [['a.xlsx', 'b.xlsx'], 'One workbook at a time'],
    [['a.xlsx', '--jsn'], 'Unknown option --jsn'],
    [['a.xlsx', '--out'], '--out needs the name of a file'],
    [['a.xlsx', '--out='], '--out needs the name of a file'],
    [['a.xlsx', '--out', '--json'], '--out needs the name of a file'],
    [['a.xlsx', '--out', 'b.xlsx', '--out', 'c.xlsx'], '--out is given twice'],
    [['a.xlsx', '--json=yes'], 'Unknown option --json'],
    [['a.xlsx', '--out', 'b.xlsx', '--in-place'], 'contradict each other'],
    [['a.xlsx', '--values'], '--values goes with --out'],
    [['a.xlsx', '--values', '--json'], '--values goes with --out'],
    [['a.xlsx', '--values', '--in-place'], '--values goes with --out'],
    [['a.xlsx', '--values=b.xlsx'], 'Unknown option --values'],
  ])('refuses the command line %j', async (args, reason) => {
    expect(await run(...args)).toBe(2);
    expect(err).toContain(reason);
    expect(out).toBe('');
  });

  it('explains itself', async () => {
    expect(await run('--help')).toBe(0);
    expect(out).toContain('--out FILE2');
  });
});
