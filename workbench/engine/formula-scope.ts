import { cellsIn, type Area } from '../xlsx/address';
import { BadFile } from '../xlsx/bad-file';
import type { Book, BookCell, BookSheet } from '../xlsx/book';
import { isCellError } from '../xlsx/cell-value';
import { counted, MOST_READ_CELLS } from '../xlsx/limits';
import { tokensOf } from '../../src/spreadsheet/tokens';
import { placeKey, SPARE_COLUMNS, SPARE_ROWS, type EngineResults } from './engine';
import { readsOf, type Read } from './formula-reads';
import { FormulaGraph, type Node } from './needed';
import { hasCachedValue, type Refusal } from './refusal';
import { BadReference } from './structured-references';
import { washdownCalls } from './washdown-names';

// Bounds of the work: assumptions, far beyond any bid. The engine takes about a millisecond a formula.
const MOST_FORMULAS = 20_000;
/** Cells that all of them may read. */
const MOST_READ_IN_ALL = 200_000_000;
/** Operators and brackets of a formula; the engine's reader goes a level deeper with each. */
const MOST_SIGNS = 500;

/** Formulas that keep the value they were saved with, and why. */
export type Kept = ReadonlyMap<string, Refusal>;

/** Which formulas are to be worked out. */
export interface Scope {
  readonly needed: ReadonlySet<string>;
  /** Those among them that are not, and why. */
  readonly refused: ReadonlyMap<string, Refusal>;
}

interface Formula extends Node {
  readonly cell: BookCell;
  readonly place: string;
  readonly washdown: boolean;
  readonly anywhere: boolean;
  /** How many cells it reads; of whole columns and rows as far as sheets have any. */
  readonly cells: number;
  readonly tooMuch?: string;
}

function nameKey(sheet: string, address: string): string {
  return placeKey(sheet.toLowerCase(), address);
}

function tooManySigns(plain: string): boolean {
  if (plain.length <= MOST_SIGNS) return false;
  return (
    tokensOf(plain).filter(({ kind, text }) => kind === 'sign' && !/[,;:]/.test(text)).length > MOST_SIGNS
  );
}

/** Says which formulas of a workbook have to do with Washdown. */
export class FormulaScope {
  readonly #formulas: Formula[] = [];
  readonly #fill: boolean;

  /**
   * Looks through the formulas of a workbook.
   * @param book the workbook
   * @param plainOf a formula in the engine's terms
   * @param fill whether formulas without a value have to be worked out too
   */
  constructor(
    book: Book,
    plainOf: (sheet: BookSheet, cell: BookCell, formula: string) => string,
    fill: boolean,
  ) {
    this.#fill = fill;
    const end = endOf(book);
    for (const sheet of book.sheets) {
      for (const [address, cell] of sheet.cells) {
        if (cell.formula === undefined || cell.dataTable) continue;
        const { row, column } = cell;
        this.#formulas.push({
          key: placeKey(sheet.name, address),
          sheet: sheet.name.toLowerCase(),
          place: `${sheet.name}!${address}`,
          row,
          column,
          area: cell.array ?? { top: row, left: column, bottom: row, right: column },
          cell,
          ...readOf(sheet, cell, plainOf, end),
        });
      }
    }
  }

  /**
   * The formulas that are to be worked out.
   * @param areas what formulas fill, by sheet in small letters and address
   * @param kept formulas that are not
   * @returns the formulas, and those that are refused
   * @throws {BadFile} where they are too many
   */
  scope(areas: ReadonlyMap<string, Area>, kept: Kept): Scope {
    const nodes = this.#formulas.map((formula) => {
      const address = formula.key.slice(formula.key.lastIndexOf('\n') + 1);
      return { ...formula, area: areas.get(nameKey(formula.sheet, address)) ?? formula.area };
    });
    const graph = new FormulaGraph(nodes);
    const all = [...nodes.keys()];
    const blank = all.filter((index) => nodes[index]?.cell.value === null);
    const starts = all.filter((index) => nodes[index]?.washdown);
    const after = graph.dependents(starts);
    const wanted = this.#fill ? [...starts, ...blank] : starts;
    let needed = graph.precedents(wanted);
    // What depends on Washdown reads other formulas too; those have values, but for a file that was never calculated.
    const blanks = new Set(blank);
    for (const each of graph.precedents(after)) if (after.has(each) || blanks.has(each)) needed.add(each);
    if ([...needed].some((index) => nodes[index]?.anywhere)) {
      needed = new Set([...needed, ...graph.precedents([...needed, ...blank])]);
    }
    if (needed.size > MOST_FORMULAS) {
      throw new BadFile(
        `The Washdown formulas depend on ${counted(needed.size)} formulas, with those that depend on them. Accepted: ${counted(MOST_FORMULAS)} at most.`,
      );
    }
    const refused = new Map<string, Refusal>(kept);
    for (const circle of graph.circles(needed)) this.#refuseCircle(circle, refused);
    let work = 0;
    for (const index of needed) {
      const node = nodes[index];
      if (!node) continue;
      if (node.tooMuch === undefined && !refused.has(node.key)) work += node.cells;
      const message =
        node.tooMuch ??
        (work > MOST_READ_IN_ALL ? 'The workbook reads more cells than can be worked out here.' : undefined);
      if (message === undefined || refused.has(node.key)) continue;
      refused.set(node.key, { error: { error: '#VALUE!', message }, wrong: node.washdown });
    }
    return { needed: new Set([...needed].map((index) => nodes[index]?.key ?? '')), refused };
  }

  #refuseCircle(circle: readonly number[], refused: Map<string, Refusal>): void {
    const formulas = circle.flatMap((index) => this.#formulas[index] ?? []);
    const round = [...formulas, ...formulas.slice(0, 1)].map(({ place }) => place);
    const named = round.length > 8 ? [...round.slice(0, 6), '…', ...round.slice(-1)] : round;
    const message = `The formula depends on its own result: ${named.join(', ')}.`;
    for (const { key, washdown } of formulas) {
      refused.set(key, { error: { error: '#REF!', message }, wrong: washdown });
    }
  }

  /**
   * Finds formulas that are not ours and came to something that their file shows to be a failure of the engine: they
   * keep the value that they were saved with.
   * @param results what the formulas came to
   * @param refused formulas that were not worked out
   * @param scope the formulas that were
   * @param kept those that are known already
   * @returns these with the new ones
   */
  unfit(results: EngineResults, refused: ReadonlyMap<string, Refusal>, scope: Scope, kept: Kept): Kept {
    const found = new Map(kept);
    const graph = new FormulaGraph(this.#formulas);
    const after = graph.dependents(
      [...this.#formulas.keys()].filter((index) => this.#formulas[index]?.washdown),
    );
    for (const [index, { key, cell, washdown }] of this.#formulas.entries()) {
      if (washdown || !scope.needed.has(key) || refused.has(key) || !hasCachedValue(cell)) continue;
      const result = results.get(key) ?? null;
      const first = Array.isArray(result) ? null : result;
      // Without the mark of an array a formula gives one value.
      const spilled = cell.array === undefined && (Array.isArray(result) || isError(first, '#SPILL!'));
      const unknown = isError(first, '#NAME?') || isError(first, '#ERROR!');
      // Nothing that it depends on has changed since it was saved with a good value.
      const failed = !after.has(index) && isCellError(first);
      if (!spilled && !unknown && !failed) continue;
      const message = 'The formula cannot be worked out here.';
      found.set(key, { error: { error: '#VALUE!', message }, wrong: false });
    }
    return found;
  }
}

function isError(
  value: EngineResults extends ReadonlyMap<string, infer V> ? V : never,
  code: string,
): boolean {
  return typeof value === 'object' && value !== null && 'error' in value && value.error === code;
}

interface End {
  readonly row: number;
  readonly column: number;
}

/** Where the sheets of the engine end: all where the largest does. */
function endOf(book: Book): End {
  let [row, column] = [0, 0];
  for (const { cells } of book.sheets) {
    for (const cell of cells.values()) {
      row = Math.max(row, cell.row);
      column = Math.max(column, cell.column);
    }
  }
  return { row: row + SPARE_ROWS, column: column + SPARE_COLUMNS };
}

function cellsOf({ area, open }: Read, end: End): number {
  if (!open) return cellsIn(area);
  const rows = Math.min(area.bottom, end.row) - area.top + 1;
  const columns = Math.min(area.right, end.column) - area.left + 1;
  return Math.max(0, rows) * Math.max(0, columns);
}

function readOf(
  sheet: BookSheet,
  cell: BookCell,
  plainOf: (sheet: BookSheet, cell: BookCell, formula: string) => string,
  end: End,
): Pick<Formula, 'reads' | 'anywhere' | 'washdown' | 'cells' | 'tooMuch'> {
  const { formula = '' } = cell;
  let plain: string;
  try {
    plain = plainOf(sheet, cell, formula);
  } catch (cause) {
    if (!(cause instanceof BadReference)) throw cause;
    return { reads: [], anywhere: false, washdown: washdownCalls(formula).length > 0, cells: 0 };
  }
  const { reads, anywhere } = readsOf(plain, sheet.name);
  const washdown = washdownCalls(plain).length > 0;
  const cells = reads.reduce((sum, read) => sum + cellsOf(read, end), 0);
  if (tooManySigns(plain)) {
    return { reads, anywhere, washdown, cells, tooMuch: 'The formula is too long to be worked out here.' };
  }
  if (cells <= MOST_READ_CELLS) return { reads, anywhere, washdown, cells };
  const tooMuch = `The formula reads ${counted(cells)} cells. Accepted: ${counted(MOST_READ_CELLS)} at most; name a table, or whole columns, which end with what they hold.`;
  return { reads, anywhere, washdown, cells, tooMuch };
}
