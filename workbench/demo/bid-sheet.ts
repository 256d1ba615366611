import type { Workbook } from 'exceljs';
import { jobCell } from './estimate-sheet';
import { asHeader, FONT, FORMATS, freeze, setWidths, title } from './look';
import type { Job } from './wall-line';

interface Line {
  readonly item: string;
  readonly description: string;
  readonly quantity: number | { readonly formula: string };
  readonly unit: string;
  readonly rate: number;
}

const HEADER = 3;

function washLines(job: Job): Line[] {
  const { rates, units } = job;
  // Round up to what is ordered or booked whole; hours are kept as estimated.
  const whole = (id: string): { formula: string } => ({ formula: `ROUNDUP(${jobCell(job, id)},0)` });
  const item = (index: number): string => `WD-${String(index)}`;
  return [
    {
      item: item(1),
      description: 'Wash-down, crew',
      quantity: { formula: `ROUND(${jobCell(job, 'CREWHOURS')},1)` },
      unit: 'crew-h',
      rate: rates.crewHour,
    },
    {
      item: item(2),
      description: 'Water, brought and metered',
      quantity: whole('WATER'),
      unit: units.volume,
      rate: rates.water,
    },
    {
      item: item(3),
      description: 'Masking film, with laps',
      quantity: whole('MASKING'),
      unit: units.area,
      rate: rates.masking,
    },
    {
      item: item(4),
      description: 'Masking tape',
      quantity: whole('TAPE'),
      unit: units.length,
      rate: rates.tape,
    },
    {
      item: item(5),
      description: 'Cleaner concentrate',
      quantity: whole('CLEANER'),
      unit: units.volume,
      rate: rates.cleaner,
    },
  ];
}

/**
 * Adds the bid: ordinary lines and formulas, which take the quantities of the wash-down from the estimate.
 * @param workbook the workbook
 * @param job the job
 */
export function addBid(workbook: Workbook, job: Job): void {
  const sheet = workbook.addWorksheet('Bid');
  title(sheet, 'A1', job.title);
  sheet.getRow(HEADER).values = ['Item', 'Description', 'Quantity', 'Unit', 'Rate', 'Amount'];
  asHeader(sheet.getRow(HEADER));
  const lines: Line[] = [...job.before, ...washLines(job), ...job.after];
  for (const [index, line] of lines.entries()) {
    const row = HEADER + 1 + index;
    const { item, description, quantity, unit, rate } = line;
    sheet.getRow(row).values = [item, description, quantity, unit, rate];
    sheet.getCell(row, 3).numFmt = FORMATS.quantity;
    sheet.getCell(row, 4).alignment = { horizontal: 'left', indent: 1 };
    sheet.getCell(row, 5).numFmt = FORMATS.money;
    sheet.getCell(row, 6).value = { formula: `ROUND(C${String(row)}*E${String(row)},2)` };
    sheet.getCell(row, 6).numFmt = FORMATS.money;
  }
  const first = HEADER + 1;
  const last = HEADER + lines.length;
  const total = sheet.getRow(last + 1);
  total.values = [null, 'Total', null, null, null, { formula: `SUM(F${String(first)}:F${String(last)})` }];
  total.font = { ...FONT, bold: true };
  total.getCell(6).numFmt = FORMATS.money;
  total.getCell(6).border = { top: { style: 'thin' } };
  setWidths(sheet, [9, 42, 13, 10, 11, 14]);
  freeze(sheet, HEADER);
}
