import { comparable, describe, isBlankOrZero, readCell, type Cell } from '../quantity/cell';
import { nearest } from '../quantity/nearest';
import { badInput, cellProblem, WashdownError, type Problem } from '../quantity/problem';
import type { System } from '../quantity/systems';
import { factorIdOf, factorIds } from '../rules/read-factors';
import { columnIds, columns, type ColumnId } from '../walls/columns';
import { matchHeadings } from '../walls/match-headings';
import type { WallRow } from '../walls/wall-row';
import { cellKey, type Alternate, type Edit } from './alternate';
import { ALTERNATE_HEADINGS as HEADINGS } from './headings';

type Heading = (typeof HEADINGS)[number];

/** The columns that an alternate can set: a label is no choice. */
const settable = columnIds.filter((id) => id !== 'wall');

/**
 * Reads a table of alternates. Rows of one name are one alternate.
 * @param range its rows, the first being the headings Alternate, Wall, Column and Value in any order
 * @param rows the walls of the base bid
 * @param header the headings of the walls
 * @param system the display system of the walls
 * @param headings optional rows (our column, their heading)
 * @returns the alternates in the order in which each first appears
 * @throws {WashdownError} with every cell that cannot be read
 */
export function readAlternates(
  range: unknown,
  rows: readonly WallRow[],
  header: readonly unknown[],
  system: System,
  headings?: unknown,
): Alternate[] {
  if (!Array.isArray(range) || !range.every((line) => Array.isArray(line))) {
    throw badInput(`The alternates must be a range whose first row is its headings: ${HEADINGS.join(', ')}.`);
  }
  const lines = range as unknown[][];
  const places = placesOf(lines[0] ?? []);
  const reader = new AlternateReader(rows, columnNames(header, system, headings));
  for (let row = 2; row <= lines.length; row++) {
    const cell = (heading: Heading): unknown => lines[row - 1]?.[places[heading]];
    reader.take(row, cell('Alternate'), cell('Wall'), cell('Column'), cell('Value'));
  }
  return reader.finish();
}

function placesOf(header: readonly unknown[]): Readonly<Record<Heading, number>> {
  const seen = header.map(readCell).map((cell) => ('value' in cell ? comparable(String(cell.value)) : ''));
  const problems: Problem[] = [];
  const places = HEADINGS.map((heading) => {
    const name = comparable(heading);
    const place = seen.indexOf(name);
    if (place < 0)
      problems.push(
        cellProblem({ row: 1, column: heading }, 'a missing heading', `the headings ${HEADINGS.join(', ')}`),
      );
    else if (seen.includes(name, place + 1))
      problems.push(cellProblem({ row: 1, column: heading }, 'a heading twice', 'each heading once'));
    return [heading, place] as const;
  });
  if (problems.length > 0) throw new WashdownError(problems);
  return Object.fromEntries(places) as Record<Heading, number>;
}

/** The columns by every name that the table may call them: ours, and the heading that stands for it. */
function columnNames(header: readonly unknown[], system: System, headings: unknown): Map<string, ColumnId> {
  const names = new Map(columnIds.map((id) => [comparable(columns[id].name), id]));
  for (const [id, place] of matchHeadings(header, system, headings)) {
    const cell = readCell(header[place]);
    if ('value' in cell) names.set(comparable(String(cell.value)), id);
  }
  return names;
}

class AlternateReader {
  readonly #rows: readonly WallRow[];
  readonly #columns: ReadonlyMap<string, ColumnId>;
  readonly #labels: ReadonlySet<string>;
  readonly #alternates = new Map<
    string,
    { name: string; edits: Edit[]; notes: Set<string>; cells: Set<string> }
  >();
  readonly #problems: Problem[] = [];

  constructor(rows: readonly WallRow[], names: ReadonlyMap<string, ColumnId>) {
    this.#rows = rows;
    this.#columns = names;
    this.#labels = new Set(rows.map(({ wall }) => wall));
  }

  take(row: number, ...raw: [alternate: unknown, wall: unknown, column: unknown, value: unknown]): void {
    const [alternate, wall, column, value] = raw.map(readCell) as [Cell, Cell, Cell, Cell];
    if ([alternate, wall, column, value].every(isBlankOrZero)) return;
    const name = nameIn(alternate);
    if (name === undefined || name === '') {
      this.#refuse(
        row,
        '',
        'Alternate',
        describe(alternate),
        'the name of the alternate on each of its rows',
      );
      return;
    }
    const place = nameIn(wall);
    if (place === undefined) {
      this.#refuse(row, name, 'Wall', describe(wall), 'the label of a wall, a zone, or blank for all walls');
      return;
    }
    const known = this.#alternates.get(comparable(name)) ?? {
      name,
      edits: [],
      notes: new Set<string>(),
      cells: new Set<string>(),
    };
    this.#alternates.set(comparable(name), known);
    for (const edit of this.#edits(row, name, place, column, raw[3], known.notes)) {
      const key = cellKey(edit);
      if (known.cells.has(key)) {
        const where = edit.of === 'wall' ? `${columns[edit.column].name} of ${edit.wall}` : edit.id;
        this.#refuse(row, name, 'Column', `${where} a second time in this alternate`, 'each cell once');
        return;
      }
      known.cells.add(key);
      known.edits.push(edit);
    }
  }

  finish(): Alternate[] {
    if (this.#problems.length > 0) throw new WashdownError(this.#problems);
    return [...this.#alternates.values()].map(({ name, edits, notes }) => ({
      name,
      edits,
      notes: [...notes],
    }));
  }

  #edits(row: number, name: string, place: string, column: Cell, value: unknown, notes: Set<string>): Edit[] {
    const text = nameIn(column) ?? '';
    const id = this.#columns.get(comparable(text));
    const factor = id === undefined ? factorIdOf(text) : undefined;
    if (factor !== undefined) {
      if (place === '') return [{ of: 'factor', id: factor, value, row }];
      const seen = `"${place}" beside the factor ${factor}`;
      this.#refuse(row, name, 'Wall', seen, 'blank: a factor holds for the whole job');
      return [];
    }
    if (id === undefined || id === 'wall') {
      const offered = [...settable.map((each) => columns[each].name), ...factorIds];
      const offer = nearest(text, offered).join(', ');
      const accepted = `a column of the walls other than Wall, its heading, or a factor id; the nearest are ${offer}`;
      this.#refuse(row, name, 'Column', describe(column), accepted);
      return [];
    }
    return this.#wallsAt(row, name, place, notes).map((wall) => ({
      of: 'wall',
      wall,
      column: id,
      value,
      row,
    }));
  }

  #wallsAt(row: number, name: string, place: string, notes: Set<string>): string[] {
    if (place === '') return this.#rows.map(({ wall }) => wall);
    const inZone = this.#rows.filter(({ zone }) => comparable(zone) === comparable(place));
    if (this.#labels.has(place)) {
      if (inZone.length > 0) notes.add(`"${place}" is a wall and a zone: the wall is taken.`);
      return [place];
    }
    if (inZone.length > 0) return inZone.map(({ wall }) => wall);
    const known = [...this.#labels, ...this.#rows.map(({ zone }) => zone)];
    const offer = nearest(place, [...new Set(known)]).join(', ');
    const accepted = `the label of a wall, a zone, or blank for all walls; the nearest are ${offer}`;
    this.#refuse(row, name, 'Wall', `"${place}"`, accepted);
    return [];
  }

  #refuse(row: number, label: string, column: Heading, seen: string, accepted: string): void {
    this.#problems.push(cellProblem({ row, label, column }, seen, accepted));
  }
}

/** A name as a text or a number; empty for a blank cell, undefined for what is no name. */
function nameIn(cell: Cell): string | undefined {
  if (isBlankOrZero(cell)) return '';
  if (
    cell.type === 'text' ||
    cell.type === 'number' ||
    cell.type === 'number as text' ||
    cell.type === 'date'
  )
    return String(cell.value);
  return undefined;
}
