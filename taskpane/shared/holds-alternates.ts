import { ALTERNATE_HEADINGS } from '../../src/alternates/headings';
import { comparable } from '../../src/quantity/cell';
import type { TableInfo } from '../workbook/port';

/**
 * Whether a table can hold alternates.
 * @param info the table
 * @returns true where it has the four columns, in any order
 */
export function holdsAlternates({ headings }: Pick<TableInfo, 'headings'>): boolean {
  const seen = headings.map(comparable);
  return ALTERNATE_HEADINGS.every((heading) => seen.includes(comparable(heading)));
}
