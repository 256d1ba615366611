import type {
  BaseValueObject,
  IAllRuntimeData,
  IUniverEngineFormulaConfig,
} from '@univerjs/preset-sheets-node-core';
import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from '@univerjs/presets';
import { cellAddress } from '../xlsx/address';
import type { CellValue } from '../xlsx/cell-value';
import type { Argument } from './call';
import { onFailure, stayWithTheirCells } from './engine-failures';
import { fromCellData, toCellData, toFormattedArgument, toEngine, type PercentAt } from './engine-values';
import { Single, SINGLE } from './single';
import {
  BaseFunction,
  FormulaDataModel,
  ICalculateFormulaService,
  IFunctionService,
  LocaleType,
  Univer,
  UniverFormulaEnginePlugin,
  UniverInstanceType,
  UniverSheetsPlugin,
  type UniverInstance,
} from '#univer';

/** A cell for the engine: a value, or a formula that it understands. */
export interface EngineCell {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  readonly formula?: string;
  /** Number format of a cell that shows a percent. */
  readonly percent?: string;
}

/** A sheet for the engine. */
export interface EngineSheet {
  readonly name: string;
  readonly cells: readonly EngineCell[];
}

/** Where a function is being called from. */
export interface CallPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Runs a function for a formula. */
export type Caller = (id: string, place: CallPlace, args: readonly Argument[]) => CellValue | CellValue[][];

/** What the formulas came to, by sheet and address (`placeKey`). */
export type EngineResults = ReadonlyMap<string, CellValue | CellValue[][]>;

const UNIT = 'book';

/** Room for spills below what a sheet holds. */
export const SPARE_ROWS = 5_000;
/** Room for spills beside what a sheet holds. */
export const SPARE_COLUMNS = 200;
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

// Each pass lets a spill reach the formulas that read it; a chain of spills is hardly ever this long.
const MOST_PASSES = 12;

type Matrix = IObjectMatrixPrimitiveType<ICellData>;

/**
 * A key for a cell of a workbook.
 * @param sheet name of the sheet
 * @param address address of the cell
 * @returns the key
 */
export function placeKey(sheet: string, address: string): string {
  return `${sheet}\n${address}`;
}

function sheetId(index: number): string {
  return `sheet${String(index)}`;
}

function cellMatrix(sheet: EngineSheet): Matrix {
  const rows: Record<number, Record<number, ICellData>> = {};
  for (const cell of sheet.cells) {
    const data = cell.formula === undefined ? toCellData(cell.value) : { f: `=${cell.formula}` };
    (rows[cell.row] ??= {})[cell.column] = data;
  }
  return rows;
}

function largest(numbers: Iterable<number>): number {
  let most = 0;
  for (const number of numbers) most = Math.max(most, number);
  return most;
}

/** A general-purpose spreadsheet engine over one workbook, with the worksheet functions added to its own. */
export class Engine {
  readonly #univer: UniverInstance;
  readonly #sheets: readonly EngineSheet[];

  /**
   * Puts the workbook into the engine.
   * @param sheets the cells
   * @param functions ids of the worksheet functions, as `WASH.` precedes them
   * @param call runs one of them
   */
  constructor(sheets: readonly EngineSheet[], functions: readonly string[], call: Caller) {
    this.#sheets = sheets;
    this.#univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} } });
    const sheetName = (id: Nullable<string>): string => (id ? (sheets[Number(id.slice(5))]?.name ?? '') : '');
    const percents = new Map(
      sheets.flatMap((sheet, index) =>
        sheet.cells.flatMap(({ row, column, percent }) =>
          percent === undefined
            ? []
            : [[placeKey(sheetId(index), cellAddress(row, column)), percent] as const],
        ),
      ),
    );
    const percentAt: PercentAt = (sheet, row, column) =>
      percents.size === 0 ? undefined : percents.get(placeKey(sheet, cellAddress(row, column)));
    class WorksheetFunction extends BaseFunction {
      override calculate(...variants: BaseValueObject[]): BaseValueObject {
        const place = { sheet: sheetName(this.subUnitId), row: this.row, column: this.column };
        return toEngine(
          call(
            String(this.name).slice(5),
            place,
            variants.map((value) => toFormattedArgument(value, percentAt)),
          ),
        );
      }
    }
    type Registered = NonNullable<IUniverEngineFormulaConfig['function']>[number];
    this.#univer.registerPlugin(UniverFormulaEnginePlugin, {
      // The engine's type lists its own function names only; it takes any.
      function: [
        ...functions.map((id) => [WorksheetFunction, `WASH.${id}`] as unknown as Registered),
        [Single, SINGLE] as unknown as Registered,
      ],
    });
    this.#univer.registerPlugin(UniverSheetsPlugin);
    const cells = sheets.flatMap((sheet) => sheet.cells);
    const rowCount = Math.min(MOST_ROWS, largest(cells.map((cell) => cell.row)) + SPARE_ROWS);
    const columnCount = Math.min(MOST_COLUMNS, largest(cells.map((cell) => cell.column)) + SPARE_COLUMNS);
    this.#univer.createUnit(UniverInstanceType.UNIVER_SHEET, {
      id: UNIT,
      name: UNIT,
      sheetOrder: sheets.map((_, index) => sheetId(index)),
      sheets: Object.fromEntries(
        sheets.map((sheet, index) => [
          sheetId(index),
          { id: sheetId(index), name: sheet.name, rowCount, columnCount, cellData: cellMatrix(sheet) },
        ]),
      ),
    });
    stayWithTheirCells(this.#univer);
  }

  /**
   * Whether the engine has a function.
   * @param name in capitals
   * @returns true where formulas with it can be calculated
   */
  knows(name: string): boolean {
    return this.#univer.__getInjector().get(IFunctionService).hasExecutor(name);
  }

  /**
   * Calculates every formula until nothing changes any more.
   * @param beforePass told before all formulas are gone through once more
   * @returns what each formula came to
   */
  async calculate(beforePass: () => void): Promise<EngineResults> {
    let filled: Pick<IAllRuntimeData, 'arrayFormulaRange' | 'arrayFormulaCellData'> | undefined;
    let results: EngineResults = new Map();
    for (let pass = 0; pass < MOST_PASSES; pass += 1) {
      beforePass();
      const data = await this.#pass(filled);
      filled = data;
      const before = results;
      results = this.#results(data);
      if (sameResults(before, results)) break;
    }
    return results;
  }

  /** Lets go of the engine's memory. */
  dispose(): void {
    this.#univer.dispose();
  }

  async #pass(
    filled?: Pick<IAllRuntimeData, 'arrayFormulaRange' | 'arrayFormulaCellData'>,
  ): Promise<IAllRuntimeData> {
    const injector = this.#univer.__getInjector();
    const service = injector.get(ICalculateFormulaService);
    const done = new Promise<IAllRuntimeData>((resolve, reject) => {
      onFailure(service, reject);
      const subscription = service.executionCompleteListener$.subscribe((data) => {
        subscription.unsubscribe();
        // The engine empties its own containers right after this.
        resolve({ ...data });
      });
    });
    await service.execute({
      formulaData: injector.get(FormulaDataModel).getFormulaData(),
      arrayFormulaRange: filled?.arrayFormulaRange ?? {},
      arrayFormulaCellData: filled ? matrices(filled.arrayFormulaCellData) : {},
      forceCalculate: true,
      dirtyRanges: [],
      dirtyNameMap: {},
      dirtyDefinedNameMap: {},
      dirtyUnitFeatureMap: {},
      dirtyUnitOtherFormulaMap: {},
    });
    return done;
  }

  #results(data: IAllRuntimeData): EngineResults {
    const results = new Map<string, CellValue | CellValue[][]>();
    for (const [index, sheet] of this.#sheets.entries()) {
      const id = sheetId(index);
      const values = data.unitData[UNIT]?.[id];
      const areas = data.arrayFormulaRange[UNIT]?.[id];
      const spilled = data.arrayFormulaCellData[UNIT]?.[id];
      for (const { row, column, formula } of sheet.cells) {
        if (formula === undefined) continue;
        const cell = values?.getValue(row, column);
        const area = areas?.[row]?.[column];
        const key = placeKey(sheet.name, cellAddress(row, column));
        if (!area || cell?.v === '#SPILL!') {
          results.set(key, fromCellData(cell));
          continue;
        }
        const grid: CellValue[][] = [];
        for (let r = area.startRow; r <= area.endRow; r += 1) {
          const line: CellValue[] = [];
          for (let c = area.startColumn; c <= area.endColumn; c += 1) {
            line.push(fromCellData(spilled?.getValue(r, c)));
          }
          grid.push(line);
        }
        results.set(key, grid);
      }
    }
    return results;
  }
}

function sameValue(a: CellValue | undefined, b: CellValue | undefined): boolean {
  if (typeof a === 'object' && typeof b === 'object' && a !== null && b !== null) return a.error === b.error;
  return Object.is(a, b);
}

function sameResults(a: EngineResults, b: EngineResults): boolean {
  if (a.size !== b.size) return false;
  for (const [key, one] of a) {
    const other = b.get(key);
    if (Array.isArray(one) && Array.isArray(other)) {
      const same = one.every((row, r) => row.every((value, c) => sameValue(value, other[r]?.[c])));
      if (!same || one.length !== other.length || one[0]?.length !== other[0]?.length) return false;
    } else if (Array.isArray(one) || Array.isArray(other) || !sameValue(one, other)) return false;
  }
  return true;
}

function matrices(data: IAllRuntimeData['arrayFormulaCellData']): Record<string, Record<string, Matrix>> {
  return Object.fromEntries(
    Object.entries(data).map(([unit, bySheet]) => [
      unit,
      Object.fromEntries(
        Object.entries(bySheet ?? {}).map(([id, matrix]) => [id, matrix.getMatrix() as Matrix]),
      ),
    ]),
  );
}
