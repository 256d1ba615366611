import { areaAddress, parseAddress, type Area } from '../../spreadsheet/address';

/** What a cell shows: blank is '', an error is its text. */
export type Shown = string | number | boolean;

/** A rectangle of cells; row and column are those of its top left cell, from 1. */
export interface CellRectangle {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** Formulas with `=`; where a cell has none, its value. */
  readonly formulas: readonly (readonly Shown[])[];
  readonly values: readonly (readonly Shown[])[];
}

/** A table of the workbook; its address includes the heading row, and the totals row where it has one. */
export interface AuditedTable {
  readonly name: string;
  readonly sheet: string;
  readonly address: string;
  readonly headings: readonly string[];
  readonly totals: boolean;
}

/** A defined name; `sheet` where it belongs to one sheet alone. */
export interface AuditedName {
  readonly name: string;
  readonly sheet?: string;
  readonly refersTo: string;
}

/** Cells of one sheet. */
export interface SheetArea extends Area {
  readonly sheet: string;
}

interface Stretch {
  readonly column: number;
  readonly formulas: readonly Shown[];
  readonly values: readonly Shown[];
}

/** The cells, tables and names of a workbook, as they were read for the audit. */
export class AuditedBook {
  private readonly sheetRows = new Map<string, Map<number, Stretch[]>>();
  private readonly sheetNames = new Map<string, string>();
  private readonly lastOf = new Map<string, { row: number; column: number }>();
  private readonly readAreas = new Map<string, Shown[][]>();

  /**
   * Starts with no cells.
   * @param tables the tables of the workbook
   * @param names its defined names
   */
  constructor(
    readonly tables: readonly AuditedTable[],
    readonly names: readonly AuditedName[],
  ) {}

  /**
   * Takes cells in.
   * @param rectangle the cells
   */
  add({ sheet, row, column, formulas, values }: CellRectangle): void {
    this.sheetNames.set(sheet.toLowerCase(), sheet);
    const rows = this.sheetRows.get(sheet) ?? new Map<number, Stretch[]>();
    this.sheetRows.set(sheet, rows);
    formulas.forEach((line, index) => {
      const stretches = rows.get(row + index) ?? [];
      stretches.push({ column, formulas: line, values: values[index] ?? [] });
      rows.set(row + index, stretches);
    });
    const last = this.lastOf.get(sheet) ?? { row: 0, column: 0 };
    this.lastOf.set(sheet, {
      row: Math.max(last.row, row + formulas.length - 1),
      column: Math.max(last.column, column + (formulas[0]?.length ?? 0) - 1),
    });
  }

  /**
   * A sheet as the workbook spells it.
   * @param name its name in any case
   * @returns its name; undefined where it has no cells or is not there
   */
  sheetCalled(name: string): string | undefined {
    return this.sheetNames.get(name.toLowerCase());
  }

  /**
   * What a cell shows.
   * @param sheet its sheet
   * @param row its row
   * @param column its column
   * @returns the value; '' where it is blank
   */
  value(sheet: string, row: number, column: number): Shown {
    const stretch = this.stretch(sheet, row, column);
    return stretch?.values[column - stretch.column] ?? '';
  }

  /**
   * The formula of a cell.
   * @param sheet its sheet
   * @param row its row
   * @param column its column
   * @returns the formula with `=`; undefined where the cell has none
   */
  formula(sheet: string, row: number, column: number): string | undefined {
    const stretch = this.stretch(sheet, row, column);
    const content = stretch?.formulas[column - stretch.column];
    return typeof content === 'string' && content.startsWith('=') && content.length > 1 ? content : undefined;
  }

  /**
   * Every formula of the workbook.
   * @yields its place and its text
   */
  *formulas(): Generator<{ sheet: string; row: number; column: number; formula: string }> {
    for (const [sheet, rows] of this.sheetRows) {
      for (const [row, stretches] of rows) {
        for (const { column, formulas } of stretches) {
          for (let index = 0; index < formulas.length; index++) {
            const content = formulas[index];
            if (typeof content === 'string' && content.startsWith('=') && content.length > 1) {
              yield { sheet, row, column: column + index, formula: content };
            }
          }
        }
      }
    }
  }

  /**
   * Every number of the workbook that no formula of its own cell gives.
   * @yields its place and its value
   */
  *typedNumbers(): Generator<{ sheet: string; row: number; column: number; value: number }> {
    for (const [sheet, rows] of this.sheetRows) {
      for (const [row, stretches] of rows) {
        for (const { column, formulas } of stretches) {
          for (let index = 0; index < formulas.length; index++) {
            const value = formulas[index];
            if (typeof value === 'number') yield { sheet, row, column: column + index, value };
          }
        }
      }
    }
  }

  /**
   * The values of an area, cut off where the sheet's cells end. The same area gives the same rows, not copies.
   * @param area the area
   * @returns its rows
   */
  rows(area: SheetArea): Shown[][] {
    const key = areaKey(area);
    const known = this.readAreas.get(key);
    if (known) return known;
    const last = this.lastOf.get(area.sheet) ?? { row: 0, column: 0 };
    const bottom = Math.max(area.top, Math.min(area.bottom, last.row));
    const right = Math.max(area.left, Math.min(area.right, last.column));
    const rows: Shown[][] = [];
    for (let row = area.top; row <= bottom; row++) {
      const line: Shown[] = [];
      for (let column = area.left; column <= right; column++) line.push(this.value(area.sheet, row, column));
      rows.push(line);
    }
    this.readAreas.set(key, rows);
    return rows;
  }

  /**
   * The table that a cell stands in.
   * @param sheet its sheet
   * @param row its row
   * @param column its column
   * @returns the table with its area, or undefined
   */
  tableAt(sheet: string, row: number, column: number): AuditedTable | undefined {
    return this.tables.find((table) => {
      const area = parseAddress(table.address);
      return (
        table.sheet === sheet &&
        area !== undefined &&
        row >= area.top &&
        row <= area.bottom &&
        column >= area.left &&
        column <= area.right
      );
    });
  }

  private stretch(sheet: string, row: number, column: number): Stretch | undefined {
    return this.sheetRows
      .get(sheet)
      ?.get(row)
      ?.find((stretch) => column >= stretch.column && column < stretch.column + stretch.formulas.length);
  }
}

/**
 * A text that stands for an area.
 * @param area the area
 * @returns for example `Walls!A1:F9`
 */
export function areaKey(area: SheetArea): string {
  return `${area.sheet}!${areaAddress(area)}`;
}
