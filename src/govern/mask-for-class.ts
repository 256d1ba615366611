import type { CleanerClass } from '../rules/cleaner-classes';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';

/** What must be masked so that a class may be used, or why it cannot. */
export type MaskForClass =
  | { readonly feasible: true; readonly toMask: readonly WallRow[]; readonly rows: readonly WallRow[] }
  | { readonly feasible: false; readonly reason: string };

/**
 * The rows of a zone that must be masked for a class to be allowed: exactly the unmasked ones whose ceiling is below
 * it. No smaller set will do, and a larger one masks what need not be. Rows that are masked already stay so.
 * @param zone the rows of the zone, and the rows of other zones that its rinse runs over
 * @param wanted the class
 * @returns the rows to mask and the zone with them masked; or the reason why the class cannot be allowed
 */
export function maskForClass(
  { rows, below }: Pick<Zone, 'rows' | 'below'>,
  wanted: CleanerClass,
): MaskForClass {
  const toMask = rows.filter((row) => !row.masked && row.material.ceiling < wanted);
  const wetted = below.filter(({ material }) => material.ceiling < wanted);
  if (wetted.length > 0) {
    const named = wetted.map(({ wall, material }) => `${wall} (${material.name})`).join(', ');
    return { feasible: false, reason: `the rinse runs over what may not meet it: ${named}` };
  }
  const never = toMask.filter(({ neverMasked }) => neverMasked);
  if (never.length > 0) {
    const named = never.map(({ wall, material }) => `${wall} (${material.name})`).join(', ');
    return { feasible: false, reason: `cannot be masked: ${named}` };
  }
  const masked = new Set(toMask);
  const after = rows.map((row) => (masked.has(row) ? { ...row, masked: true } : row));
  if (after.every((row) => row.masked)) return { feasible: false, reason: 'nothing would be left to wash' };
  return { feasible: true, toMask, rows: after };
}
