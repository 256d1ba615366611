import { cellAddress, meet, parseAddress } from '../../spreadsheet/address';
import { differencesOf, said, type Difference } from './agree';
import type { AuditFinding } from './audit-finding';
import type { AuditedBook, SheetArea } from './audited-book';
import type { CausedFinding } from './cause';
import { isError, isRows, type Outcome } from './outcome';
import type { SheetPlace } from './references';
import { cellsInTheWay, filledBy, someOf } from './spills';
import { readable } from './washdown-calls';

const STILL_WORKING = ['#BUSY!', '#GETTING_DATA'];

/**
 * What is to be said of a formula, after it was worked out.
 * @param book the workbook
 * @param at where the formula stands
 * @param formula the formula
 * @param outcome what it gives
 * @returns the findings; empty where the cell shows what it should
 */
export function formulaFindings(
  book: AuditedBook,
  at: SheetPlace,
  formula: string,
  outcome: Outcome,
): CausedFinding[] {
  const here = { sheet: at.sheet, address: cellAddress(at.row, at.column), formula: readable(formula) };
  const shown = book.value(at.sheet, at.row, at.column);
  if (shown === '#SPILL!') return [blocked(book, at, here, outcome)];
  const errors = (isRows(outcome) ? outcome.flat() : [outcome]).filter(isError);
  const differences = differencesOf(book, at, outcome);
  const [first] = differences;
  if (first) return [different(here, first, differences.length)];
  const [error] = errors;
  if (!error) return [];
  const more = errors.length > 1 ? ` (and ${String(errors.length - 1)} more cells of its spill)` : '';
  const todo = 'Correct what the message names, or leave it if no number is needed there.';
  const finding = { kind: 'error' as const, ...here, what: `Shows ${said(error)}${more}.`, todo };
  return [error.cause ? { ...finding, what: error.message, cause: error.cause } : finding];
}

type Here = Pick<AuditFinding, 'sheet' | 'address' | 'formula'>;

function blocked(book: AuditedBook, at: SheetPlace, here: Here, outcome: Outcome): AuditFinding {
  const area = filledBy(at, outcome);
  const table = tableUnder(
    book,
    area ?? { ...at, top: at.row, bottom: at.row, left: at.column, right: at.column },
  );
  if (table !== undefined) {
    return {
      kind: 'error',
      ...here,
      what: `Shows #SPILL!: it reaches into the table ${table}, where no formula may fill other cells.`,
      todo: 'Move the formula out of the table, or make the table a plain range.',
    };
  }
  const inTheWay = area ? cellsInTheWay(book, area) : [];
  const [first] = inTheWay;
  return first === undefined
    ? { kind: 'error', ...here, what: 'Shows #SPILL!.', todo: 'Make room below and beside the formula.' }
    : {
        kind: 'typed over',
        ...here,
        address: first,
        what: `Stands in the way of the formula in ${here.address}: ${someOf(inTheWay)}.`,
        todo: 'Clear the cells named, so that the formula can fill its rows.',
      };
}

function tableUnder(book: AuditedBook, { sheet, ...area }: SheetArea): string | undefined {
  return book.tables.find((table) => {
    const of = parseAddress(table.address);
    return table.sheet.toLowerCase() === sheet.toLowerCase() && of !== undefined && meet(area, of);
  })?.name;
}

function different(here: Here, difference: Difference, count: number): AuditFinding {
  const { row, column, shown, expected } = difference;
  const address = cellAddress(row, column);
  const more = count > 1 ? ` (and ${String(count - 1)} more cells of its spill)` : '';
  const gives = `the formula gives ${said(expected)}${more}.`;
  const where = { ...here, address };
  if (shown === '#NAME?') {
    return {
      kind: 'error',
      ...where,
      what: `Shows #NAME?; ${gives}`,
      todo: 'Load the add-in and recalculate the workbook.',
    };
  }
  if (shown === '' || STILL_WORKING.includes(String(shown))) {
    return {
      kind: 'out of date',
      ...where,
      what: `Shows ${said(shown)}; ${gives}`,
      todo: 'Recalculate the workbook.',
    };
  }
  return {
    kind: 'differs',
    ...where,
    what: `Shows ${said(shown)}; ${gives}`,
    todo: 'Recalculate the workbook. If it still differs, find out who changed the cell.',
  };
}
