import { comparable } from '../../src/quantity/cell';
import type { System } from '../../src/quantity/systems';
import { factorLines, unitsLine, type FactorLine } from '../../src/rules/factor-lines';
import { START } from '../../src/rules/factor-start';
import { cellAddress } from '../../src/spreadsheet/address';
import { areaOf } from '../workbook/block-area';
import { messageOf } from '../workbook/message-of';
import { WriteFailed, type Block, type CellContent, type Place, type WorkbookPort } from '../workbook/port';
import { NOTE, rowOfFactor, VALUE, type FactorRows } from './factor-rows';
import { formHeadings, formRow } from './factor-table-rows';
import type { Reference } from './wall-source';

/** What a factor is to have; what is left out stays as it is. */
export interface FactorCells {
  readonly id: string;
  readonly value?: CellContent;
  readonly note?: string;
}

/** The factors as they stand in the workbook. */
export interface FactorRange {
  readonly reference: Reference;
  readonly place: Place;
  readonly rows: FactorRows;
}

/** What to write into the factors. */
export interface FactorWriting {
  readonly blocks: readonly Block[];
  /** Rows to be added to the end of the table. */
  readonly added: readonly (readonly CellContent[])[];
}

/**
 * What to write so that factors have other values. A factor without a row gets one: in a blank row of the range, or at
 * the end of the table.
 * @param range the factors as they stand
 * @param changes the new values
 * @returns the cells to write and the rows to add, or why not: a cell shows a percent that is none, or a range has no
 * room
 */
export function factorWriting(
  range: FactorRange,
  changes: readonly FactorCells[],
): FactorWriting | { readonly refused: string } {
  const { rows, place, reference } = range;
  const { top, left } = areaOf(place.address);
  const width = rows[0]?.length ?? 0;
  const lines = linesOf(rows);
  const isForm = formHeadings.every(
    (heading, at) => comparable(shownText(rows[0]?.[at])) === comparable(heading),
  );
  const blank = rows.flatMap((cells, row) => (cells.every((cell) => cell === '') ? [row] : []));
  const blocks: Block[] = [];
  const added: CellContent[][] = [];
  const put = (row: number, column: number, cells: readonly CellContent[]) => {
    const address = cellAddress(top + row, left + column);
    blocks.push({ sheet: place.sheet, address, rows: [cells.slice(0, width - column)] });
  };
  for (const { id, value, note } of changes) {
    const line = lines.find((each) => each.id === id);
    const row = rowOfFactor(rows, id);
    if (row !== undefined) {
      if (value !== undefined && line?.unit !== '%' && typeof rows[row]?.[VALUE] === 'object')
        return {
          refused: `The cell of ${id} shows a percent. Set its number format to a plain number first.`,
        };
      if (value !== undefined) put(row, VALUE, note === undefined ? [value] : [value, note]);
      else if (note !== undefined) put(row, NOTE, [note]);
      continue;
    }
    const full = line && isForm ? formRow(line, value ?? START, note) : [id, value ?? START, note ?? ''];
    const free = blank.shift();
    if (free !== undefined) put(free, 0, full);
    else if ('table' in reference) added.push(Array.from({ length: width }, (_, at) => full[at] ?? ''));
    else
      return {
        refused: `The factors are a range without a blank row for ${id}. Make it a table, or choose a longer range under Set up.`,
      };
  }
  return { blocks, added };
}

/**
 * Writes into the factors: the new rows first.
 * @param port the workbook
 * @param reference where the factors stand
 * @param writing what to write
 * @throws {WriteFailed} where rows were added and the rest could not be written; it names them
 */
export async function writeFactors(
  port: WorkbookPort,
  reference: Reference,
  { blocks, added }: FactorWriting,
): Promise<void> {
  if (added.length > 0 && 'table' in reference) await port.addRows(reference.table, added);
  if (blocks.length === 0) return;
  await port.write(blocks).catch((error: unknown) => {
    const rows = added.map(([id]) => `row ${String(id)}`);
    const { left = [] } = (error ?? {}) as { readonly left?: readonly string[] };
    throw new WriteFailed(messageOf(error, ''), [...rows, ...left]);
  });
}

/**
 * The units in force by the factors.
 * @param rows the rows of the range
 * @returns US where they do not say SI
 */
export function systemOf(rows: FactorRows): System {
  const row = rowOfFactor(rows, unitsLine.id);
  return comparable(shownText(rows[row ?? -1]?.[VALUE])) === 'si' ? 'SI' : 'US';
}

function linesOf(rows: FactorRows): FactorLine[] {
  return factorLines(systemOf(rows)).flatMap((group) => group.lines);
}

function shownText(content: FactorRows[number][number] | undefined): string {
  return typeof content === 'object' ? '' : String(content ?? '');
}
