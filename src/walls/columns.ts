import type { Kind } from '../quantity/systems';
import { mortarTypes } from '../rules/mortars';
import { residues } from '../rules/residues';

/** How the cell of a column is read. */
export type ColumnReading =
  | { readonly as: 'text' }
  | { readonly as: 'material' }
  | {
      readonly as: 'number';
      readonly kind: Kind;
      readonly least: number;
      readonly most: number;
      readonly whole?: boolean;
    }
  | { readonly as: 'choice'; readonly choices: readonly string[] };

/** A column of the wall rows. */
export interface Column {
  readonly name: string;
  readonly needed: boolean;
  readonly reading: ColumnReading;
  readonly meaning: string;
}

// Bounds of sense, in base units: they keep every total finite and catch a value typed in the wrong unit.
const MOST_AREA = 1e7;
const MOST_LENGTH = 1e6;
const MOST_HEIGHT = 1e3;
const MOST_COUNT = 1e6;
const MOST_DAYS = 36500;
const MOST_SUCTION = 10;

/** The columns, in the order in which a new table is laid out. */
export const columns = {
  wall: { name: 'Wall', needed: true, reading: { as: 'text' }, meaning: "the row's own label, unique" },
  zone: {
    name: 'Zone',
    needed: false,
    reading: { as: 'text' },
    meaning: 'walls whose wash and rinse water meet; washed with one cleaner',
  },
  level: {
    name: 'Level',
    needed: false,
    reading: { as: 'number', kind: 'count', least: 0, most: MOST_COUNT, whole: true },
    meaning: 'order from the top, 1 = highest',
  },
  material: {
    name: 'Material',
    needed: true,
    reading: { as: 'material' },
    meaning: 'a name or code of the material table',
  },
  area: {
    name: 'Area',
    needed: true,
    reading: { as: 'number', kind: 'area', least: 0, most: MOST_AREA },
    meaning: 'gross face area',
  },
  height: {
    name: 'Height',
    needed: false,
    reading: { as: 'number', kind: 'length', least: 0, most: MOST_HEIGHT },
    meaning: 'wall height',
  },
  openings: {
    name: 'Openings',
    needed: false,
    reading: { as: 'number', kind: 'area', least: 0, most: MOST_AREA },
    meaning: 'area of windows and doors in it',
  },
  openingPerimeter: {
    name: 'Opening perimeter',
    needed: false,
    reading: { as: 'number', kind: 'length', least: 0, most: MOST_LENGTH },
    meaning: 'perimeter of windows and doors in it',
  },
  fixtures: {
    name: 'Fixtures',
    needed: false,
    reading: { as: 'number', kind: 'count', least: 0, most: MOST_COUNT, whole: true },
    meaning: 'lights, boxes and vents to cover',
  },
  mortar: {
    name: 'Mortar',
    needed: false,
    reading: { as: 'choice', choices: mortarTypes },
    meaning: 'mortar type of ASTM C270',
  },
  residue: {
    name: 'Residue',
    needed: false,
    reading: { as: 'choice', choices: residues },
    meaning: 'mortar left on the face',
  },
  brushed: {
    name: 'Brushed',
    needed: false,
    reading: { as: 'choice', choices: ['yes', 'no'] },
    meaning: 'brushed down each day',
  },
  age: {
    name: 'Age',
    needed: false,
    reading: { as: 'number', kind: 'days', least: 0, most: MOST_DAYS },
    meaning: 'days since laid',
  },
  masked: {
    name: 'Masked',
    needed: false,
    reading: { as: 'choice', choices: ['yes', 'no', 'never'] },
    meaning: 'covered instead of washed; never = it cannot be covered',
  },
  suction: {
    name: 'Suction',
    needed: false,
    reading: { as: 'number', kind: 'suction', least: 0, most: MOST_SUCTION },
    meaning: 'measured initial rate of absorption',
  },
  receives: {
    name: 'Receives',
    needed: false,
    reading: { as: 'text' },
    meaning: 'name of the upper zone whose rinse runs over this row',
  },
} as const satisfies Record<string, Column>;

/** The name of a column in the code. */
export type ColumnId = keyof typeof columns;

/** All columns in order. */
export const columnIds = Object.keys(columns) as ColumnId[];
