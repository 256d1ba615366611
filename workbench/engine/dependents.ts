import { LAST_COLUMN, LAST_ROW, type Area } from '../../src/spreadsheet/address';
import { referencedArea, referenceParts } from '../../src/spreadsheet/reference';
import { tokensOf } from '../../src/spreadsheet/tokens';
import { cellAddress } from '../xlsx/address';
import { placeKey } from './engine';

/** A formula of a workbook. */
export interface FormulaNode {
  readonly sheet: string;
  /** Counted from 0. */
  readonly row: number;
  readonly column: number;
  /** As the engine takes it: no references to tables or spills, and no names. */
  readonly plain: string;
  /** Rows and columns that its result fills. */
  readonly height: number;
  readonly width: number;
}

interface Read {
  readonly sheet: string;
  readonly area: Area;
}

// These read cells that stand nowhere in the formula.
const READS_ANYTHING = /^(?:_xlfn\.)?(?:INDIRECT|OFFSET)$/i;
const EVERYTHING: Area = { top: 1, left: 1, bottom: LAST_ROW, right: LAST_COLUMN };

function readsOf(formula: string, sheet: string): Read[] {
  return tokensOf(formula).flatMap(({ kind, text }): Read[] => {
    if (kind === 'call' && READS_ANYTHING.test(text)) return [{ sheet: '', area: EVERYTHING }];
    if (kind !== 'reference') return [];
    const { sheet: named = sheet, rest } = referenceParts(text);
    const area = referencedArea(rest);
    return area ? [{ sheet: named, area }] : [];
  });
}

/**
 * The formulas that a change of some others reaches, over any number of steps.
 * @param nodes the formulas of the workbook
 * @param starts whether a formula is one that changes; those are among the answer
 * @returns the keys of the formulas (`placeKey`)
 */
export function dependentsOf(
  nodes: readonly FormulaNode[],
  starts: (node: FormulaNode) => boolean,
): Set<string> {
  const readers = nodes.map((node) => ({ node, reads: readsOf(node.plain, node.sheet) }));
  const reached = new Set<string>();
  const next = nodes.filter(starts);
  for (const node of next) reached.add(keyOf(node));
  // The formulas that are left get fewer with every step, and each cell is looked at once for each of them.
  let waiting = readers.filter(({ node }) => !reached.has(keyOf(node)));
  for (let filled = next.shift(); filled; filled = next.shift()) {
    const changed = filled;
    waiting = waiting.filter(({ node, reads }) => {
      if (!reads.some((read) => meets(read, changed))) return true;
      reached.add(keyOf(node));
      next.push(node);
      return false;
    });
  }
  return reached;
}

function meets({ sheet, area }: Read, { sheet: own, row, column, height, width }: FormulaNode): boolean {
  if (sheet !== '' && sheet.toLowerCase() !== own.toLowerCase()) return false;
  return (
    area.top <= row + height &&
    area.bottom >= row + 1 &&
    area.left <= column + width &&
    area.right >= column + 1
  );
}

function keyOf({ sheet, row, column }: FormulaNode): string {
  return placeKey(sheet, cellAddress(row, column));
}
