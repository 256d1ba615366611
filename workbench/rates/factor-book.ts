import ExcelJS from 'exceljs';
import { noteOf } from '../../src/actuals/note';
import type { PooledRate } from '../../src/actuals/pool-jobs';
import { show, type System } from '../../src/quantity/systems';
import { factorRow } from '../../src/rules/factor-row';

/**
 * Makes a workbook with a table of factors from pooled rates.
 * @param rates what the jobs show
 * @param system the display system
 * @returns the file
 */
export async function factorBook(rates: readonly PooledRate[], system: System): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet('Factors');
  sheet.addTable({
    name: 'Factors',
    ref: 'A1',
    headerRow: true,
    columns: ['Factor', 'Value', 'Note'].map((name) => ({ name, filterButton: false })),
    rows: [
      ['units', system, ''],
      ...rates.map(({ factor, blended, observations, jobs }) => [
        factor.id,
        show(blended, factorRow(factor.id).kind, system),
        noteOf(observations, jobs.size),
      ]),
    ],
  });
  [24, 14, 48].forEach((width, place) => {
    sheet.getColumn(place + 1).width = width;
  });
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}
