import type { Workbook, Worksheet } from 'exceljs';
import { FORMATS, freeze, setWidths, spilledHeader } from './look';
import type { Job } from './wall-line';

interface SpillSheet {
  readonly formula: (job: Job) => string;
  readonly widths: readonly number[];
  /** The columns of numbers, counted from 1. */
  readonly numbers?: Numbers;
}

interface Numbers {
  readonly first: number;
  /** The last; where there is none, as many as a spill fills. */
  readonly last?: number;
  /** The column of whole numbers. */
  readonly count?: number;
  /** The first column of prices; all after it are prices too. */
  readonly price?: number;
}

// Columns laid out with a number format; a spill may fill fewer.
const MOST_COLUMNS = 80;

const SHEETS = {
  Schedule: {
    formula: () => '_xldudf_WASH_SCHEDULE(Walls[#All],,Factors[#All])',
    widths: [18, 10, 30, 8, 30, 30],
    numbers: { first: 7 },
  },
  Rows: {
    formula: () => '_xldudf_WASH_WALLROWS(Walls[#All],,Factors[#All])',
    widths: [32, 16, 30],
    numbers: { first: 4 },
  },
  Options: {
    formula: () => '_xldudf_WASH_OPTIONS(Walls[#All],,Factors[#All])',
    widths: [18, 12, 36, 60, 36, 13, 13, 10, 13, 13, 13, 15, 13, 13, 20],
    numbers: { first: 6, last: 14, count: 8, price: 11 },
  },
  Changes: {
    formula: () => '_xldudf_WASH_CHANGES(Baseline[#All],Walls[#All],Factors[#All])',
    widths: [34, 11, 52, 26],
    numbers: { first: 5, last: 9, price: 9 },
  },
  Alternates: {
    formula: () => '_xldudf_WASH_ALTERNATES(Walls[#All],Alternates[#All],,Factors[#All])',
    widths: [34, 46, 46, 46, 13, 13, 13, 13, 13, 13, 46],
    numbers: { first: 5, last: 10, price: 9 },
  },
  Trace: {
    formula: ({ traced }) => `_xldudf_WASH_TRACE("labor-hours",Walls[#All],"${traced}",Factors[#All])`,
    widths: [30, 60, 14, 22, 60, 60, 18, 32],
  },
  Checks: {
    formula: () => '_xldudf_WASH_CHECKS(Walls[#All],,Factors[#All])',
    widths: [22, 60, 32, 60, 60, 40],
  },
  'Factors in force': {
    formula: () => '_xldudf_WASH_FACTORS(Factors[#All])',
    widths: [26, 12, 14, 18, 16, 60, 60],
  },
  Materials: {
    formula: () => '_xldudf_WASH_MATERIALS(Factors[#All])',
    widths: [24, 32, 10, 20, 16, 18, 14, 60],
  },
  Sources: { formula: () => '_xldudf_WASH_SOURCES()', widths: [20, 60, 40, 60, 60, 18] },
  Progress: {
    formula: () => '_xldudf_WASH_PROGRESS(Walls[#All],Actuals[#All],,Factors[#All])',
    widths: [18, 12],
    numbers: { first: 3, last: 26 },
  },
  Rates: {
    formula: () => '_xldudf_WASH_RATES(Actuals[#All],Walls[#All],Factors[#All])',
    widths: [22, 12, 10, 12, 12, 12, 16, 20, 12, 22, 22, 20, 14, 12, 14, 34, 60],
    numbers: { first: 4, last: 6 },
  },
} as const satisfies Record<string, SpillSheet>;

/**
 * Adds a sheet that holds one spilling formula.
 * @param workbook the workbook
 * @param job the job
 * @param name the sheet
 */
export function addSpill(workbook: Workbook, job: Job, name: keyof typeof SHEETS): void {
  const { formula, widths, numbers }: SpillSheet = SHEETS[name];
  const sheet = workbook.addWorksheet(name);
  if (numbers) formatNumbers(sheet, numbers, widths.length, job.walls.length);
  sheet.getCell('A1').value = { formula: formula(job) };
  setWidths(sheet, widths);
  freeze(sheet, 1, 1);
  spilledHeader(sheet, MOST_COLUMNS);
}

function formatNumbers(
  sheet: Worksheet,
  { first, last = MOST_COLUMNS, count, price }: Numbers,
  laidOut: number,
  rows: number,
): void {
  for (let column = first; column <= last; column += 1) {
    if (column > laidOut) sheet.getColumn(column).width = 16;
    const whole = column === count ? FORMATS.count : FORMATS.quantity;
    const format = price !== undefined && column >= price ? FORMATS.money : whole;
    for (let row = 2; row <= rows + 1; row += 1) sheet.getCell(row, column).numFmt = format;
  }
}
