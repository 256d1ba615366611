import { cellAddress } from '../../src/spreadsheet/address';
import { NOTE, rowOfFactor, VALUE, type FactorRows } from '../shared/factor-rows';
import type { FactorId } from '../../src/rules/factors';
import { placeOf, readFactorRange, type FactorContent, type Reference } from '../shared/wall-source';
import { areaOf } from '../workbook/block-area';
import type { Block, CellContent, WorkbookPort } from '../workbook/port';

/** A value for a factor, with the user's source of it. */
export interface FactorChange {
  readonly id: FactorId;
  /** As the display system has it. */
  readonly value: number;
  readonly note: string;
}

/** What the factor table holds of a factor. */
export interface SeenFactor {
  /** Row within the range, from 0; undefined where the table has no row of it. */
  readonly row: number | undefined;
  readonly value: CellContent;
  readonly note: CellContent;
}

/** The factor table as it was read. */
export interface SeenTable {
  readonly rows: FactorRows;
  readonly of: (id: FactorId) => SeenFactor;
}

/** What to write into the factor table. */
export interface FactorWriting {
  readonly blocks: readonly Block[];
  /** Rows to be added to the end of it. */
  readonly added: readonly (readonly CellContent[])[];
}

/**
 * Reads the factor table as it stands.
 * @param port the workbook
 * @param reference where it stands
 * @returns what it holds of each factor
 */
export async function readFactorTable(port: WorkbookPort, reference: Reference): Promise<SeenTable> {
  const rows = await readFactorRange(port, reference);
  return {
    rows,
    of: (id) => {
      const row = rowOfFactor(rows, id);
      const cells = rows[row ?? -1] ?? [];
      return {
        row,
        value: plain(cells[VALUE]),
        note: plain(cells[NOTE]),
      };
    },
  };
}

/**
 * Whether the table holds of a factor what it held before.
 * @param one as it was
 * @param other as it is
 * @returns true where value and note are the same
 */
export function isSame(one: SeenFactor, other: SeenFactor): boolean {
  return (
    one.value === other.value &&
    one.note === other.note &&
    (one.row === undefined) === (other.row === undefined)
  );
}

/**
 * What to write so that factors have new values. A factor without a row gets one: in a blank row of the range, or at the
 * end of the table.
 * @param port the workbook
 * @param reference where the factor table stands
 * @param table what it holds
 * @param changes the new values
 * @returns the cells to write, and the rows to add
 * @throws {Error} where a cell shows a percent, or a range has no room
 */
export async function factorWriting(
  port: WorkbookPort,
  reference: Reference,
  table: SeenTable,
  changes: readonly FactorChange[],
): Promise<FactorWriting> {
  const { sheet, address } = await placeOf(port, reference);
  const { top, left } = areaOf(address);
  const width = table.rows[0]?.length ?? 0;
  const blank = table.rows.flatMap((cells, row) => (cells.every((cell) => cell === '') ? [row] : []));
  const blocks: Block[] = [];
  const added: CellContent[][] = [];
  const put = (row: number, column: number, cells: readonly CellContent[]) => {
    const fitting = cells.slice(0, width - column);
    blocks.push({ sheet, address: cellAddress(top + row, left + column), rows: [fitting] });
  };
  for (const { id, value, note } of changes) {
    const { row } = table.of(id);
    if (row !== undefined) {
      if (typeof table.rows[row]?.[VALUE] === 'object')
        throw new Error(`The cell of ${id} shows a percent. Set its number format to a plain number first.`);
      put(row, VALUE, [value, note]);
      continue;
    }
    const free = blank.shift();
    if (free !== undefined) put(free, 0, [id, value, note]);
    else if ('table' in reference)
      added.push(Array.from({ length: width }, (_, place) => [id, value, note][place] ?? ''));
    else
      throw new Error(
        `The factors are a range without a blank row for ${id}. Make it a table, or choose a longer range under Set up.`,
      );
  }
  return { blocks, added };
}

function plain(content: FactorContent | undefined): CellContent {
  return typeof content === 'object' ? content.basicValue : (content ?? '');
}
