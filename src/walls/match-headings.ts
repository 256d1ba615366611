import { comparable, describe, isBlankOrZero, readCell } from '../quantity/cell';
import { nearest } from '../quantity/nearest';
import { badInput, cellProblem, WashdownError, type Problem } from '../quantity/problem';
import { columnIds, columns, type ColumnId } from './columns';

/** Where each column stands in the range; a column that is not there is left out. */
export type ColumnPlaces = ReadonlyMap<ColumnId, number>;

/**
 * Finds the columns by their headings: any order, case and spacing ignored, extra columns left alone.
 * @param header first row of the range
 * @param headings optional rows (our column, their heading) for a table with other headings
 * @returns the place of each column found
 * @throws {WashdownError} when a needed column is missing, a heading stands twice, or a mapping names what is not there
 */
export function matchHeadings(header: readonly unknown[], headings?: unknown): ColumnPlaces {
  const seen = new Map<string, number[]>();
  header.forEach((raw, index) => {
    const cell = readCell(raw);
    if (cell.type === 'blank') return;
    const name = comparable('value' in cell ? String(cell.value) : '');
    seen.set(name, [...(seen.get(name) ?? []), index]);
  });
  const mapping = readMapping(headings, seen);
  const places = new Map<ColumnId, number>();
  const problems: Problem[] = [];
  for (const id of columnIds) {
    const { name, needed } = columns[id];
    const wanted = mapping.get(id) ?? name;
    const found = seen.get(comparable(wanted)) ?? [];
    const [place] = found;
    if (found.length > 1) {
      problems.push(
        cellProblem({ row: 1, column: wanted }, `the heading "${wanted}" twice`, 'each heading once'),
      );
    } else if (place !== undefined) {
      places.set(id, place);
    } else if (needed || mapping.has(id)) {
      const there = header.map(readCell).flatMap((cell) => (cell.type === 'text' ? [cell.value] : []));
      const offer =
        there.length > 0 ? `; the nearest headings here are ${nearest(wanted, there).join(', ')}` : '';
      problems.push(
        cellProblem(
          { row: 1, column: wanted },
          'a missing heading',
          `a column headed "${wanted}", or a headings range that names yours${offer}`,
        ),
      );
    }
  }
  if (problems.length > 0) throw new WashdownError(problems);
  return places;
}

function readMapping(range: unknown, there: ReadonlyMap<string, unknown>): Map<ColumnId, string> {
  const mapping = new Map<ColumnId, string>();
  if (!range) return mapping;
  if (!Array.isArray(range) || !range.every((row) => Array.isArray(row) && row.length >= 2)) {
    throw badInput('The headings must be a range of two columns: our column, your heading.');
  }
  const problems: Problem[] = [];
  (range as unknown[][]).forEach((cells, index) => {
    const ours = readCell(cells[0]);
    const theirs = readCell(cells[1]);
    // The host hands a blank over as 0 too.
    if (isBlankOrZero(ours) || theirs.type === 'blank' || isBlankOrZero(theirs)) return;
    const id = columnIds.find(
      (column) => ours.type === 'text' && comparable(columns[column].name) === comparable(ours.value),
    );
    const names = columnIds.map((column) => columns[column].name);
    if (id === undefined) {
      // A first row that names no heading of the table is a header of the mapping itself.
      if (index === 0 && !('value' in theirs && there.has(comparable(String(theirs.value))))) return;
      problems.push(
        cellProblem({ row: index + 1, column: 'our column' }, describe(ours), `one of ${names.join(', ')}`),
      );
    } else if (mapping.has(id)) {
      problems.push(
        cellProblem(
          { row: index + 1, column: 'our column' },
          `${describe(ours)} a second time`,
          'each column once',
        ),
      );
    } else if (theirs.type === 'error' || theirs.type === 'unknown') {
      problems.push(
        cellProblem({ row: index + 1, column: 'your heading' }, describe(theirs), 'the text of a heading'),
      );
    } else {
      mapping.set(id, String(theirs.value));
    }
  });
  if (problems.length > 0) throw new WashdownError(problems);
  return mapping;
}
