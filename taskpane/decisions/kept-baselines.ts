import { freeName } from '../shared/free-name';
import { readReference, type Reference } from '../shared/wall-source';
import type { Block, CellContent, TableInfo, WorkbookPort } from '../workbook/port';

// The name of a table is what the workbook keeps of it, in every host and in a copy of the file too.
const BASELINE = /^baseline(?![a-z])/i;

/**
 * The baselines of a workbook: the tables whose name starts with the word.
 * @param port the workbook
 * @returns them, the latest kept first
 */
export async function keptBaselines(port: WorkbookPort): Promise<TableInfo[]> {
  return (await port.tables())
    .filter(({ name }) => BASELINE.test(name))
    .sort((a, b) => b.name.localeCompare(a.name, undefined, { numeric: true }));
}

/**
 * A copy of the walls as they are, to be put on a new sheet as a table.
 * @param port the workbook
 * @param walls where the walls stand
 * @param day the day of the copy, as `2026-11-25`
 * @returns what to write
 */
export async function baselineBlock(
  port: WorkbookPort,
  walls: Reference,
  day: string,
): Promise<Block & { readonly table: string }> {
  const [rows, sheets, tables, names] = await Promise.all([
    readReference(port, walls),
    port.sheets(),
    port.tables(),
    port.names(),
  ]);
  const taken = [...tables, ...names].map(({ name }) => name);
  return {
    sheet: freeName(`Baseline ${day}`, sheets, ' '),
    table: freeName(`Baseline_${day.replace(/-/g, '_')}`, taken, '_'),
    address: 'A1',
    rows: withoutBlankEnd(rows),
  };
}

/** A range may be chosen longer than its walls. */
function withoutBlankEnd(rows: readonly CellContent[][]): CellContent[][] {
  const last = rows.findLastIndex((row) => row.some((content) => content !== ''));
  return rows.slice(0, last + 1);
}
