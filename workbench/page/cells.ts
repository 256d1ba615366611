import type { ICellData, IRange, Nullable, Univer } from '@univerjs/presets';
import { FormulaDataModel, type FWorksheet } from '@univerjs/presets/preset-sheets-core';
import type { Area } from '../../src/spreadsheet/address';
import type { CellContent } from '../../taskpane/workbook/port';
import { areaOfRange } from './area-of-range';
import { fromCellData } from '../engine/engine-values';
import { isCellError } from '../xlsx/cell-value';

/** A formula that fills several cells, and what it fills. */
export interface SheetSpill {
  readonly area: Area;
  readonly values: readonly (readonly CellContent[])[];
}

// The engine lists what a formula wants to fill, also where something is in its way.
const BLOCKED = '#SPILL!';

function count(first: number, last: number): number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
}

function contentOf(cell: Nullable<ICellData>): CellContent {
  // What was typed over several lines or in several looks is kept as a small document.
  const document = cell?.p?.body?.dataStream;
  if (document !== undefined) return document.replace(/\r\n$/, '').replace(/\r/g, '\n');
  const value = fromCellData(cell);
  if (value === null) return '';
  return isCellError(value) ? value.error : value;
}

/** Reads the cells of the spreadsheet: what they hold, also those that a formula elsewhere fills. */
export class Cells {
  /**
   * Reads from a spreadsheet.
   * @param univer the spreadsheet
   */
  constructor(private readonly univer: Univer) {}

  /**
   * The values of an area.
   * @param sheet the sheet
   * @param area the area
   * @returns rows of values; '' where a cell is blank
   */
  values(sheet: FWorksheet, area: Area): CellContent[][] {
    const worksheet = sheet.getSheet();
    const filled = this.model.getArrayFormulaCellData()[worksheet.getUnitId()]?.[sheet.getSheetId()] ?? {};
    return count(area.top - 1, area.bottom - 1).map((row) =>
      count(area.left - 1, area.right - 1).map((column) => {
        const own = contentOf(worksheet.getCellRaw(row, column));
        return own === '' ? contentOf(filled[row]?.[column]) : own;
      }),
    );
  }

  /**
   * The formulas of an area.
   * @param sheet the sheet
   * @param area the area
   * @returns rows of formulas with `=`; '' where a cell has none
   */
  formulas(sheet: FWorksheet, area: Area): string[][] {
    const { top, left, bottom, right } = area;
    return sheet.getRange(top - 1, left - 1, bottom - top + 1, right - left + 1).getFormulas();
  }

  /**
   * The formulas of a sheet that fill several cells.
   * @param sheet the sheet
   * @returns their areas and values
   */
  spills(sheet: FWorksheet): SheetSpill[] {
    const unit = sheet.getSheet().getUnitId();
    const areas = this.model.getArrayFormulaRange()[unit]?.[sheet.getSheetId()] ?? {};
    return Object.values(areas)
      .flatMap((row) => Object.values(row as Record<number, IRange>))
      .map(areaOfRange)
      .map((area) => ({ area, values: this.values(sheet, area) }))
      .filter(({ values }) => values[0]?.[0] !== BLOCKED);
  }

  /**
   * The cells of a sheet that hold or show something.
   * @param sheet the sheet
   * @returns the area, or undefined where the sheet is blank
   */
  used(sheet: FWorksheet): Area | undefined {
    const [bottom, right] = [sheet.getLastRow() + 1, sheet.getLastColumn() + 1];
    const spilled = this.spills(sheet).map(({ area }) => area);
    const area = {
      top: 1,
      left: 1,
      bottom: Math.max(bottom, ...spilled.map((each) => each.bottom)),
      right: Math.max(right, ...spilled.map((each) => each.right)),
    };
    return area.bottom === 0 || area.right === 0 ? undefined : area;
  }

  // It is there once the spreadsheet has had a workbook.
  private get model(): FormulaDataModel {
    return this.univer.__getInjector().get(FormulaDataModel);
  }
}
