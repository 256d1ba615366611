import { WashdownError, type Problem } from '../../src/quantity/problem';
import { areaAddress, parseAddress } from '../../src/spreadsheet/address';
import { readFactors } from '../../src/rules/read-factors';
import { columnIds, columns } from '../../src/walls/columns';
import { readWalls } from '../../src/walls/read-walls';
import { zonesOf } from '../../src/walls/zones';
import type { FactorContent } from '../shared/wall-source';
import type { CellContent, Place } from '../workbook/port';
import { headingRows, type HeadingMatch } from './guess-headings';

/** What became of reading walls as a formula would: how many there are, or what is in the way. */
export type ReadTest =
  | { readonly is: 'read'; readonly walls: number; readonly zones: number }
  | { readonly is: 'refused'; readonly problems: readonly Problem[] };

/**
 * Reads walls as a formula would.
 * @param rows the walls, headings first
 * @param match which headings stand for our columns
 * @param factors the rows of the factors
 * @returns how many walls there are, or what is in the way
 */
export function readTest(
  rows: readonly (readonly CellContent[])[],
  match: HeadingMatch,
  factors: readonly (readonly FactorContent[])[],
): ReadTest {
  const headings = headingRows((rows[0] ?? []).map(String), match);
  try {
    const walls = readWalls(rows, readFactors(factors), headings.length === 0 ? null : headings);
    return { is: 'read', walls: walls.length, zones: zonesOf(walls).length };
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    return { is: 'refused', problems: error.problems };
  }
}

/**
 * The cell that a problem is about.
 * @param problem what cannot be read
 * @param walls where the walls stand, headings first
 * @param match which headings stand for our columns
 * @returns the cell, or the whole row where no column is named
 */
export function placeOfProblem(problem: Problem, walls: Place, match: HeadingMatch): Place | undefined {
  const area = parseAddress(walls.address);
  if (!area || problem.row === undefined) return undefined;
  const row = area.top + problem.row - 1;
  const column = columnIds.find((id) => columns[id].name === problem.column);
  const place = column === undefined ? undefined : match.get(column);
  const cells =
    place === undefined
      ? { ...area, top: row, bottom: row }
      : { top: row, bottom: row, left: area.left + place, right: area.left + place };
  return { sheet: walls.sheet, address: areaAddress(cells) };
}
