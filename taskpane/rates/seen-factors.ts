import { NOTE, rowOfFactor, VALUE } from '../shared/factor-rows';
import type { FactorRange } from '../shared/factor-writing';
import type { FactorId } from '../../src/rules/factors';
import { placeOf, readFactorRange, type FactorContent, type Reference } from '../shared/wall-source';
import type { CellContent, WorkbookPort } from '../workbook/port';

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
export interface SeenTable extends FactorRange {
  readonly of: (id: FactorId) => SeenFactor;
}

/**
 * Reads the factor table as it stands.
 * @param port the workbook
 * @param reference where it stands
 * @returns what it holds of each factor
 */
export async function readFactorTable(port: WorkbookPort, reference: Reference): Promise<SeenTable> {
  const [rows, place] = await Promise.all([readFactorRange(port, reference), placeOf(port, reference)]);
  return {
    reference,
    place,
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

function plain(content: FactorContent | undefined): CellContent {
  return typeof content === 'object' ? content.basicValue : (content ?? '');
}
