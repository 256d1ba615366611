import { cellAddress, contains, type Area } from '../xlsx/address';
import type { BookSheet } from '../xlsx/book';
import { isCellError, type CellValue } from '../xlsx/cell-value';

/** A call whose result may carry the reason for an error. */
export interface Reasoned {
  readonly result: CellValue | CellValue[][];
}

const REASONS: Readonly<Record<string, string>> = {
  '#NAME?': 'The formula uses a name that the workbook does not have.',
  '#REF!': 'The formula refers to a cell or table that is not there.',
  '#DIV/0!': 'The formula divides by zero.',
};

function reasonIn(calls: readonly Reasoned[], error: string): string | undefined {
  // The engine may try a formula before what it reads is known: the latest call counts.
  for (const { result } of [...calls].reverse()) {
    if (Array.isArray(result) || !isCellError(result)) continue;
    if (result.error === error && result.message) return result.message;
  }
  return undefined;
}

/**
 * The cells that stand where a formula wants to spill.
 * @param sheet the sheet
 * @param area what the formula wants to fill, its own cell at the top left
 * @param former cells that it filled when the file was saved
 * @returns addresses of the cells in the way
 */
export function cellsInTheWay(sheet: BookSheet, area: Area, former: Area | undefined): string[] {
  return [...sheet.cells.values()]
    .filter(({ row, column, formula }) => {
      const own = row === area.top && column === area.left;
      const spilled = former !== undefined && formula === undefined && contains(former, row, column);
      return !own && !spilled && contains(area, row, column);
    })
    .map(({ row, column }) => cellAddress(row, column));
}

/**
 * Adds the reason to the errors of a result: the engine passes on the kind of an error, not its message.
 * @param result what the formula came to
 * @param calls the worksheet functions that it called
 * @param blocked what to say where it may not spill
 * @returns the result with a message on each error where a reason is known
 */
export function withReasons(
  result: CellValue | CellValue[][],
  calls: readonly Reasoned[],
  blocked: () => string,
): CellValue | CellValue[][] {
  const explain = (value: CellValue, own?: CellValue): CellValue => {
    if (!isCellError(value) || value.message) return value;
    const fromCell = own !== undefined && isCellError(own) ? own.message : undefined;
    const message =
      fromCell ??
      (value.error === '#SPILL!' ? blocked() : undefined) ??
      reasonIn(calls, value.error) ??
      REASONS[value.error];
    return message ? { ...value, message } : value;
  };
  if (!Array.isArray(result)) return explain(result);
  const grid = calls.at(-1)?.result;
  return result.map((row, r) =>
    row.map((value, c) => explain(value, Array.isArray(grid) ? grid[r]?.[c] : undefined)),
  );
}
