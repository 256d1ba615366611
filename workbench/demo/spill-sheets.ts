import type { Workbook } from 'exceljs';
import { FORMATS, freeze, setWidths, spilledHeader } from './look';
import type { Job } from './wall-line';

interface SpillSheet {
  readonly formula: (job: Job) => string;
  readonly widths: readonly number[];
  /** Columns from which on numbers are quantities. */
  readonly quantitiesFrom?: number;
  /** The column of a price, counted from 1; the last that is a number. */
  readonly price?: number;
}

// Columns laid out with a number format; a spill may fill fewer.
const MOST_COLUMNS = 60;

const SHEETS = {
  Schedule: {
    formula: () => '_xldudf_WASH_SCHEDULE(Walls[#All],,Factors[#All])',
    widths: [18, 9, 30, 8],
    quantitiesFrom: 5,
  },
  Rows: {
    formula: () => '_xldudf_WASH_WALLROWS(Walls[#All],,Factors[#All])',
    widths: [32, 16, 30],
    quantitiesFrom: 4,
  },
  Options: {
    formula: () => '_xldudf_WASH_OPTIONS(Walls[#All],,Factors[#All])',
    widths: [18, 9, 34, 60, 13, 9, 12, 13, 13, 24],
    quantitiesFrom: 7,
    price: 9,
  },
  Changes: {
    formula: () => '_xldudf_WASH_CHANGES(Baseline[#All],Walls[#All],Factors[#All])',
    widths: [34, 11, 52, 24],
    quantitiesFrom: 5,
    price: 9,
  },
  Trace: {
    formula: ({ traced }) => `_xldudf_WASH_TRACE("crew-hours",Walls[#All],"${traced}",Factors[#All])`,
    widths: [24, 60, 14, 14, 60, 60, 18, 32],
  },
  Checks: {
    formula: () => '_xldudf_WASH_CHECKS(Walls[#All],,Factors[#All])',
    widths: [22, 60, 32, 60, 60, 40],
  },
  'Factors in force': {
    formula: () => '_xldudf_WASH_FACTORS(Factors[#All])',
    widths: [26, 12, 14, 18, 14, 60, 60],
  },
  Materials: {
    formula: () => '_xldudf_WASH_MATERIALS(Factors[#All])',
    widths: [24, 32, 9, 16, 14, 18, 14, 60],
  },
  Sources: { formula: () => '_xldudf_WASH_SOURCES()', widths: [20, 60, 40, 60] },
} as const satisfies Record<string, SpillSheet>;

/**
 * Adds a sheet that holds one spilling formula.
 * @param workbook the workbook
 * @param job the job
 * @param name the sheet
 */
export function addSpill(workbook: Workbook, job: Job, name: keyof typeof SHEETS): void {
  const { formula, widths, quantitiesFrom, price }: SpillSheet = SHEETS[name];
  const sheet = workbook.addWorksheet(name);
  const last = price ?? MOST_COLUMNS;
  for (let column = quantitiesFrom ?? MOST_COLUMNS + 1; column <= last; column += 1) {
    if (column > widths.length) sheet.getColumn(column).width = 13;
    const format = column === price ? FORMATS.money : FORMATS.quantity;
    for (let row = 2; row <= job.walls.length + 1; row += 1) sheet.getCell(row, column).numFmt = format;
  }
  sheet.getCell('A1').value = { formula: formula(job) };
  setWidths(sheet, widths);
  freeze(sheet, 1, 1);
  spilledHeader(sheet);
}
