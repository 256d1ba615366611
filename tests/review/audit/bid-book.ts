import { worksheetFunctions } from '../../../functions/worksheet-functions';
import { cellAddress, parseAddress } from '../../../src/spreadsheet/address';
import { audit, type AuditReport } from '../../../src/review/audit/audit';
import { AuditedBook, type Shown } from '../../../src/review/audit/audited-book';
import { isError, isRows } from '../../../src/review/audit/outcome';
import type { RememberedGroup } from '../../../src/review/audit/remembered';
import { WorkOut } from '../../../src/review/audit/work-out';

const byName = new Map(worksheetFunctions.map((called) => [called.name, called]));

/** Rows of a sheet from A1; a text that starts with `=` is a formula. */
export type SheetRows = readonly (readonly Shown[])[];

/** Sheets in an order in which each reads only those before it; within a sheet, cells read those before them. */
export type Sheets = Readonly<Record<string, SheetRows>>;

/** What is typed instead of what the sheets hold, by `Sheet!A1`. */
export type Typed = Readonly<Record<string, Shown>>;

const WALLS = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Residue'],
  ['N-1', 'North', 'Red clay brick', 2000, 20, 'moderate'],
  ['S-1', 'South', 'Plain concrete block', 1200, 16, 'light'],
  ['W-1', 'West', 'Limestone', 800, 12, 'light'],
] as const;

const FACTORS = [
  ['Factor', 'Value'],
  ['price.labor', 58],
  ['price.cleaner.1', 30],
  ['price.cleaner.2', 40],
] as const;

/** Walls in three zones and factors, each on a sheet of its own. */
export const GIVEN: Sheets = { Walls: WALLS, Factors: FACTORS };

/** Works out every cell in order, the typed ones taken as they are, as a spreadsheet would show the workbook. */
export function worked(sheets: Sheets, typed: Typed = {}): AuditedBook {
  const book = new AuditedBook([], []);
  const worker = new WorkOut(book, (name) => byName.get(name));
  for (const [sheet, rows] of Object.entries(sheets)) {
    rows.forEach((line, down) => {
      line.forEach((given, across) => {
        const content = typed[`${sheet}!${cellAddress(down + 1, across + 1)}`] ?? given;
        const at = { sheet, row: down + 1, column: across + 1 };
        const isFormula = typeof content === 'string' && content.startsWith('=');
        const outcome = isFormula ? worker.formula(content, at) : content;
        const shown = isRows(outcome) ? (outcome[0]?.[0] ?? '') : outcome;
        const value = isError(shown) ? shown.error : shown;
        book.add({ sheet, row: at.row, column: at.column, formulas: [[content]], values: [[value]] });
      });
    });
  }
  return book;
}

/** What Review says of a workbook. */
export function reviewed(book: AuditedBook, remembered: readonly RememberedGroup[] = []): AuditReport {
  const work = audit({ book, functionCalled: (name) => byName.get(name), remembered });
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

/** The findings on the way of the bid line, as `kind Sheet!A1`. */
export function onTheWay({ findings }: AuditReport): string[] {
  return findings
    .filter(({ kind }) => ['typed over', 'left out', 'added twice'].includes(kind))
    .map(({ kind, sheet, address }) => `${kind} ${sheet}!${address}`);
}

/** A number that a cell shows. */
export function numberAt(book: AuditedBook, cell: string): number {
  const [sheet = '', address = ''] = cell.split('!');
  const area = parseAddress(address);
  return Number(area && book.value(sheet, area.top, area.left));
}
