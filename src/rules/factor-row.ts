import { factors, type Factor, type FactorId } from './factors';

const rows = new Map<string, Factor>(factors.map((row) => [row.id, row]));

/**
 * The row of a factor in the table.
 * @param id the factor
 * @returns its unit, kind, range, starting value and source
 */
export function factorRow(id: FactorId): Factor {
  // Every id of the type is in the table.
  return rows.get(id) as Factor;
}
