import { comparable, describe, isBlankOrZero, readCell, type Cell } from '../quantity/cell';
import { nearest } from '../quantity/nearest';
import { badInput, cellProblem, WashdownError, type Problem } from '../quantity/problem';
import { metres, squareMetres } from '../quantity/quantities';
import { show, take, unitOf, type System } from '../quantity/systems';
import type { MortarType } from '../rules/mortars';
import { findMaterial, type FactorsInForce, type MaterialInForce } from '../rules/read-factors';
import type { Residue } from '../rules/residues';
import { columnIds, columns, type ColumnId } from './columns';
import { matchHeadings, type ColumnPlaces } from './match-headings';
import { NO_ZONE, type WallRow } from './wall-row';

/**
 * Reads a headed range of wall rows.
 * @param range its rows, the first being the headings; a cell is a number, a text, a boolean or blank (0, "" or null)
 * @param factors the factors in force: display system of the numbers, and the materials known
 * @param headings optional rows (our column, their heading)
 * @returns the rows that are not blank, in the order of the range
 * @throws {WashdownError} with every cell that cannot be read
 */
export function readWalls(range: unknown, factors: FactorsInForce, headings?: unknown): WallRow[] {
  if (!Array.isArray(range) || range.length === 0 || !range.every((row) => Array.isArray(row))) {
    throw badInput('The walls must be a range whose first row is its headings.');
  }
  const rows = range as unknown[][];
  const reader = new RowReader(matchHeadings(rows[0] ?? [], headings), factors);
  const walls: WallRow[] = [];
  for (let index = 1; index < rows.length; index++) {
    const wall = reader.read(rows[index] ?? [], index + 1);
    if (wall) walls.push(wall);
  }
  if (reader.problems.length > 0) throw new WashdownError(reader.problems);
  return walls;
}

class RowReader {
  readonly problems: Problem[] = [];
  readonly #labels = new Map<string, number>();
  readonly #materialByText = new Map<string, MaterialInForce>();
  readonly #zoneByName = new Map<string, string>();
  readonly #placeOf: Readonly<Record<ColumnId, number | undefined>>;
  #row = 0;
  #label = '';

  readonly #factors: FactorsInForce;

  constructor(places: ColumnPlaces, factors: FactorsInForce) {
    this.#factors = factors;
    this.#placeOf = Object.fromEntries(columnIds.map((id) => [id, places.get(id)])) as Record<
      ColumnId,
      number | undefined
    >;
  }

  read(cells: readonly unknown[], row: number): WallRow | undefined {
    this.#row = row;
    this.#label = '';
    const label = readCell(this.#raw(cells, 'wall'));
    if (isBlankOrZero(label)) {
      this.#checkBlankRow(cells);
      return undefined;
    }
    this.#label = this.#textOf('wall', label);
    const first = this.#labels.get(this.#label);
    if (first !== undefined) {
      this.#refuse(
        'wall',
        `"${this.#label}", which row ${String(first)} has already,`,
        'a label that no other row has',
      );
    }
    this.#labels.set(this.#label, row);
    const material = this.#material(cells);
    const before = this.problems.length;
    const area = this.#number(cells, 'area');
    const openings = this.#number(cells, 'openings');
    // An area that cannot be read is 0 here, and would make every opening look too large.
    if (openings > area && this.problems.length === before) {
      const { system } = this.#factors;
      this.#refuse(
        'openings',
        typed(openings, system),
        `at most the Area of the row, ${typed(area, system)} ${unitOf('area', system)}`,
      );
    }
    const masked = this.#choice(cells, 'masked');
    if (material === undefined) return undefined;
    return {
      row,
      wall: this.#label,
      zone: this.#zone(cells),
      level: this.#number(cells, 'level'),
      material,
      area: squareMetres(area),
      height: metres(this.#number(cells, 'height')),
      openings: squareMetres(openings),
      openingPerimeter: metres(this.#number(cells, 'openingPerimeter')),
      fixtures: this.#number(cells, 'fixtures'),
      mortar: this.#choice(cells, 'mortar') as MortarType | undefined,
      residue: this.#choice(cells, 'residue') as Residue | undefined,
      brushed: this.#choice(cells, 'brushed') === 'yes',
      age: this.#number(cells, 'age'),
      masked: masked === 'yes',
      neverMasked: masked === 'never',
      suction: this.#number(cells, 'suction'),
      receives: this.#receives(cells),
    };
  }

  #raw(cells: readonly unknown[], column: ColumnId): unknown {
    const place = this.#placeOf[column];
    return place === undefined ? undefined : cells[place];
  }

  /** A row without a label must be blank in every column that is ours, or a wall would be lost. */
  #checkBlankRow(cells: readonly unknown[]): void {
    for (const id of columnIds) {
      const cell = readCell(this.#raw(cells, id));
      if (!isBlankOrZero(cell)) {
        this.#refuse(
          'wall',
          `a blank label beside ${describe(cell)} in column ${columns[id].name}`,
          'a label for each row that is not blank',
        );
        return;
      }
    }
  }

  #textOf(column: ColumnId, cell: Cell): string {
    if (cell.type === 'text' || cell.type === 'number as text' || cell.type === 'date') return cell.value;
    if (cell.type === 'number') return String(cell.value);
    this.#refuse(column, describe(cell), 'a text or a number as a label');
    return '';
  }

  #zone(cells: readonly unknown[]): string {
    const cell = readCell(this.#raw(cells, 'zone'));
    if (isBlankOrZero(cell)) return NO_ZONE;
    const text = this.#textOf('zone', cell);
    const known = this.#zoneByName.get(text);
    if (known !== undefined) return known;
    // The first spelling of a zone names it.
    const name = this.#zoneByName.get(comparable(text)) ?? text;
    this.#zoneByName.set(text, name);
    this.#zoneByName.set(comparable(text), name);
    return name;
  }

  #receives(cells: readonly unknown[]): string {
    const cell = readCell(this.#raw(cells, 'receives'));
    return isBlankOrZero(cell) ? '' : this.#textOf('receives', cell);
  }

  #material(cells: readonly unknown[]): MaterialInForce | undefined {
    const raw = this.#raw(cells, 'material');
    if (typeof raw === 'string') {
      const known = this.#materialByText.get(raw);
      if (known !== undefined) return known;
    }
    const cell = readCell(raw);
    const { materials } = this.#factors;
    if (cell.type !== 'text') {
      this.#refuse('material', describe(cell), 'a name or code of the material table');
      return undefined;
    }
    const found = findMaterial(materials, cell.value);
    if (found === undefined) {
      const names = nearest(
        cell.value,
        materials.map(({ name }) => name),
      );
      this.#refuse(
        'material',
        describe(cell),
        `a name or code of the material table; the nearest are ${names.join(', ')}`,
      );
      return undefined;
    }
    this.#materialByText.set(String(raw), found);
    return found;
  }

  #number(cells: readonly unknown[], column: NumberColumn): number {
    const raw = this.#raw(cells, column);
    // The common cases first: this runs for every cell of a long table.
    if (raw === undefined || raw === '' || raw === null) return 0;
    const { kind, least, most, ...reading } = columns[column].reading;
    const { system } = this.#factors;
    const cell = typeof raw === 'number' && Number.isFinite(raw) ? undefined : readCell(raw);
    if (cell?.type === 'blank') return 0;
    const seen = cell === undefined ? (raw as number) : cell.type === 'number' ? cell.value : undefined;
    const value = seen === undefined ? NaN : take(seen, kind, system);
    const whole = 'whole' in reading;
    if (!(value >= least && value <= most) || (whole && !Number.isInteger(value))) {
      this.#refuse(
        column,
        describe(cell ?? { type: 'number', value: raw as number }),
        accepted(column, system),
      );
      return 0;
    }
    return value;
  }

  #choice(cells: readonly unknown[], column: ChoiceColumn): string | undefined {
    const raw = this.#raw(cells, column);
    if (raw === undefined || raw === '' || raw === null) return undefined;
    const choices: readonly string[] = columns[column].reading.choices;
    if (typeof raw === 'string' && choices.includes(raw)) return raw;
    const cell = readCell(raw);
    if (isBlankOrZero(cell)) return undefined;
    const text =
      cell.type === 'boolean'
        ? cell.value
          ? 'yes'
          : 'no'
        : cell.type === 'text'
          ? comparable(cell.value)
          : '';
    const plain = column === 'mortar' ? text.replace(/^type/, '') : text;
    const found = choices.find((choice) => comparable(choice) === plain);
    if (found === undefined) this.#refuse(column, describe(cell), `${choices.join(', ')}, or blank`);
    return found;
  }

  #refuse(column: ColumnId, seen: string, accepts: string): void {
    this.problems.push(
      cellProblem({ row: this.#row, label: this.#label, column: columns[column].name }, seen, accepts),
    );
  }
}

type NumberColumn = {
  [Id in ColumnId]: (typeof columns)[Id]['reading'] extends { as: 'number' } ? Id : never;
}[ColumnId];
type ChoiceColumn = {
  [Id in ColumnId]: (typeof columns)[Id]['reading'] extends { as: 'choice' } ? Id : never;
}[ColumnId];

/** An area as it was typed, without the last digits that the conversion of units touches. */
function typed(area: number, system: System): string {
  return String(Number(show(area, 'area', system).toPrecision(12)));
}

function accepted(column: NumberColumn, system: System): string {
  const { kind, least, most, ...reading } = columns[column].reading;
  const unit = unitOf(kind, system);
  const number = 'whole' in reading ? 'a whole number' : 'a number';
  const units = unit === '1' ? '' : ` of ${unit}`;
  return `${number}${units} from ${String(least)} to ${String(Number(show(most, kind, system).toPrecision(6)))}`;
}
