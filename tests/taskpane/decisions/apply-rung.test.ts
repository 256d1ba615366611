import { expect, it } from 'vitest';
import { maskOptions } from '../../../src/estimate/options';
import { readFactors } from '../../../src/rules/read-factors';
import { readWalls } from '../../../src/walls/read-walls';
import { zonesOf } from '../../../src/walls/zones';
import { maskedBlocks, maskedCells } from '../../../taskpane/decisions/apply-rung';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';
import type { CellContent } from '../../../taskpane/workbook/port';

const ROWS: CellContent[][] = [
  ['Wall', 'Masked', 'Material', 'Area'],
  ['F-1', '', 'Red clay brick', 800],
  ['F-2', '', 'Limestone', 60],
];
const SOURCE = { walls: { sheet: 'Bid', address: 'C3:F5' } };

function bid(rows: CellContent[][]) {
  const pad = rows.map((row): CellContent[] => ['', '', ...row]);
  const port = new MemoryWorkbook({ sheets: { Bid: [[], [], ...pad] } });
  const factors = readFactors(null);
  const zones = zonesOf(readWalls(ROWS, factors));
  const zone = zones[0]?.rows ?? [];
  const [options = []] = maskOptions(zones, zones, factors);
  const rung = options.find(({ class: allowed }) => allowed === 2);
  if (!rung) throw new Error('There is no such line.');
  return { port, zone, rung };
}

it('names the cells that differ, and setting them masks the zone as the line has it', async () => {
  const { port, zone, rung } = bid(ROWS);
  const cells = await maskedCells(port, SOURCE, zone, rung);
  // Class 2 is above the ceiling of limestone alone; the third row of the range is row 5, its second column D.
  expect(cells).toEqual([{ sheet: 'Bid', address: 'D5', wall: 'F-2', from: '', to: 'yes' }]);
  await port.write(maskedBlocks(cells));
  expect(await port.readRange(SOURCE.walls)).toEqual([...ROWS.slice(0, 2), ['F-2', 'yes', 'Limestone', 60]]);
});

it('says that there is no column, or that the walls are others by now', async () => {
  const without = bid(ROWS.map((row) => row.with(1, row[0] === 'Wall' ? 'Note' : '')));
  await expect(maskedCells(without.port, SOURCE, without.zone, without.rung)).rejects.toThrow(
    'no column Masked',
  );
  const moved = bid([ROWS[0] ?? [], ROWS[2] ?? [], ROWS[1] ?? []]);
  await expect(maskedCells(moved.port, SOURCE, moved.zone, moved.rung)).rejects.toThrow('have changed');
});
