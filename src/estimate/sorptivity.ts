import { symbolOf } from '../govern/govern-zone';
import { constants } from '../rules/constants';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';

/**
 * The sorptivity S of a face, from i = S sqrt(t) and the initial rate of absorption, which is i after 1 min.
 * Source: Hall and Hoff, Water Transport in Brick, Stone and Concrete; ASTM C1585; ASTM C67.
 * @param row the wall row; its measured suction beats its material's
 * @param density density of water, kg/L
 * @param rec takes down the lines
 * @returns sorptivity in L/(m2 min^0.5)
 */
export function sorptivity(row: WallRow, density: number, rec?: RowRecord): number {
  const measured = row.suction > 0;
  const suction = measured ? row.suction : row.material.suction;
  const value = suction / density / Math.sqrt(constants.iraTime.value);
  if (rec) {
    const symbol = measured ? 'ira#' : `ira_${symbolOf(row.material)}`;
    if (measured)
      rec.input(
        symbol,
        suction,
        'suction',
        "Suction measured at the row, in place of the material's",
        'suction',
      );
    else rec.material(symbol, row.material, 'suction', 'suction');
    rec.line('sorptivity', value, { suction: symbol });
  }
  return value;
}
