/** The headings of the wall rows, in the order of a line. */
export const WALL_HEADINGS = [
  'Wall',
  'Zone',
  'Level',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Opening perimeter',
  'Fixtures',
  'Mortar',
  'Residue',
  'Brushed',
  'Age',
  'Masked',
  'Access',
  'Suction',
] as const;

/** A cell of a wall row; null is left blank. */
type Blank = null;

/** A wall row in the order of the headings. */
export type WallLine = readonly [
  wall: string,
  zone: string,
  level: number,
  material: string,
  area: number,
  height: number,
  openings: number | Blank,
  openingPerimeter: number | Blank,
  fixtures: number | Blank,
  mortar: 'M' | 'S' | 'N' | 'O' | Blank,
  residue: 'light' | 'moderate' | 'heavy' | Blank,
  brushed: 'yes' | 'no' | Blank,
  age: number | Blank,
  masked: 'yes' | 'no' | 'only' | 'never' | Blank,
  access: 'ground' | 'scaffold' | 'lift' | 'ladder' | 'suspended' | Blank,
  suction: number | Blank,
];

/** A factor that the bid sets itself. */
export type FactorLine = readonly [id: string, value: number | string, note: string];

/** The headings of the recorded work, in the order of the sheet. */
export const ACTUALS_HEADINGS = [
  'Date',
  'Zone',
  'Wall',
  'Task',
  'Area',
  'Hours',
  'Water',
  'Cleaner',
  'Note',
] as const;

/** A line of recorded work; the date as the spreadsheet counts days. */
export type ActualsLine = readonly [
  date: number,
  zone: string | Blank,
  wall: string | Blank,
  task: string,
  area: number | Blank,
  hours: number,
  water: number | Blank,
  cleaner: number | Blank,
  note: string | Blank,
];

/** A line of the bid that is priced by hand. */
export interface PricedLine {
  readonly item: string;
  readonly description: string;
  readonly quantity: number;
  readonly unit: string;
  readonly rate: number;
}

/** A band whose brick was swapped in the middle of the job. */
export interface Swap {
  readonly wall: string;
  /** Its material before the swap, which the baseline keeps. */
  readonly former: string;
}

/** A cell that an alternate of the bid sets. */
export type AlternateCell = readonly [
  alternate: string,
  wall: string | null,
  column: string,
  value: string | number,
];

/** A job to make a bid workbook of. */
export interface Job {
  readonly file: string;
  readonly title: string;
  readonly units: {
    readonly area: string;
    readonly length: string;
    readonly volume: string;
    readonly mass: string;
  };
  readonly walls: readonly WallLine[];
  readonly swap: Swap;
  readonly factors: readonly FactorLine[];
  readonly actuals: readonly ActualsLine[];
  readonly alternates: readonly AlternateCell[];
  /** The zone whose labor-hours the workbook traces. */
  readonly traced: string;
  readonly before: readonly PricedLine[];
  readonly after: readonly PricedLine[];
}

/**
 * The walls as they were before the swap.
 * @param job the job
 * @returns its walls, one of them in its former material
 * @throws {Error} where the swapped wall is none of them
 */
export function baselineOf({ walls, swap }: Job): WallLine[] {
  if (!walls.some(([wall]) => wall === swap.wall)) throw new Error(`There is no wall ${swap.wall}.`);
  return walls.map((line) => {
    const [wall, zone, level, , ...rest] = line;
    return wall === swap.wall ? [wall, zone, level, swap.former, ...rest] : line;
  });
}
