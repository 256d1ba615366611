import type { Workbook } from 'exceljs';
import { asHeader, freeze, setWidths } from './look';
import { ACTUALS_HEADINGS, type Job } from './wall-line';

/**
 * Adds the table of the recorded work.
 * @param workbook the workbook
 * @param job the job
 */
export function addActuals(workbook: Workbook, job: Job): void {
  const sheet = workbook.addWorksheet('Actuals');
  sheet.addTable({
    name: 'Actuals',
    ref: 'A1',
    headerRow: true,
    style: { theme: 'TableStyleMedium2', showRowStripes: true },
    columns: ACTUALS_HEADINGS.map((name) => ({ name, filterButton: false })),
    rows: job.actuals.map((line) => [...line]),
  });
  sheet.getColumn(1).numFmt = 'yyyy-mm-dd';
  asHeader(sheet.getRow(1));
  setWidths(sheet, [13, 18, 32, 12, 10, 10, 10, 10, 44]);
  freeze(sheet, 1);
}
