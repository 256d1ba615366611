import type { System } from '../../src/quantity/systems';
import { holdsAlternates } from '../shared/holds-alternates';
import { referenceText, type WallSource } from '../shared/wall-source';
import type { Block, TableInfo } from '../workbook/port';
import { formulaFor } from '../shared/formulas';
import { functionNamed } from '../shared/job-summary';

// Characters: part, sentence, quantity, unit, money.
const WIDTHS = [13, 66, 9, 12, 12];
// Day, zone, walls, persons, two of hours, four of materials, waits.
const PLAN_WIDTHS = [6, 14, 52, 8, 11, 11, 12, 11, 10, 10, 52];
const FIRST_ROW = 3;
const MOST_ROWS = 400;

/**
 * The plan by working day, as a sheet of its own.
 * @param source where walls, factors and headings stand
 * @param sheet name of the sheet
 * @returns what to write; it prints one page wide, held sideways
 */
export function dayPlanSheet(source: WallSource, sheet: string): Block {
  const blank = Array.from({ length: PLAN_WIDTHS.length - 1 }, () => '');
  return {
    sheet,
    address: 'A1',
    rows: [[formulaFor(functionNamed('DAYPLAN'), source), ...blank]],
    heading: true,
    widths: PLAN_WIDTHS,
    print: { held: 'sideways', repeatsFirstRow: true },
    formats: {
      [`E2:F${String(MOST_ROWS)}`]: '0.0',
      [`G2:G${String(MOST_ROWS)}`]: '#,##0.0',
      [`H2:J${String(MOST_ROWS)}`]: '#,##0;-#,##0;–',
    },
  };
}

/**
 * A page to send, as a sheet of its own: a title, and below it the formula that spills the page.
 * @param source where walls, factors and headings stand
 * @param sheet name of the sheet
 * @param system the units, which tell the paper too
 * @param tables the tables of the workbook; the first one of alternates is named on the page
 * @returns what to write
 */
export function sendPage(
  source: WallSource,
  sheet: string,
  system: System,
  tables: readonly TableInfo[],
): Block[] {
  const table = tables.find(holdsAlternates);
  const asked = table === undefined ? {} : { alternates: referenceText({ table: table.name }) };
  const row = (place: string): string => `${place}${String(FIRST_ROW)}:${place}${String(MOST_ROWS)}`;
  return [
    { sheet, address: 'A1', rows: [['Wash-down of the facade']], heading: true },
    {
      sheet,
      address: `A${String(FIRST_ROW)}`,
      rows: [[formulaFor(functionNamed('BIDPAGE'), source, asked), '', '', '', '']],
      widths: WIDTHS,
      print: { held: 'upright', paper: system === 'US' ? 'letter' : 'a4' },
      formats: { [row('C')]: '[<10]#,##0.0;#,##0', [row('E')]: '#,##0.00' },
    },
  ];
}
