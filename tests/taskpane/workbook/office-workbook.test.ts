import { OfficeMockObject } from 'office-addin-mock';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { OfficeWorkbook } from '../../../taskpane/workbook/office-workbook';
import { WriteFailed } from '../../../taskpane/workbook/port';
import { FakeExcel } from './fake-excel';

let excel: FakeExcel;
const workbook = new OfficeWorkbook();
beforeEach(() => {
  excel = new FakeExcel();
  excel.install();
  excel.fill('Walls', [
    ['Wall', 'Area'],
    ['W-1', 120],
    ['W-2', '=B2*2'],
  ]);
  excel.fill('My sheet', [
    ['', ''],
    ['', 7],
  ]);
  excel.tables.push({
    name: 'Walls',
    sheet: 'Walls',
    area: { top: 1, left: 1, bottom: 3, right: 2 },
    showHeaders: true,
    showTotals: false,
  });
});

describe('reading', () => {
  it('sheets, tables and names', async () => {
    excel.tables.push({ ...(excel.tables[0] ?? never()), name: 'Bare', showHeaders: false });
    excel.names.push({ name: 'Zone', formula: "='My sheet'!$B$2" });
    excel.names.push({ name: 'Zone', sheet: 'Walls', formula: '=Walls!$A$2' });
    expect(await workbook.sheets()).toEqual(['Walls', 'My sheet']);
    expect(await workbook.tables()).toEqual([
      { name: 'Walls', sheet: 'Walls', address: 'A1:B3', headings: ['Wall', 'Area'], totals: false },
    ]);
    expect(await workbook.names()).toEqual([
      { name: 'Zone', refersTo: "='My sheet'!$B$2" },
      { name: 'Zone', sheet: 'Walls', refersTo: '=Walls!$A$2' },
    ]);
  });

  it('the values of a table and of cells', async () => {
    expect(await workbook.readTable('Walls')).toEqual([
      ['Wall', 'Area'],
      ['W-1', 120],
      ['W-2', '#NAME?'],
    ]);
    expect(await workbook.readRange({ sheet: 'My sheet', address: 'A2:B2' })).toEqual([['', 7]]);
    excel.formats.set('My sheet!B2', '0%');
    expect(await workbook.readFormats({ sheet: 'My sheet', address: 'A2:B2' })).toEqual([['General', '0%']]);
  });

  it('says so where a table or a sheet is not there', async () => {
    await expect(workbook.readTable('Gone')).rejects.toThrow('There is no table Gone in this workbook.');
    await expect(workbook.readRange({ sheet: 'Gone', address: 'A1' })).rejects.toThrow(
      'There is no sheet Gone in this workbook.',
    );
  });

  it('the selection, its sheet and address apart', async () => {
    excel.selected = { sheet: 'My sheet', address: 'A1:B2' };
    expect(await workbook.selection()).toEqual({ sheet: 'My sheet', address: 'A1:B2' });
  });

  it('the cells in use of a sheet', async () => {
    expect((await workbook.usedCells('Walls'))?.sheet).toBe('Walls');
    expect((await workbook.usedCells('Walls'))?.address).toMatch(/^A1:/);
    await expect(workbook.usedCells('Nowhere')).rejects.toThrow('There is no sheet Nowhere');
  });

  it('every cell in use, in rectangles, with formulas and values', async () => {
    const blocks = [];
    const done: string[] = [];
    const progress = (now: number, total: number) => done.push(`${String(now)}/${String(total)}`);
    for await (const block of workbook.scan(progress, new AbortController().signal)) blocks.push(block);
    expect(blocks).toEqual([
      {
        sheet: 'Walls',
        row: 1,
        column: 1,
        formulas: [
          ['Wall', 'Area'],
          ['W-1', 120],
          ['W-2', '=B2*2'],
        ],
        values: [
          ['Wall', 'Area'],
          ['W-1', 120],
          ['W-2', '#NAME?'],
        ],
      },
      { sheet: 'My sheet', row: 2, column: 2, formulas: [[7]], values: [[7]] },
    ]);
    expect(done).toEqual(['0/2', '1/2', '2/2']);
  });

  it('a long sheet comes in several rectangles, and a stop ends it', async () => {
    excel.fill(
      'Long',
      Array.from({ length: 12_000 }, (_, index) => [index, 'x']),
    );
    const rows = [];
    const stop = new AbortController();
    for await (const { sheet, row, values } of workbook.scan(() => undefined, stop.signal)) {
      if (sheet !== 'Long') continue;
      rows.push([row, values.length]);
      if (rows.length === 2) stop.abort();
    }
    expect(rows).toEqual([
      [1, 5000],
      [5001, 5000],
    ]);
  });
});

describe('writing', () => {
  it('asks which cells are filled, a formula too, and takes a sheet that is not there for empty', async () => {
    const rows = [
      [1, 2],
      [3, 4],
    ];
    expect(
      await workbook.filledCells([
        { sheet: 'Walls', address: 'B3', rows },
        { sheet: 'My sheet', address: 'A1', rows },
        { sheet: 'New', address: 'A1', rows },
      ]),
    ).toEqual([
      { sheet: 'Walls', address: 'B3' },
      { sheet: 'My sheet', address: 'B2' },
    ]);
  });

  it('happens in few batches: sheets, cells and tables, then looks', async () => {
    excel.syncs = 0;
    await workbook.write([
      {
        sheet: 'New',
        address: 'B2',
        rows: [['Factor', 'Value'], ['units']],
        table: 'Factors',
      },
      { sheet: 'My sheet', address: 'A4', rows: [[{ formula: '=WASH.TAPE(Walls[#All])' }]], heading: true },
      { sheet: 'Wide', address: 'A1', rows: [['a', 'b']], widths: [10, 20] },
      { sheet: 'Wide', address: 'A3', rows: [[1]], formats: { 'A3:B4': '0.0', D5: '0' } },
    ]);
    // One each to see which sheets are there, what My sheet holds and its tables, which sheets are there now, to write,
    // and to set the looks.
    expect(excel.syncs).toBe(6);
    expect(excel.sheets.get('New')).toEqual(
      new Map([
        ['B2', 'Factor'],
        ['C2', 'Value'],
        ['B3', 'units'],
      ]),
    );
    expect(excel.sheets.get('My sheet')?.get('A4')).toBe('=WASH.TAPE(Walls[#All])');
    expect(excel.tables.at(-1)).toMatchObject({
      name: 'Factors',
      sheet: 'New',
      area: { top: 2, left: 2, bottom: 3, right: 3 },
    });
    expect(excel.log).toEqual([
      'New!B2:C3 fits',
      'My sheet!A4 row 0 bold true',
      'My sheet!A4 fits',
      'Wide!A1:B1 wrapText true',
      'Wide!A1:B1 column 0 columnWidth 57',
      'Wide!A1:B1 column 1 columnWidth 114',
      'Wide!A3:B4 shows 0.0 0.0, 0.0 0.0',
      'Wide!D5 shows 0',
      'Wide!A3 fits',
    ]);
  });

  it('adds rows at the end of a table, their texts as texts', async () => {
    const table = await workbook.readTable('Walls');
    const more = table[0]?.map((_, column) => (column === 0 ? '=new' : column)) ?? [];
    await workbook.addRows('Walls', [more]);
    expect(await workbook.readTable('Walls')).toEqual([...table, more]);
    await expect(workbook.addRows('Gone', [more])).rejects.toThrow('There is no table Gone');
  });

  it('has a sheet printed on one page, and is done where the host cannot', async () => {
    await workbook.write([
      { sheet: 'Page', address: 'A1', rows: [['Bid']], print: { held: 'sideways', onePage: true } },
    ]);
    expect(excel.log).toContain('Page!page orientation Landscape');
    expect(excel.log).toContain('Page!page zoom {"horizontalFitToPages":1,"verticalFitToPages":1}');
    vi.spyOn(excel, 'PageOrientation', 'get').mockImplementation(() => {
      throw new Error('ApiNotFound');
    });
    await workbook.write([
      { sheet: 'Second', address: 'A1', rows: [['Bid']], print: { held: 'sideways', onePage: true } },
    ]);
    expect(excel.sheets.get('Second')?.get('A1')).toBe('Bid');
    expect(excel.log).not.toContain('Second!page orientation Landscape');
  });

  it('has a sheet printed upright on the paper of its units, its first row on each page', async () => {
    const print = { held: 'upright', paper: 'letter', repeatsFirstRow: true } as const;
    await workbook.write([{ sheet: 'Page', address: 'A1', rows: [['Bid']], print }]);
    expect(excel.log).toContain('Page!page orientation Portrait');
    expect(excel.log).toContain('Page!page zoom {"horizontalFitToPages":1}');
    expect(excel.log).toContain('Page!page paperSize Letter');
    expect(excel.log).toContain('Page!page title rows $1:$1');
    await workbook.write([
      { sheet: 'Page', address: 'A1', rows: [['Bid']], print: { ...print, paper: 'a4' } },
    ]);
    expect(excel.log).toContain('Page!page paperSize A4');
  });

  it('keeps a text a text, whatever it looks like', async () => {
    const texts = [
      '=1+1',
      '+1',
      '-1',
      '@A1',
      "'quoted",
      '12',
      '1/2',
      ' 3',
      'TRUE',
      'false',
      '#N/A',
      '(1)',
      '$5',
    ];
    const plain = ['Wall', 'x = 1', 'a-1', 'truest'];
    await workbook.write([{ sheet: 'New', address: 'A1', rows: [[...texts, ...plain, 5, true, '']] }]);
    expect([...(excel.sheets.get('New')?.values() ?? [])]).toEqual([
      ...texts.map((text) => `'${text}`),
      ...plain,
      5,
      true,
    ]);
  });
});

describe('texts kept in the workbook', () => {
  const odd = '{"zone":"<North & \\"South\\"> ]]> %0041 \u00e9 \u{1f9f1}","a":"\\n\u0007\ud800"}\r\n';

  it('come back the same', async () => {
    expect(await workbook.readPart('steps')).toBeUndefined();
    expect(await workbook.writePart('steps', odd)).toBe(true);
    expect(await workbook.writePart('source', 'other')).toBe(true);
    expect(await workbook.readPart('steps')).toBe(odd);
    expect(excel.parts.map(({ namespace }) => namespace)).toEqual([
      'urn:washdown:steps',
      'urn:washdown:source',
    ]);
  });

  it('are replaced, not added again', async () => {
    await workbook.writePart('steps', 'one');
    expect(await workbook.writePart('steps', 'two')).toBe(true);
    expect(excel.parts).toHaveLength(1);
    expect(await workbook.readPart('steps')).toBe('two');
  });

  it('are told as not kept, where they cannot be read back', async () => {
    excel.keepsParts = false;
    expect(await workbook.writePart('steps', 'one')).toBe(false);
  });

  it('are told as not kept, where the host refuses', async () => {
    excel.refuses = true;
    expect(await workbook.writePart('steps', 'one')).toBe(false);
  });
});

describe('the host', () => {
  it('shows cells', async () => {
    await workbook.goTo({ sheet: 'My sheet', address: 'B2' });
    expect(excel.log).toEqual(['My sheet is shown']);
    expect(excel.selected).toEqual({ sheet: 'My sheet', address: 'B2' });
  });

  it('calculates, and is waited for', async () => {
    await workbook.calculate();
    expect(excel.log).toEqual(['calculates Full']);
    expect(excel.statesOfCalculation).toEqual([]);
  });

  it('tells of changes and deleted sheets until nobody listens', async () => {
    let seen = 0;
    const end = workbook.onChanged(() => {
      seen++;
    });
    await settled();
    await excel.changed?.({ worksheetId: 'My sheet', address: 'B2' });
    await excel.delete('My sheet');
    expect(seen).toBe(2);
    end();
    await settled();
    expect([excel.changed, excel.deleted]).toEqual([undefined, undefined]);
  });

  it('is asked nothing in an event, so that a change is not lost while a cell is edited or its sheet is gone', async () => {
    let seen = 0;
    workbook.onChanged(() => {
      seen++;
    });
    await settled();
    excel.editing = true;
    await excel.changed?.({ worksheetId: 'My sheet', address: 'B2' });
    excel.rename('My sheet', 'Yours');
    await excel.changed?.({ worksheetId: 'gone', address: 'B2' });
    expect(seen).toBe(2);
  });

  it('says whether it calculates by hand alone', async () => {
    expect(await workbook.calculatesByHand()).toBe(false);
    excel.mode = 'Manual';
    expect(await workbook.calculatesByHand()).toBe(true);
  });

  it('finds sheets and tables in any case', async () => {
    expect(await workbook.readTable('WALLS')).toHaveLength(3);
    expect(await workbook.readRange({ sheet: 'MY SHEET', address: 'B2' })).toEqual([[7]]);
  });

  it('puts values in the place of formulas, the whole of a spill at once', async () => {
    excel.spills.set('Walls!B3', 'B3:C9');
    await workbook.makePlain([
      { sheet: 'Walls', address: 'B3' },
      { sheet: 'My sheet', address: 'B2' },
    ]);
    expect(excel.log).toEqual(['Walls!B3:C9 takes its Values', 'My sheet!B2 takes its Values']);
  });
});

describe('while a cell is edited', () => {
  const BLOCK = { sheet: 'New', address: 'A1', rows: [[1]] };

  it.each([
    ['a reading', () => workbook.readRange({ sheet: 'My sheet', address: 'B2' })],
    ['a writing', () => workbook.write([BLOCK])],
    ['a kept text', () => workbook.writePart('steps', 'x')],
  ])('%s waits', async (_, work) => {
    excel.editing = true;
    let done: unknown = 'waits';
    const working = work().then((result) => {
      done = result;
    });
    await settled();
    expect(done).toBe('waits');
    excel.endEdit();
    await working;
    expect(done).not.toBe('waits');
  });

  it('listening begins once it is over', async () => {
    excel.editing = true;
    workbook.onChanged(() => undefined);
    await settled();
    expect(excel.changed).toBeUndefined();
    excel.endEdit();
    await settled();
    expect(excel.changed).toBeDefined();
  });

  it('says after a while that it waits, and when it goes on', async () => {
    vi.useFakeTimers();
    try {
      const told: boolean[] = [];
      const end = workbook.onWaiting((waits) => told.push(waits));
      await workbook.sheets();
      expect(told).toEqual([]);
      excel.editing = true;
      const reading = workbook.sheets();
      await vi.advanceTimersByTimeAsync(5000);
      expect(told).toEqual([true]);
      excel.endEdit();
      await reading;
      expect(told).toEqual([true, false]);
      end();
    } finally {
      vi.useRealTimers();
    }
  });
});

describe('a writing that fails', () => {
  const BLOCKS = [
    {
      sheet: 'New',
      address: 'A1',
      rows: [
        ['Wall', 'Area'],
        ['N-1', 5],
      ],
      table: 'Fresh',
    },
    {
      sheet: 'walls',
      address: 'A2',
      rows: [
        ['=W-9', 1],
        [{ formula: '=B2*3' }, ''],
      ],
      heading: true,
    },
    { sheet: 'My sheet', address: 'B2', rows: [['x', 'y']], table: 'Inside', formats: { B2: '0.0' } },
  ];
  const start = () => {
    excel = new FakeExcel();
    excel.install();
    excel.fill('Walls', [
      ['Wall', 'Area'],
      ["'12", 120],
      ['W-2', '=B2*2'],
    ]);
    excel.fill('My sheet', [
      ['', ''],
      ['', 7],
    ]);
  };

  it('at any operation is taken back whole, or has written everything and says what looks are missing', async () => {
    let tried = 0;
    let taken = 0;
    let looks = 0;
    for (let failsAt = 1; ; failsAt++, tried++) {
      start();
      const before = excel.state();
      excel.failsAt = failsAt;
      const said = await workbook.write(BLOCKS).catch((error: unknown) => error);
      if (excel.failsAt as number | undefined) break;
      if (said instanceof WriteFailed) {
        taken++;
        expect([failsAt, said.left, excel.state()]).toEqual([failsAt, [], before]);
      } else {
        looks++;
        expect(said).toEqual(['Widths and number formats could not all be set: GeneralException']);
        expect(excel.sheets.get('Walls')?.get('A3')).toBe('=B2*3');
        expect(excel.tables.map(({ name }) => name)).toEqual(['Fresh', 'Inside']);
      }
    }
    // A sheet, three ranges, two tables and their names; then bold, three fits and a format.
    expect([tried, taken, looks]).toEqual([13, 8, 5]);
  });

  it.each([
    ['a sheet is protected', () => excel.protectedSheets.add('My sheet'), []],
    ['the workbook is protected', () => (excel.structureProtected = true), []],
  ])('because %s leaves the workbook as it was', async (_, protect, left) => {
    start();
    const before = excel.state();
    protect();
    await expect(workbook.write(BLOCKS)).rejects.toMatchObject({ message: 'AccessDenied', left });
    expect(excel.state()).toEqual(before);
  });

  it('and cannot be taken back lists what is left', async () => {
    start();
    excel.failsAt = 6;
    // Somebody protects the workbook in the meantime.
    const protect = () => {
      if (excel.failsAt === undefined) {
        excel.structureProtected = true;
        excel.protectedSheets.add('Walls');
      }
    };
    const syncing = vi.spyOn(excel, 'run').mockImplementation((first, second) => {
      protect();
      return FakeExcel.prototype.run.call(excel, first, second);
    });
    await expect(workbook.write(BLOCKS)).rejects.toMatchObject({
      left: ['sheet New', 'cells walls!A2:B3'],
    });
    syncing.mockRestore();
  });
});

describe('a host that hands over no more than 5 MB', () => {
  it('takes and gives a long range in several pieces', async () => {
    const rows = Array.from({ length: 60_000 }, (_, row) => [
      row,
      'a label of some length',
      12.25,
      'x',
      '',
      '',
    ]);
    // More than the host takes at once.
    expect(JSON.stringify(rows).length).toBeGreaterThan(2_000_000);
    excel.payload = 2_000_000;
    expect(await workbook.write([{ sheet: 'Long', address: 'A1', rows, table: 'Long' }])).toEqual([]);
    expect(excel.sheets.get('Long')?.get('A60000')).toBe(59_999);
    const read = await workbook.readTable('Long');
    expect([read.length, read[59_999]?.[2]]).toEqual([60_000, 12.25]);
    expect(await workbook.readRange({ sheet: 'Long', address: 'A59999:B60000' })).toEqual([
      [59_998, 'a label of some length'],
      [59_999, 'a label of some length'],
    ]);
  });
});

it('reads only what was loaded and synchronised, by another mock too', async () => {
  const range = { address: "'My sheet'!A1:B2", values: [[1, 2]] };
  const mock = new OfficeMockObject({
    context: {
      workbook: {
        sheet: {
          isNullObject: false,
          range,
          getRange(this: { range: unknown }) {
            return this.range;
          },
        },
        worksheets: {
          getItemOrNullObject: () => (mock as unknown as Mocked).context.workbook.sheet,
        },
      },
    },
    run: (_: object, batch: (context: unknown) => unknown) => batch((mock as unknown as Mocked).context),
  });
  Object.assign(globalThis, { Excel: mock });
  expect(await workbook.readRange({ sheet: 'My sheet', address: 'A1:B1' })).toEqual([[1, 2]]);
});

interface Mocked {
  readonly context: { readonly workbook: { readonly sheet: unknown } };
}

function settled(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

function never(): never {
  throw new Error('There is no table.');
}
