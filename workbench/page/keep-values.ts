import type { BaseValueObject } from '@univerjs/preset-sheets-node-core';
import { IUniverInstanceService, UniverInstanceType, type Univer, type Workbook } from '@univerjs/presets';
import { IFormulaRuntimeService, Interpreter } from '@univerjs/presets/preset-sheets-core';
import { fromCellData, toEngine } from '../engine/engine-values';
import { isCellError, type CellValue } from '../xlsx/cell-value';
import { keepingOf } from './files/keeping';

const UNKNOWN = '#NAME?';

function goodValue(value: CellValue): boolean {
  return value !== null && !isCellError(value);
}

/**
 * Has formulas of the file that are not ours and cannot be worked out on the page keep the value that they were saved
 * with, and whatever fails while a formula runs be an error of its cell alone.
 * @param univer the spreadsheet, once it has a workbook
 */
export function keepValues(univer: Univer): void {
  const injector = univer.__getInjector();
  const interpreter = injector.get(Interpreter);
  const place = injector.get(IFormulaRuntimeService);
  const books = injector.get(IUniverInstanceService);
  const run = interpreter.execute.bind(interpreter);
  interpreter.execute = (data) => {
    const sheet = books
      .getUnit<Workbook>(place.currentUnitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(place.currentSubUnitId);
    const cell = sheet?.getCellRaw(place.currentRow, place.currentColumn);
    const keeping = keepingOf(cell);
    const saved = fromCellData(cell);
    const isKept = keeping !== undefined && goodValue(saved);
    if (isKept && keeping === 'always') return toEngine(saved);
    let value: ReturnType<typeof run>;
    try {
      value = run(data);
    } catch {
      value = toEngine({ error: '#VALUE!' });
      if (isKept) return toEngine(saved);
    }
    if (!isKept) return value;
    const isUnknown =
      value.isValueObject() && (value as BaseValueObject).isError() && codeOf(value) === UNKNOWN;
    // Without the mark of an array a formula gives one value, and no spill.
    const spills = keeping === 'single' && isSeveral(value);
    return isUnknown || spills ? toEngine(saved) : value;
  };
}

type Value = ReturnType<Interpreter['execute']>;

function codeOf(value: Value): unknown {
  return (value as BaseValueObject).getValue();
}

function isSeveral(value: Value): boolean {
  if (!value.isReferenceObject() && !(value.isValueObject() && (value as BaseValueObject).isArray()))
    return false;
  const grid = value as unknown as { getRowCount: () => number; getColumnCount: () => number };
  return grid.getRowCount() > 1 || grid.getColumnCount() > 1;
}
