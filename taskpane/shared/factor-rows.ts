import { comparable } from '../../src/quantity/cell';
import { factorIdOf } from '../../src/rules/read-factors';
import type { FactorContent } from './wall-source';

/** The rows of a range of factors as they stand. */
export type FactorRows = readonly (readonly FactorContent[])[];

/** The column of its values, from 0. */
export const VALUE = 1;
/** The column of the notes. */
export const NOTE = 2;

/**
 * Whether a cell holds the id of a factor, in any spelling.
 * @param content what the cell holds
 * @param id the factor
 * @returns true where it does
 */
export function isIdOf(content: FactorContent | undefined, id: string): boolean {
  const text = typeof content === 'string' ? content : '';
  return (factorIdOf(text) ?? comparable(text)) === id;
}

/**
 * Where a factor stands in the range.
 * @param rows the rows of the range
 * @param id the factor
 * @returns its row, from 0; undefined where the range does not have it
 */
export function rowOfFactor(rows: FactorRows, id: string): number | undefined {
  const row = rows.findIndex(([name]) => isIdOf(name, id));
  return row < 0 ? undefined : row;
}

/**
 * Whether the range has a column for notes: the third one.
 * @param rows the rows of the range
 * @returns true where it has
 */
export function hasNotes(rows: FactorRows): boolean {
  return (rows[0] ?? []).length > NOTE;
}
