import { cellAddress, contains, type Area } from './address';
import { partBytes, partText, type Archive } from './archive';
import type { Book, BookCell, BookSheet } from './book';
import type { CellValue } from './cell-value';
import { withDynamicArrayMark } from './dynamic-arrays';
import { writeCells, type CellChange } from './write-cells';

/** A formula's new value. */
export interface NewValue {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** One value, or the grid that the formula spills. */
  readonly value: CellValue | CellValue[][];
  /** The text that the formula is to have from now on; without one the value stands in its place. */
  readonly formula: string | undefined;
  /** Whether the formula is one that spills, however much it fills just now. */
  readonly spills: boolean;
}

interface Target {
  readonly sheet: BookSheet;
  readonly cell: BookCell;
  readonly next: NewValue;
  readonly area: Area;
  readonly asArray: boolean;
}

function target(book: Book, next: NewValue): Target {
  const sheet = book.sheets.find((each) => each.name === next.sheet);
  const cell = sheet?.cells.get(cellAddress(next.row, next.column));
  if (!sheet || cell?.formula === undefined) {
    throw new Error(
      `There is no formula in ${next.sheet}!${cellAddress(next.row, next.column)} to put a value beside.`,
    );
  }
  const grid = Array.isArray(next.value) ? next.value : [[next.value]];
  const area = {
    top: next.row,
    left: next.column,
    bottom: next.row + grid.length - 1,
    right: next.column + (grid[0]?.length ?? 1) - 1,
  };
  return {
    sheet,
    cell,
    next,
    area,
    asArray:
      next.formula !== undefined && (next.spills || cell.array !== undefined || Array.isArray(next.value)),
  };
}

function formerSpill(sheet: BookSheet, cell: BookCell): BookCell[] {
  const { array } = cell;
  if (!array) return [];
  return [...sheet.cells.values()].filter(
    (other) => other !== cell && other.formula === undefined && contains(array, other.row, other.column),
  );
}

/** Cells of a shared formula that have to stand on their own once the formula of one of their group changes. */
function looseSharers(targets: readonly Target[]): Map<BookSheet, BookCell[]> {
  const loose = new Map<BookSheet, BookCell[]>();
  for (const { sheet, cell, next, asArray } of targets) {
    const changed = asArray || next.formula !== cell.formula;
    if (!changed || cell.shared === undefined) continue;
    const group = [...sheet.cells.values()].filter((other) => other.shared === cell.shared);
    loose.set(sheet, [...(loose.get(sheet) ?? []), ...group]);
  }
  return loose;
}

function changesFor(targets: readonly Target[], mark: number | undefined): Map<string, CellChange> {
  const changes = new Map<string, CellChange>();
  const put = (change: CellChange): void => {
    changes.set(cellAddress(change.row, change.column), change);
  };
  // Former spills are cleared before any new one is written: one may have moved into the room of another.
  for (const { sheet, cell } of targets) {
    for (const { row, column } of formerSpill(sheet, cell)) put({ row, column, value: null });
  }
  for (const { next, area } of targets) {
    if (!Array.isArray(next.value)) continue;
    for (const [r, line] of next.value.entries()) {
      for (const [c, value] of line.entries()) {
        const inPlace = next.formula === undefined ? { plain: true } : {};
        put({ row: area.top + r, column: area.left + c, value, ...inPlace });
      }
    }
  }
  for (const { cell, next, area, asArray } of targets) {
    const value = Array.isArray(next.value) ? (next.value[0]?.[0] ?? null) : next.value;
    if (next.formula === undefined) {
      put({ row: next.row, column: next.column, value, plain: true });
      continue;
    }
    put({
      row: next.row,
      column: next.column,
      value,
      ...(asArray || next.formula !== cell.formula ? { formula: next.formula } : {}),
      ...(asArray ? { array: area } : {}),
      ...(asArray && mark !== undefined ? { dynamic: mark } : {}),
    });
  }
  return changes;
}

/**
 * Puts new values beside formulas of a workbook file, or in their place. Everything else in the file stays as it is,
 * except that the mark of dynamic arrays is added where a formula spills.
 * @param archive the file
 * @param book what the file holds
 * @param values the new values
 * @returns the file with the values in it
 * @throws {Error} where a value is for a cell that has no formula
 */
export function writeValues(archive: Archive, book: Book, values: readonly NewValue[]): Archive {
  const targets = values.map((value) => target(book, value));
  let parts = archive;
  let mark: number | undefined;
  if (targets.some(({ asArray }) => asArray)) {
    ({ archive: parts, mark } = withDynamicArrayMark(archive));
  }
  const changed = new Map(parts);
  const loose = looseSharers(targets);
  for (const sheet of book.sheets) {
    const own = targets.filter((each) => each.sheet === sheet);
    if (own.length === 0) continue;
    const changes = changesFor(own, mark);
    for (const { row, column, value, formula = '' } of loose.get(sheet) ?? []) {
      const address = cellAddress(row, column);
      const change = changes.get(address) ?? { row, column, value };
      changes.set(address, { ...change, formula: change.formula ?? formula, unshared: true });
    }
    const text = partText(parts, sheet.part);
    changed.set(sheet.part, partBytes(writeCells(text, sheet.part, [...changes.values()])));
  }
  return changed;
}
