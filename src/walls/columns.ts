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
  wall: { name: 'Wall', needed: true, reading: { as: 'text' } },
  zone: {
    name: 'Zone',
    needed: false,
    reading: { as: 'text' },
  },
  level: {
    name: 'Level',
    needed: false,
    reading: { as: 'number', kind: 'count', least: 0, most: MOST_COUNT, whole: true },
  },
  material: {
    name: 'Material',
    needed: true,
    reading: { as: 'material' },
  },
  area: {
    name: 'Area',
    needed: true,
    reading: { as: 'number', kind: 'area', least: 0, most: MOST_AREA },
  },
  height: {
    name: 'Height',
    needed: false,
    reading: { as: 'number', kind: 'length', least: 0, most: MOST_HEIGHT },
  },
  openings: {
    name: 'Openings',
    needed: false,
    reading: { as: 'number', kind: 'area', least: 0, most: MOST_AREA },
  },
  openingPerimeter: {
    name: 'Opening perimeter',
    needed: false,
    reading: { as: 'number', kind: 'length', least: 0, most: MOST_LENGTH },
  },
  fixtures: {
    name: 'Fixtures',
    needed: false,
    reading: { as: 'number', kind: 'count', least: 0, most: MOST_COUNT, whole: true },
  },
  mortar: {
    name: 'Mortar',
    needed: false,
    reading: { as: 'choice', choices: mortarTypes },
  },
  residue: {
    name: 'Residue',
    needed: false,
    reading: { as: 'choice', choices: residues },
  },
  brushed: {
    name: 'Brushed',
    needed: false,
    reading: { as: 'choice', choices: ['yes', 'no'] },
  },
  age: {
    name: 'Age',
    needed: false,
    reading: { as: 'number', kind: 'days', least: 0, most: MOST_DAYS },
  },
  masked: {
    name: 'Masked',
    needed: false,
    reading: { as: 'choice', choices: ['yes', 'no', 'never'] },
  },
  suction: {
    name: 'Suction',
    needed: false,
    reading: { as: 'number', kind: 'suction', least: 0, most: MOST_SUCTION },
  },
  receives: {
    name: 'Receives',
    needed: false,
    reading: { as: 'text' },
  },
} as const satisfies Record<string, Column>;

/** The name of a column in the code. */
export type ColumnId = keyof typeof columns;

/** All columns in order. */
export const columnIds = Object.keys(columns) as ColumnId[];
