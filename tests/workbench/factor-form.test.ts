import { join } from 'node:path';
import { Workbook } from 'exceljs';
import { expect, it } from 'vitest';
import { formRows } from '../../taskpane/shared/factor-table-rows';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { recalculate } from '../../workbench/engine/recalculate';
import { openArchive } from '../../workbench/xlsx/archive';
import { readBook } from '../../workbench/xlsx/read-book';

const CALLS = ['LABORHOURS', 'WATER', 'CLASS'] as const;

/** What each function gives without factors, and with the form as a table, as its rows alone, and as a range. */
async function results(cleared: readonly string[], own: Readonly<Record<string, number>> = {}) {
  const book = new Workbook();
  const walls = book.addWorksheet('Walls');
  walls.addRows([
    ['Wall', 'Material', 'Area', 'Height', 'Residue'],
    ['A', 'Red clay brick', 900, 14, 'heavy'],
    ['B', 'Split-face CMU', 400, 10, 'moderate'],
  ]);
  const form = formRows('US').rows.map(([id = '', value = '', ...more]) => [
    id,
    cleared.includes(String(id)) ? null : (own[String(id)] ?? value),
    ...more.map((cell) => (cell === '' ? null : cell)),
  ]);
  const [headings = [], ...rows] = form;
  book.addWorksheet('Factors').addTable({
    name: 'Factors',
    ref: 'A1',
    headerRow: true,
    columns: headings.map((name) => ({ name: String(name) })),
    rows,
  });
  const range = `Factors!A1:H${String(form.length)}`;
  const bid = book.addWorksheet('Bid');
  const forms = ['', 'Factors[#All]', 'Factors', range, `Factors!A1:C${String(form.length)}`];
  for (const name of CALLS)
    bid.addRow(forms.map((factors) => ({ formula: `WASH.${name}(Walls!A1:E3,,${factors})` })));
  bid.addRow([{ formula: 'WASH.FACTORS(Factors[#All])' }]);
  const archive = openArchive(new Uint8Array(await book.xlsx.writeBuffer()));
  const found = await recalculate(
    readBook(archive),
    loadBundle(join(import.meta.dirname, '..', '..', 'dist')),
  );
  const at = (row: number) => found.filter((cell) => cell.sheet === 'Bid' && cell.row === row);
  return {
    byCall: CALLS.map((_, index) => at(index).map(({ result }) => result)),
    table: at(CALLS.length)[0]?.result as (string | number)[][],
  };
}

it('a form that nobody has filled in changes nothing, however formulas name it', async () => {
  const { byCall, table } = await results([]);
  for (const [index, given] of byCall.entries()) {
    expect(given).toHaveLength(5);
    for (const result of given) expect(result, CALLS[index]).toEqual(given[0]);
    expect(given[0], CALLS[index]).toBeTypeOf('number');
  }
  expect(table.filter(([, , , kind]) => kind === 'override')).toEqual([]);
});

it('values that were deleted are the starting ones again, a class and those that take 0 too', async () => {
  const { byCall } = await results(['cleaner.class', 'weather.air', 'mask.lap', 'team.size', 'dwell.least']);
  for (const given of byCall) for (const result of given) expect(result).toEqual(given[0]);
});

it('a value of the user counts by every name of the form', async () => {
  const { byCall } = await results([], { 'cleaner.class': 0, 'team.size': 3 });
  const [hours = [], , classes = []] = byCall;
  expect(classes).toHaveLength(5);
  expect(classes[0]).toBe(2);
  for (const result of classes.slice(1)) expect(result).toBe(0);
  for (const result of hours.slice(2)) expect(result).toEqual(hours[1]);
  expect(hours[1]).not.toEqual(hours[0]);
});
