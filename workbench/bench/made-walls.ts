import { columnIds, columns, type ColumnId } from '../../src/walls/columns';

// Zones of each ceiling, from full strength down to clear water.
const MATERIALS = [
  ['Red clay brick', 'Dark clay brick'],
  ['Red clay brick', 'Split-face block', 'Cast stone', 'Architectural precast'],
  ['Red clay brick', 'Limestone', 'Plain glass', 'Sand-faced brick'],
  ['Red clay brick', 'Glazed brick', 'Coated glass', 'Glazed terra cotta'],
];
const MORTARS = ['N', 'S', '', 'O', 'M'];
const RESIDUES = ['light', 'moderate', 'heavy', ''];
const BRUSHED = ['yes', 'no', 'priced', 'yes', ''];
// Walls of a level are reached alike, and are about as high; here and there one states neither.
const ACCESS = ['', 'suspended', 'lift', 'scaffold', 'ladder'];
const HEIGHTS = ['', 9, 12, 12, 14];
const LEVELS = 5;
const ZONES = 8;
const AREA = columnIds.indexOf('area');
// Has no divisor in common with the counts of rows here, so that every label stands once.
const STRIDE = 7919;

/** Factors that give everything a price. */
export const madeFactors: readonly (readonly unknown[])[] = [
  ['price.labor', 50],
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
  ['price.mobilization', 1200],
  ['price.protection', 600],
  ['price.fixed', 250],
  ['price.supervision', 12],
  ['price.contingency', 5],
  ['price.overhead', 10],
  ['price.profit', 8],
  ['neutralizer.sodaAsh', 30],
  ['runoff.captured', 80],
  ['scaffold', 'yes'],
  ['setup.zone', 3],
  ['mobilize.hours', 8],
  ['protect.hours', 12],
  ['weather.surface', 86],
];

/**
 * Wall rows made by a rule, the same at every run.
 * @param count how many rows
 * @returns a headed range
 */
export function madeWalls(count: number): unknown[][] {
  const rows: unknown[][] = [columnIds.map((id) => columns[id].name)];
  for (let row = 0; row < count; row++) {
    const zone = row % ZONES;
    const place = Math.floor(row / ZONES);
    const level = place % LEVELS;
    const kinds = MATERIALS[zone % MATERIALS.length] ?? [];
    const material = kinds[place % kinds.length];
    const covered = row % 11 === 0 || (material === 'Coated glass' && zone === ZONES - 1);
    const masked = covered ? 'yes' : row % 37 === 5 ? 'only' : 'no';
    const cells: Partial<Record<ColumnId, unknown>> = {
      wall: `W${row}`,
      zone: `Zone ${zone}`,
      level: level || '',
      material,
      area: 100 + (row % 70),
      height: HEIGHTS[level],
      openings: row % 20,
      openingPerimeter: row % 17 === 0 ? '' : 18,
      fixtures: row % 3,
      mortar: MORTARS[(place + zone) % MORTARS.length],
      residue: RESIDUES[(place + level) % RESIDUES.length],
      brushed: BRUSHED[(place + zone) % BRUSHED.length],
      age: 14,
      masked,
      access: ACCESS[level],
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

/**
 * Alternates made by a rule: each gives one wall another mortar, material, residue or mask.
 * @param walls a headed range of made walls
 * @param count how many alternates
 * @returns a table of alternates
 */
export function madeAlternates(walls: readonly unknown[][], count: number): unknown[][] {
  const [, ...rows] = walls;
  const choices = [
    ['Mortar', 'O'],
    ['Material', 'Granite'],
    ['Residue', 'heavy'],
    ['Masked', 'yes'],
  ];
  const lines = Array.from({ length: count }, (_, place) => [
    `Alternate ${place}`,
    rows[place % rows.length]?.[0],
    ...(choices[place % choices.length] ?? []),
  ]);
  return [['Alternate', 'Wall', 'Column', 'Value'], ...lines];
}

/**
 * The walls with the first of them larger.
 * @param walls a headed range of made walls
 * @param count how many are changed, each in one column
 * @returns another range
 */
export function changedWalls(walls: readonly unknown[][], count: number): unknown[][] {
  return walls.map((cells, row) =>
    row >= 1 && row <= count ? cells.with(AREA, Number(cells[AREA]) + row) : [...cells],
  );
}
