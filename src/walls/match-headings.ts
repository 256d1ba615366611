import { comparable, describe, isBlankOrZero, readCell } from '../quantity/cell';
import { didYouMean } from '../quantity/did-you-mean';
import { badInput, cellProblem, missingHeading, WashdownError, type Problem } from '../quantity/problem';
import type { Kind, System } from '../quantity/systems';
import { columnIds, columns, type Column, type ColumnId } from './columns';
import { acceptedUnit, isInForce, unitInHeading } from './heading-units';
import { recordedColumns } from './recorded-columns';

/** Where each column stands in the range; a column that is not there is left out. */
export type ColumnPlaces = ReadonlyMap<ColumnId, number>;

/** A column of a headed table. */
export interface HeadedColumn {
  readonly name: string;
  readonly needed: boolean;
  /** What its numbers measure; left out where it holds none. */
  readonly kind?: Kind;
}

/** The columns of a headed table. */
export interface HeadedTable<Id extends string> {
  readonly columns: Readonly<Record<Id, HeadedColumn>>;
  /** Columns of another table that the same range of headings may map; left alone here. */
  readonly others: readonly string[];
  /** Whether a heading that the mapping names must be there; otherwise our own is looked for then. */
  readonly mappedMustBeThere: boolean;
}

const walls: HeadedTable<ColumnId> = {
  columns: Object.fromEntries(columnIds.map((id) => [id, headedColumn(id)])) as Record<
    ColumnId,
    HeadedColumn
  >,
  others: recordedColumns,
  mappedMustBeThere: true,
};

function headedColumn(id: ColumnId): HeadedColumn {
  const { name, needed, reading }: Column = columns[id];
  return reading.as === 'number' ? { name, needed, kind: reading.kind } : { name, needed };
}

/**
 * Finds the columns of the walls by their headings: any order, case and spacing ignored, extra columns left alone.
 * A unit in a heading is no part of its name; it must be the one in force.
 * @param header first row of the range
 * @param system the display system of the numbers
 * @param headings optional rows (our column, their heading) for a table with other headings
 * @returns the place of each column found
 * @throws {WashdownError} when a needed column is missing, a heading stands twice or states a unit that is not in force,
 * or a mapping names what is not there
 */
export function matchHeadings(header: readonly unknown[], system: System, headings?: unknown): ColumnPlaces {
  return placesIn(walls, header, system, headings);
}

/**
 * Finds the columns of a table by their headings: any order, case and spacing ignored, extra columns left alone.
 * @param table its columns
 * @param header first row of the range
 * @param system the display system of the numbers
 * @param headings optional rows (our column, their heading) for a table with other headings
 * @returns the place of each column found
 * @throws {WashdownError} when a needed column is missing, a heading stands twice or states a unit that is not in force,
 * or a mapping names what is not there
 */
export function placesIn<Id extends string>(
  table: HeadedTable<Id>,
  header: readonly unknown[],
  system: System,
  headings?: unknown,
): ReadonlyMap<Id, number> {
  const seen = new Map<string, number[]>();
  header.forEach((raw, index) => {
    const cell = readCell(raw);
    if (cell.type === 'blank') return;
    const name = comparable('value' in cell ? String(cell.value) : '');
    seen.set(name, [...(seen.get(name) ?? []), index]);
  });
  const mapping = readMapping(table, headings, seen);
  const places = new Map<Id, number>();
  const problems: Problem[] = [];
  for (const id of Object.keys(table.columns) as Id[]) {
    const { name, needed, kind } = table.columns[id];
    const mapped = mapping.get(id);
    const isThere = mapped !== undefined && seen.has(comparable(mapped));
    const wanted = mapped !== undefined && (isThere || table.mappedMustBeThere) ? mapped : name;
    const exact = seen.get(comparable(wanted)) ?? [];
    const found =
      exact.length > 0 || wanted !== name ? exact : headedWithUnit(header, table.columns[id], system);
    const [place] = found;
    const heading = place === undefined ? '' : headingOf(header[place]);
    const stated = unitInHeading(heading, kind);
    if (found.length > 1) {
      problems.push(
        cellProblem({ row: 1, column: wanted }, `the heading "${wanted}" twice`, 'each heading once'),
      );
    } else if (stated && !isInForce(stated.unit, kind, system)) {
      problems.push(
        cellProblem(
          { row: 1, column: wanted },
          `the heading "${heading.trim()}", which states ${stated.unit.shown},`,
          acceptedUnit(stated.unit, table.columns[id], system),
        ),
      );
    } else if (place !== undefined) {
      places.set(id, place);
    } else if (needed || (mapping.has(id) && table.mappedMustBeThere)) {
      const there = header.map(readCell).flatMap((cell) => (cell.type === 'text' ? [cell.value] : []));
      const accepted = 'that heading, or a headings range that names yours';
      problems.push(missingHeading(wanted, accepted + didYouMean(wanted, there)));
    }
  }
  if (problems.length > 0) throw new WashdownError(problems);
  return places;
}

/** Where our heading stands with a unit; of those the ones with the unit in force, where there are any. */
function headedWithUnit(header: readonly unknown[], { name, kind }: HeadedColumn, system: System): number[] {
  const found = header.flatMap((raw, place) => {
    const stated = unitInHeading(headingOf(raw), kind);
    const isOurs = stated?.unit.kind === kind && stated && comparable(stated.bare) === comparable(name);
    return isOurs ? [{ place, unit: stated.unit }] : [];
  });
  const inForce = found.filter(({ unit }) => isInForce(unit, kind, system));
  return (inForce.length > 0 ? inForce : found.slice(0, 1)).map(({ place }) => place);
}

function headingOf(raw: unknown): string {
  const cell = readCell(raw);
  return cell.type === 'text' ? cell.value : '';
}

function readMapping<Id extends string>(
  { columns: ours, others }: HeadedTable<Id>,
  range: unknown,
  there: ReadonlyMap<string, unknown>,
): Map<Id, string> {
  const ids = Object.keys(ours) as Id[];
  const mapping = new Map<Id, string>();
  if (!range) return mapping;
  if (!Array.isArray(range) || !range.every((row) => Array.isArray(row) && row.length >= 2)) {
    throw badInput('The headings must be a range of two columns: our column, your heading.');
  }
  const problems: Problem[] = [];
  (range as unknown[][]).forEach((cells, index) => {
    const left = readCell(cells[0]);
    const theirs = readCell(cells[1]);
    // The host hands a blank over as 0 too.
    if (isBlankOrZero(left) || theirs.type === 'blank' || isBlankOrZero(theirs)) return;
    const isNamed = (name: string): boolean =>
      left.type === 'text' && comparable(name) === comparable(left.value);
    const id = ids.find((column) => isNamed(ours[column].name));
    const names = ids.map((column) => ours[column].name);
    if (id === undefined) {
      if (others.some(isNamed)) return;
      // A first row that names no heading of the table is a header of the mapping itself.
      if (index === 0 && !('value' in theirs && there.has(comparable(String(theirs.value))))) return;
      problems.push(
        cellProblem({ row: index + 1, column: 'our column' }, describe(left), `one of ${names.join(', ')}`),
      );
    } else if (mapping.has(id)) {
      problems.push(
        cellProblem(
          { row: index + 1, column: 'our column' },
          `${describe(left)} a second time`,
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
