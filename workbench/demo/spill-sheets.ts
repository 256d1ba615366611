import type { Workbook } from 'exceljs';
import { FORMATS, freeze, setWidths, spilledHeader } from './look';

interface SpillSheet {
  readonly name: string;
  readonly formula: string;
  readonly widths: readonly number[];
  /** Columns from which on numbers are quantities. */
  readonly quantitiesFrom?: number;
}

// Columns laid out with a number format; a spill may fill fewer.
const MOST_COLUMNS = 60;

const SHEETS: readonly SpillSheet[] = [
  {
    name: 'Schedule',
    formula: '_xldudf_WASH_SCHEDULE(Walls[#All],,Factors[#All])',
    widths: [18, 9, 30, 8],
    quantitiesFrom: 5,
  },
  {
    name: 'Rows',
    formula: '_xldudf_WASH_WALLROWS(Walls[#All],,Factors[#All])',
    widths: [32, 16, 30],
    quantitiesFrom: 4,
  },
  {
    name: 'Factors in force',
    formula: '_xldudf_WASH_FACTORS(Factors[#All])',
    widths: [26, 12, 14, 18, 14, 60, 60],
  },
  {
    name: 'Materials',
    formula: '_xldudf_WASH_MATERIALS(Factors[#All])',
    widths: [24, 32, 9, 16, 14, 18, 14, 60],
  },
  { name: 'Sources', formula: '_xldudf_WASH_SOURCES()', widths: [20, 60, 40, 60] },
];

/**
 * Adds the sheets that hold one spilling formula each.
 * @param workbook the workbook
 * @param rows most rows to lay formats out for
 */
export function addSpills(workbook: Workbook, rows: number): void {
  for (const { name, formula, widths, quantitiesFrom } of SHEETS) {
    const sheet = workbook.addWorksheet(name);
    for (let column = quantitiesFrom ?? MOST_COLUMNS; column < MOST_COLUMNS; column += 1) {
      if (column > widths.length) sheet.getColumn(column).width = 13;
      for (let row = 2; row <= rows + 1; row += 1) sheet.getCell(row, column).numFmt = FORMATS.quantity;
    }
    sheet.getCell('A1').value = { formula };
    setWidths(sheet, widths);
    freeze(sheet, 1, 1);
    spilledHeader(sheet);
  }
}
