import { squareMetres, type SquareMetres } from '../quantity/quantities';
import type { Recorder } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';

/**
 * The area of a row that is washed: gross area less openings, none where the row is masked.
 * @param row the wall row
 * @param rec takes down the lines
 * @returns area in m2
 */
export function washedArea(row: WallRow, rec?: Recorder): SquareMetres {
  const area = row.masked ? 0 : row.area - row.openings;
  if (rec) {
    rec.input('Area#', row.area, 'area', 'Area of the row, gross');
    rec.input('Openings#', row.openings, 'area', 'Openings in the row');
    rec.line('washedArea#', row.masked ? '0' : 'Area# - Openings#', area, 'area', 'washedArea');
  }
  return squareMetres(area);
}
