import type { Workbook } from 'exceljs';
import { columnLetters } from '../xlsx/address';
import { zonesOf } from './estimate-sheet';
import { asHeader, FONT, FORMATS, freeze, QUIET, setWidths, title } from './look';
import type { Job } from './wall-line';

const HEADER = 3;
const FIRST_PART = HEADER + 1;
const PARTS = [
  'labor',
  'cleaner',
  'masking',
  'water',
  'equipment',
  'access',
  'neutralizer',
  'disposal',
  'mobilization',
  'protection',
  'fixed',
  'supervision',
  'contingency',
  'overhead',
  'profit',
  'minimum',
] as const;

/**
 * Adds the price by part, a column a zone: the parts, what they add up to, the price as it is bid, and its rate.
 * @param workbook the workbook
 * @param job the job
 */
export function addPrice(workbook: Workbook, job: Job): void {
  const sheet = workbook.addWorksheet('Price');
  const zones = zonesOf(job);
  title(sheet, 'A1', `${job.title}: price by part`);
  sheet.getRow(HEADER).values = ['Part', ...zones, 'Whole job', 'Sum of the zones'];
  asHeader(sheet.getRow(HEADER));
  const [sum, bid, rate] = [0, 1, 2].map((below) => FIRST_PART + PARTS.length + below) as [
    number,
    number,
    number,
  ];
  const first = columnLetters(1);
  const last = columnLetters(zones.length);
  const rows: readonly (readonly [row: number, label: string, part: string | undefined])[] = [
    ...PARTS.map((part, index) => [FIRST_PART + index, part, part] as const),
    [sum, 'Sum of the parts', undefined],
    [bid, 'Price, rounded once', ''],
    [rate, 'rate', 'rate'],
  ];
  for (const [row, label, part] of rows) {
    sheet.getCell(row, 1).value = label;
    for (let column = 2; column <= zones.length + 2; column += 1) {
      const letters = columnLetters(column - 1);
      const zone = column === zones.length + 2 ? '' : `${letters}$${String(HEADER)}`;
      const asked = part === '' ? '' : `,$A${String(row)}`;
      sheet.getCell(row, column).value = {
        formula:
          part === undefined
            ? `SUM(${letters}${String(FIRST_PART)}:${letters}${String(sum - 1)})`
            : `_xldudf_WASH_BIDPRICE(Walls[#All],${zone},Factors[#All]${asked})`,
      };
    }
    if (row !== rate) {
      const cell = sheet.getCell(row, zones.length + 3);
      cell.value = { formula: `SUM(${first}${String(row)}:${last}${String(row)})` };
    }
    for (let column = 2; column <= zones.length + 3; column += 1) {
      sheet.getCell(row, column).numFmt = FORMATS.money;
    }
  }
  const unit = sheet.getCell(rate, zones.length + 3);
  unit.value = `per ${job.units.area} of washed area`;
  unit.alignment = { horizontal: 'left', indent: 1 };
  sheet.getRow(sum).font = { ...FONT, italic: true, color: { argb: QUIET } };
  sheet.getRow(bid).font = { ...FONT, bold: true };
  setWidths(sheet, [24, ...zones.map(() => 15), 15, 22]);
  freeze(sheet, HEADER, 1);
}
