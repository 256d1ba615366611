import { cellAddress, parseAddress } from '../../src/spreadsheet/address';
import { factorIdOf } from '../../src/rules/read-factors';
import type { Statement } from '../../src/trace/recorder';
import type { ColumnId } from '../../src/walls/columns';
import { matchHeadings } from '../../src/walls/match-headings';
import type { Place } from '../workbook/port';
import type { AskedNumber } from './asked-number';

/**
 * The cell that states a value.
 * @param number the number that is asked about
 * @param stated what states the value
 * @returns the cell; undefined where it stands in none: a starting value, a column that the walls do not have
 */
export function cellOf(number: AskedNumber, stated: Statement): Place | undefined {
  if (stated.by === 'cell') return wallCell(number, stated.row, stated.column as ColumnId);
  return stated.by === 'factor' ? factorCell(number, stated.id) : undefined;
}

/**
 * The cell of a wall.
 * @param number the number that is asked about
 * @param row row of the wall within the range
 * @param column the column
 * @returns the cell; undefined where the walls do not have the column
 */
export function wallCell(number: AskedNumber, row: number, column: ColumnId): Place | undefined {
  const { ranges, question } = number;
  const places = matchHeadings(ranges.walls[0] ?? [], question.factors.system, ranges.headings);
  const place = places.get(column);
  return place === undefined ? undefined : within(ranges.wallsAt, row - 1, place);
}

function factorCell({ ranges: { factors, factorsAt } }: AskedNumber, id: string): Place | undefined {
  const wanted = factorIdOf(id);
  const row = (factors ?? []).findIndex(([name]) => typeof name === 'string' && factorIdOf(name) === wanted);
  return row < 0 || factorsAt === undefined ? undefined : within(factorsAt, row, 1);
}

function within({ sheet, address }: Place, down: number, across: number): Place | undefined {
  const area = parseAddress(address);
  return area && { sheet, address: cellAddress(area.top + down, area.left + across) };
}
