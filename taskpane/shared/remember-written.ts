import { moveFormula, relativeForm } from '../../src/spreadsheet/move-formula';
import {
  groupFormulas,
  placeKey,
  type RememberedGroup,
  type StandingFormula,
} from '../../src/review/audit/remembered';
import { RULES_VERSION } from '../../src/rules/version';
import { keep, readKept } from './kept-text';
import { areaOf } from '../workbook/block-area';
import type { Block, CellContent, Formula, WorkbookPort } from '../workbook/port';
import { readRemembered, rememberedText } from './remembered-text';

interface WrittenCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly content: CellContent | Formula;
}

/**
 * Keeps which formulas the pane wrote where, so that even a first review knows of one that was typed over.
 * @param port the workbook
 * @param blocks what was written
 */
export async function rememberWritten(port: WorkbookPort, blocks: readonly Block[]): Promise<void> {
  const cells = blocks.flatMap(cellsOf);
  const overwritten = new Set(cells.map(placeKey));
  const before = readRemembered(await readKept(port, 'formulas')).flatMap(formulasOf);
  const written = cells.flatMap(({ content, ...place }) =>
    typeof content === 'object'
      ? { ...place, formula: content.formula, form: relativeForm(content.formula, place) }
      : [],
  );
  // What stands in the workbook already may have been worked out earlier.
  if (before.length === 0 && written.length > 0) await keep(port, 'rules', RULES_VERSION);
  const kept = before.filter((formula) => !overwritten.has(placeKey(formula)));
  await keep(port, 'formulas', rememberedText(groupFormulas([...kept, ...written])));
}

function cellsOf({ sheet, address, rows }: Block): WrittenCell[] {
  const { top, left } = areaOf(address);
  return rows.flatMap((row, down) =>
    row.map((content, across) => ({ sheet, row: top + down, column: left + across, content })),
  );
}

function formulasOf([sheet, form, formula, addresses]: RememberedGroup): StandingFormula[] {
  const places = addresses.map(areaOf).map(({ top, left }) => ({ sheet, row: top, column: left }));
  const [first] = places;
  return first
    ? places.map((place) => ({ ...place, form, formula: moveFormula(formula, first, place) }))
    : [];
}
