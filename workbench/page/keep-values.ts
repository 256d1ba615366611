import type { BaseReferenceObject, BaseValueObject } from '@univerjs/preset-sheets-node-core';
import { IUniverInstanceService, UniverInstanceType, type Univer, type Workbook } from '@univerjs/presets';
import { IFormulaRuntimeService, Interpreter, Lexer } from '@univerjs/presets/preset-sheets-core';
import { fromCellData, toEngine } from '../engine/engine-values';
import { isCellError, type CellValue } from '../xlsx/cell-value';
import { asksForTooMuch, keepingOf } from './files/keeping';
import { ArrayValueObject, ErrorType, ErrorValueObject } from '#univer';

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
  const lexer = injector.get(Lexer);
  const interpreter = injector.get(Interpreter);
  const runtime = injector.get(IFormulaRuntimeService);
  const books = injector.get(IUniverInstanceService);
  const read = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, transformSuffix) =>
    asksForTooMuch(formula) ? ErrorType.VALUE : read(formula, transformSuffix);
  const here = (): string =>
    [
      runtime.currentUnitId,
      runtime.currentSubUnitId,
      String(runtime.currentRow),
      String(runtime.currentColumn),
    ].join(' ');
  let failed: string | undefined;
  const run = interpreter.execute.bind(interpreter);
  interpreter.execute = (data) => {
    try {
      return run(data);
    } catch {
      failed = here();
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  };
  const take = runtime.setRuntimeData.bind(runtime);
  runtime.setRuntimeData = (value) => {
    const cell = books
      .getUnit<Workbook>(runtime.currentUnitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(runtime.currentSubUnitId)
      ?.getCellRaw(runtime.currentRow, runtime.currentColumn);
    const keeping = keepingOf(cell);
    const saved = keeping === undefined ? null : fromCellData(cell);
    const isOutOfReach = keeping === 'always' || failed === here() || isUnknown(value);
    // Without the mark of an array a formula gives one value, and no spill.
    const spills = keeping === 'single' && isSeveral(value);
    failed = undefined;
    take(goodValue(saved) && (isOutOfReach || spills) ? toEngine(saved) : value);
  };
}

type Value = ReturnType<Interpreter['execute']>;

function isUnknown(value: Value): boolean {
  if (!value.isValueObject()) return false;
  const single = value as BaseValueObject;
  return single.isError() && single.getValue() === UNKNOWN;
}

function isSeveral(value: Value): boolean {
  if (value.isReferenceObject()) {
    const { startRow, endRow, startColumn, endColumn } = (value as BaseReferenceObject).getRangePosition();
    return endRow > startRow || endColumn > startColumn;
  }
  return value instanceof ArrayValueObject && value.getRowCount() * value.getColumnCount() > 1;
}
