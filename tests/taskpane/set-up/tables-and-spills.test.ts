import { expect, it } from 'vitest';
import { fillsMore, tableUnder } from '../../../taskpane/set-up/insert-formulas';

const tables = [{ name: 'Bid', sheet: 'Bid', address: 'B2:D9', headings: ['a', 'b', 'c'], totals: false }];

it.each([
  ['Bid', 'A1:B2', 'Bid'],
  ['bid', 'D9:F20', 'Bid'],
  ['Bid', 'C3', 'Bid'],
  ['Bid', 'A1:A20', undefined],
  ['Bid', 'E2:F9', undefined],
  ['Bid', 'B10:D12', undefined],
  ['Other', 'B2:D9', undefined],
])('a spill over %s!%s meets %s', (sheet, address, table) => {
  expect(tableUnder({ sheet, address }, tables)).toBe(table);
});

it('only what spills is kept out of tables', () => {
  const wanted = { is: 'function', zone: '', eachZone: false } as const;
  expect(fillsMore({ ...wanted, name: 'SCHEDULE' })).toBe(true);
  expect(fillsMore({ ...wanted, name: 'WATER' })).toBe(false);
  expect(tableUnder(undefined, tables)).toBeUndefined();
});
