import type { Workbook } from 'exceljs';
import { asHeader, freeze, setWidths } from './look';
import type { Job } from './wall-line';

/**
 * Adds the table of the alternates that the bid is asked for.
 * @param workbook the workbook
 * @param job the job
 */
export function addAlternates(workbook: Workbook, job: Job): void {
  const sheet = workbook.addWorksheet('Asked for');
  sheet.addTable({
    name: 'Alternates',
    ref: 'A1',
    headerRow: true,
    style: { theme: 'TableStyleMedium2', showRowStripes: true },
    columns: ['Alternate', 'Wall', 'Column', 'Value'].map((name) => ({ name, filterButton: false })),
    rows: job.alternates.map((line) => [...line]),
  });
  asHeader(sheet.getRow(1));
  setWidths(sheet, [34, 34, 16, 20]);
  freeze(sheet, 1);
}
