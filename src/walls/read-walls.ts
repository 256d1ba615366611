import { describe, isBlankOrZero, readCell } from '../quantity/cell';
import { badInput, cellProblem, WashdownError, type Problem } from '../quantity/problem';
import { shownAmount, shownNumber } from '../quantity/shown-number';
import type { FactorsInForce } from '../rules/read-factors';
import { Branch } from './branch';
import {
  choiceReader,
  materialReader,
  numberReader,
  readNumber,
  Refusal,
  textReader,
  type ColumnReader,
} from './column-readers';
import { columns, type ColumnId } from './columns';
import { columnsAlike } from './columns-alike';
import { edgeLength, openingsEdge } from './edge-length';
import { isExample } from './example-rows';
import { Labels, type Repeat } from './labels';
import { matchHeadings, type ColumnPlaces } from './match-headings';
import { isTotal } from './total-rows';
import type { WallRow } from './wall-row';

// Stands for the place of a column that the range does not have: past the end of every row.
const NOWHERE = 2 ** 20;
// Two numbers that differ must differ as shown; the last digits are those that the conversion of units touches.
const COMPARED = 12;

/**
 * Reads a headed range of wall rows.
 * @param range its rows, the first being the headings; a cell is a number, a text, a boolean or blank (0, "" or null)
 * @param factors the factors in force: display system of the numbers, and the materials known
 * @param headings optional rows (our column, their heading)
 * @returns the rows that are neither blank nor examples, in the order of the range; the examples where all are
 * @throws {WashdownError} with every cell that cannot be read
 */
export function readWalls(range: unknown, factors: FactorsInForce, headings?: unknown): WallRow[] {
  const rows: WallRow[] = [];
  readRows(range, factors, headings, (group, own) => {
    rows.push(wallRow(group.words, own));
  });
  return rows;
}

/**
 * Reads a headed range into groups of wall rows: rows that differ in nothing but label, age and the numbers that add up
 * (area, openings and their perimeter, fixtures) are put together as one, with the sums. A long table takes no object
 * for each row then. A group of masked rows has the sum of their edges, and openings
 * without a perimeter count with that of their square.
 * @param range its rows, the first being the headings
 * @param factors the factors in force
 * @param headings optional rows (our column, their heading)
 * @returns the groups, in the order in which the first row of each stands
 * @throws {WashdownError} with every cell that cannot be read
 */
export function readGroups(range: unknown, factors: FactorsInForce, headings?: unknown): WallRow[] {
  return readRows(range, factors, headings).map((group) =>
    wallRow(group.words, group, isMasked(group.words) ? group.edge : undefined),
  );
}

/** Numbers and label that a row has of its own; numbers in base units. */
interface OwnOfRow {
  readonly row: number;
  readonly wall: string;
  readonly area: number;
  readonly openings: number;
  readonly openingPerimeter: number;
  readonly fixtures: number;
  readonly age: number;
}

/** What rows of a group have in common, and the sums of what they have of their own. */
interface RowGroup extends OwnOfRow {
  readonly words: Words;
  area: number;
  openings: number;
  openingPerimeter: number;
  fixtures: number;
  /** Of masked rows. */
  edge: number;
}

/** The readers of all columns. */
export type Readers = ReturnType<typeof readersOf>;
type Words = AsRead<ReturnType<typeof wordsIn>>;
type AsRead<Cells> = { [Key in keyof Cells]: Exclude<Cells[Key], Refusal> };

function readRows(
  range: unknown,
  factors: FactorsInForce,
  headings: unknown,
  takeRow?: (group: RowGroup, own: OwnOfRow) => void,
  withExamples = false,
): RowGroup[] {
  const lines: unknown[] = Array.isArray(range) ? range : [];
  const places = matchHeadings(cellsOf(lines[0]), factors.system, headings);
  const at = readersOf(places, factors);
  const apart = columnsAlike.flatMap((id) => places.get(id) ?? []);
  const labels = new Labels();
  const groups: RowGroup[] = [];
  const root = new Branch<RowGroup>();
  const problems: Problem[] = [];
  let examples = 0;

  for (let row = 2; row <= lines.length; row++) {
    const cells = cellsOf(lines[row - 1]);
    const label = labelOf(cells, at);
    if (label === undefined) {
      const lost = unlabelled(cells, places);
      if (lost) problems.push(problemOf(lost, row, ''));
      continue;
    }
    const wall = label instanceof Refusal ? '' : label;
    if (!withExamples && isExample(wall)) {
      examples++;
      continue;
    }
    if (isTotal(wall)) {
      problems.push(problemOf(counted(wall), row, wall));
      continue;
    }
    if (label instanceof Refusal) problems.push(problemOf(label, row, wall));
    else labels.take(wall, row);

    let branch = root;
    for (const place of apart) branch = branch.at(cells[place]);
    branch.leaf ??= groupFrom(cells, at, row, wall, groups, problems);

    const area = readNumber(cells[at.area.place], at.area);
    const openings = readNumber(cells[at.openings.place], at.openings);
    const openingPerimeter = readNumber(cells[at.openingPerimeter.place], at.openingPerimeter);
    const fixtures = readNumber(cells[at.fixtures.place], at.fixtures);
    const age = readNumber(cells[at.age.place], at.age);
    if (Number.isNaN(area + openings + openingPerimeter + fixtures + age)) {
      const own = [at.area, at.openings, at.openingPerimeter, at.fixtures, at.age];
      for (const each of own) tell(each.read(cells[each.place]), row, wall, problems);
      continue;
    }
    if (openings > area) problems.push(problemOf(tooOpen(openings, area, factors), row, wall));
    const group = branch.leaf;
    if (group === undefined) continue;
    group.area += area;
    group.openings += openings;
    if (isMasked(group.words)) group.edge += edgeLength(area, group.words.height);
    group.openingPerimeter += openingsEdge(openings, openingPerimeter);
    group.fixtures += fixtures;
    takeRow?.(group, { row, wall, area, openings, openingPerimeter, fixtures, age });
  }
  const repeats = labels.repeats().map((repeat) => problemOf(repeated(repeat), repeat.row, repeat.label));
  const all = [...repeats, ...problems].sort((a, b) => (a.row ?? 0) - (b.row ?? 0));
  if (all.length > 0) throw new WashdownError(all);
  if (examples > 0 && labels.areNone) return readRows(range, factors, headings, takeRow, true);
  return groups;
}

/**
 * The readers of all columns; each under its own id.
 * @param places where the columns stand; one that is not there reads blank cells
 * @param factors the factors in force
 * @param factors.system display system of the numbers
 * @param factors.materials the materials known
 * @param factors.overridden tells whether the day of the wash is given
 * @param factors.value gives that day
 * @returns the readers
 */
export function readersOf(places: ColumnPlaces, { system, materials, overridden, value }: FactorsInForce) {
  const washDate = overridden('wash.date') ? value('wash.date') : undefined;
  const place = (id: ColumnId): number => places.get(id) ?? NOWHERE;
  return {
    wall: textReader('wall', place('wall')),
    zone: textReader('zone', place('zone')),
    level: numberReader('level', place('level'), system),
    material: materialReader('material', place('material'), materials),
    area: numberReader('area', place('area'), system),
    height: numberReader('height', place('height'), system),
    openings: numberReader('openings', place('openings'), system),
    openingPerimeter: numberReader('openingPerimeter', place('openingPerimeter'), system),
    fixtures: numberReader('fixtures', place('fixtures'), system),
    mortar: choiceReader('mortar', place('mortar')),
    residue: choiceReader('residue', place('residue')),
    brushed: choiceReader('brushed', place('brushed')),
    age: numberReader('age', place('age'), system, washDate),
    masked: choiceReader('masked', place('masked')),
    access: choiceReader('access', place('access')),
    suction: numberReader('suction', place('suction'), system),
    receives: textReader('receives', place('receives')),
  } satisfies { readonly [Id in ColumnId]: { readonly id: Id } };
}

/** The cells of a row that all rows of its group have in common. */
function wordsIn(cells: readonly unknown[], at: Readers) {
  const read = <Value>(column: ColumnReader<ColumnId, Value>) => column.read(cells[column.place]);
  return {
    zone: read(at.zone),
    level: read(at.level),
    material: read(at.material),
    height: read(at.height),
    mortar: read(at.mortar),
    residue: read(at.residue),
    brushed: read(at.brushed),
    masked: read(at.masked),
    access: read(at.access),
    suction: read(at.suction),
    receives: read(at.receives),
  };
}

function areRead<Cells extends object>(cells: Cells): cells is Cells & AsRead<Cells> {
  for (const id in cells) if (cells[id] instanceof Refusal) return false;
  return true;
}

function groupFrom(
  cells: readonly unknown[],
  at: Readers,
  row: number,
  wall: string,
  groups: RowGroup[],
  problems: Problem[],
): RowGroup | undefined {
  const words = wordsIn(cells, at);
  if (!areRead(words)) {
    for (const cell of Object.values(words)) tell(cell, row, wall, problems);
    return undefined;
  }
  const group = { words, row, wall, area: 0, openings: 0, openingPerimeter: 0, fixtures: 0, age: 0, edge: 0 };
  groups.push(group);
  return group;
}

/** A row of its own, or one for all of a group with the sum of their edges. Spelled out: the engine is slow to spread. */
function wallRow(words: Words, own: OwnOfRow, edge?: number): WallRow {
  const { brushed, brushPriced, brushedStated } = brushedAs(words.brushed);
  const { masked, mask, neverMasked } = maskedAs(words.masked);
  return {
    row: own.row,
    wall: own.wall,
    zone: words.zone,
    level: words.level,
    material: words.material,
    area: own.area,
    height: words.height,
    openings: own.openings,
    openingPerimeter: own.openingPerimeter,
    fixtures: own.fixtures,
    mortar: words.mortar,
    residue: words.residue,
    brushed,
    brushPriced,
    brushedStated,
    age: own.age,
    masked,
    mask,
    neverMasked,
    access: words.access,
    suction: words.suction,
    receives: words.receives,
    edge,
  };
}

/**
 * What a row says of its brushing.
 * @param brushed the word in its cell; undefined where it is blank
 * @returns the fields of the row
 */
export function brushedAs(
  brushed: Words['brushed'],
): Pick<WallRow, 'brushed' | 'brushPriced' | 'brushedStated'> {
  return {
    brushed: brushed === 'yes' || brushed === 'priced',
    brushPriced: brushed === 'priced',
    brushedStated: brushed !== undefined,
  };
}

/**
 * What a row says of its masking.
 * @param masked the word in its cell; undefined where it is blank
 * @returns the fields of the row
 */
export function maskedAs(masked: Words['masked']): Pick<WallRow, 'masked' | 'mask' | 'neverMasked'> {
  return { masked: isMasked({ masked }), mask: masked ?? 'no', neverMasked: masked === 'never' };
}

function isMasked({ masked }: Pick<Words, 'masked'>): boolean {
  return masked === 'yes' || masked === 'only';
}

/** The label of a row; undefined where it is blank. */
function labelOf(cells: readonly unknown[], { wall }: Readers): string | Refusal | undefined {
  const raw = cells[wall.place];
  const text = typeof raw === 'string' ? raw.trim() : '';
  // Most labels are a text that needs no looking into.
  if (text !== '' && !text.startsWith('#')) return text;
  if (isBlankOrZero(readCell(raw))) return undefined;
  return wall.read(raw);
}

/** A row without a label must be blank in every column that is ours, or a wall would be lost. */
function unlabelled(cells: readonly unknown[], places: ColumnPlaces): Refusal | undefined {
  for (const [id, place] of places) {
    const cell = readCell(cells[place]);
    if (isBlankOrZero(cell)) continue;
    if (cell.type === 'text' && isTotal(cell.value)) return counted(cell.value);
    const seen = `a blank label beside ${describe(cell)} in column ${columns[id].name}`;
    return new Refusal('wall', seen, 'a label for each row that is not blank');
  }
  return undefined;
}

function counted(label: string): Refusal {
  return new Refusal(
    'wall',
    `"${label}", which would count its walls twice,`,
    'walls alone: end the range above it, or name the row otherwise where it is a wall',
  );
}

function repeated({ label, first }: Repeat): Refusal {
  return new Refusal(
    'wall',
    `"${label}", which row ${String(first)} has already,`,
    'a label that no other row has',
  );
}

/**
 * Why a row cannot have its openings.
 * @param openings their area, m2
 * @param area gross area of the row, m2
 * @param factors the factors in force
 * @param factors.system display system of the numbers
 * @returns what is seen and accepted
 */
export function tooOpen(openings: number, area: number, { system }: FactorsInForce): Refusal {
  const most = `at most the Area of the row, ${shownAmount(area, 'area', system, COMPARED)}`;
  return new Refusal('openings', shownNumber(openings, 'area', system, COMPARED), most);
}

function tell(read: unknown, row: number, label: string, problems: Problem[]): void {
  if (read instanceof Refusal) problems.push(problemOf(read, row, label));
}

function problemOf({ column, seen, accepted }: Refusal, row: number, label: string): Problem {
  return cellProblem({ row, label, column }, seen, accepted);
}

function cellsOf(line: unknown): readonly unknown[] {
  if (Array.isArray(line)) return line;
  throw badInput('The walls must be a range whose first row is its headings.');
}
