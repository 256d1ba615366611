import { columnIds, columns } from '../../src/walls/columns';

const MATERIALS = [
  'Red clay brick',
  'Limestone',
  'Split-face block',
  'Glazed brick',
  'Cast stone',
  'Coated glass',
];
const MORTARS = ['N', 'S', ''];
const RESIDUES = ['light', 'moderate', 'heavy', ''];
const ZONES = 8;

/**
 * Wall rows made by a rule, the same at every run.
 * @param count how many rows
 * @returns a headed range
 */
export function madeWalls(count: number): unknown[][] {
  const rows: unknown[][] = [columnIds.map((id) => columns[id].name)];
  for (let row = 0; row < count; row++) {
    const masked = row % 11 === 0 ? 'yes' : 'no';
    rows.push([
      `W${row}`,
      `Zone ${row % ZONES}`,
      (row % 4) + 1,
      MATERIALS[row % MATERIALS.length],
      100 + (row % 70),
      10 + (row % 5),
      row % 20,
      18,
      row % 3,
      MORTARS[row % MORTARS.length],
      RESIDUES[row % RESIDUES.length],
      'yes',
      14,
      masked,
      '',
    ]);
  }
  return rows;
}
