import type { RowRecord } from '../trace/recorder';

/**
 * Runoff of a row that is collected: all that is applied less what the face takes up, times the share captured.
 * @param water water applied, L
 * @param concentrate concentrate applied, L
 * @param absorbed water that the face takes up, L
 * @param captured share collected, 0 to 1
 * @param rec takes down the lines
 * @returns volume in L
 */
export function runoff(
  water: number,
  concentrate: number,
  absorbed: number,
  captured: number,
  rec?: RowRecord,
): number {
  const volume = (water + concentrate - absorbed) * captured;
  rec?.line('runoff', volume);
  return volume;
}
