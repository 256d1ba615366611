import type { ICellData, IRowData, IWorksheetData, Nullable } from '@univerjs/presets';
import { cellAddress, contains, parseArea, type Area } from '../../xlsx/address';
import { moveFormula } from '../../../src/spreadsheet/move-formula';
import { attribute, type ScannedCell, type ScannedSheet } from '../../xlsx/sheet-scan';
import type { BookCell } from '../../xlsx/book';
import type { CellValue } from '../../xlsx/cell-value';
import { soleCall } from '../../engine/washdown-names';
import type { CellLooks } from './cell-looks';
import { cellXml, shownValueOf, valueOf } from './cell-xml';
import { filedFormula, typedFormula } from './formula-form';
import { callsForArray } from './future-functions';
import { heightInPoints } from './measure';
import { showsDate } from '../../xlsx/number-formats';
import { DAYS_FROM_1900_TO_1904, isTrue } from './read-sheet';
import type { ShownSpill } from './shown-workbook';

/** What the cells of a sheet are written from. */
export interface CellSource {
  readonly data: Partial<IWorksheetData>;
  /** The sheet as it would be shown if it were opened once more, to see what has changed. */
  readonly before: Partial<IWorksheetData>;
  readonly scan: ScannedSheet;
  /** The cells that the file has. */
  readonly cells: ReadonlyMap<string, BookCell>;
  readonly spills: readonly ShownSpill[];
  readonly tables: readonly { readonly name: string; readonly area: Area }[];
  /** Headings of tables that have to differ from what the page shows, by address. */
  readonly headings: ReadonlyMap<string, string>;
  readonly looks: CellLooks;
  readonly date1904: boolean;
  /** Washdown functions that may fill more than one cell. */
  readonly filling: ReadonlySet<string>;
  /** The mark of an array that grows and shrinks. */
  readonly mark: () => number;
}

interface Spilled {
  readonly area: Area;
  readonly spill: ShownSpill;
}

type Row = Readonly<Record<number, Nullable<ICellData>>>;

function withoutAttributes(attributes: string, names: readonly string[]): string {
  return names.reduce(
    (rest, name) => rest.replace(new RegExp(`\\s+${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), ''),
    attributes,
  );
}

function numbers(record: object | undefined): number[] {
  return Object.keys(record ?? {}).map(Number);
}

/** Writes the cells of one sheet. */
export class CellsWriter {
  readonly #source: CellSource;
  readonly #spilled: readonly Spilled[];
  readonly #before: ReadonlyMap<string, ScannedCell>;
  readonly #formulas = new Map<string, { formula: string; row: number; column: number }>();

  /**
   * Starts on a sheet.
   * @param source what the cells are written from
   */
  constructor(source: CellSource) {
    this.#source = source;
    this.#spilled = source.spills.map((spill) => ({ area: parseArea(spill.address), spill }));
    this.#before = new Map(
      source.scan.rows.flatMap(({ cells }) =>
        cells.map((cell) => [cellAddress(cell.row, cell.column), cell] as const),
      ),
    );
    const { cellData } = source.data;
    for (const row of numbers(cellData)) {
      for (const [column, cell] of Object.entries(cellData?.[row] ?? {}) as [string, Nullable<ICellData>][]) {
        if (cell?.si && cell.f) this.#formulas.set(cell.si, { formula: cell.f, row, column: Number(column) });
      }
    }
  }

  /**
   * The XML of all rows.
   * @returns what stands between the tags of the sheet's data
   */
  rows(): string {
    const { data, scan } = this.#source;
    const attributes = new Map(scan.rows.map((row) => [row.row, row.attributes]));
    const all = new Set([
      ...numbers(data.cellData),
      ...numbers(data.rowData),
      ...attributes.keys(),
      ...this.#spilled.flatMap(({ area }) =>
        Array.from({ length: area.bottom - area.top + 1 }, (_, row) => area.top + row),
      ),
    ]);
    return [...all]
      .sort((a, b) => a - b)
      .map((row) => this.#row(row, attributes.get(row)))
      .join('');
  }

  #row(row: number, before: string | undefined): string {
    const { prefix } = this.#source.scan;
    const own = (this.#source.data.cellData?.[row] ?? {}) as Row;
    const spilled = this.#spilled.filter(({ area }) => row >= area.top && row <= area.bottom);
    const columns = new Set([
      ...numbers(own),
      ...spilled.flatMap(({ area }) =>
        Array.from({ length: area.right - area.left + 1 }, (_, each) => area.left + each),
      ),
    ]);
    const cells = [...columns]
      .sort((a, b) => a - b)
      .map((column) => this.#cell(row, column, own[column], spilled))
      .join('');
    const attributes = this.#rowAttributes(row, before);
    if (!cells && !attributes) return '';
    const start = `${prefix}row r="${row + 1}"${attributes}`;
    return cells ? `<${start}>${cells}</${prefix}row>` : `<${start}/>`;
  }

  #rowAttributes(row: number, before: string | undefined): string {
    const shown = this.#source.data.rowData?.[row];
    const kept = withoutAttributes(before ?? '', ['r', 'spans']);
    if (sameRow(shown, this.#source.before.rowData?.[row])) return kept;
    const rest = withoutAttributes(kept, ['ht', 'customHeight', 'hidden', 's', 'customFormat']);
    const format = this.#source.looks.row(row, Number(attribute(kept, 's') ?? 0));
    const isSet = shown?.ia === 0;
    // A height that follows the text is left to whoever opens the file.
    const height = isSet || shown?.ah === undefined ? shown?.h : undefined;
    return [
      rest,
      shown?.s ? ` s="${format}" customFormat="1"` : '',
      height === undefined ? '' : ` ht="${heightInPoints(height)}"${isSet ? ' customHeight="1"' : ''}`,
      shown?.hd ? ' hidden="1"' : '',
    ].join('');
  }

  #cell(row: number, column: number, cell: Nullable<ICellData>, spilled: readonly Spilled[]): string {
    const { looks, scan, headings } = this.#source;
    const address = cellAddress(row, column);
    const before = this.#before.get(address);
    const format = looks.cell(row, column, cell?.s, Number(attribute(before?.attributes ?? '', 's') ?? 0));
    const fill = spilled.find(({ area }) => contains(area, row, column));
    const isAnchor = fill?.area.top === row && fill.area.left === column;
    if (fill && !isAnchor) {
      const content = fill.spill.values[row - fill.area.top]?.[column - fill.area.left];
      const value = this.#filed(valueOf(content ?? ''), row, column, cell);
      return cellXml({ row, column, format, value, filled: true }, scan.prefix);
    }
    const heading = headings.get(address);
    if (heading !== undefined) return cellXml({ row, column, format, value: heading }, scan.prefix);
    const formula = this.#formula(row, column, cell);
    if (formula !== undefined) return this.#formulaCell(row, column, formula, cell, format, fill);
    const kept = before && this.#unchanged(address, row, column, cell) ? before : undefined;
    if (kept) return keptXml(kept, format, scan.prefix);
    const value = shownValueOf(cell) === '' ? null : shownValueOf(cell);
    if (value === null && format === 0 && !cell?.s) return '';
    return cellXml({ row, column, format, value: this.#filed(value, row, column, cell) }, scan.prefix);
  }

  #formula(row: number, column: number, cell: Nullable<ICellData>): string | undefined {
    if (cell?.f) return cell.f;
    const shared = cell?.si ? this.#formulas.get(cell.si) : undefined;
    if (!shared) return undefined;
    const from = { row: shared.row + 1, column: shared.column + 1 };
    return `=${moveFormula(shared.formula.replace(/^=/, ''), from, { row: row + 1, column: column + 1 })}`;
  }

  #formulaCell(
    row: number,
    column: number,
    typed: string,
    cell: Nullable<ICellData>,
    format: number,
    fill: Spilled | undefined,
  ): string {
    const { cells, tables, scan, mark } = this.#source;
    const address = cellAddress(row, column);
    const stored = cells.get(address);
    const same = stored?.formula !== undefined && typedFormula(stored.formula) === typed ? stored : undefined;
    const table = tables.find(({ area }) => contains(area, row, column))?.name;
    const formula = same?.formula ?? filedFormula(typed, table);
    const own = shownValueOf(cell);
    const value = own ?? firstValue(fill?.spill);
    const isArray = fill !== undefined || same?.array !== undefined || this.#fills(formula);
    if (!isArray) {
      return cellXml(
        { row, column, format, formula, value: this.#filed(value, row, column, cell) },
        scan.prefix,
      );
    }
    const array = fill?.area ?? { top: row, left: column, bottom: row, right: column };
    // An array formula of fixed size, as older workbooks have them, stays one.
    const isFixed = same?.array && attribute(this.#before.get(address)?.attributes ?? '', 'cm') === undefined;
    return cellXml(
      {
        row,
        column,
        format,
        formula,
        value: this.#filed(value, row, column, cell),
        array,
        ...(isFixed ? {} : { dynamic: mark() }),
      },
      scan.prefix,
    );
  }

  #fills(formula: string): boolean {
    return this.#source.filling.has(soleCall(formula) ?? '') || callsForArray(formula);
  }

  /** A day is counted from another one in some files. */
  #filed<T>(value: T, row: number, column: number, cell: Nullable<ICellData>): T | number {
    const { date1904, looks } = this.#source;
    if (!date1904 || typeof value !== 'number') return value;
    return showsDate(looks.look(row, column, cell?.s).n?.pattern) ? value - DAYS_FROM_1900_TO_1904 : value;
  }

  /** Whether a cell without a formula still holds what the file has, formats within its text and all. */
  #unchanged(address: string, row: number, column: number, cell: Nullable<ICellData>): boolean {
    const stored = this.#source.cells.get(address);
    if (!stored || (stored.formula !== undefined && !stored.dataTable)) return false;
    const shown = (this.#source.before.cellData?.[row] as Row | undefined)?.[column];
    return !cell?.p && shown?.v !== undefined && Object.is(shown.v, cell?.v) && shown.t === cell?.t;
  }
}

/** A formula that was never worked out has no value. */
function firstValue(spill: ShownSpill | undefined): CellValue {
  const content = spill?.values[0]?.[0] ?? '';
  return content === '' ? null : valueOf(content);
}

function keptXml(before: ScannedCell, format: number, prefix: string): string {
  const rest = withoutAttributes(before.attributes, ['r', 's']);
  const own = ` r="${cellAddress(before.row, before.column)}"${format > 0 ? ` s="${format}"` : ''}`;
  return `<${prefix}c${own}${rest}>${before.inner}</${prefix}c>`;
}

function sameRow(one: Partial<IRowData> | undefined, other: Partial<IRowData> | undefined): boolean {
  const key = (row: Partial<IRowData> | undefined): string => {
    const isAuto = row?.ia !== 0 && row?.ah !== undefined && row.ah !== row.h;
    return JSON.stringify([row?.h, row?.ia === 0, isAuto, isTrue(String(row?.hd ?? 0)), row?.s ?? null]);
  };
  return key(one) === key(other);
}
