import { readCell } from '../../src/quantity/cell';
import { tradeWord } from '../../src/quantity/trade-word';
import { findMaterial } from '../../src/rules/material-names';
import type { MaterialInForce } from '../../src/rules/read-factors';
import { isExample } from '../../src/walls/example-rows';
import { isTotal } from '../../src/walls/total-rows';
import type { CellContent } from '../workbook/port';
import type { HeadingMatch } from './guess-headings';

/** The material of the table that a name of the user stands for, by that name. */
export type OwnNames = ReadonlyMap<string, string>;

/**
 * The names of materials in the walls that nobody knows, each once.
 * @param below the rows below the headings
 * @param match which headings stand for our columns
 * @param materials the materials known
 * @returns the names as they are typed
 */
export function unknownMaterials(
  below: readonly (readonly CellContent[])[],
  match: HeadingMatch,
  materials: readonly MaterialInForce[],
): string[] {
  const at = (id: 'wall' | 'material', row: readonly CellContent[]): CellContent =>
    row[match.get(id) ?? -1] ?? '';
  const names = new Map<string, string>();
  for (const row of below) {
    const label = String(at('wall', row)).trim();
    const cell = readCell(at('material', row));
    if (label === '' || isTotal(label) || isExample(label) || cell.type !== 'text') continue;
    if (names.has(tradeWord(cell.value)) || findMaterial(materials, cell.value)) continue;
    names.set(tradeWord(cell.value), cell.value);
  }
  return [...names.values()];
}

/**
 * The rows of a table of factors that tell the names of the user.
 * @param names the names
 * @returns factor id and material
 */
export function nameRows(names: OwnNames): [string, string][] {
  return [...names].map(([name, material]) => [`material.${name}.as`, material]);
}
