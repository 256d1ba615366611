import { comparable } from '../../src/quantity/cell';
import { columnIds, columns, type ColumnId } from '../../src/walls/columns';

/** Which heading of a table stands for which of our columns, by its place; a column that has none is left out. */
export type HeadingMatch = ReadonlyMap<ColumnId, number>;

// Words that estimators head such columns with, beside our own. A unit behind the word does not count.
const alsoCalled: Readonly<Record<ColumnId, readonly string[]>> = {
  wall: ['wall id', 'wall name', 'wall no', 'mark', 'label', 'location', 'elevation', 'description'],
  zone: ['wash zone', 'area name', 'section', 'facade', 'side'],
  level: ['floor', 'storey', 'story', 'lift'],
  material: ['masonry', 'unit', 'substrate', 'veneer', 'cladding', 'finish'],
  area: ['gross area', 'face area', 'wall area', 'surface', 'sf', 'sqft', 'ft2', 'm2', 'sqm'],
  height: ['wall height', 'ht', 'h'],
  openings: ['opening area', 'openings area', 'windows', 'window area', 'glazing', 'deduct'],
  openingPerimeter: ['openings perimeter', 'perimeter', 'perim', 'window perimeter'],
  fixtures: ['fixture count', 'lights', 'items to cover', 'penetrations'],
  mortar: ['mortar type', 'type of mortar'],
  residue: ['mortar residue', 'soiling', 'smears', 'condition', 'dirt'],
  brushed: ['brushed daily', 'daily brushing', 'brushed down'],
  age: ['age days', 'days', 'days since laid', 'wall age'],
  masked: ['mask', 'covered', 'protected', 'cover'],
  access: ['access from', 'reached by', 'means of access'],
  suction: ['ira', 'initial rate of absorption', 'absorption', 'rate of absorption'],
  receives: ['receives rinse', 'runoff from', 'below'],
};
// Names that share fewer than half of their pairs of letters are other words.
const FARTHEST = 0.45;
const AS_A_PART = 0.25;

/**
 * Guesses which headings stand for our columns, by likeness of name. The user sees the guess and corrects it.
 * @param headings the headings of a table, in order
 * @returns the best match in which every heading is used once
 */
export function guessHeadings(headings: readonly string[]): HeadingMatch {
  const pairs = columnIds.flatMap((id) =>
    headings.map((heading, place) => ({ id, place, far: farFrom(id, heading) })),
  );
  const match = new Map<ColumnId, number>();
  const used = new Set<number>();
  for (const { id, place, far } of pairs.sort((a, b) => a.far - b.far)) {
    if (far > FARTHEST) break;
    if (match.has(id) || used.has(place)) continue;
    match.set(id, place);
    used.add(place);
  }
  return match;
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

function farFrom(id: ColumnId, heading: string): number {
  const seen = plain(heading);
  if (seen === '') return Infinity;
  if (seen === plain(columns[id].name)) return 0;
  const names = [columns[id].name, ...alsoCalled[id]].map(plain);
  return Math.min(
    ...names.map((name, index) => (name === seen ? 0.01 : likeness(name, seen)) + index / 1000),
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
