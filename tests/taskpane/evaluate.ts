import { worksheetFunctions } from '../../functions/worksheet-functions';
import { AuditedBook } from '../../src/review/audit/audited-book';
import { NotFollowed } from '../../src/spreadsheet/not-followed';
import { isError, isRows, type Value } from '../../src/review/audit/outcome';
import { parseAddress } from '../../src/spreadsheet/address';
import { WorkOut } from '../../src/review/audit/work-out';
import type { Evaluated, MemoryWorkbook } from '../../taskpane/workbook/memory-workbook';
import type { CellContent, Place } from '../../taskpane/workbook/port';

const byName = new Map(worksheetFunctions.map((called) => [called.name, called]));

/** Works formulas out for a workbook in memory, as the host does with the functions. */
export function evaluate(formula: string, { sheet, address }: Place, workbook: MemoryWorkbook): Evaluated {
  const book = new AuditedBook(workbook.tableInfos(), []);
  for (const block of workbook.blocks()) book.add(block);
  const area = parseAddress(address);
  if (!area) return '#REF!';
  try {
    const worker = new WorkOut(book, (name) => byName.get(name));
    const outcome = worker.formula(formula, { sheet, row: area.top, column: area.left });
    return isRows(outcome) ? outcome.map((row) => row.map(shown)) : shown(outcome);
  } catch (error) {
    if (error instanceof NotFollowed) return '#NAME?';
    throw error;
  }
}

function shown(value: Value): CellContent {
  return isError(value) ? value.error : value;
}
