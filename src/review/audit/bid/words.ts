import { cellAddress } from '../../../spreadsheet/address';
import { said } from '../agree';
import type { AuditFinding, FindingKind } from '../audit-finding';
import type { SheetPlace } from '../references';
import { readable } from '../washdown-calls';
import type { Step, Ways } from './ways';

/**
 * A finding on a formula.
 * @param step the formula
 * @param kind what the finding is about
 * @param what what was seen
 * @param todo what to do
 * @returns the finding at its cell
 */
export function findingAt(step: Step, kind: FindingKind, what: string, todo: string): AuditFinding {
  const { sheet, row, column, formula } = step;
  return { kind, sheet, address: cellAddress(row, column), what, todo, formula: readable(formula) };
}

/**
 * A cell by name.
 * @param place the cell
 * @returns for example `Bid!F7`
 */
export function cellNamed({ sheet, row, column }: SheetPlace): string {
  return `${sheet}!${cellAddress(row, column)}`;
}

/**
 * What a cell shows, in a sentence.
 * @param ways the formulas of the workbook
 * @param place the cell
 * @returns its value
 */
export function shownAt(ways: Ways, { sheet, row, column }: SheetPlace): string {
  return said(ways.book.value(sheet, row, column));
}
