import type { Workbook } from 'exceljs';
import { asHeader, freeze, setWidths } from './look';
import type { Job } from './wall-line';

/**
 * Adds the table of the factors that the bid sets itself.
 * @param workbook the workbook
 * @param job the job
 */
export function addFactors(workbook: Workbook, job: Job): void {
  const sheet = workbook.addWorksheet('Factors');
  sheet.addTable({
    name: 'Factors',
    ref: 'A1',
    headerRow: true,
    style: { theme: 'TableStyleMedium2', showRowStripes: true },
    columns: ['Factor', 'Value', 'Note'].map((name) => ({ name, filterButton: false })),
    rows: job.factors.map((line) => [...line]),
  });
  asHeader(sheet.getRow(1));
  setWidths(sheet, [24, 12, 48]);
  freeze(sheet, 1);
}
