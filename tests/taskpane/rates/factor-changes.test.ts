import { describe, expect, it } from 'vitest';
import { factorWriting, isSame, readFactorTable } from '../../../taskpane/rates/factor-changes';
import type { Reference } from '../../../taskpane/shared/wall-source';
import { MemoryWorkbook, type Contents } from '../../../taskpane/workbook/memory-workbook';
import type { CellContent } from '../../../taskpane/workbook/port';

const ROWS: readonly (readonly CellContent[])[] = [
  ['Factor', 'Value', 'Note'],
  ['Rate.Scrape.Light', 60, 'first bid'],
  ['', '', ''],
  ['rate.apply', 900, ''],
];
const SCRAPE = { id: 'rate.scrape.light', value: 50.43, note: 'from 3 entries' } as const;
const WET = { id: 'rate.wet', value: 1200, note: 'from 2 entries' } as const;
const GLASS = { id: 'rate.glass', value: 90, note: 'from 1 entry' } as const;
const RANGE: Reference = { sheet: 'Data', address: 'B3:D6' };

function book(rows = ROWS, more: Partial<Contents> = {}): MemoryWorkbook {
  const blank = rows.map((row) => ['', ...row]);
  return new MemoryWorkbook({
    sheets: { Data: [[], [], ...blank] },
    tables: [{ name: 'Factors', sheet: 'Data', address: `B3:${rows[0]?.length === 2 ? 'C' : 'D'}6` }],
    ...more,
  });
}
async function write(
  port: MemoryWorkbook,
  reference: Reference,
  ...changes: Parameters<typeof factorWriting>[3]
) {
  return factorWriting(port, reference, await readFactorTable(port, reference), changes);
}

describe('rates into the factor table', () => {
  it('go beside the id where it stands, however it is written, wherever the table is', async () => {
    expect(await write(book(), { table: 'Factors' }, SCRAPE)).toEqual({
      blocks: [{ sheet: 'Data', address: 'C4', rows: [[50.43, 'from 3 entries']] }],
      added: [],
    });
  });

  it('without a row of their own take a blank one, then the end of the table', async () => {
    expect(await write(book(), { table: 'Factors' }, WET, GLASS)).toEqual({
      blocks: [{ sheet: 'Data', address: 'B5', rows: [['rate.wet', 1200, 'from 2 entries']] }],
      added: [['rate.glass', 90, 'from 1 entry']],
    });
  });

  it('in a range without room are refused, by name', async () => {
    await expect(write(book(), RANGE, WET, GLASS)).rejects.toThrow(
      'The factors are a range without a blank row for rate.glass.',
    );
  });

  it('leave the note out where the table has two columns', async () => {
    const two = ROWS.map((row) => row.slice(0, 2));
    const writing = await write(book(two), { table: 'Factors' }, SCRAPE, WET, GLASS);
    expect(writing.blocks.map(({ rows }) => rows)).toEqual([[[50.43]], [['rate.wet', 1200]]]);
    expect(writing.added).toEqual([['rate.glass', 90]]);
  });

  it('are refused where the cell shows a percent', async () => {
    const port = book(ROWS, { formats: { 'Data!C4': '0%' } });
    await expect(write(port, RANGE, SCRAPE)).rejects.toThrow(
      'The cell of rate.scrape.light shows a percent.',
    );
  });

  it('tell value, note and row that have changed since', async () => {
    const port = book();
    const seen = async () => (await readFactorTable(port, RANGE)).of('rate.scrape.light');
    const before = await seen();
    expect(before).toEqual({ row: 1, value: 60, note: 'first bid' });
    expect(isSame(before, await seen())).toBe(true);
    port.type({ sheet: 'Data', address: 'D4' }, 'by the office');
    expect(isSame(before, await seen())).toBe(false);
    const none = { row: undefined, value: '', note: '' };
    expect(isSame(none, { ...none, row: 2 })).toBe(false);
  });
});
