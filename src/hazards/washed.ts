import type { ZoneEstimate } from '../estimate/schedule';
import type { Wash } from '../estimate/washes';
import { GENTLEST_ACID, type CleanerClass } from '../rules/cleaner-classes';
import { netArea } from '../walls/net-area';
import { groupKey } from '../walls/rows-alike';
import type { WallRow } from '../walls/wall-row';

/**
 * Whether a row is washed, along with its zone or afterwards.
 * @param row the wall row
 * @returns false for what stays covered, and where there is no face beside the openings
 */
export function isWashedRow(row: WallRow): boolean {
  return netArea(row) > 0 && (!row.masked || (row.mask === 'yes' && row.material.masonry));
}

/**
 * The rows of a zone that are washed: the bare ones, and the masked masonry that is washed afterwards.
 * @param zone the estimate of the zone
 * @returns its rows in order
 */
export function washedRows({ zone }: ZoneEstimate): WallRow[] {
  return zone.rows.filter(isWashedRow);
}

/** Rows of a zone that are washed together. */
export interface WashedTogether {
  readonly class: CleanerClass;
  readonly rows: readonly WallRow[];
}

/**
 * Whether a wash is one of masked masonry, after that of the bare rows.
 * @param wash the wash
 * @returns false for the first wash of a zone
 */
export function isLater(wash: Wash): boolean {
  return wash.rows.some(({ masked }) => masked);
}

/**
 * The washes of a zone in working order: the bare rows, then the masked masonry, the strongest class first.
 * @param zone the estimate of the zone
 * @returns each wash once
 */
export function inWorkingOrder(zone: ZoneEstimate): Wash[] {
  const place = (wash: Wash): number => (isLater(wash) ? wash.class : Infinity);
  return [...new Set(zone.washed.map(({ wash }) => wash))].sort((a, b) => place(b) - place(a));
}

/**
 * The washes of a zone: the bare rows, then the masked masonry, rows of one class together.
 * @param zone the estimate of the zone
 * @returns each with its class and rows, in working order
 */
export function washesOf(zone: ZoneEstimate): WashedTogether[] {
  // Long tables are estimated with one row of each group.
  const washOfGroup = new Map(zone.washed.map(({ row, wash }) => [groupKey(row), wash]));
  const rows = washedRows(zone);
  return inWorkingOrder(zone).map((wash) => ({
    class: wash.class,
    rows: rows.filter((row) => washOfGroup.get(groupKey(row)) === wash),
  }));
}

/**
 * The classes that rows are washed with.
 * @param zone the estimate of their zone
 * @param rows the rows
 * @returns each class once, in working order
 */
export function classesOn(zone: ZoneEstimate, rows: readonly WallRow[]): CleanerClass[] {
  const among = new Set(rows);
  const met = washesOf(zone).filter((wash) => wash.rows.some((row) => among.has(row)));
  return [...new Set(met.map((wash) => wash.class))];
}

/**
 * The strongest class that is used in a zone, first or afterwards.
 * @param zone the estimate of the zone
 * @returns the class; undefined where nothing is washed
 */
export function strongestClass({ classToUse, laterClasses }: ZoneEstimate): CleanerClass | undefined {
  return [...(classToUse === undefined ? [] : [classToUse]), ...laterClasses].reduce<
    CleanerClass | undefined
  >((most, each) => (most === undefined || each > most ? each : most), undefined);
}

/**
 * Whether a class is an acid.
 * @param of the class
 * @returns true for class 2 and 3
 */
export function isAcid(of: CleanerClass): boolean {
  return of >= GENTLEST_ACID;
}

/**
 * Whether a zone is washed at all, with clear water or a cleaner.
 * @param zone the estimate of the zone
 * @returns false where every row stays covered
 */
export function isWashed(zone: ZoneEstimate): boolean {
  return strongestClass(zone) !== undefined;
}

/**
 * Whether a cleaner goes on the walls of a zone, class 1 or stronger.
 * @param zone the estimate of the zone
 * @returns false under clear water
 */
export function takesCleaner(zone: ZoneEstimate): boolean {
  return (strongestClass(zone) ?? 0) > 0;
}

/**
 * Whether an acid goes on the walls of a zone, class 2 or 3.
 * @param zone the estimate of the zone
 * @returns false under clear water and detergent
 */
export function takesAcid(zone: ZoneEstimate): boolean {
  return isAcid(strongestClass(zone) ?? 0);
}

/**
 * The rows of a zone that meet an acid.
 * @param zone the estimate of the zone
 * @returns those that are washed with class 2 or 3
 */
export function rowsUnderAcid(zone: ZoneEstimate): WallRow[] {
  if (!takesAcid(zone)) return [];
  return washesOf(zone).flatMap((wash) => (isAcid(wash.class) ? wash.rows : []));
}

/**
 * Masonry that is covered and left unwashed: out of scope.
 * @param zone the estimate of the zone
 * @returns its masonry rows with Masked = only
 */
export function outOfScope({ zone }: ZoneEstimate): WallRow[] {
  return zone.rows.filter(({ mask, material }) => mask === 'only' && material.masonry);
}
