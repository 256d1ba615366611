import type { FactorsInForce } from '../rules/read-factors';
import { Refusal } from './column-readers';
import { columnIds, type ColumnId } from './columns';
import { netArea } from './net-area';
import { brushedAs, maskedAs, readersOf, tooOpen, type Readers } from './read-walls';
import type { WallRow } from './wall-row';

/** Puts a value into a cell of a row: gives the row as it is then, or why the cell refuses the value. */
export type CellEdit = (row: WallRow, id: ColumnId, raw: unknown) => WallRow | Refusal;

/**
 * An editor of rows that were read. It reads a value exactly as the cell of a wall table would be.
 * @param factors the factors in force
 * @returns the editor
 */
export function cellEditor(factors: FactorsInForce): CellEdit {
  const readers = readersOf(new Map(columnIds.map((id, place) => [id, place])), factors);
  return (row, id, raw) => {
    const read = readers[id].read(raw);
    return read instanceof Refusal ? read : { ...row, ...fieldsOf(id, read) };
  };
}

/**
 * Why a row as it stands after its edits cannot be.
 * @param row the row
 * @param factors the factors in force
 * @returns what is seen and accepted; undefined where it can be
 */
export function refusedRow(row: WallRow, factors: FactorsInForce): Refusal | undefined {
  return netArea(row) < 0 ? tooOpen(row.openings, row.area, factors) : undefined;
}

type Read = Exclude<ReturnType<Readers[ColumnId]['read']>, Refusal>;
type WordOf<Id extends 'brushed' | 'masked'> = Exclude<ReturnType<Readers[Id]['read']>, Refusal>;

function fieldsOf(id: ColumnId, read: Read): Partial<WallRow> {
  // Each reader gives what its own column holds.
  if (id === 'brushed') return brushedAs(read as WordOf<'brushed'>);
  if (id === 'masked') return maskedAs(read as WordOf<'masked'>);
  return { [id]: read };
}
