import { comparable, describe, isBlankOrZero, readCell, type Cell } from '../quantity/cell';
import { nearest } from '../quantity/nearest';
import { badInput, cellProblem, WashdownError, type Problem } from '../quantity/problem';
import { shownUnit, withUnit } from '../quantity/shown-unit';
import { show, take, unitOf, type Kind } from '../quantity/systems';
import { findMaterial, type FactorsInForce } from '../rules/read-factors';
import { Branch } from './branch';
import { columnIds, columns, type ColumnId } from './columns';
import { edgeLength } from './edge-length';
import { matchHeadings } from './match-headings';
import { NO_ZONE, type WallRow } from './wall-row';

/** The numbers that each row has of its own. */
const ownColumns = ['area', 'height', 'openings', 'openingPerimeter', 'fixtures', 'age'] as const;

/** The columns that tell kinds apart. */
const wordColumns = columnIds.filter((id) => !['wall', ...ownColumns].includes(id));

// Stands for the place of a column that the range does not have: past the end of every row.
const NOWHERE = 2 ** 20;

/**
 * Reads a headed range of wall rows.
 * @param range its rows, the first being the headings; a cell is a number, a text, a boolean or blank (0, "" or null)
 * @param factors the factors in force: display system of the numbers, and the materials known
 * @param headings optional rows (our column, their heading)
 * @returns the rows that are not blank, in the order of the range
 * @throws {WashdownError} with every cell that cannot be read
 */
export function readWalls(range: unknown, factors: FactorsInForce, headings?: unknown): WallRow[] {
  const walls: WallRow[] = [];
  readKinds(range, factors, headings, walls);
  return walls;
}

/**
 * Reads a headed range into kinds of wall rows: rows that differ in nothing but label, age and the numbers that add up
 * are put together as one, with the sums. A long table takes no object for each row then. The height of a kind is the
 * one that gives its rows' area over their length; of masked rows it has the edge as its perimeter.
 * @param range its rows, the first being the headings
 * @param factors the factors in force
 * @param headings optional rows (our column, their heading)
 * @param rows takes the rows themselves, where they are wanted
 * @returns the kinds, in the order in which the first row of each stands
 * @throws {WashdownError} with every cell that cannot be read
 */
export function readKinds(
  range: unknown,
  factors: FactorsInForce,
  headings?: unknown,
  rows?: WallRow[],
): WallRow[] {
  const lines: unknown[] = Array.isArray(range) ? range : [];
  const places = matchHeadings(cellsOf(lines[0]), headings);
  const placeOf = (id: ColumnId): number => places.get(id) ?? NOWHERE;
  const { system, materials } = factors;
  const problems: Problem[] = [];
  const zoneByName = new Map<string, string>();
  let row = 0;
  let label = '';

  const refuse = (id: ColumnId, seen: string, accepts: string): void => {
    problems.push(cellProblem({ row, label, column: columns[id].name }, seen, accepts));
  };
  const textOf = (id: ColumnId, cell: Cell): string => {
    if (cell.type === 'text' || cell.type === 'number as text' || cell.type === 'date') return cell.value;
    if (cell.type === 'number') return String(cell.value);
    refuse(id, describe(cell), 'a text or a number as a label');
    return '';
  };
  const shown = (value: number, kind: Kind, digits: number): string =>
    String(Number(show(value, kind, system).toPrecision(digits)));
  const numberColumn = (id: NumberColumn): NumberPlace => {
    const { kind, most, ...reading } = columns[id].reading;
    // Spelled out: the engine is slow to read objects that were put together by spreading.
    return { id, place: placeOf(id), kind, factor: take(1, kind, system), most, whole: 'whole' in reading };
  };
  const number = (raw: unknown, { id, kind, factor, most, whole }: NumberPlace): number => {
    // The common cases first: this runs for every cell of a long table.
    if (raw === undefined || raw === '' || raw === null) return 0;
    const cell = typeof raw === 'number' ? undefined : readCell(raw);
    if (cell?.type === 'blank') return 0;
    const seen = cell === undefined ? (raw as number) : cell.type === 'number' ? cell.value : NaN;
    const value = seen * factor;
    if (value >= 0 && value <= most && !(whole && !Number.isInteger(value))) return value;
    const unit = unitOf(kind, system);
    const what = (whole ? 'a whole number' : 'a number') + (unit === '1' ? '' : ` of ${shownUnit(unit)}`);
    refuse(id, describe(readCell(raw)), `${what} from 0 to ${shown(most, kind, 6)}`);
    return 0;
  };
  const read = (raw: unknown, id: ColumnId): unknown => {
    const { reading } = columns[id];
    if (reading.as === 'number') return number(raw, numberColumn(id as NumberColumn));
    const cell = readCell(raw);
    const text = cell.type === 'text' ? cell.value : '';
    if (reading.as === 'material') {
      const found = findMaterial(materials, text);
      if (found) return found;
      const offer =
        text &&
        `; the nearest are ${nearest(
          text,
          materials.map(({ name }) => name),
        ).join(', ')}`;
      refuse(id, describe(cell), `a name or code of the material table${offer}`);
    } else if (isBlankOrZero(cell)) {
      return id === 'zone' ? NO_ZONE : reading.as === 'text' ? '' : undefined;
    } else if (reading.as === 'choice') {
      const said = cell.type === 'boolean' ? (cell.value ? 'yes' : 'no') : comparable(text);
      const plain = id === 'mortar' ? said.replace(/^type/, '') : said;
      const found = reading.choices.find((choice) => comparable(choice) === plain);
      if (found) return found;
      refuse(id, describe(cell), `${reading.choices.join(', ')}, or blank`);
    } else {
      const name = textOf(id, cell);
      if (id !== 'zone') return name;
      // The first spelling of a zone names it.
      const first = zoneByName.get(comparable(name)) ?? name;
      zoneByName.set(comparable(name), first);
      return first;
    }
    return undefined;
  };

  const own: OwnNumbers = [0, 0, 0, 0, 0, 0];
  const ownPlaces = ownColumns.map(numberColumn);
  const wordPlaces = wordColumns.map(placeOf);
  const labelPlace = placeOf('wall');
  const known = wordColumns.map(() => new Map<unknown, unknown>());
  const labels: string[] = [];
  const rowByLabel = new Map<string, number>();
  const kinds: PlainRow[] = [];
  const root = new Branch<PlainRow>();

  const kindOf = (cells: readonly unknown[]): PlainRow | undefined => {
    const before = problems.length;
    const [zone, level, material, mortar, residue, brushed, masked, suction, receives] = wordColumns.map(
      (id, index) => {
        const raw = cells[placeOf(id)];
        const word = known[index]?.get(raw) ?? read(raw, id);
        if (problems.length === before) known[index]?.set(raw, word);
        return word;
      },
    );
    if (problems.length > before) return undefined;
    const together = {
      row,
      wall: label,
      zone,
      level,
      material,
      area: 0,
      height: 0,
      openings: 0,
      openingPerimeter: 0,
      fixtures: 0,
      mortar,
      residue,
      brushed: brushed === 'yes',
      age: 0,
      masked: masked === 'yes',
      neverMasked: masked === 'never',
      suction,
      receives,
    } as PlainRow;
    kinds.push(together);
    return together;
  };

  const readRow = (cells: readonly unknown[]): void => {
    const raw = cells[labelPlace];
    label = typeof raw === 'string' ? raw.trim() : '';
    // Most labels are a text that needs no looking into.
    if (label === '' || label.startsWith('#')) {
      label = '';
      const cell = readCell(raw);
      if (isBlankOrZero(cell)) {
        // A row without a label must be blank in every column that is ours, or a wall would be lost.
        const filled = columnIds.find((id) => !isBlankOrZero(readCell(cells[placeOf(id)])));
        if (filled) {
          const beside = describe(readCell(cells[placeOf(filled)]));
          const seen = `a blank label beside ${beside} in column ${columns[filled].name}`;
          refuse('wall', seen, 'a label for each row that is not blank');
        }
        return;
      }
      label = textOf('wall', cell);
    }
    // Labels that rise, as those of numbered walls do, cannot repeat.
    const last = labels.at(-1) ?? '';
    const rises = label.length === last.length ? label > last : label.length > last.length;
    if (rises && rowByLabel.size === 0) {
      labels[row] = label;
    } else {
      if (rowByLabel.size === 0) labels.forEach((each, at) => rowByLabel.set(each, at));
      const first = rowByLabel.get(label);
      if (first === undefined) rowByLabel.set(label, row);
      else refuse('wall', `"${label}", which row ${first} has already,`, 'a label that no other row has');
    }
    let branch = root;
    for (const place of wordPlaces) branch = branch.at(cells[place]);
    const kind = (branch.leaf ??= kindOf(cells));
    const before = problems.length;
    let slot = 0;
    for (const column of ownPlaces) own[slot++] = number(cells[column.place], column);
    const { 0: area, 1: height, 2: openings, 3: openingPerimeter, 4: fixtures, 5: age } = own;
    // An area that cannot be read is 0 here, and would make every opening look too large.
    if (openings > area && problems.length === before) {
      // Without the last digits, which the conversion of units touches.
      const most = `at most the Area of the row, ${withUnit(shown(area, 'area', 12), unitOf('area', system))}`;
      refuse('openings', shown(openings, 'area', 12), most);
    }
    if (kind === undefined) return;
    kind.area += area;
    // The length of the rows, until all of them are in.
    if (height > 0) kind.height += area / height;
    kind.openings += openings;
    kind.openingPerimeter += kind.masked ? edgeLength(area, height) : openingPerimeter;
    kind.fixtures += fixtures;
    rows?.push({
      ...kind,
      row,
      wall: label,
      area,
      height,
      openings,
      openingPerimeter,
      fixtures,
      age,
    } as WallRow);
  };

  for (row = 2; row <= lines.length; row++) readRow(cellsOf(lines[row - 1]));
  if (problems.length > 0) throw new WashdownError(problems);
  for (const kind of kinds) if (kind.height > 0) kind.height = kind.area / kind.height;
  return kinds as WallRow[];
}

function cellsOf(line: unknown): readonly unknown[] {
  if (Array.isArray(line)) return line;
  throw badInput('The walls must be a range whose first row is its headings.');
}

type NumberColumn = {
  [Id in ColumnId]: (typeof columns)[Id]['reading'] extends { as: 'number' } ? Id : never;
}[ColumnId];

type OwnNumbers = [number, number, number, number, number, number];

type PlainRow = {
  -readonly [Key in keyof WallRow]: WallRow[Key] extends number ? number : WallRow[Key];
};

/** A column of numbers in the range at hand. */
interface NumberPlace {
  readonly id: NumberColumn;
  /** Where its cells stand in a row. */
  readonly place: number;
  readonly kind: Kind;
  /** Base value of a shown 1. */
  readonly factor: number;
  readonly most: number;
  readonly whole: boolean;
}
