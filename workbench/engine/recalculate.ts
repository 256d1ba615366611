import { cellAddress, cellsIn, contains, parseArea, type Area } from '../xlsx/address';
import type { Book, BookCell, BookSheet } from '../xlsx/book';
import type { CellError, CellValue } from '../xlsx/cell-value';
import { rewriteCode } from '../../src/spreadsheet/formula-pieces';
import type { Bundle } from './bundle';
import { callFunction, type Argument } from './call';
import {
  Engine,
  placeKey,
  type CallPlace,
  type EngineCell,
  type EngineResults,
  type EngineSheet,
} from './engine';
import { cellsInTheWay, withReasons } from './explain-error';
import { FormulaScope, type Kept, type Scope } from './formula-scope';
import { hasCachedValue, type Refusal } from './refusal';
import { withSingleCells } from './single-cells';
import { withoutSpillReferences } from './spill-references';
import { BadReference, withoutStructuredReferences } from './structured-references';
import { readableFormula, washdownCalls } from './washdown-names';
import { namesByKey, withoutNames, type Names } from './without-names';

/** A call of a worksheet function while a cell was calculated. */
export interface RecordedCall {
  readonly id: string;
  readonly args: readonly unknown[];
  readonly result: CellValue | CellValue[][];
}

/** What a formula came to. */
export interface FormulaResult {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** As stored, without `=`. */
  readonly formula: string;
  /** As the engine takes it: without references to tables and spills; as stored where it takes none. */
  readonly plain: string;
  readonly result: CellValue | CellValue[][];
  /** Worksheet functions that it called; empty for an ordinary formula. */
  readonly calls: readonly RecordedCall[];
  /** False where the engine lacks a function of the formula, so that the result says nothing about the workbook. */
  readonly supported: boolean;
}

const FUNCTION_NAME = /(?<![\p{L}\p{N}_.\\])([\p{L}_][\p{L}\p{N}_.]*)\s*\(/gu;
const EXTERNAL = /\[\d+\]/;
const SPILL = /ANCHORARRAY\(|\d#/i;

// Twice what may be typed: a file may store a formula with longer names.
const LONGEST_FORMULA = 16_384;
const TOO_LONG = 'The formula is too long to be worked out here.';

// Spilled ranges that formulas refer to as a whole settle in a few rounds.
const MOST_ROUNDS = 6;

type AreaOf = (sheet: string, address: string) => Area | undefined;

interface Prepared {
  readonly sheets: EngineSheet[];
  /** Cells whose formula cannot be handed to the engine, and why. */
  readonly refused: Map<string, Refusal>;
  /** The formulas in the engine's terms, by cell. */
  readonly plain: Map<string, string>;
}

function engineFormula(
  formula: string,
  book: Book,
  names: Names,
  sheet: string,
  cell: Pick<BookCell, 'row' | 'column' | 'array'>,
  areaOf: AreaOf,
): string {
  if (formula.length > LONGEST_FORMULA) throw new BadReference(TOO_LONG);
  const { row, column } = cell;
  const prepared = (text: string, own: string): string => {
    const spilled = withoutSpillReferences(readableFormula(text), own, areaOf);
    return withoutStructuredReferences(spilled, book.tables, { sheet, row, column });
  };
  const named = withoutNames(prepared(formula, sheet), sheet, names, prepared);
  // Newer functions are stored with a prefix that is no part of their name.
  const plain = rewriteCode(named, (code) => code.replace(/_xlfn\.|_xlws\.|_xlpm\./gi, ''));
  // A reference to a whole spill asks for an array whatever the mark.
  const isArray = cell.array || SPILL.test(formula) || washdownCalls(plain).length > 0;
  return isArray ? plain : withSingleCells(plain, row, column);
}

function functionNames(formula: string): string[] {
  const names: string[] = [];
  rewriteCode(formula, (code) => {
    for (const found of code.matchAll(FUNCTION_NAME)) names.push((found[1] ?? '').toUpperCase());
    return code;
  });
  return names;
}

function spillCells(sheet: BookSheet, frozen: (cell: BookCell) => boolean): Set<string> {
  const filled = new Set<string>();
  for (const cell of sheet.cells.values()) {
    const { array } = cell;
    if (!array || frozen(cell)) continue;
    for (const [address, other] of cellsWithin(sheet, array)) {
      // Only values stand in a spill; a formula there is somebody's own.
      if (other !== cell && other.formula === undefined) filled.add(address);
    }
  }
  return filled;
}

/** The cells of a sheet within an area, whichever of the two is quicker to go through. */
function cellsWithin(sheet: BookSheet, area: Area): [string, BookCell][] {
  if (cellsIn(area) > sheet.cells.size) {
    return [...sheet.cells].filter(([, { row, column }]) => contains(area, row, column));
  }
  const found: [string, BookCell][] = [];
  for (let row = area.top; row <= area.bottom; row += 1) {
    for (let column = area.left; column <= area.right; column += 1) {
      const address = cellAddress(row, column);
      const cell = sheet.cells.get(address);
      if (cell) found.push([address, cell]);
    }
  }
  return found;
}

function prepare(
  book: Book,
  plainOf: (sheet: BookSheet, cell: BookCell, formula: string) => string,
  knows: (name: string) => boolean,
  scope: Scope,
): Prepared {
  const refused = new Map<string, Refusal>();
  const plain = new Map<string, string>();
  const sheets = book.sheets.map((sheet): EngineSheet => {
    const formulas = new Map<BookCell, string>();
    for (const [address, cell] of sheet.cells) {
      const key = placeKey(sheet.name, address);
      if (cell.formula === undefined || cell.dataTable || !scope.needed.has(key)) continue;
      const refusal = scope.refused.get(key) ?? refusalIn(sheet, cell, plainOf, knows);
      if (typeof refusal === 'string') {
        formulas.set(cell, refusal);
        plain.set(key, refusal);
      } else refused.set(key, refusal);
    }
    const former = spillCells(sheet, (cell) => !formulas.has(cell));
    const cells: EngineCell[] = [];
    for (const [address, cell] of sheet.cells) {
      if (former.has(address)) continue;
      const formula = formulas.get(cell);
      const refusal = refused.get(placeKey(sheet.name, address));
      const value = refusal && (refusal.wrong || !hasCachedValue(cell)) ? refusal.error : cell.value;
      const { row, column, percent } = cell;
      const at = { row, column, ...(percent === undefined ? {} : { percent }) };
      if (formula !== undefined) cells.push({ ...at, value: null, formula });
      else if (value !== null) cells.push({ ...at, value });
    }
    return { name: sheet.name, cells };
  });
  return { sheets, refused, plain };
}

/** The formula for the engine, or why it cannot have it. */
function refusalIn(
  sheet: BookSheet,
  cell: BookCell,
  plainOf: (sheet: BookSheet, cell: BookCell, formula: string) => string,
  knows: (name: string) => boolean,
): string | Refusal {
  const { formula = '' } = cell;
  if (EXTERNAL.test(formula)) {
    const message = 'The formula reads another workbook, which is not opened here.';
    return { error: { error: '#REF!', message }, wrong: false };
  }
  try {
    const plain = plainOf(sheet, cell, formula);
    return refusalOf(plain, knows) ?? plain;
  } catch (cause) {
    if (!(cause instanceof BadReference)) throw cause;
    // What is not ours is left to whoever made it.
    const wrong = washdownCalls(formula).length > 0;
    return { error: { error: '#REF!', message: cause.message }, wrong };
  }
}

function noFunction(name: string): CellError {
  return { error: '#NAME?', message: `There is no function ${name}.` };
}

function refusalOf(formula: string, knows: (name: string) => boolean): Refusal | undefined {
  const unknown = functionNames(formula).find((name) => !knows(name));
  if (unknown?.startsWith('WASH.')) return { error: noFunction(unknown), wrong: true };
  if (unknown !== undefined) {
    return {
      error: { error: '#NAME?', message: `The function ${unknown} cannot be calculated here.` },
      wrong: false,
    };
  }
  return undefined;
}

/**
 * Calculates the Washdown formulas of a workbook, what they depend on and what depends on them, the worksheet
 * functions by running the bundle. Every other formula keeps the value that it was saved with.
 * @param book the workbook
 * @param bundle the built functions
 * @param fill whether formulas that were never calculated are calculated as well
 * @returns what each of those formulas came to, sheet by sheet
 * @throws {BadFile} where that is more than can be worked out here
 */
export async function recalculate(book: Book, bundle: Bundle, fill = false): Promise<FormulaResult[]> {
  const calls = new Map<string, RecordedCall[]>();
  const call = (id: string, place: CallPlace, args: readonly Argument[]): CellValue | CellValue[][] => {
    const called = bundle.get(id);
    if (!called) return noFunction(`WASH.${id}`);
    const outcome = callFunction(called, args);
    const key = placeKey(place.sheet, cellAddress(place.row, place.column));
    calls.set(key, [...(calls.get(key) ?? []), { id, ...outcome }]);
    return outcome.result;
  };
  const ids = [...bundle.keys()];
  const names = namesByKey(book.names);
  const probe = new Engine([], ids, call);
  const knows = (name: string): boolean => probe.knows(name);
  const formulaOf = (sheet: BookSheet, cell: BookCell, formula: string, areaOf: AreaOf): string =>
    engineFormula(formula, book, names, sheet.name, cell, areaOf);
  const formulas = new FormulaScope(
    book,
    (sheet, cell, formula) => formulaOf(sheet, cell, formula, () => undefined),
    fill,
  );

  let results: EngineResults = new Map();
  let areas = savedAreas(book);
  let refused: Prepared['refused'] = new Map();
  let scope = formulas.scope(areas, new Map());
  let kept: Kept = new Map();
  let plain: Prepared['plain'] = new Map();
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const asked = new Map<string, Area | undefined>();
    const areaOf = remembering(areas, asked);
    const plainOf = (sheet: BookSheet, cell: BookCell, formula: string): string =>
      formulaOf(sheet, cell, formula, areaOf);
    const prepared = prepare(book, plainOf, knows, scope);
    ({ refused, plain } = prepared);
    const engine = new Engine(prepared.sheets, ids, call);
    try {
      results = await engine.calculate(() => {
        // Calls of earlier passes may have read cells that were not calculated yet.
        calls.clear();
      });
    } finally {
      engine.dispose();
    }
    const next = calculatedAreas(results);
    const before = scope.needed.size + kept.size;
    kept = formulas.unfit(results, refused, scope, kept);
    scope = formulas.scope(next, kept);
    const settled = [...asked].every(([key, area]) => JSON.stringify(next.get(key)) === JSON.stringify(area));
    areas = next;
    if (settled && scope.needed.size + kept.size === before) break;
  }
  probe.dispose();
  return collect(book, results, { refused, plain }, calls, scope.needed);
}

type Areas = ReadonlyMap<string, Area>;

function areaKey(sheet: string, address: string): string {
  return placeKey(sheet.toLowerCase(), address);
}

function remembering(areas: Areas, asked: Map<string, Area | undefined>): AreaOf {
  return (sheet, address) => {
    const key = areaKey(sheet, address);
    const area = areas.get(key);
    asked.set(key, area);
    return area;
  };
}

function savedAreas(book: Book): Areas {
  const areas = new Map<string, Area>();
  for (const sheet of book.sheets) {
    for (const [address, { array }] of sheet.cells) {
      if (array) areas.set(areaKey(sheet.name, address), array);
    }
  }
  return areas;
}

function calculatedAreas(results: EngineResults): Areas {
  const areas = new Map<string, Area>();
  for (const [key, result] of results) {
    if (!Array.isArray(result)) continue;
    const [sheet = '', address = ''] = key.split('\n');
    areas.set(areaKey(sheet, address), spillArea(address, result));
  }
  return areas;
}

/**
 * The cells that a result fills.
 * @param address the cell of the formula
 * @param grid its result
 * @returns the rectangle
 */
export function spillArea(address: string, grid: readonly (readonly unknown[])[]): Area {
  const { top, left } = parseArea(address);
  return { top, left, bottom: top + grid.length - 1, right: left + (grid[0]?.length ?? 1) - 1 };
}

function collect(
  book: Book,
  results: EngineResults,
  { refused, plain }: Pick<Prepared, 'refused' | 'plain'>,
  calls: ReadonlyMap<string, readonly RecordedCall[]>,
  needed: ReadonlySet<string>,
): FormulaResult[] {
  const found: FormulaResult[] = [];
  for (const sheet of book.sheets) {
    for (const [address, cell] of sheet.cells) {
      const { row, column, formula, array } = cell;
      if (formula === undefined || cell.dataTable) continue;
      const key = placeKey(sheet.name, address);
      if (!needed.has(key)) continue;
      const refusal = refused.get(key);
      const own = calls.get(key) ?? [];
      const blocked = (): string => {
        const grid = own.at(-1)?.result;
        const inWay = Array.isArray(grid) ? cellsInTheWay(sheet, spillArea(address, grid), array) : [];
        return `The result does not fit: ${inWay.length > 0 ? inWay.slice(0, 3).join(', ') : 'a cell'} in its way is filled. Clear it or move the formula.`;
      };
      found.push({
        sheet: sheet.name,
        row,
        column,
        formula,
        plain: plain.get(key) ?? formula,
        result: refusal?.error ?? withReasons(results.get(key) ?? null, own, blocked),
        calls: own,
        supported: refusal === undefined || refusal.wrong,
      });
    }
  }
  return found;
}
