import type { ZoneEstimate } from '../estimate/schedule';
import { GENTLEST_ACID } from '../rules/cleaner-classes';
import type { WallRow } from '../walls/wall-row';

/**
 * The rows of a zone that are washed.
 * @param zone the estimate of the zone
 * @returns its unmasked rows
 */
export function washedRows({ zone }: ZoneEstimate): WallRow[] {
  return zone.rows.filter(({ masked }) => !masked);
}

/**
 * Whether a zone is washed at all, with clear water or a cleaner.
 * @param zone the estimate of the zone
 * @returns false where every row is masked
 */
export function isWashed({ governing }: ZoneEstimate): boolean {
  return governing !== undefined;
}

/**
 * Whether a cleaner goes on the walls of a zone, class 1 or stronger.
 * @param zone the estimate of the zone
 * @returns false under clear water
 */
export function takesCleaner({ governing }: ZoneEstimate): boolean {
  return governing !== undefined && governing.classToUse > 0;
}

/**
 * Whether an acid goes on the walls of a zone, class 2 or 3.
 * @param zone the estimate of the zone
 * @returns false under clear water and detergent
 */
export function takesAcid({ governing }: ZoneEstimate): boolean {
  return governing !== undefined && governing.classToUse >= GENTLEST_ACID;
}
