import { tokensOf } from '../../../src/spreadsheet/tokens';
import type { NameInfo } from '../../../taskpane/workbook/port';

/**
 * Names that the spreadsheet cannot have, since it knows each name once: those of single sheets where another sheet or
 * the workbook has one of the same name, as copied sheets do.
 * @param names the names of the file
 * @returns those that the spreadsheet gets, and the others
 */
export function withoutShadowed(names: readonly NameInfo[]): {
  readonly shown: readonly NameInfo[];
  readonly kept: readonly NameInfo[];
} {
  const shown = new Map<string, NameInfo>();
  // A name of the workbook comes before those of sheets.
  const ordered = [...names].sort((a, b) => Number(a.sheet !== undefined) - Number(b.sheet !== undefined));
  for (const name of ordered) {
    const key = name.name.toLowerCase();
    if (!shown.has(key)) shown.set(key, name);
  }
  const chosen = new Set(shown.values());
  return { shown: names.filter((name) => chosen.has(name)), kept: names.filter((name) => !chosen.has(name)) };
}

/**
 * Whether a formula means a name that the spreadsheet does not have.
 * @param formula without `=`
 * @param sheet the sheet of the formula
 * @param kept names that the spreadsheet does not have
 * @returns true where the page would work out something else
 */
export function meansKeptName(formula: string, sheet: string, kept: readonly NameInfo[]): boolean {
  const own = kept.filter(
    (name) => name.sheet === undefined || name.sheet.toLowerCase() === sheet.toLowerCase(),
  );
  const known = new Set(own.map(({ name }) => name.toLowerCase()));
  const qualified = new Set(kept.map(({ name, sheet: of = '' }) => `${of}!${name}`.toLowerCase()));
  if (qualified.size === 0) return false;
  return tokensOf(formula).some(
    ({ kind, text }) =>
      kind === 'name' &&
      (known.has(text.toLowerCase()) || qualified.has(text.replace(/^'|'(?=!)/g, '').toLowerCase())),
  );
}
