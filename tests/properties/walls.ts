import fc from 'fast-check';
import { columnIds, columns, type ColumnId } from '../../src/walls/columns';
import { factors } from '../../src/rules/factors';
import { materials } from '../../src/rules/materials';

/** How many walls a property is tried on; more are asked for by hand. */
export const RUNS = Number(process.env['PROPERTY_RUNS'] ?? 100);

/** A wall row as typed: numbers in the user's units, the openings as a share of the area. */
export interface MadeWall {
  readonly zone: string;
  readonly level: number;
  readonly material: string;
  readonly area: number;
  readonly height: number;
  readonly openShare: number;
  readonly openingPerimeter: number;
  readonly fixtures: number;
  readonly mortar: string;
  readonly residue: string;
  readonly brushed: string;
  readonly age: number;
  readonly masked: string;
  readonly access: string;
  readonly suction: number;
  /** Zone whose rinse runs over the row; heeded where it stands above the row's own zone and has rows. */
  readonly receives: string;
}

/** The zones from the top down. */
export const ZONES = ['North', 'Court 2', ''];

const upTo = (most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: most * 1000 }).map((value) => value / 1000);

/** A wall row; areas and heights of 0 and blanks come up too. */
export const wall: fc.Arbitrary<MadeWall> = fc.record({
  zone: fc.constantFrom(...ZONES),
  level: fc.nat(5),
  material: fc.constantFrom(...materials.map(({ name }) => name)),
  area: fc.oneof({ weight: 9, arbitrary: upTo(5000) }, { weight: 1, arbitrary: fc.constant(0) }),
  height: fc.oneof(
    { weight: 4, arbitrary: upTo(60).map((value) => value + 0.5) },
    { weight: 1, arbitrary: fc.constant(0) },
  ),
  openShare: fc.oneof(
    { weight: 2, arbitrary: fc.constant(0) },
    { weight: 6, arbitrary: upTo(0.9) },
    { weight: 1, arbitrary: fc.constant(1) },
  ),
  openingPerimeter: upTo(300),
  fixtures: fc.nat(6),
  mortar: fc.constantFrom('M', 'S', 'N', 'O', ''),
  residue: fc.constantFrom('light', 'moderate', 'heavy', ''),
  brushed: fc.constantFrom('yes', 'no', ''),
  age: fc.nat(90),
  masked: fc.constantFrom('', 'no', 'no', 'never', 'yes'),
  access: fc.constantFrom('', 'ground', 'scaffold', 'lift', 'ladder', 'suspended'),
  suction: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: upTo(3) }),
  receives: fc.constantFrom('', '', '', 'North', 'Court 2'),
});

/** A job of 1 to 10 wall rows. */
export const walls: fc.Arbitrary<MadeWall[]> = fc.array(wall, { minLength: 1, maxLength: 10 });

/** The area of openings; never above the area, whatever the unit. */
export function openingsOf({ area, openShare }: MadeWall): number {
  return area * openShare;
}

/** The cells of a wall, by column; the label tells its place in the list. */
export function cellsOf(row: MadeWall, index: number): Record<ColumnId, unknown> {
  const blankIfZero = (value: number): number | string => (value === 0 ? '' : value);
  return {
    wall: `W${String(index + 1)}`,
    zone: row.zone,
    level: blankIfZero(row.level),
    material: row.material,
    area: row.area,
    height: blankIfZero(row.height),
    openings: openingsOf(row),
    openingPerimeter: row.openingPerimeter,
    fixtures: row.fixtures,
    mortar: row.mortar,
    residue: row.residue,
    brushed: row.brushed,
    age: blankIfZero(row.age),
    masked: row.masked,
    access: row.access,
    suction: blankIfZero(row.suction),
    receives: row.receives,
  };
}

/** The walls with a zone to receive from only where rinse can run down from it. */
export function heeded(rows: readonly MadeWall[]): MadeWall[] {
  return rows.map((row) => {
    const upper = ZONES.indexOf(row.receives);
    const runs = upper < ZONES.indexOf(row.zone) && rows.some(({ zone }) => zone === row.receives);
    return runs ? row : { ...row, receives: '' };
  });
}

/** Cells by column as a headed range, its columns in the order given. */
export function headed(
  rows: readonly Readonly<Record<ColumnId, unknown>>[],
  order: readonly ColumnId[] = columnIds,
): unknown[][] {
  return [order.map((id) => columns[id].name), ...rows.map((row) => order.map((id) => row[id]))];
}

/** Walls as a headed range. */
export function rangeOf(rows: readonly MadeWall[], order: readonly ColumnId[] = columnIds): unknown[][] {
  return headed(heeded(rows).map(cellsOf), order);
}

/** Factor lines that every job can carry: the choice of units, and some of the user's own values. */
export type FactorLines = readonly (readonly [string, number | string])[];

const atLeast: Readonly<Record<string, number>> = {
  'dwell.most': 3,
  'patch.most': 8,
  'access.move': 3,
};

/** What must not be above another factor, or cannot be given beside one, or is no amount. */
const notScaled = new Set<string>([
  'dwell.least',
  'setup.perDay',
  'patch.least',
  'access.groundMove',
  'price.crew',
  'price.span.least',
  'wash.date',
]);

/**
 * Values of the user's own for some factors, in US units, within a tenth and ten times of the starting value and
 * within the range that is accepted.
 */
export const ownFactors: fc.Arbitrary<FactorLines> = fc
  .record(
    Object.fromEntries(
      factors
        .filter(({ id }) => !notScaled.has(id) && !id.startsWith('weather.'))
        .map((row) => {
          if ('choices' in row) return [row.id, fc.constantFrom<string>(...row.choices)];
          const start = row.value === 0 ? 1 : row.value;
          const times = fc.double({ min: 0.1, max: 10, noNaN: true });
          return [
            row.id,
            times.map((by) => {
              const value = Math.min(Math.max(start * by, row.least), row.most);
              const amount = 'whole' in row ? Math.ceil(value) : Number(value.toPrecision(5));
              // A number between 0 and 1 beside a factor in % could mean two things.
              return row.kind === 'percent' && amount < 1 ? `${String(amount)}%` : amount;
            }),
          ];
        }),
    ),
    { requiredKeys: [] },
  )
  .map((given) =>
    Object.entries(given as Record<string, number | string>).flatMap(
      ([id, value]): [string, number | string][] =>
        // What another factor must not be above is no less than its starting value.
        Number(value) < (atLeast[id] ?? -Infinity) ? [] : [[id, value]],
    ),
  );
