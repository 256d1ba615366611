import { classesOn } from '../hazards/washed';
import { classInWords } from '../rules/cleaner-classes';
import type { SourceId } from '../rules/sources';
import type { FactorsInForce } from '../rules/read-factors';
import type { ZoneEstimate } from '../estimate/schedule';
import type { ExampleRows } from '../walls/example-rows';
import type { ColumnId } from '../walls/columns';
import type { WallRow } from '../walls/wall-row';

/** Something on the walls, in the factors or in the result that a reviewer should know. */
export interface Finding {
  /** Name of the check. */
  readonly check: string;
  readonly what: string;
  /** Zone and walls, or the factor. */
  readonly where: string;
  readonly why: string;
  /** What to do about it. */
  readonly todo: string;
  readonly source: SourceId;
  /** The rows of the range that it is about, its header being row 1; left out where it is about no wall. */
  readonly rows?: readonly number[];
  /** The column that it is about, where it is one. */
  readonly column?: ColumnId;
}

/** What a check looks at. */
export interface Checked {
  /** The zones asked for. */
  readonly zones: readonly ZoneEstimate[];
  /** All zones of the job. */
  readonly job: readonly ZoneEstimate[];
  readonly factors: FactorsInForce;
  /** Rows of the range that are no walls of the job, where they were looked for. */
  readonly examples?: ExampleRows;
}

/** A check: looks, and says what it found. */
export type Check = (checked: Checked) => Finding[];

// More labels than this are counted, so that the finding still fits a cell.
const LABELS_NAMED = 20;

/**
 * Zone and walls in words.
 * @param zone name of the zone
 * @param rows the rows concerned
 * @returns for example `Library south: S-1, S-2`
 */
function whereOf(zone: string, rows: readonly WallRow[]): string {
  const named = rows.slice(0, LABELS_NAMED).map(({ wall }) => wall);
  const more = rows.length > LABELS_NAMED ? ` and ${String(rows.length - LABELS_NAMED)} more` : '';
  return `${zone}: ${named.join(', ')}${more}`;
}

/**
 * Where walls stand, in words and by their rows.
 * @param zone name of the zone
 * @param rows the rows concerned
 * @returns what a finding says of its place
 */
export function placed(zone: string, rows: readonly WallRow[]): Required<Pick<Finding, 'where' | 'rows'>> {
  return { where: whereOf(zone, rows), rows: rows.map(({ row }) => row) };
}

/**
 * A check of the rows one by one, with one finding a zone.
 * @param applies whether a row is concerned
 * @param say what is said of the rows of a zone
 * @returns the check
 */
export function rowCheck(
  applies: (row: WallRow, zone: ZoneEstimate, checked: Checked) => boolean,
  say: (zone: ZoneEstimate, rows: readonly WallRow[], checked: Checked) => Omit<Finding, 'where'>,
): Check {
  return zoneCheck((zone, checked) => zone.zone.rows.filter((row) => applies(row, zone, checked)), say);
}

/**
 * A check of a hazard that concerns rows, with one finding a zone.
 * @param hazard the rule of the hazard: the rows of a zone that it concerns
 * @param say what is said of the rows of a zone
 * @returns the check
 */
export function hazardCheck(
  hazard: (zone: ZoneEstimate, factors: FactorsInForce) => readonly WallRow[],
  say: (zone: ZoneEstimate, rows: readonly WallRow[], checked: Checked) => Omit<Finding, 'where'>,
): Check {
  return zoneCheck((zone, { factors }) => hazard(zone, factors), say);
}

function zoneCheck(
  rowsOf: (zone: ZoneEstimate, checked: Checked) => readonly WallRow[],
  say: (zone: ZoneEstimate, rows: readonly WallRow[], checked: Checked) => Omit<Finding, 'where'>,
): Check {
  return (checked) =>
    checked.zones.flatMap((estimate) => {
      const rows = rowsOf(estimate, checked);
      return rows.length === 0
        ? []
        : [{ ...say(estimate, rows, checked), ...placed(estimate.zone.name, rows) }];
    });
}

/**
 * The materials of rows, each once.
 * @param rows the rows concerned
 * @returns for example `Limestone, Marble`
 */
export function materialNames(rows: readonly WallRow[]): string {
  return [...new Set(rows.map(({ material }) => material.name))].join(', ');
}

/**
 * The classes that rows are washed with, in words.
 * @param zone the estimate of their zone
 * @param rows the rows concerned
 * @returns for example `class 2 (buffered mild acid)`
 */
export function classesInWords(zone: ZoneEstimate, rows: readonly WallRow[]): string {
  return classesOn(zone, rows).map(classInWords).join(' and ');
}
