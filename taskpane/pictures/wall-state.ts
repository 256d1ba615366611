import type { Governing } from '../../src/govern/govern-zone';
import type { WallRow } from '../../src/walls/wall-row';

/** What a wall is in its zone: covered, one of those that hold the cleaner down, or washed like the rest. */
export type WallState = 'masked' | 'governs' | 'washed';

/**
 * What a wall is in its zone.
 * @param row the wall row
 * @param governing what may touch the zone; undefined where nothing is washed
 * @returns its state
 */
export function wallState(row: WallRow, governing: Governing | undefined): WallState {
  if (row.masked) return 'masked';
  return governing?.governors.includes(row.material) ? 'governs' : 'washed';
}
