import type { WallRow } from './wall-row';

/**
 * The face of a wall without its openings.
 * @param row the wall row
 * @returns area in m2
 */
export function netArea({ area, openings }: Pick<WallRow, 'area' | 'openings'>): number {
  return area - openings;
}
