import type { Workbook } from 'exceljs';
import { jobCell, jobRate } from './estimate-sheet';
import { asHeader, FONT, FORMATS, freeze, QUIET, setWidths, title } from './look';
import type { Job } from './wall-line';

type Amount = number | { readonly formula: string };

interface Line {
  readonly item: string;
  readonly description: string;
  readonly quantity: Amount;
  readonly unit: string;
  /** Number format of the quantity, where it is no amount. */
  readonly format?: string;
  /** Left out where another line holds the price. */
  readonly rate?: Amount;
}

const HEADER = 3;

/** The wash-down: one line with its price, and below it what is to be ordered or booked for it. */
function washLines(job: Job): Line[] {
  const { units } = job;
  const whole = (id: string): Amount => ({ formula: `ROUNDUP(${jobCell(job, id)},0)` });
  const inPrice: readonly Omit<Line, 'item'>[] = [
    { description: 'Water, brought and metered', quantity: whole('WATER'), unit: units.volume },
    { description: 'Masking, with laps', quantity: whole('MASKING'), unit: units.area },
    { description: 'Masking tape', quantity: whole('TAPE'), unit: units.length },
    { description: 'Cleaner concentrate', quantity: whole('CLEANER'), unit: units.volume },
    {
      description: 'Crew',
      quantity: { formula: `ROUND(${jobCell(job, 'CREWHOURS')},1)` },
      unit: 'crew-h',
    },
    {
      description: 'Labor',
      quantity: { formula: `ROUND(${jobCell(job, 'LABORHOURS')},1)` },
      unit: 'labor-h',
    },
    { description: 'Runoff to collect', quantity: whole('RUNOFF'), unit: units.volume },
    { description: 'Neutralizer', quantity: whole('NEUTRALIZER'), unit: units.mass },
    {
      description: 'Price per washed area',
      quantity: { formula: `ROUND(${jobRate(job, 'price')},2)` },
      unit: `per ${units.area}`,
      format: FORMATS.money,
    },
    {
      description: 'Washed area per labor-hour',
      quantity: { formula: `ROUND(${jobRate(job, 'yield')},1)` },
      unit: units.area,
    },
  ];
  return [
    {
      item: 'WD-1',
      description: 'Final wash-down, as priced on the sheet Price',
      quantity: 1,
      unit: 'sum',
      rate: { formula: jobCell(job, 'BIDPRICE') },
    },
    ...inPrice.map((line, index) => ({
      ...line,
      item: `WD-${String(index + 2)}`,
      description: `${line.description} (in WD-1)`,
    })),
  ];
}

/**
 * Adds the bid: ordinary lines and formulas, which take the price and quantities of the wash-down from the estimate.
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
    const { item, description, quantity, unit, rate, format = FORMATS.quantity } = line;
    sheet.getRow(row).values = [item, description, quantity, unit, rate ?? null];
    sheet.getCell(row, 3).numFmt = format;
    sheet.getCell(row, 4).alignment = { horizontal: 'left', indent: 1 };
    sheet.getCell(row, 5).numFmt = FORMATS.money;
    if (rate === undefined) {
      sheet.getRow(row).font = { ...FONT, color: { argb: QUIET } };
      continue;
    }
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
