import { expect, it } from 'vitest';
import { rememberWritten } from '../../../taskpane/shared/remember-written';
import { readRemembered } from '../../../taskpane/shared/remembered-text';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';

const call = (zone: string) => ({ formula: `=WASH.WATER(Walls[#All],${zone})` });

/** The addresses that are remembered, each with its formula where it is the first of its group. */
async function remembered(port: MemoryWorkbook): Promise<[formula: string, addresses: readonly string[]][]> {
  return readRemembered(await port.readPart('formulas')).map(([, , formula, addresses]) => [
    formula,
    addresses,
  ]);
}

it('formulas that are written are remembered, and forgotten where something else is written over them', async () => {
  const port = new MemoryWorkbook({ sheets: { Estimate: [] } });
  const write = (address: string, rows: Parameters<typeof rememberWritten>[1][number]['rows']) =>
    rememberWritten(port, [{ sheet: 'Estimate', address, rows }]);
  await write('A2', [
    ['South', call('$A2')],
    ['North', call('$A3')],
  ]);
  expect(await remembered(port)).toEqual([[call('$A2').formula, ['B2', 'B3']]]);
  await write('B2', [[1200]]);
  expect(await remembered(port)).toEqual([[call('$A3').formula, ['B3']]]);
  await write('D1', [[call('"West"')]]);
  expect(await remembered(port)).toEqual([
    [call('$A3').formula, ['B3']],
    [call('"West"').formula, ['D1']],
  ]);
});
