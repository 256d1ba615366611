import type { MaskOption } from '../../src/estimate/options';
import { cellAddress } from '../../src/spreadsheet/address';
import { columns } from '../../src/walls/columns';
import type { Mask } from '../../src/walls/masks';
import { readFactors } from '../../src/rules/read-factors';
import { matchHeadings } from '../../src/walls/match-headings';
import type { WallRow } from '../../src/walls/wall-row';
import { placeOf, readSource, type WallSource } from '../shared/wall-source';
import { areaOf } from '../workbook/block-area';
import type { Block, CellContent, WorkbookPort } from '../workbook/port';

/** A Masked cell that a line of the ladder sets. */
export interface MaskedCell {
  readonly sheet: string;
  readonly address: string;
  readonly wall: string;
  /** What the cell holds; empty where it is blank. */
  readonly from: CellContent;
  readonly to: Mask;
}

/**
 * The Masked cells that must change for a zone to be masked as a line of the ladder has it.
 * @param port the workbook
 * @param source where the walls stand
 * @param rows the rows of the zone as they were read
 * @param option the line
 * @returns the cells, in the order of the rows; none where the zone is masked so already
 * @throws {Error} where the walls have no column for it, or are no longer those of the ladder
 */
export async function maskedCells(
  port: WorkbookPort,
  source: WallSource,
  rows: readonly WallRow[],
  option: Pick<MaskOption, 'rows'>,
): Promise<MaskedCell[]> {
  const [{ walls, headings, factors }, { sheet, address }] = await Promise.all([
    readSource(port, source),
    placeOf(port, source.walls),
  ]);
  const places = matchHeadings(walls[0] ?? [], readFactors(factors).system, headings);
  const [masked, label] = [places.get('masked'), places.get('wall')];
  if (masked === undefined || label === undefined) {
    throw new Error(`The walls have no column ${columns.masked.name}: add one, and apply the line again.`);
  }
  const { top, left } = areaOf(address);
  return option.rows.flatMap((after, place) => {
    if (after.mask === rows[place]?.mask) return [];
    const line = walls[after.row - 1] ?? [];
    if (String(line[label] ?? '').trim() !== after.wall) {
      throw new Error('The walls have changed since the ladder was worked out. Look at it again.');
    }
    return [
      {
        sheet,
        address: cellAddress(top + after.row - 1, left + masked),
        wall: after.wall,
        from: line[masked] ?? '',
        to: after.mask,
      },
    ];
  });
}

/**
 * What sets the cells.
 * @param cells the cells
 * @returns a block for each
 */
export function maskedBlocks(cells: readonly MaskedCell[]): Block[] {
  return cells.map(({ sheet, address, to }) => ({ sheet, address, rows: [[to]] }));
}
