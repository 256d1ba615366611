import { expect, it } from 'vitest';
import { isSame, readFactorTable } from '../../../taskpane/rates/seen-factors';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

it('a factor tells value, note and row that have changed since', async () => {
  const port = new MemoryWorkbook({
    sheets: {
      Data: [
        ['Factor', 'Value', 'Note'],
        ['Rate.Scrape.Light', 60, 'first bid'],
      ],
    },
  });
  const seen = async () =>
    (await readFactorTable(port, { sheet: 'Data', address: 'A1:C2' })).of('rate.scrape.light');
  const before = await seen();
  expect(before).toEqual({ row: 1, value: 60, note: 'first bid' });
  expect(isSame(before, await seen())).toBe(true);
  port.type({ sheet: 'Data', address: 'C2' }, 'by the office');
  expect(isSame(before, await seen())).toBe(false);
  const none = { row: undefined, value: '', note: '' };
  expect(isSame(none, { ...none, row: 2 })).toBe(false);
});
