import type { ZoneEstimate } from '../../estimate/schedule';
import { isWashedRow } from '../../hazards/washed';
import type { System } from '../../quantity/systems';
import { classInWords } from '../../rules/cleaner-classes';
import { listed } from '../named';
import { netArea } from '../../walls/net-area';
import type { WallRow } from '../../walls/wall-row';
import { isWashedLater } from '../../walls/washed-later';
import { amountInWords } from './amount-in-words';

/**
 * What is done in a zone, in sentences: what is washed and with what, what is covered and washed afterwards, what is
 * covered and left unwashed.
 * @param estimate the zone
 * @param system the display system
 * @returns the sentences
 */
export function scopeLines(estimate: ZoneEstimate, system: System): string[] {
  const { zone, classToUse, laterClasses } = estimate;
  const first = zone.rows.filter((row) => !row.masked && isWashedRow(row) && netArea(row) > 0);
  const later = zone.rows.filter(isWashedLater);
  const left = zone.rows.filter((row) => row.mask === 'only' && row.material.masonry && netArea(row) > 0);
  const covered = zone.rows.filter((row) => row.masked && !row.material.masonry && netArea(row) > 0);
  const openings = zone.rows.reduce((sum, row) => sum + (row.masked ? 0 : row.openings), 0);
  const fixtures = zone.rows.reduce((sum, row) => sum + row.fixtures, 0);
  const what = (rows: readonly WallRow[]): string => areasOf(rows, system);
  return [
    first.length > 0
      ? `${zone.name}: wash ${what(first)} with ${classInWords(classToUse)}.`
      : `${zone.name}: nothing is washed in a first wash.`,
    ...(later.length > 0
      ? [
          `${zone.name}: mask ${what(later)}, and wash it afterwards with ${laterClasses.map((of) => classInWords(of)).join(', ')}.`,
        ]
      : []),
    ...(covered.length > 0 ? [`${zone.name}: mask ${what(covered)}.`] : []),
    ...(openings > 0 || fixtures > 0
      ? [
          `${zone.name}: mask ${listed([
            ...(openings > 0 ? [`openings of ${amountInWords(openings, 'area', system)}`] : []),
            ...(fixtures > 0 ? [`${String(fixtures)} ${fixtures === 1 ? 'fixture' : 'fixtures'}`] : []),
          ])}.`,
        ]
      : []),
    ...(left.length > 0 ? [`${zone.name}: mask ${what(left)}; its wash is out of scope.`] : []),
  ];
}

/** The materials of rows, each with its area. */
function areasOf(rows: readonly WallRow[], system: System): string {
  const areas = new Map<string, number>();
  for (const row of rows) areas.set(row.material.name, (areas.get(row.material.name) ?? 0) + netArea(row));
  return listed([...areas].map(([name, area]) => `${amountInWords(area, 'area', system)} of ${lower(name)}`));
}

function lower(name: string): string {
  return /^[A-Z][a-z]/.test(name) ? `${name.charAt(0).toLowerCase()}${name.slice(1)}` : name;
}
