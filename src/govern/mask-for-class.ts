import type { CleanerClass } from '../rules/cleaner-classes';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';

/** What must be masked so that a class may be used, or why it cannot. */
export type MaskForClass =
  | { readonly feasible: true; readonly masked: readonly WallRow[]; readonly rows: readonly WallRow[] }
  | { readonly feasible: false; readonly reason: string };

/**
 * The rows of a zone that must be masked for a class to be allowed: exactly those whose ceiling is below it. Rows that
 * are masked already are tried unmasked; a row that is to stay unwashed stays covered.
 * @param zone the rows of the zone, and the rows of other zones that its rinse runs over
 * @param wanted the class
 * @returns the masked rows and the zone with them masked; or the reason why the class cannot be allowed
 */
export function maskForClass(
  { rows, below }: Pick<Zone, 'rows' | 'below'>,
  wanted: CleanerClass,
): MaskForClass {
  const wetted = below.filter(({ material }) => material.ceiling < wanted);
  if (wetted.length > 0) {
    return { feasible: false, reason: `the rinse runs over what it must not touch: ${named(wetted)}` };
  }
  const after = rows.map((row): WallRow => {
    if (row.mask === 'only') return row;
    const masked = row.material.ceiling < wanted && netArea(row) > 0;
    if (masked === row.masked) return row;
    return { ...row, masked, mask: masked ? 'yes' : 'no' };
  });
  const never = after.filter((row, place) => row.masked && rows[place]?.neverMasked);
  if (never.length > 0) return { feasible: false, reason: `cannot be masked: ${named(never)}` };
  if (after.every((row) => row.masked || netArea(row) <= 0)) {
    return { feasible: false, reason: 'nothing bare would be left to wash' };
  }
  return { feasible: true, masked: after.filter((row) => row.mask === 'yes'), rows: after };
}

function named(rows: readonly WallRow[]): string {
  return rows.map(({ wall, material }) => `${wall} (${material.name})`).join(', ');
}
