import { columnIds, columns, type ColumnId } from '../../src/walls/columns';

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
const AREA = columnIds.indexOf('area');
// Has no divisor in common with the counts of rows here, so that every label stands once.
const STRIDE = 7919;

/** Factors that give everything a price. */
export const madeFactors: readonly (readonly unknown[])[] = [
  ['price.labour', 50],
  ['price.cleaner.1', 12],
  ['price.cleaner.2', 20],
  ['price.cleaner.3', 30],
  ['price.film', 0.1],
  ['price.tape', 0.2],
  ['price.water', 0.01],
  ['price.equipment', 150],
  ['price.access', 300],
  ['price.bicarbonate', 1.5],
  ['price.sodaAsh', 2],
  ['price.disposal', 0.3],
  ['price.contingency', 5],
  ['price.overhead', 10],
  ['price.profit', 8],
  ['neutralizer.sodaAsh', 30],
];

/**
 * Wall rows made by a rule, the same at every run.
 * @param count how many rows
 * @returns a headed range
 */
export function madeWalls(count: number): unknown[][] {
  const rows: unknown[][] = [columnIds.map((id) => columns[id].name)];
  for (let row = 0; row < count; row++) {
    const masked = row % 11 === 0 ? 'yes' : 'no';
    const cells: Partial<Record<ColumnId, unknown>> = {
      wall: `W${row}`,
      zone: `Zone ${row % ZONES}`,
      level: (row % 4) + 1,
      material: MATERIALS[row % MATERIALS.length],
      area: 100 + (row % 70),
      height: 10 + (row % 5),
      openings: row % 20,
      openingPerimeter: 18,
      fixtures: row % 3,
      mortar: MORTARS[row % MORTARS.length],
      residue: RESIDUES[row % RESIDUES.length],
      brushed: 'yes',
      age: 14,
      masked,
    };
    rows.push(columnIds.map((id) => cells[id] ?? ''));
  }
  return rows;
}

/**
 * Gives the first wall another area, so that the walls are none that were read before.
 * @param walls a headed range, which is changed
 * @param turn how often that was done
 */
export function changeWalls(walls: unknown[][], turn: number): void {
  const first = walls[1] ?? [];
  first[AREA] = 200 + (turn % 1000) / 8;
}

/**
 * Puts the labels in no order.
 * @param walls a headed range of made walls, which is changed
 * @returns the same range
 */
export function scatterLabels(walls: unknown[][]): unknown[][] {
  const count = walls.length - 1;
  walls.slice(1).forEach((cells, row) => {
    cells[0] = `W${(row * STRIDE) % count}`;
  });
  return walls;
}
