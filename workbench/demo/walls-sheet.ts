import type { Workbook, Worksheet } from 'exceljs';
import { asHeader, freeze, setWidths } from './look';
import { baselineOf, WALL_HEADINGS, type Job, type WallLine } from './wall-line';

const LISTS: readonly { heading: (typeof WALL_HEADINGS)[number]; from: string; blank: boolean }[] = [
  // The names spill on the sheet of the materials, with room for more.
  { heading: 'Material', from: 'Materials!$B$2:$B$60', blank: false },
  { heading: 'Mortar', from: '"M,S,N,O"', blank: true },
  { heading: 'Residue', from: '"light,moderate,heavy"', blank: true },
  { heading: 'Brushed', from: '"yes,no,priced"', blank: true },
  { heading: 'Masked', from: '"yes,no,only,never"', blank: true },
  { heading: 'Access', from: '"ground,scaffold,lift,ladder,suspended"', blank: true },
];

function offerChoices(sheet: Worksheet, rows: number): void {
  for (const { heading, from, blank } of LISTS) {
    const column = WALL_HEADINGS.indexOf(heading) + 1;
    for (let row = 2; row <= rows + 1; row += 1) {
      sheet.getCell(row, column).dataValidation = { type: 'list', allowBlank: blank, formulae: [from] };
    }
  }
}

/** Texts stand off from the right-aligned numbers of the column before them. */
function indentTexts(sheet: Worksheet): void {
  for (const { heading } of LISTS) {
    sheet.getColumn(WALL_HEADINGS.indexOf(heading) + 1).alignment = { horizontal: 'left', indent: 1 };
  }
}

function addTable(workbook: Workbook, name: string, walls: readonly WallLine[]): void {
  const sheet = workbook.addWorksheet(name);
  sheet.addTable({
    name,
    ref: 'A1',
    headerRow: true,
    style: { theme: 'TableStyleMedium2', showRowStripes: true },
    columns: WALL_HEADINGS.map((heading) => ({ name: heading, filterButton: true })),
    rows: walls.map((line) => [...line]),
  });
  indentTexts(sheet);
  offerChoices(sheet, walls.length);
  // Every heading keeps its words whole beside the button of its filter.
  setWidths(sheet, [32, 16, 11, 34, 10, 12, 14, 16, 13, 12, 13, 13, 9, 12, 12, 13]);
  asHeader(sheet.getRow(1));
  freeze(sheet, 1, 1);
}

/**
 * Adds the table of the walls.
 * @param workbook the workbook
 * @param job the job
 */
export function addWalls(workbook: Workbook, job: Job): void {
  addTable(workbook, 'Walls', job.walls);
}

/**
 * Adds the table of the walls as they were when the bid was first priced.
 * @param workbook the workbook
 * @param job the job
 */
export function addBaseline(workbook: Workbook, job: Job): void {
  addTable(workbook, 'Baseline', baselineOf(job));
}
