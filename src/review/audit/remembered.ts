import { cellAddress, parseAddress } from './address';
import type { AuditedBook } from './audited-book';
import { moveFormula, relativeForm } from './move-formula';
import type { SheetPlace } from './references';

/** A formula that stood in a cell when the workbook was last looked over. */
export interface RememberedFormula extends SheetPlace {
  readonly formula: string;
}

/** Cells that one formula was filled into: their sheet, the formula as it reads in the first, and all addresses. */
export type RememberedGroup = readonly [sheet: string, formula: string, addresses: readonly string[]];

/**
 * Formulas in a form to be kept in the workbook.
 * @param formulas the formulas
 * @returns one group for each sheet and formula filled down or across
 */
export function groupFormulas(formulas: readonly RememberedFormula[]): RememberedGroup[] {
  const groups = new Map<string, [string, string, string[]]>();
  for (const { sheet, row, column, formula } of formulas) {
    const key = `${sheet}\n${relativeForm(formula, { row, column })}`;
    const group = groups.get(key) ?? [sheet, formula, []];
    group[2].push(cellAddress(row, column));
    groups.set(key, group);
  }
  return [...groups.values()];
}

/**
 * Remembered formulas whose cell has none any more, and which did not move elsewhere.
 * @param book the workbook
 * @param remembered what was kept
 * @param now the Washdown formulas that stand in the workbook
 * @returns the formulas that are gone, as they read in their cells
 */
export function goneFormulas(
  book: AuditedBook,
  remembered: readonly RememberedGroup[],
  now: readonly RememberedFormula[],
): RememberedFormula[] {
  const present = new Set(now.map(placeKey));
  const known = new Set<string>();
  for (const [sheet, , addresses] of remembered)
    for (const address of addresses) known.add(`${sheet}!${address}`);
  // An inserted row moves formulas to cells where none was remembered: each makes up for one that is gone.
  const moved = new Map<string, number>();
  for (const formula of now) {
    if (known.has(placeKey(formula))) continue;
    const key = `${formula.sheet}\n${relativeForm(formula.formula, formula)}`;
    moved.set(key, (moved.get(key) ?? 0) + 1);
  }
  const gone: RememberedFormula[] = [];
  for (const [sheet, formula, addresses] of remembered) {
    const places = addresses.flatMap((address) => {
      const area = parseAddress(address);
      return area ? [{ address, row: area.top, column: area.left }] : [];
    });
    const [first] = places;
    if (!first || book.sheetCalled(sheet) === undefined) continue;
    const key = `${sheet}\n${relativeForm(formula, first)}`;
    for (const { address, row, column } of places) {
      if (present.has(`${sheet}!${address}`)) continue;
      const elsewhere = moved.get(key) ?? 0;
      if (elsewhere > 0) {
        moved.set(key, elsewhere - 1);
        continue;
      }
      gone.push({ sheet, row, column, formula: moveFormula(formula, first, { row, column }) });
    }
  }
  return gone;
}

function placeKey({ sheet, row, column }: SheetPlace): string {
  return `${sheet}!${cellAddress(row, column)}`;
}
