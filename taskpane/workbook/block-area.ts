import { parseAddress, type Area } from '../../src/spreadsheet/address';
import type { Block } from './port';

/**
 * An address as an area.
 * @param address for example `B2:D9`
 * @returns the area
 * @throws {Error} where it is no address
 */
export function areaOf(address: string): Area {
  const area = parseAddress(address);
  if (!area) throw new Error(`${address} is no address.`);
  return area;
}

/**
 * The cells that a block fills.
 * @param block the block
 * @returns at least one cell
 */
export function areaUnder({ address, rows }: Pick<Block, 'address' | 'rows'>): Area {
  const { top, left } = areaOf(address);
  const width = Math.max(1, ...rows.map((row) => row.length));
  return { top, left, bottom: top + Math.max(1, rows.length) - 1, right: left + width - 1 };
}
