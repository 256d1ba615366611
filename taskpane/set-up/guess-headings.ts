import { comparable, readCell } from '../../src/quantity/cell';
import type { Kind, System } from '../../src/quantity/systems';
import { findMaterial } from '../../src/rules/material-names';
import { materials } from '../../src/rules/materials';
import { columnIds, columns, type Column, type ColumnId } from '../../src/walls/columns';
import { columnWords } from '../../src/walls/column-words';
import { unitInHeading } from '../../src/walls/heading-units';
import type { CellContent } from '../workbook/port';

/** Which heading of a table stands for which of our columns, by its place; a column that has none is left out. */
export type HeadingMatch = ReadonlyMap<ColumnId, number>;

// Words of many senses: they count where they are the whole heading, after all others; the first column that is free
// takes them.
const lastResorts: readonly (readonly [ColumnId, string])[] = [
  ['wall', 'description'],
  ['wall', 'item'],
  ['wall', 'elevation'],
  ['zone', 'elevation'],
  ['material', 'type'],
  ['material', 'description'],
  ['age', 'laid'],
  ['age', 'date laid'],
  ['height', 'h'],
  // A quantity says what it measures by its unit alone.
  ['area', 'qty'],
  ['area', 'quantity'],
  ['area', 'net'],
  ['area', 'net area'],
  ['area', ''],
];
const NEEDS_UNIT = new Set(['qty', 'quantity', 'net', '']);
// Names that share fewer than half of their pairs of letters are other words.
const FARTHEST = 0.45;
const AS_A_PART = 0.25;
const ANOTHER_NAME = 0.01;
const MATERIALS_BELOW = 0.02;
const LAST_RESORT = 0.4;
const A_STEP = 0.001;
const MOST_LOOKED_AT = 200;

/**
 * Guesses which headings stand for our columns, by likeness of name, by the unit that a heading states, and for the
 * material by what stands below. The user sees the guess and corrects it.
 * @param headings the headings of a table, in order
 * @param below the rows below them
 * @returns the best match in which every heading is used once
 */
export function guessHeadings(
  headings: readonly string[],
  below: readonly (readonly CellContent[])[] = [],
): HeadingMatch {
  const materialAt = columnOfMaterials(headings.length, below);
  const far = (id: ColumnId, heading: string, place: number): number => {
    const byName = farFrom(id, heading);
    if (place !== materialAt || byName === 0) return byName;
    return id === 'material' ? Math.min(MATERIALS_BELOW, byName) : Infinity;
  };
  const pairs = columnIds.flatMap((id) =>
    headings.map((heading, place) => ({ id, place, far: far(id, heading, place) })),
  );
  const match = new Map<ColumnId, number>();
  const used = new Set<number>();
  for (const { id, place, far: distance } of pairs.sort((a, b) => a.far - b.far)) {
    if (distance > FARTHEST) break;
    if (match.has(id) || used.has(place)) continue;
    match.set(id, place);
    used.add(place);
  }
  return match;
}

/**
 * The units that the headings of a match state.
 * @param headings the headings of the table
 * @param match which of them stand for our columns
 * @returns the system of most of them; undefined where none states a unit of one system
 */
export function systemOfHeadings(headings: readonly string[], match: HeadingMatch): System | undefined {
  const stated = [...match].flatMap(([id, place]) => {
    const systems = unitInHeading(headings[place] ?? '', kindOf(id))?.unit.systems ?? [];
    return systems.length === 1 ? systems : [];
  });
  const ofSi = stated.filter((system) => system === 'SI').length;
  return stated.length === 0 ? undefined : ofSi * 2 > stated.length ? 'SI' : 'US';
}

/**
 * The rows of a map of headings: our column, the heading here. Columns headed as ours are left out.
 * @param headings the headings of the table
 * @param match which of them stand for our columns
 * @returns the rows, without headings of their own; empty where none is needed
 */
export function headingRows(headings: readonly string[], match: HeadingMatch): [string, string][] {
  return columnIds.flatMap((id): [string, string][] => {
    const place = match.get(id);
    const heading = place === undefined ? undefined : headings[place];
    if (heading === undefined || comparable(heading) === comparable(columns[id].name)) return [];
    return [[columns[id].name, heading]];
  });
}

/** The column most of whose cells are names of materials; undefined where none is. */
function columnOfMaterials(width: number, below: readonly (readonly CellContent[])[]): number | undefined {
  const known = new Map<string, boolean>();
  const isMaterial = (text: string): boolean => {
    const found = known.get(text) ?? findMaterial(materials, text) !== undefined;
    known.set(text, found);
    return found;
  };
  const counts = Array.from({ length: width }, (_, place) => {
    const texts = below
      .slice(0, MOST_LOOKED_AT)
      .map((row) => readCell(row[place]))
      .flatMap((cell) => (cell.type === 'text' ? [cell.value] : []));
    const found = texts.filter(isMaterial).length;
    return found * 2 > texts.length ? found : 0;
  });
  const most = Math.max(0, ...counts);
  return most === 0 ? undefined : counts.indexOf(most);
}

function kindOf(id: ColumnId): Kind | undefined {
  const { reading }: Column = columns[id];
  return reading.as === 'number' ? reading.kind : undefined;
}

function farFrom(id: ColumnId, heading: string): number {
  if (plain(heading) === '') return Infinity;
  const kind = kindOf(id);
  const stated = unitInHeading(heading, kind);
  const isOurs = stated?.unit.kind === kind;
  // Openings in ft are a perimeter, and no area.
  if (stated && !isOurs) return Infinity;
  const seen = plain(stated?.bare ?? heading);
  if (seen === plain(columns[id].name)) return 0;
  const resort = lastResorts.findIndex(
    ([of, word]) => of === id && plain(word) === seen && (isOurs || !NEEDS_UNIT.has(word)),
  );
  const atLast = resort < 0 ? Infinity : LAST_RESORT + resort * A_STEP;
  if (seen === '') return atLast;
  const names = [columns[id].name, ...columnWords[id].alsoCalled]
    .map(plain)
    // What is the name of another column here stands for this one by its unit alone.
    .filter((name) => isOurs || !(id === 'openingPerimeter' && ['openings', 'windows'].includes(name)));
  return Math.min(
    atLast,
    ...names.map((name, index) => (name === seen ? ANOTHER_NAME : likeness(name, seen)) + index * A_STEP),
  );
}

function likeness(name: string, seen: string): number {
  const shortest = 3;
  if (name.length >= shortest && (seen.startsWith(name) || seen.endsWith(name))) return AS_A_PART;
  const pairs = pairsOf(name);
  const shared = pairsOf(seen).filter((pair) => {
    const place = pairs.indexOf(pair);
    if (place >= 0) pairs.splice(place, 1);
    return place >= 0;
  });
  return 1 - (2 * shared.length) / Math.max(1, name.length + seen.length - 2);
}

function pairsOf(word: string): string[] {
  return Array.from({ length: Math.max(0, word.length - 1) }, (_, index) => word.slice(index, index + 2));
}

/** Without unit in brackets, numbers and signs. */
function plain(heading: string): string {
  return comparable(heading.replace(/[([].*[)\]]/g, '')).replace(/[^\p{L}\p{N}]/gu, '');
}
