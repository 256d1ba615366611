import type { Workbook, Worksheet } from 'exceljs';
import { addedQuantities } from '../../src/estimate/quantities';
import { columnLetters } from '../xlsx/address';
import { asHeader, FONT, FORMATS, freeze, QUIET, setWidths, title } from './look';
import type { Job } from './wall-line';

/** Row of the sheet on which the first zone stands. */
const FIRST_ZONE = 4;

interface Column {
  readonly id: string;
  readonly heading: (units: Job['units']) => string;
  readonly format: string;
  /** Whether the zones add up to the job. */
  readonly adds: boolean;
  readonly width: number;
}

const COLUMNS: readonly Column[] = [
  { id: 'CLASS', heading: () => 'Class to use', format: FORMATS.count, adds: false, width: 10 },
  { id: 'GOVERNING', heading: () => 'Governing ceiling', format: FORMATS.count, adds: false, width: 12 },
  { id: 'GOVERNOR', heading: () => 'Set by', format: '@', adds: false, width: 34 },
  {
    id: 'WATER',
    heading: ({ volume }) => `Water, ${volume}`,
    format: FORMATS.quantity,
    adds: true,
    width: 13,
  },
  {
    id: 'MASKING',
    heading: ({ area }) => `Masking, ${area}`,
    format: FORMATS.quantity,
    adds: true,
    width: 13,
  },
  { id: 'TAPE', heading: ({ length }) => `Tape, ${length}`, format: FORMATS.quantity, adds: true, width: 11 },
  {
    id: 'LABORHOURS',
    heading: () => 'Labor-hours',
    format: FORMATS.quantity,
    adds: true,
    width: 12,
  },
  { id: 'CREWHOURS', heading: () => 'Crew-hours', format: FORMATS.quantity, adds: true, width: 12 },
  {
    id: 'CLEANER',
    heading: ({ volume }) => `Concentrate, ${volume}`,
    format: FORMATS.quantity,
    adds: true,
    width: 15,
  },
  {
    id: 'RUNOFF',
    heading: ({ volume }) => `Runoff, ${volume}`,
    format: FORMATS.quantity,
    adds: true,
    width: 13,
  },
  {
    id: 'NEUTRALIZER',
    heading: ({ mass }) => `Neutralizer, ${mass}`,
    format: FORMATS.quantity,
    adds: true,
    width: 15,
  },
  { id: 'BIDPRICE', heading: () => 'Price', format: FORMATS.money, adds: true, width: 13 },
];

/**
 * The zones of a job in the order of its walls.
 * @param job the job
 * @returns their names
 */
export function zonesOf(job: Job): string[] {
  return [...new Set(job.walls.map(([, zone]) => zone))];
}

/**
 * Where the bid finds a quantity of the whole job.
 * @param job the job
 * @param id the worksheet function that gives it
 * @returns a reference to the cell on the estimate sheet
 * @throws {Error} where the sheet has no such column
 */
export function jobCell(job: Job, id: string): string {
  const index = COLUMNS.findIndex((column) => column.id === id);
  if (index < 0) throw new Error(`The estimate sheet has no column ${id}.`);
  return `Estimate!$${columnLetters(index + 1)}$${String(FIRST_ZONE + zonesOf(job).length)}`;
}

/**
 * Where the bid finds a number that an estimator checks first, of the whole job.
 * @param job the job
 * @param rate area per labor-hour, or price per area
 * @returns a reference to the cell on the estimate sheet
 */
export function jobRate(job: Job, rate: 'yield' | 'price'): string {
  const column = COLUMNS.length + (rate === 'yield' ? 2 : 3);
  return `Estimate!$${columnLetters(column)}$${String(FIRST_ZONE + zonesOf(job).length)}`;
}

/**
 * Adds the estimate: a line a zone, one for the job, and one that adds the zones up beside it.
 * @param workbook the workbook
 * @param job the job
 */
export function addEstimate(workbook: Workbook, job: Job): void {
  const sheet = workbook.addWorksheet('Estimate');
  const zones = zonesOf(job);
  const jobRow = FIRST_ZONE + zones.length;
  title(sheet, 'A1', `${job.title}: wash-down by zone`);
  sheet.getRow(FIRST_ZONE - 1).values = ['Zone', ...COLUMNS.map(({ heading }) => heading(job.units))];
  asHeader(sheet.getRow(FIRST_ZONE - 1));
  for (const [index, zone] of zones.entries()) sheet.getCell(FIRST_ZONE + index, 1).value = zone;
  sheet.getCell(jobRow, 1).value = 'Whole job';
  sheet.getCell(jobRow + 1, 1).value = 'Sum of the zones';
  for (const [index, { id, format, adds, width }] of COLUMNS.entries()) {
    const letters = columnLetters(index + 1);
    const place = (row: number, formula: string): void => {
      const cell = sheet.getCell(row, index + 2);
      cell.value = { formula };
      cell.numFmt = format;
      if (format === '@') cell.alignment = { horizontal: 'left', indent: 1 };
    };
    for (const row of zones.keys()) {
      place(FIRST_ZONE + row, `_xldudf_WASH_${id}(Walls[#All],$A${String(FIRST_ZONE + row)},Factors[#All])`);
    }
    if (adds) {
      place(jobRow, `_xldudf_WASH_${id}(Walls[#All],,Factors[#All])`);
      place(jobRow + 1, `SUM(${letters}${String(FIRST_ZONE)}:${letters}${String(jobRow - 1)})`);
    }
    sheet.getColumn(index + 2).width = width;
  }
  addChecked(sheet, job, jobRow);
  sheet.getRow(jobRow).font = { ...FONT, bold: true };
  sheet.getRow(jobRow + 1).font = { ...FONT, italic: true, color: { argb: QUIET } };
  setWidths(sheet, [18]);
  freeze(sheet, FIRST_ZONE - 1, 1);
}

/** The two numbers that an estimator checks first, over the area that the schedule has: ordinary formulas. */
function addChecked(sheet: Worksheet, job: Job, jobRow: number): void {
  const { area } = job.units;
  const first = COLUMNS.length + 2;
  const letters = columnLetters(first - 1);
  const at = (id: string): string => columnLetters(COLUMNS.findIndex((column) => column.id === id) + 1);
  const header = sheet.getRow(FIRST_ZONE - 1);
  [`Washed area, ${area}`, `Area per labor-hour, ${area}`, `Price per ${area}`].forEach((heading, index) => {
    header.getCell(first + index).value = heading;
    sheet.getColumn(first + index).width = 13;
  });
  asHeader(header);
  const washed = `"${addedQuantities.washedArea.heading} (${area})"`;
  for (let row = FIRST_ZONE; row <= jobRow; row += 1) {
    const line = String(row);
    const formulas = [
      row === jobRow
        ? `SUM(${letters}${String(FIRST_ZONE)}:${letters}${String(jobRow - 1)})`
        : `INDEX(Schedule!$A$2:$CB$20,MATCH($A${line},Schedule!$A$2:$A$20,0),MATCH(${washed},Schedule!$A$1:$CB$1,0))`,
      `${letters}${line}/${at('LABORHOURS')}${line}`,
      `${at('BIDPRICE')}${line}/${letters}${line}`,
    ];
    formulas.forEach((formula, index) => {
      const cell = sheet.getCell(row, first + index);
      cell.value = { formula };
      cell.numFmt = index === 2 ? FORMATS.money : FORMATS.quantity;
    });
  }
}
