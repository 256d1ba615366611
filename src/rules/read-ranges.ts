import { comparable, describe, readCell } from '../quantity/cell';
import { didYouMean } from '../quantity/did-you-mean';
import { badInput, cellProblem, WashdownError, type Problem } from '../quantity/problem';
import type { System } from '../quantity/systems';
import { readFactorValue } from './factor-value';
import { factors, formerIds, otherSpellings, type Factor, type FactorId } from './factors';

/** How far a factor may lie off: its low, likely and high value, in its base unit. */
export interface FactorRange {
  readonly id: FactorId;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

const firstSpelling = new Map(Object.entries(otherSpellings).map(([other, id]) => [comparable(other), id]));
const successors = new Map(Object.entries(formerIds).map(([id, successor]) => [comparable(id), successor]));

const COLUMNS = ['low', 'likely', 'high'] as const;

/**
 * Reads the four-column range of factor id, low, likely and high value. A header row and blank rows are left alone.
 * @param range the rows as the host hands them over
 * @param system the display system that the values are typed in
 * @returns the ranges, one at least
 * @throws {WashdownError} on an id that is not known or given twice, a value that is not accepted, or values out of order
 */
export function readRanges(range: unknown, system: System): FactorRange[] {
  if (!Array.isArray(range) || !range.every((row) => Array.isArray(row) && row.length > COLUMNS.length)) {
    throw badInput('The ranges must have four columns: factor id, low, likely, high.');
  }
  const problems: Problem[] = [];
  const found: FactorRange[] = [];
  (range as unknown[][]).forEach((cells, index) => {
    const name = readCell(cells[0]);
    if (name.type === 'blank') return;
    const text = 'value' in name ? String(name.value) : '';
    const wanted = firstSpelling.get(comparable(text)) ?? text;
    const factor: Factor | undefined = factors.find(({ id }) => comparable(id) === comparable(wanted));
    if (factor === undefined) {
      if (index === 0 && readCell(cells[1]).type === 'text') return;
      const successor = successors.get(comparable(text));
      const ids = factors.map(({ id }) => id);
      problems.push(
        cellProblem(
          { row: index + 1, column: 'factor' },
          describe(name),
          successor === undefined
            ? `a factor id of WASH.FACTORS()${didYouMean(text, ids)}`
            : `in its place ${successor}`,
        ),
      );
      return;
    }
    if (found.some(({ id }) => id === factor.id)) {
      problems.push(
        cellProblem(
          { row: index + 1, column: 'factor' },
          `${describe(name)} a second time`,
          'each factor once',
        ),
      );
      return;
    }
    const values = COLUMNS.map((column, place) => {
      const cell = readCell(cells[place + 1]);
      const read = readFactorValue(cell, factor, system);
      if ('value' in read) return read.value;
      problems.push(cellProblem({ row: index + 1, label: factor.id, column }, describe(cell), read.accepted));
      return NaN;
    });
    const [low = NaN, likely = NaN, high = NaN] = values;
    if (low > likely || likely > high) {
      problems.push(
        cellProblem(
          { row: index + 1, label: factor.id, column: 'likely' },
          describe(readCell(cells[2])),
          'low, likely and high in rising order',
        ),
      );
    }
    found.push({ id: factor.id as FactorId, low, likely, high });
  });
  if (problems.length > 0) throw new WashdownError(problems);
  if (found.length === 0)
    throw badInput('The ranges name no factor. Accepted: rows of factor id, low, likely, high.');
  return found;
}
