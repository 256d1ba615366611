import { describe, expect, it } from 'vitest';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

const signal = new AbortController().signal;

function workbook() {
  return new MemoryWorkbook({
    sheets: {
      Walls: [
        ['Wall', 'Area'],
        ['W-1', 12],
        ["'=W-2", '=2*B2'],
      ],
      Empty: [],
    },
    tables: [{ name: 'Walls', sheet: 'Walls', address: 'A1:B3' }],
    evaluate: (formula) =>
      formula === '=2*B2'
        ? 24
        : formula === '=ROWS'
          ? [
              [1, 2],
              [3, 4],
            ]
          : '#NAME?',
  });
}

describe('a workbook in memory', () => {
  it('gives tables, values and formulas as the host does', async () => {
    const made = workbook();
    expect(await made.tables()).toEqual([
      { name: 'Walls', sheet: 'Walls', address: 'A1:B3', headings: ['Wall', 'Area'], totals: false },
    ]);
    expect(await made.readTable('walls')).toEqual([
      ['Wall', 'Area'],
      ['W-1', 12],
      ['=W-2', 24],
    ]);
    await expect(made.readTable('Gone')).rejects.toThrow('There is no table Gone.');
    await expect(made.readRange({ sheet: 'Gone', address: 'A1' })).rejects.toThrow('There is no sheet Gone.');
    const blocks = [];
    for await (const block of made.scan(() => undefined, signal)) blocks.push(block);
    expect(blocks.map(({ sheet, formulas }) => [sheet, formulas[2]])).toEqual([['Walls', ['=W-2', '=2*B2']]]);
  });

  it('writes texts as texts and formulas as formulas, on sheets that it adds', async () => {
    const made = workbook();
    let seen = 0;
    const end = made.onChanged(() => {
      seen++;
    });
    await made.write([
      {
        sheet: 'New',
        address: 'B2',
        rows: [
          ['=1+1', { formula: '=2*B2' }],
          ['', 5],
        ],
        table: 'T',
      },
    ]);
    expect(made.cell({ sheet: 'New', address: 'B2' })).toEqual({ value: '=1+1' });
    expect(made.cell({ sheet: 'New', address: 'C2' })).toEqual({ formula: '=2*B2', value: 24 });
    expect((await made.tables()).at(-1)).toMatchObject({ name: 'T', sheet: 'New', address: 'B2:C3' });
    expect(seen).toBe(1);
    end();
    made.type({ sheet: 'New', address: 'A1' }, 1);
    expect(seen).toBe(1);
  });

  it('adds rows at the end of a table, and tells of it', async () => {
    const made = workbook();
    let seen = 0;
    made.onChanged(() => {
      seen++;
    });
    await made.addRows('walls', [['W-3', 7]]);
    expect((await made.readTable('Walls')).at(-1)).toEqual(['W-3', 7]);
    expect((await made.tables())[0]?.address).toBe('A1:B4');
    expect(seen).toBe(1);
    await expect(made.addRows('Gone', [[1]])).rejects.toThrow('There is no table Gone.');
  });

  it('names the filled cells under what is to be written', async () => {
    const rows = [
      ['a', 'b'],
      ['c', 'd'],
    ];
    expect(
      await workbook().filledCells([
        { sheet: 'Walls', address: 'B3', rows },
        { sheet: 'New', address: 'A1', rows },
      ]),
    ).toEqual([{ sheet: 'Walls', address: 'B3' }]);
  });

  it('fills the cells of a formula that gives rows, and shows where they are in the way', () => {
    const made = workbook();
    made.type({ sheet: 'Empty', address: 'A1' }, '=ROWS');
    expect(made.cell({ sheet: 'Empty', address: 'B2' })).toEqual({ value: 4, spilled: true });
    made.type({ sheet: 'Empty', address: 'B2' }, 'mine');
    expect(made.cell({ sheet: 'Empty', address: 'A1' }).value).toBe('#SPILL!');
    expect(made.cell({ sheet: 'Empty', address: 'B1' }).value).toBe('');
    made.type({ sheet: 'Empty', address: 'B2' }, '');
    expect(made.cell({ sheet: 'Empty', address: 'A2' }).value).toBe(3);
  });

  it('keeps texts, or says that it does not', async () => {
    expect(await workbook().writePart('steps', 'x')).toBe(true);
    const forgetful = new MemoryWorkbook({ sheets: {}, keepsParts: false });
    expect(await forgetful.writePart('steps', 'x')).toBe(false);
    expect(await forgetful.readPart('steps')).toBeUndefined();
  });
});
