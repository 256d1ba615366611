import { comparable } from '../../src/quantity/cell';
import { areaAddress } from '../../src/spreadsheet/address';
import { columnIds, columns, type ColumnId } from '../../src/walls/columns';
import { isTotal } from '../../src/walls/total-rows';
import { areaOf } from '../workbook/block-area';
import type { CellContent, Place } from '../workbook/port';
import { guessHeadings } from './guess-headings';

/** The rows of a block that are walls, counted from 0, the headings first. */
export interface WallRows {
  readonly heading: number;
  readonly last: number;
}

// A bid has its name, its date and its client above the headings.
const MOST_ABOVE = 60;
const NEEDED = 3;

/**
 * Finds the row of headings below the titles of a block, and where its walls end: a total, or a row without anything in
 * the columns of the walls, ends them where no wall comes after it.
 * @param rows the cells of the block
 * @param heading the row of headings, where it is known
 * @returns the rows of the walls
 */
export function findWalls(rows: readonly (readonly CellContent[])[], heading = headingRow(rows)): WallRows {
  const below = rows.slice(heading + 1);
  const match = guessHeadings((rows[heading] ?? []).map(String), below);
  const at = (id: ColumnId, row: readonly CellContent[]): CellContent => row[match.get(id) ?? -1] ?? '';
  // Its material may have a name that nobody knows yet.
  const isWall = (row: readonly CellContent[]): boolean =>
    at('area', row) !== '' && (at('material', row) !== '' || at('wall', row) !== '') && !isSum(row);
  const isEmpty = (row: readonly CellContent[]): boolean =>
    match.size > 0 && [...match.values()].every((place) => (row[place] ?? '') === '');
  const end = below.findIndex(
    (row, index) => (isSum(row) || isEmpty(row)) && !below.slice(index + 1).some(isWall),
  );
  return { heading, last: end < 0 ? rows.length - 1 : heading + Math.max(0, end) };
}

/**
 * The walls of a block.
 * @param place the block
 * @param rows its cells
 * @param of which of its rows are walls
 * @returns where they stand, as wide as their headings
 */
export function wallsIn(place: Place, rows: readonly (readonly CellContent[])[], of: WallRows): Place {
  const { top, left, right } = areaOf(place.address);
  const filled = (rows[of.heading] ?? []).flatMap((content, index) => (content === '' ? [] : [index]));
  const area = {
    top: top + of.heading,
    bottom: top + of.last,
    left: left + (filled[0] ?? 0),
    right: filled.length === 0 ? right : left + (filled.at(-1) ?? 0),
  };
  return { sheet: place.sheet, address: areaAddress(area) };
}

/**
 * What a row that is left out begins with, to be named by.
 * @param row the row
 * @returns its first cell that is filled, empty where none is
 */
export function beginningOf(row: readonly CellContent[] = []): string {
  return String(row.find((content) => content !== '') ?? '');
}

/** A row that says in a cell of its own that it is a sum. */
function isSum(row: readonly CellContent[]): boolean {
  return row.some((content) => typeof content === 'string' && isTotal(content.trim()));
}

/** The row whose texts are most like our headings; the first one where none is. */
function headingRow(rows: readonly (readonly CellContent[])[]): number {
  const scores = rows.slice(0, MOST_ABOVE).map((row) => {
    const texts = row.map((content) => (typeof content === 'string' ? content : ''));
    // A title that reaches over many cells fills one.
    if (texts.filter((text) => text !== '').length < 2) return 0;
    const match = guessHeadings(texts);
    const exact = columnIds.filter((id) =>
      texts.some((text) => comparable(text) === comparable(columns[id].name)),
    );
    return [...match.keys()].reduce((sum, id) => sum + (columns[id].needed ? NEEDED : 1), 0) + exact.length;
  });
  const most = Math.max(0, ...scores);
  return most === 0 ? 0 : scores.indexOf(most);
}
