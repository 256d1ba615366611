import type { IRange } from '@univerjs/presets';
import type { Area } from '../../src/spreadsheet/address';

/**
 * A range of the spreadsheet, which counts from 0, as an area, which counts from 1.
 * @param range the range
 * @returns the area
 */
export function areaOfRange({ startRow, startColumn, endRow, endColumn }: IRange): Area {
  return { top: startRow + 1, left: startColumn + 1, bottom: endRow + 1, right: endColumn + 1 };
}
