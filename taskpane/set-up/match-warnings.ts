import { columnIds, columns, type ColumnId } from '../../src/walls/columns';
import type { CellContent } from '../workbook/port';
import type { HeadingMatch } from './guess-headings';

/**
 * The columns that every wall needs and that no heading is taken for.
 * @param match which headings stand for our columns
 * @returns a sentence for each
 */
export function missingColumns(match: HeadingMatch): string[] {
  return columnIds
    .filter((id) => columns[id].needed && !match.has(id))
    .map((id) => `No heading is matched to ${columns[id].name}, which every wall needs. Choose it above.`);
}

/**
 * What the user should know of a match that can be read.
 * @param headings the headings of the walls
 * @param match which of them stand for our columns
 * @param below the rows below them
 * @returns a sentence for each
 */
export function matchWarnings(
  headings: readonly string[],
  match: HeadingMatch,
  below: readonly (readonly CellContent[])[],
): string[] {
  const used = new Set(match.values());
  const left = headings.filter((heading, place) => heading.trim() !== '' && !used.has(place));
  const area = headings[match.get('area') ?? -1] ?? '';
  const openings = headings[match.get('openings') ?? -1];
  return [
    ...(left.length > 0 ? [`Not used: ${left.join(', ')}.`] : []),
    ...(['zone', 'level'] as const).flatMap((id) => gaps(id, headings, match, below)),
    ...(/\bnet\b/i.test(area) && openings !== undefined
      ? [
          `“${area}” sounds like a net area; “${openings}” is deducted from it again. If that is wrong, choose “not here” for ${columns.openings.name}.`,
        ]
      : []),
  ];
}

/** A merged cell fills its first row alone. */
function gaps(
  id: ColumnId,
  headings: readonly string[],
  match: HeadingMatch,
  below: readonly (readonly CellContent[])[],
): string[] {
  const place = match.get(id);
  const wall = match.get('wall');
  if (place === undefined || wall === undefined) return [];
  const walls = below.filter((row) => (row[wall] ?? '') !== '');
  const blank = walls.filter((row) => (row[place] ?? '') === '').length;
  if (blank === 0 || blank === walls.length) return [];
  return [
    `“${headings[place] ?? ''}” is blank in ${String(blank)} of ${String(walls.length)} walls: a merged cell fills only its first row. Those walls count as without a ${columns[id].name.toLowerCase()}; fill in the cells where they have one.`,
  ];
}
