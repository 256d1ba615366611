import type { System } from '../../src/quantity/systems';
import type { Reference, WallSource } from '../shared/wall-source';
import type { Block } from '../workbook/port';
import { headingRows, type HeadingMatch } from './guess-headings';
import { FORM_SAYS, formBlock } from '../shared/factor-table-rows';
import type { Plan } from './new-estimate';
import type { FreeNames } from '../shared/free-names';
import { nameRows, type OwnNames } from './unknown-materials';

/** What the user chose for walls that are in the workbook already. */
export interface TableChoice {
  readonly walls: Reference;
  readonly headings: readonly string[];
  readonly match: HeadingMatch;
  /** A table of factors that is there already; without one a new table takes the units. */
  readonly factors?: Reference | undefined;
  readonly system: System;
  /** Materials by the names of the user; a new table takes them. */
  readonly names?: OwnNames;
}

/**
 * What has to be written before walls that are in the workbook can be used: a map of their headings where they are
 * not ours, and a table of factors where there is none. The walls themselves are not touched.
 * @param choice what the user chose
 * @param names gives names that are not taken
 * @returns what to write, and the walls that result
 */
export function planTable(choice: TableChoice, names: FreeNames): Plan {
  const blocks: Block[] = [];
  const says: string[] = [];
  let { factors } = choice;
  if (factors === undefined) {
    const table = names.table('Factors');
    const sheet = names.sheet('Factors');
    blocks.push(formBlock(choice.system, { sheet, table }, choice.names && nameRows(choice.names)));
    says.push(`Sheet ${sheet}: the table ${table}: ${FORM_SAYS}.`);
    factors = { table };
  }
  const rows = headingRows(choice.headings, choice.match);
  let source: WallSource = { walls: choice.walls, factors };
  if (rows.length > 0) {
    const table = names.table('Headings');
    const sheet = names.sheet('Headings');
    blocks.push({ sheet, address: 'A1', rows: [['Our column', 'Heading here'], ...rows], table });
    says.push(`Sheet ${sheet}: the table ${table}, which tells the formulas your headings.`);
    source = { ...source, headings: { table } };
  }
  return { blocks, source, says };
}
