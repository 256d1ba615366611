import { cellAddress, parseArea, type Area } from '../xlsx/address';
import type { Book, BookCell, BookName, BookSheet } from '../xlsx/book';
import { isCellError, type CellError, type CellValue } from '../xlsx/cell-value';
import { rewriteCode } from '../xlsx/formula-text';
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
import { withoutSpillReferences } from './spill-references';
import { BadReference, withoutStructuredReferences } from './structured-references';
import { readableFormula } from './washdown-names';

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

interface Refusal {
  readonly error: CellError;
  /** Whether the formula is wrong in itself, and not only out of the engine's reach. */
  readonly wrong: boolean;
}

function engineFormula(
  formula: string,
  book: Book,
  sheet: string,
  cell: Pick<BookCell, 'row' | 'column'>,
  areaOf: AreaOf,
): string {
  const spilled = withoutSpillReferences(readableFormula(formula), sheet, areaOf);
  const place = { sheet, row: cell.row, column: cell.column };
  const plain = withoutStructuredReferences(spilled, book.tables, place);
  // Newer functions are stored with a prefix that is no part of their name.
  return rewriteCode(plain, (code) => code.replace(/_xlfn\.|_xlws\.|_xlpm\./gi, ''));
}

function functionNames(formula: string): string[] {
  const names: string[] = [];
  rewriteCode(formula, (code) => {
    for (const found of code.matchAll(FUNCTION_NAME)) names.push((found[1] ?? '').toUpperCase());
    return code;
  });
  return names;
}

function hasCachedValue(cell: BookCell): boolean {
  return cell.value !== null && !isCellError(cell.value);
}

function spillCells(sheet: BookSheet, frozen: (cell: BookCell) => boolean): Set<string> {
  const filled = new Set<string>();
  for (const cell of sheet.cells.values()) {
    const { array, row, column } = cell;
    if (!array || frozen(cell)) continue;
    for (let r = array.top; r <= array.bottom; r += 1) {
      for (let c = array.left; c <= array.right; c += 1) {
        const address = cellAddress(r, c);
        // Only values stand in a spill; a formula there is somebody's own.
        if ((r !== row || c !== column) && sheet.cells.get(address)?.formula === undefined)
          filled.add(address);
      }
    }
  }
  return filled;
}

function prepare(book: Book, areaOf: AreaOf, knows: (name: string) => boolean): Prepared {
  const refused = new Map<string, Refusal>();
  const plain = new Map<string, string>();
  const sheets = book.sheets.map((sheet): EngineSheet => {
    const formulas = new Map<BookCell, string>();
    for (const [address, cell] of sheet.cells) {
      if (cell.formula === undefined || cell.dataTable) continue;
      const key = placeKey(sheet.name, address);
      if (EXTERNAL.test(cell.formula)) {
        const message = 'The formula reads another workbook, which is not opened here.';
        refused.set(key, { error: { error: '#REF!', message }, wrong: false });
        continue;
      }
      try {
        const formula = engineFormula(cell.formula, book, sheet.name, cell, areaOf);
        plain.set(key, formula);
        const refusal = refusalOf(formula, knows);
        if (refusal) refused.set(key, refusal);
        else formulas.set(cell, formula);
      } catch (cause) {
        if (!(cause instanceof BadReference)) throw cause;
        refused.set(key, { error: { error: '#REF!', message: cause.message }, wrong: true });
      }
    }
    const former = spillCells(sheet, (cell) => !formulas.has(cell));
    const cells: EngineCell[] = [];
    for (const [address, cell] of sheet.cells) {
      if (former.has(address)) continue;
      const formula = formulas.get(cell);
      const refusal = refused.get(placeKey(sheet.name, address));
      const value = refusal && (refusal.wrong || !hasCachedValue(cell)) ? refusal.error : cell.value;
      const { row, column } = cell;
      if (formula !== undefined) cells.push({ row, column, value: null, formula });
      else if (value !== null) cells.push({ row, column, value });
    }
    return { name: sheet.name, cells };
  });
  return { sheets, refused, plain };
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
 * The names that formulas can be worked out with.
 * @param book the workbook
 * @returns the names, in the engine's terms
 */
export function usableNames(book: Book): BookName[] {
  return book.names.flatMap((each) => {
    // Print areas and the like are no names to calculate with.
    if (each.name.startsWith('_xlnm.')) return [];
    try {
      return [
        {
          ...each,
          formula: engineFormula(
            each.formula,
            book,
            each.sheet ?? '',
            { row: -1, column: -1 },
            () => undefined,
          ),
        },
      ];
    } catch (cause) {
      if (cause instanceof BadReference) return [];
      throw cause;
    }
  });
}

/**
 * Calculates every formula of a workbook, the worksheet functions by running the bundle.
 * @param book the workbook
 * @param bundle the built functions
 * @returns what each formula came to, sheet by sheet
 */
export async function recalculate(book: Book, bundle: Bundle): Promise<FormulaResult[]> {
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
  const names = usableNames(book);
  const probe = new Engine([], [], ids, call);
  const knows = (name: string): boolean => probe.knows(name);

  let results: EngineResults = new Map();
  let areas = savedAreas(book);
  let refused: Prepared['refused'] = new Map();
  let plain: Prepared['plain'] = new Map();
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const asked = new Map<string, Area | undefined>();
    const prepared = prepare(book, remembering(areas, asked), knows);
    ({ refused, plain } = prepared);
    const engine = new Engine(prepared.sheets, names, ids, call);
    results = await engine.calculate(() => {
      // Calls of earlier passes may have read cells that were not calculated yet.
      calls.clear();
    });
    engine.dispose();
    const next = calculatedAreas(results);
    if ([...asked].every(([key, area]) => JSON.stringify(next.get(key)) === JSON.stringify(area))) break;
    areas = next;
  }
  probe.dispose();
  return collect(book, results, { refused, plain }, calls);
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
): FormulaResult[] {
  const found: FormulaResult[] = [];
  for (const sheet of book.sheets) {
    for (const [address, cell] of sheet.cells) {
      const { row, column, formula, array } = cell;
      if (formula === undefined || cell.dataTable) continue;
      const key = placeKey(sheet.name, address);
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
