import { ALTERNATE_HEADINGS } from '../../src/alternates/headings';
import { readAlternates } from '../../src/alternates/read-alternates';
import { applied } from '../../src/alternates/apply';
import type { Alternate } from '../../src/alternates/alternate';
import { comparable } from '../../src/quantity/cell';
import { readFactors } from '../../src/rules/read-factors';
import { columns, type ColumnId } from '../../src/walls/columns';
import { readWalls } from '../../src/walls/read-walls';
import type { SourceRanges } from '../shared/wall-source';
import type { CellContent } from '../workbook/port';

/** An alternate of one's own: one value for a column of some walls. */
export interface OwnAlternate {
  readonly name: string;
  /** Labels and zones; an empty text stands for all walls. */
  readonly walls: readonly string[];
  readonly column: ColumnId;
  readonly value: string;
}

/**
 * Alternates as the rows of a table.
 * @param alternates the alternates
 * @returns a row for each cell that one sets, the headings first
 */
export function alternateTable(alternates: readonly Alternate[]): CellContent[][] {
  const rows = alternates.flatMap(({ name, edits }) =>
    edits.map((edit): CellContent[] => [
      name,
      edit.of === 'wall' ? edit.wall : '',
      edit.of === 'wall' ? columns[edit.column].name : edit.id,
      contentOf(edit.value),
    ]),
  );
  return [[...ALTERNATE_HEADINGS], ...rows];
}

/**
 * The rows of an alternate of one's own, after a look whether each cell would accept the value.
 * @param own the alternate
 * @param table the rows of the table that it joins, its headings first; the headings alone for a new one
 * @param ranges the walls, factors and headings as they are now
 * @returns the rows, in the order of the columns of the table
 * @throws {WashdownError} naming what cannot be, and what is accepted
 */
export function ownRows(
  own: OwnAlternate,
  table: readonly (readonly CellContent[])[],
  ranges: SourceRanges,
): CellContent[][] {
  const [header = ALTERNATE_HEADINGS] = table;
  const cells = own.walls.map((wall): Readonly<Record<string, CellContent>> => ({
    alternate: own.name.trim(),
    wall,
    column: columns[own.column].name,
    value: typedContent(own.value),
  }));
  const rows = cells.map((line) => header.map((heading) => line[comparable(String(heading))] ?? ''));
  const factors = readFactors(ranges.factors);
  const bid = { rows: readWalls(ranges.walls, factors, ranges.headings), factors };
  const all = readAlternates(
    [header, ...table.slice(1), ...rows],
    bid.rows,
    ranges.walls[0] ?? [],
    factors.system,
    ranges.headings,
  );
  const wanted = all.find(({ name }) => comparable(name) === comparable(own.name));
  if (wanted) applied(bid, ranges, wanted);
  return rows;
}

/** A number as a number, any other text as it is. */
function typedContent(text: string): CellContent {
  const trimmed = text.trim();
  const number = Number(trimmed);
  return trimmed !== '' && Number.isFinite(number) ? number : trimmed;
}

function contentOf(value: unknown): CellContent {
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? value : '';
}
