import { describe, expect, it } from 'vitest';
import { recalculate } from '../../workbench/engine/recalculate';
import { estimateBook } from '../../workbench/estimate/estimate-book';
import { cellAddress } from '../../workbench/xlsx/address';
import { partText } from '../../workbench/xlsx/archive';
import { readBook } from '../../workbench/xlsx/read-book';
import { fakeBundle } from './fake-bundle';
import { rawArchive, WALLS } from './raw-workbook';

interface Cell {
  readonly f?: string;
  readonly v?: string | number;
  readonly attributes?: string;
}

/** Rows of a sheet from its cells by address, row by row. */
function rowsOf(cells: Readonly<Record<string, Cell>>): string {
  const byRow = new Map<string, string>();
  for (const [address, { f, v, attributes = '' }] of Object.entries(cells)) {
    const row = address.replace(/\D/g, '');
    const type = typeof v === 'string' ? (v.startsWith('#') ? ' t="e"' : ' t="str"') : '';
    const inner = `${f === undefined ? '' : `<f${attributes}>${f}</f>`}${v === undefined ? '' : `<v>${v}</v>`}`;
    byRow.set(row, `${byRow.get(row) ?? ''}<c r="${address}"${type}>${inner}</c>`);
  }
  return [...byRow].map(([row, inner]) => `<row r="${row}">${inner}</row>`).join('');
}

async function results(cells: Readonly<Record<string, Cell>>, names = '') {
  const archive = rawArchive([WALLS, { name: 'Bid', rows: rowsOf(cells) }], names);
  const found = await recalculate(readBook(archive), fakeBundle());
  return new Map(
    found
      .filter(({ sheet }) => sheet === 'Bid')
      .map(({ row, column, result }) => [cellAddress(row, column), result]),
  );
}

/** What the file holds beside each formula after the estimate. */
async function saved(cells: Readonly<Record<string, Cell>>) {
  const archive = rawArchive([WALLS, { name: 'Bid', rows: rowsOf(cells) }]);
  const { archive: done } = await estimateBook(archive, fakeBundle());
  const sheet = readBook(done).sheets.find(({ name }) => name === 'Bid');
  return (address: string) => sheet?.cells.get(address)?.value;
}

const WATER = 'WASH.WATER(Walls[#All])';

describe('formulas in a circle', () => {
  it('through a Washdown formula are an error that names the circle', async () => {
    const found = await results({
      A1: { f: `${WATER}+B1` },
      B1: { f: 'C1*2', v: 3 },
      C1: { f: 'A1', v: 4 },
      D1: { f: 'A1+1' },
    });
    const message = expect.stringMatching(
      /^The formula depends on its own result: (?=.*Bid!A1)(?=.*Bid!B1)(?=.*Bid!C1)/,
    );
    expect(found.get('A1')).toEqual({ error: '#REF!', message });
    expect(found.get('D1')).toMatchObject({ error: '#REF!' });
  });

  it('through the range that it reads are one too', async () => {
    const found = await results({ A1: { f: 'WASH.ECHO(A1:B2)', v: 7 } });
    expect(found.get('A1')).toMatchObject({
      error: '#REF!',
      message: expect.stringContaining('Bid!A1, Bid!A1'),
    });
  });

  it('of others keep the values that they were saved with', async () => {
    const cells = { A1: { f: 'WASH.ECHO(B1)' }, B1: { f: 'C1+1', v: 3 }, C1: { f: 'B1-1', v: 2 } };
    expect((await results(cells)).get('A1')).toBe('[[3]]');
    expect((await saved(cells))('B1')).toBe(3);
  });
});

describe('a failure of one cell', () => {
  const flat = (terms: number, term: string): string => Array(terms).fill(term).join('+');

  it.each<[string, string]>([
    ['four thousand terms', flat(4000, '1')],
    ['four thousand texts', flat(4000, '"a"').replaceAll('+', '&amp;')],
    ['brackets in brackets', `${'('.repeat(4000)}1${')'.repeat(4000)}`],
    ['calls in calls', `${'ABS('.repeat(1500)}1${')'.repeat(1500)}`],
    ['signs', `${'-'.repeat(8000)}1`],
    ['brackets that do not end', '{'.repeat(8000)],
    ['commas', `SUM(${','.repeat(8000)})`],
    ['twenty thousand letters', `"${'a'.repeat(20_000)}"`],
    ['a name that stands for itself', 'Own'],
    ['names that grow without end', 'Grow20'],
    ['the cells of whole sheets', `SUM(${Array(30).fill('Walls!A1:XFD1048576').join(',')})`],
  ])('stays with it, others are worked out: %s', async (_, formula) => {
    const grow = Array.from(
      { length: 20 },
      (_each, index) => `<definedName name="Grow${index + 1}">Grow${index}+Grow${index}</definedName>`,
    );
    const names = `<definedNames><definedName name="Own">Other+1</definedName><definedName name="Other">Own</definedName><definedName name="Grow0">1</definedName>${grow.join('')}</definedNames>`;
    const found = await results(
      {
        A1: { f: WATER },
        A2: { f: `WASH.ECHO(1)&amp;${formula}` },
        A3: { f: formula, v: 5 },
        A4: { f: `WASH.ECHO(A3)` },
        XFD9: { v: 1 },
      },
      names,
    );
    expect(found.get('A1')).toBe(360);
    expect(found.get('A2')).toMatchObject({ error: expect.stringMatching(/^#/) });
    expect(found.get('A4')).toBe('[[5]]');
  });

  it('says why where it is a Washdown cell', async () => {
    const found = await results({
      A1: { f: `${WATER}+${flat(600, '1')}` },
      A2: { f: 'WASH.ECHO(Walls!A:XFD)' },
      XFD9: { v: 1 },
    });
    expect(found.get('A1')).toEqual({
      error: '#VALUE!',
      message: 'The formula is too long to be worked out here.',
    });
    expect(found.get('A2')).toMatchObject({
      message: expect.stringMatching(/reads [\d,]+ cells\. Accepted: 5,000,000/),
    });
  });

  it('is no failure where whole columns and rows are named, of which only what is used is read', async () => {
    const stated = { f: 'SUM(Walls!C90:G1048576)+A1', v: 5 };
    const cells = {
      A1: { f: 'WASH.ECHO(SUM(Walls!C:G))' },
      A2: { f: 'WASH.ECHO(Walls!C90:G1048576)' },
      A3: stated,
    };
    const found = await results(cells);
    // 100 + 50 + 30.
    expect(found.get('A1')).toBe('[[180]]');
    // 1,048,487 rows of 5 columns.
    expect(found.get('A2')).toMatchObject({ message: expect.stringContaining('reads 5,242,435 cells') });
    expect((await saved(cells))('A3')).toBe(5);
  });
});

describe('a formula that is not marked as an array', () => {
  it('gives the value of its own row, as its file says', async () => {
    const cells = {
      L1: { v: 1 },
      L2: { v: 20 },
      L3: { v: 300 },
      B2: { f: 'L:L*2', v: 40 },
      A1: { f: 'WASH.ECHO(B2)' },
    };
    expect((await results(cells)).get('A1')).toBe('[[40]]');
    expect((await saved(cells))('B2')).toBe(40);
  });

  it('keeps its value where the engine makes an array of it all the same', async () => {
    const cells = {
      L1: { v: 1 },
      L2: { v: 20 },
      B2: { f: 'CHOOSE(1,L1:L2)', v: 20 },
      B3: { v: 9 },
      A1: { f: 'WASH.ECHO(B2:B3)' },
    };
    expect((await results(cells)).get('A1')).toBe('[[20],[9]]');
  });
});

describe('the value of a cell that is not ours', () => {
  it('is kept where it cannot be worked out', async () => {
    const cells = {
      A1: { f: 'GETPIVOTDATA("Sum",X1)', v: 11 },
      B1: { f: 'CELL("filename",A1)', v: 'bid' },
      C1: { f: "'[1]Prices'!A1", v: 6 },
      D1: { f: 'Nothing[Area]', v: 7 },
      E1: { f: 'WASH.ECHO(A1:D1)' },
      F1: { f: 'E1&amp;GETPIVOTDATA("Sum",X1)', v: 'old' },
    };
    expect((await results(cells)).get('E1')).toBe('[[11,"bid",6,7]]');
    const value = await saved(cells);
    expect(['A1', 'B1', 'C1', 'D1', 'F1'].map(value)).toEqual([11, 'bid', 6, 7, 'old']);
  });

  it('is worked out anew where it can be, and not at all where Washdown has nothing to do with it', async () => {
    const found = await results({
      A1: { f: '1+1', v: 99 },
      B1: { f: '2+2', v: 98 },
      C1: { f: 'WASH.ECHO(A1)' },
    });
    expect(found.get('C1')).toBe('[[2]]');
    expect(found.has('B1')).toBe(false);
  });

  it('is worked out where it depends on Washdown, with what it needs besides', async () => {
    const found = await results({
      A1: { f: WATER },
      B1: { f: 'A1+C1+D1' },
      C1: { f: '1+1' },
      D1: { f: '2+2', v: 50 },
    });
    // 360 + 2 + 50: what has a value keeps it.
    expect(found.get('B1')).toBe(412);
  });
});

describe('what nobody asks about', () => {
  it('takes no time: ten thousand names and a chain of twenty thousand cells', async () => {
    const chain = Object.fromEntries(
      Array.from({ length: 20_000 }, (_, row) => [
        `Z${row + 10}`,
        { f: row === 0 ? '1' : `Z${row + 9}+1`, v: row + 1 },
      ]),
    );
    const names = Array.from(
      { length: 10_000 },
      (_, index) => `<definedName name="Name${index}x">Bid!$Z$${index + 1}</definedName>`,
    );
    const found = await results(
      { A1: { f: WATER }, ...chain },
      `<definedNames>${names.join('')}</definedNames>`,
    );
    expect([...found]).toEqual([['A1', 360]]);
  });

  it('is a sentence where somebody asks for too much', async () => {
    const chain = Object.fromEntries(
      Array.from({ length: 21_000 }, (_, row) => [
        `Z${row + 1}`,
        { f: row === 0 ? '1' : `Z${row}+1`, v: row + 1 },
      ]),
    );
    await expect(results({ ...chain, AA21000: { f: 'WASH.ECHO(Z21000)' } })).rejects.toThrow(
      'depend on 21,001 formulas',
    );
  });
});

describe('names', () => {
  it('of one sheet and of the workbook are told apart', async () => {
    const names =
      '<definedNames><definedName name="Rate">5</definedName><definedName name="Rate" localSheetId="1">7</definedName></definedNames>';
    expect((await results({ A1: { f: 'WASH.ECHO(Rate)' } }, names)).get('A1')).toBe('[[7]]');
  });

  it('that the language of the tool has already are names like others', async () => {
    const odd = ['__proto__', 'constructor', 'toString'];
    const names = `<definedNames>${odd.map((name, index) => `<definedName name="${name}">${index + 1}</definedName>`).join('')}</definedNames>`;
    expect((await results({ A1: { f: `WASH.ECHO(${odd.join('+')})` } }, names)).get('A1')).toBe('[[6]]');
    expect(
      (await results({ A1: { f: 'WASH.ECHO(1)' }, B1: { f: 'A1&amp;valueOf', v: 'x' } })).get('A1'),
    ).toBe('[[1]]');
  });
});

describe('a file in another encoding', () => {
  it('is written back in the encoding that it states', async () => {
    const rows = rowsOf({ A1: { f: WATER, v: 1 } });
    const parts = new Map(rawArchive([WALLS, { name: 'Bid', rows }]));
    const path = 'xl/worksheets/sheet2.xml';
    const xml = `<?xml version="1.0" encoding="ISO-8859-1"?>${partText(parts, path).replace('<row r="1">', '<row r="2"><c r="A2" t="str"><v>façade</v></c></row><row r="1">')}`;
    parts.set(path, Buffer.from(xml, 'latin1'));
    const done = (await estimateBook(parts, fakeBundle())).archive;
    const bytes = Buffer.from(done.get(path) ?? []);
    expect(bytes.toString('utf8')).toContain('encoding="UTF-8"');
    expect(bytes.toString('utf8')).toContain('façade');
    expect(bytes.toString('utf8')).toContain('<v>360</v>');
  });
});
