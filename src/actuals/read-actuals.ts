import { comparable, describe, isBlankOrZero, readCell, type Cell } from '../quantity/cell';
import { dayIn } from '../quantity/day';
import { didYouMean, namesListed } from '../quantity/did-you-mean';
import { badInput, cellProblem, WashdownError, type Problem } from '../quantity/problem';
import type { System } from '../quantity/systems';
import { readFactorValue, type Accepted } from '../rules/factor-value';
import { columnIds, columns } from '../walls/columns';
import { placesIn, type HeadedTable } from '../walls/match-headings';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import type { Entry } from './entry';
import { isOfJob, taskOf, tasks, type Task } from './task';

const own = {
  date: { name: 'Date', needed: false },
  zone: { name: columns.zone.name, needed: false },
  wall: { name: columns.wall.name, needed: false },
  task: { name: 'Task', needed: true },
  area: { name: columns.area.name, needed: false, kind: 'area' },
  hours: { name: 'Hours', needed: true, kind: 'laborHours' },
  water: { name: 'Water', needed: false, kind: 'volume' },
  cleaner: { name: 'Cleaner', needed: false, kind: 'volume' },
  note: { name: 'Note', needed: false },
} as const;
type Id = keyof typeof own;

/** Takes down a cell that cannot be used: its column, the value seen, what is accepted. */
type Refuse = (id: Id, seen: string, accepted: string) => void;

/** The headings of recorded work, in the order in which a new table is laid out. */
export const actualsHeadings: readonly string[] = Object.values(own).map(({ name }) => name);

const table: HeadedTable<Id> = {
  columns: own,
  others: columnIds.map((id) => columns[id].name).filter((name) => !actualsHeadings.includes(name)),
  mappedMustBeThere: false,
};

// Bounds of sense, in base units, as those of the walls.
const numbers = {
  area: { unit: 'm2', kind: 'area', least: 0, most: columns.area.reading.most },
  hours: { unit: 'labor-h', kind: 'laborHours', least: 0, most: 1e6 },
  water: { unit: 'L', kind: 'volume', least: 0, most: 1e9 },
  cleaner: { unit: 'L', kind: 'volume', least: 0, most: 1e9 },
} as const satisfies Record<string, Accepted>;
const FIRST_DATE = columns.age.reading.datesFrom;

/** What a new line of recorded work holds, as the display system has it; what is left out stays blank. */
export type NewEntry = Readonly<Partial<Record<Id, string | number>>>;

/**
 * A new line of recorded work, for a table that stands already.
 * @param header the headings of the table
 * @param entry what the line holds
 * @param system the display system of its numbers
 * @param headings optional rows (our column, their heading), the same as for the walls
 * @returns its cells, in the order of the headings
 * @throws {WashdownError} where the headings cannot be read, or one that the line needs is missing
 */
export function rowOfActuals(
  header: readonly unknown[],
  entry: NewEntry,
  system: System,
  headings?: unknown,
): (string | number)[] {
  const places = placesIn(table, header, system, headings);
  const cells: (string | number)[] = header.map(() => '');
  for (const id of Object.keys(own) as Id[]) {
    const content = entry[id];
    if (content === undefined || content === '') continue;
    const place = places.get(id);
    if (place === undefined)
      throw badInput(`The table of the recorded work has no column ${own[id].name}. Add it.`);
    cells[place] = content;
  }
  return cells;
}

/**
 * Reads a headed range of recorded work. Blank rows are skipped.
 * @param range its rows, the first being the headings
 * @param zones the zones of the job
 * @param system the display system of its numbers
 * @param headings optional rows (our column, their heading), the same as for the walls
 * @returns the entries in the order of the range
 * @throws {WashdownError} with every cell that cannot be read
 */
export function readActuals(
  range: unknown,
  zones: readonly Zone[],
  system: System,
  headings?: unknown,
): Entry[] {
  if (!Array.isArray(range) || range.length === 0 || !range.every((line) => Array.isArray(line))) {
    throw badInput('The actuals must be a range whose first row is its headings.');
  }
  const [header = [], ...lines] = range as unknown[][];
  const places = placesIn(table, header, system, headings);
  const reader = new EntryReader(zones, system);
  lines.forEach((cells, index) => {
    reader.take(index + 2, (id) => {
      const place = places.get(id);
      return readCell(place === undefined ? null : cells[place]);
    });
  });
  return reader.finish();
}

class EntryReader {
  readonly #entries: Entry[] = [];
  readonly #problems: Problem[] = [];
  readonly #zones: readonly Zone[];
  readonly #system: System;
  readonly #walls = new Map<string, { readonly zone: Zone; readonly wall: WallRow }>();

  constructor(zones: readonly Zone[], system: System) {
    this.#zones = zones;
    this.#system = system;
    for (const zone of zones)
      for (const wall of zone.rows) this.#walls.set(comparable(wall.wall), { zone, wall });
  }

  take(row: number, cellOf: (id: Id) => Cell): void {
    if ((Object.keys(own) as Id[]).every((id) => isBlankOrZero(cellOf(id)))) return;
    const before = this.#problems.length;
    const refuse: Refuse = (id, seen, accepted) => {
      this.#problems.push(cellProblem({ row, column: own[id].name }, seen, accepted));
    };
    const number = (id: keyof typeof numbers): number => {
      const cell = cellOf(id);
      const read = readFactorValue(cell, numbers[id], this.#system);
      if ('value' in read) return read.value;
      refuse(id, describe(cell), `blank, or ${read.accepted}`);
      return NaN;
    };
    const task = readTask(cellOf('task'), refuse);
    const where = this.#place(cellOf('zone'), cellOf('wall'), task, refuse);
    const date = readDate(cellOf('date'), refuse);
    const [area, hours, water, cleaner] = [
      number('area'),
      number('hours'),
      number('water'),
      number('cleaner'),
    ];
    if (hours === 0 && water === 0 && cleaner === 0)
      refuse('hours', describe(cellOf('hours')), 'hours above 0, or water or cleaner above 0 beside it');
    if (this.#problems.length > before || task === undefined || where === undefined) return;
    this.#entries.push({ row, date, ...where, task, area, hours, water, cleaner });
  }

  finish(): Entry[] {
    if (this.#problems.length > 0) throw new WashdownError(this.#problems);
    return this.#entries;
  }

  /** The zone and the wall; undefined where they cannot be used. */
  #place(
    zoneCell: Cell,
    wallCell: Cell,
    task: Task | undefined,
    refuse: Refuse,
  ): Pick<Entry, 'zone' | 'wall'> | undefined {
    const zoneName = nameIn(zoneCell);
    const wallName = nameIn(wallCell);
    const zone = this.#zones.find(({ name }) => comparable(name) === comparable(zoneName ?? ''));
    if (zoneName === undefined || (zoneName !== '' && zone === undefined)) {
      const names = this.#zones.map(({ name }) => name);
      const accepted = `${namesListed('a zone of the walls', names)}${didYouMean(zoneName ?? '', names, 1)}`;
      refuse('zone', describe(zoneCell), accepted);
      return undefined;
    }
    if (wallName === '') {
      const [only, ...more] = this.#zones;
      if (zone !== undefined || (only !== undefined && more.length === 0))
        return { zone: zone ?? only, wall: undefined };
      // Without a task, that is what is said.
      if (task === undefined) return undefined;
      if (isOfJob(task)) return { zone: undefined, wall: undefined };
      refuse('zone', 'a blank cell', `a zone, or the label of a wall, for ${task.name}`);
      return undefined;
    }
    const found = this.#walls.get(comparable(wallName ?? ''));
    if (wallName === undefined || found === undefined) {
      const labels = [...this.#walls.values()].map(({ wall }) => wall.wall);
      refuse('wall', describe(wallCell), `the label of a wall${didYouMean(wallName ?? '', labels)}`);
      return undefined;
    }
    if (zone !== undefined && found.zone !== zone) {
      refuse('wall', `"${found.wall.wall}" in zone ${zone.name}`, `a wall of that zone, or no zone`);
      return undefined;
    }
    return found;
  }
}

function readTask(cell: Cell, refuse: Refuse): Task | undefined {
  const text = cell.type === 'text' ? cell.value : '';
  const names = tasks.map(({ name }) => name).join(', ');
  const task = taskOf(text);
  if (task === undefined) refuse('task', describe(cell), `one of ${names}`);
  return task;
}

function readDate(cell: Cell, refuse: Refuse): number | undefined {
  if (isBlankOrZero(cell)) return undefined;
  const day = dayIn(cell) ?? NaN;
  if (day >= FIRST_DATE) return Math.floor(day);
  refuse('date', describe(cell), 'a date, or blank');
  return undefined;
}

/** A name as a text or a number; empty for a blank cell, undefined for what is no name. */
function nameIn(cell: Cell): string | undefined {
  if (isBlankOrZero(cell)) return '';
  return ['text', 'number', 'number as text', 'date'].includes(cell.type) && 'value' in cell
    ? String(cell.value)
    : undefined;
}
