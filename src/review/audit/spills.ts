import { cellAddress, type Area } from '../../spreadsheet/address';
import type { AuditedBook, SheetArea } from './audited-book';
import { isRows, type Outcome } from './outcome';
import type { SheetPlace } from './references';

/** The areas that formulas fill beyond their own cell. */
export class Spills {
  private readonly bySheet = new Map<string, { area: Area; formula: string }[]>();

  /**
   * Notes what a formula fills.
   * @param at where it stands
   * @param formula the formula
   * @param outcome what it gives
   */
  add(at: SheetPlace, formula: string, outcome: Outcome): void {
    const area = filledBy(at, outcome);
    if (!area) return;
    const known = this.bySheet.get(at.sheet) ?? [];
    known.push({ area, formula });
    this.bySheet.set(at.sheet, known);
  }

  /**
   * The area that the formula of a cell fills.
   * @param at the cell of the formula
   * @returns the area; undefined where it fills no more than its cell
   */
  areaFrom({ sheet, row, column }: SheetPlace): SheetArea | undefined {
    const area = this.bySheet
      .get(sheet)
      ?.find((known) => known.area.top === row && known.area.left === column)?.area;
    return area && { sheet, ...area };
  }

  /**
   * The formula whose area a cell lies in.
   * @param at the cell
   * @returns the formula; undefined outside of every area
   */
  formulaOver({ sheet, row, column }: SheetPlace): string | undefined {
    return this.bySheet
      .get(sheet)
      ?.find(
        ({ area }) => row >= area.top && row <= area.bottom && column >= area.left && column <= area.right,
      )?.formula;
  }
}

/**
 * The area that a formula fills.
 * @param at where it stands
 * @param outcome what it gives
 * @returns the area; undefined for a single cell
 */
export function filledBy(at: SheetPlace, outcome: Outcome): SheetArea | undefined {
  if (!isRows(outcome)) return undefined;
  const height = outcome.length;
  const width = outcome[0]?.length ?? 1;
  if (height * width <= 1) return undefined;
  return {
    sheet: at.sheet,
    top: at.row,
    left: at.column,
    bottom: at.row + height - 1,
    right: at.column + width - 1,
  };
}

/**
 * The cells that stand in the way of a spill.
 * @param book the workbook
 * @param area the area that the formula would fill
 * @returns their addresses
 */
export function cellsInTheWay(book: AuditedBook, area: SheetArea): string[] {
  const addresses: string[] = [];
  for (let row = area.top; row <= area.bottom; row++) {
    for (let column = area.left; column <= area.right; column++) {
      const anchor = row === area.top && column === area.left;
      if (!anchor && book.value(area.sheet, row, column) !== '') addresses.push(cellAddress(row, column));
    }
  }
  return addresses;
}

/**
 * Cells by name, a long list cut short.
 * @param addresses the cells
 * @returns for example `B7, B8 and 12 more`
 */
export function someOf(addresses: readonly string[]): string {
  const most = 5;
  const named = addresses.slice(0, most).join(', ');
  return addresses.length > most ? `${named} and ${String(addresses.length - most)} more` : named;
}
