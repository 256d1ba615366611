import type { MaterialInForce } from '../rules/read-factors';
import type { WallRow } from '../walls/wall-row';

/**
 * The washed material that takes the least pressure, which holds for the whole zone.
 * @param rows the rows of the zone
 * @returns the material, or undefined where every row is masked
 */
export function mostSensitive(rows: readonly WallRow[]): MaterialInForce | undefined {
  return rows.reduce<MaterialInForce | undefined>(
    (weakest, { masked, material }) =>
      masked || (weakest !== undefined && weakest.pressure <= material.pressure) ? weakest : material,
    undefined,
  );
}
