import { cellAddress, parseAddress } from '../../spreadsheet/address';
import type { AuditedBook } from './audited-book';
import { moveFormula } from '../../spreadsheet/move-formula';
import type { SheetPlace } from './references';
import { tokensOf, type TokenKind } from '../../spreadsheet/tokens';
import { callsWashdown } from './washdown-calls';

const CELLS: readonly TokenKind[] = ['reference', 'name', 'brackets'];

/** A formula and its cell. */
export interface PlacedFormula extends SheetPlace {
  readonly formula: string;
}

/** A Washdown formula of the workbook, or an ordinary one that its result reaches. */
export interface StandingFormula extends PlacedFormula {
  /** Its relative form: equal for all cells that one formula was filled into. */
  readonly form: string;
}

/**
 * Cells that one formula was filled into, as they were when the workbook was last looked over: their sheet, the
 * relative form, the formula as it reads in the first, and all addresses.
 */
export type RememberedGroup = readonly [
  sheet: string,
  form: string,
  formula: string,
  addresses: readonly string[],
];

/**
 * Formulas in a form to be kept in the workbook.
 * @param formulas the formulas
 * @returns one group for each sheet and formula filled down or across
 */
export function groupFormulas(formulas: readonly StandingFormula[]): RememberedGroup[] {
  const groups = new Map<string, [string, string, string, string[]]>();
  for (const { sheet, row, column, formula, form } of formulas) {
    const key = `${sheet}\n${form}`;
    const group = groups.get(key) ?? [sheet, form, formula, []];
    group[3].push(cellAddress(row, column));
    groups.set(key, group);
  }
  return [...groups.values()];
}

/**
 * Remembered formulas whose cell has none any more, and which did not move elsewhere. An ordinary formula on the way of
 * a Washdown formula counts as standing while its cell has some formula that reads cells.
 * @param book the workbook
 * @param remembered what was kept
 * @param now the Washdown formulas that stand in the workbook, and those that they reach
 * @returns the formulas that are gone, as they read in their cells
 */
export function goneFormulas(
  book: AuditedBook,
  remembered: readonly RememberedGroup[],
  now: readonly StandingFormula[],
): StandingFormula[] {
  if (remembered.length === 0) return [];
  const present = new Set(now.map(placeKey));
  const standing = (place: SheetPlace, was: string) =>
    present.has(placeKey(place)) || (!callsWashdown(was) && readsCells(book, place));
  const known = new Set<string>();
  for (const [sheet, , , addresses] of remembered) {
    for (const address of addresses) known.add(`${sheet}!${address}`);
  }
  // An inserted row moves formulas to cells where none was remembered: each makes up for one that is gone.
  const moved = new Map<string, number>();
  for (const formula of now) {
    if (known.has(placeKey(formula))) continue;
    const key = movedKey(formula.sheet, formula.form, formula.formula);
    moved.set(key, (moved.get(key) ?? 0) + 1);
  }
  const gone: StandingFormula[] = [];
  for (const [sheet, form, formula, addresses] of remembered) {
    const [first] = addresses.map(parseAddress);
    if (!first || book.sheetCalled(sheet) === undefined) continue;
    const from = { row: first.top, column: first.left };
    for (const address of addresses) {
      const area = parseAddress(address);
      if (!area) continue;
      const place = { sheet, row: area.top, column: area.left };
      if (standing(place, formula)) continue;
      const key = movedKey(sheet, form, formula);
      const elsewhere = moved.get(key) ?? 0;
      moved.set(key, elsewhere - 1);
      if (elsewhere > 0) continue;
      gone.push({ ...place, form, formula: moveFormula(formula, from, place) });
    }
  }
  return gone;
}

function readsCells(book: AuditedBook, { sheet, row, column }: SheetPlace): boolean {
  const formula = book.formula(sheet, row, column);
  return formula !== undefined && tokensOf(formula).some(({ kind }) => CELLS.includes(kind));
}

/** Two formulas of equal keys may be one that moved. The range of a total grows with its lines, so that its form tells nothing. */
function movedKey(sheet: string, form: string, formula: string): string {
  if (callsWashdown(formula)) return `${sheet}\n${form}`;
  const loose = tokensOf(formula).map(({ kind, text }) => (kind === 'reference' ? 'cells' : text));
  return `${sheet}\n${loose.join('')}`;
}

/**
 * A text that stands for a cell.
 * @param place the cell
 * @returns for example `Estimate!B7`
 */
export function placeKey({ sheet, row, column }: SheetPlace): string {
  return `${sheet}!${cellAddress(row, column)}`;
}
