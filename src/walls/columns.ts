import type { Kind } from '../quantity/systems';
import { accessKinds } from '../rules/access-kinds';
import { mortarTypes } from '../rules/mortars';
import type { MaterialInForce } from '../rules/read-factors';
import { residues } from '../rules/residues';
import { masks } from './masks';

/** How a cell that holds a text or a number as a label is read. */
export interface TextReading {
  readonly as: 'text';
  /** What a blank cell stands for. */
  readonly blank: string;
  /** The first spelling in the range stands for all that differ from it in case and spacing alone. */
  readonly spelling?: 'first';
}

/** How a cell that names a material is read. */
export interface MaterialReading {
  readonly as: 'material';
}

/** How a cell that holds a number is read; a blank one is 0, and a 0 counts as blank. Bounds in base units. */
export interface NumberReading {
  readonly as: 'number';
  readonly kind: Kind;
  /** Bounds of what is not 0. */
  readonly least: number;
  readonly most: number;
  readonly whole?: true;
  /** A number from here on is a date, as a day counted by the spreadsheet; read as the days from it to the wash. */
  readonly datesFrom?: number;
}

/** How a cell that holds one of a few words is read. */
export interface ChoiceReading {
  readonly as: 'choice';
  readonly choices: readonly string[];
  /** What may stand before the word, where case and spacing are ignored. */
  readonly leaveOff?: RegExp;
}

/** How the cell of a column is read. */
export type ColumnReading = TextReading | MaterialReading | NumberReading | ChoiceReading;

/** A column of the wall rows. */
export interface Column {
  readonly name: string;
  readonly needed: boolean;
  readonly reading: ColumnReading;
  /** Rows that differ in such columns alone are of one group: what they hold adds up, or tells the rows apart. */
  readonly ofRow?: true;
}

/** The zone of the rows that state none. */
export const NO_ZONE = '(no zone)';

// Bounds of sense, in base units: they keep every total finite and catch a value typed in the wrong unit.
const MOST_AREA = 1e7;
const MOST_LENGTH = 1e6;
const LEAST_HEIGHT = 1e-3;
const MOST_HEIGHT = 1e3;
const MOST_COUNT = 1e6;
// Days that the spreadsheet counts from 1900; no wall is so old, and no wash so early.
const FIRST_DATE = 20_000;
const MOST_DAYS = FIRST_DATE - 1;
const MOST_SUCTION = 10;

/** The columns, in the order in which a new table is laid out. */
export const columns = {
  wall: { name: 'Wall', needed: true, ofRow: true, reading: { as: 'text', blank: '' } },
  zone: {
    name: 'Zone',
    needed: false,
    reading: { as: 'text', blank: NO_ZONE, spelling: 'first' },
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
    ofRow: true,
    reading: { as: 'number', kind: 'area', least: 0, most: MOST_AREA },
  },
  height: {
    name: 'Height',
    needed: false,
    reading: { as: 'number', kind: 'length', least: LEAST_HEIGHT, most: MOST_HEIGHT },
  },
  openings: {
    name: 'Openings',
    needed: false,
    ofRow: true,
    reading: { as: 'number', kind: 'area', least: 0, most: MOST_AREA },
  },
  openingPerimeter: {
    name: 'Opening perimeter',
    needed: false,
    ofRow: true,
    reading: { as: 'number', kind: 'length', least: 0, most: MOST_LENGTH },
  },
  fixtures: {
    name: 'Fixtures',
    needed: false,
    ofRow: true,
    reading: { as: 'number', kind: 'count', least: 0, most: MOST_COUNT, whole: true },
  },
  mortar: {
    name: 'Mortar',
    needed: false,
    reading: { as: 'choice', choices: mortarTypes, leaveOff: /^type/ },
  },
  residue: {
    name: 'Residue',
    needed: false,
    reading: { as: 'choice', choices: residues },
  },
  brushed: {
    name: 'Brushed',
    needed: false,
    reading: { as: 'choice', choices: ['yes', 'no', 'priced'] },
  },
  age: {
    name: 'Age',
    needed: false,
    ofRow: true,
    reading: { as: 'number', kind: 'days', least: 0, most: MOST_DAYS, datesFrom: FIRST_DATE },
  },
  masked: {
    name: 'Masked',
    needed: false,
    reading: { as: 'choice', choices: masks },
  },
  access: {
    name: 'Access',
    needed: false,
    reading: { as: 'choice', choices: accessKinds },
  },
  suction: {
    name: 'Suction',
    needed: false,
    reading: { as: 'number', kind: 'suction', least: 0, most: MOST_SUCTION },
  },
  receives: {
    name: 'Receives',
    needed: false,
    reading: { as: 'text', blank: '' },
  },
} as const satisfies Record<string, Column>;

/** The name of a column in the code. */
export type ColumnId = keyof typeof columns;

/** All columns in order. */
export const columnIds = Object.keys(columns) as ColumnId[];

/** The columns that are read in a way. */
export type ColumnsRead<As extends ColumnReading['as']> = {
  [Id in ColumnId]: (typeof columns)[Id]['reading'] extends { as: As } ? Id : never;
}[ColumnId];

/** The words that a column takes. */
export type ChoiceOf<Id extends ColumnsRead<'choice'>> = (typeof columns)[Id]['reading']['choices'][number];

/** What the cell of a column is read as. */
export type ValueOf<Id extends ColumnId> =
  Id extends ColumnsRead<'choice'>
    ? ChoiceOf<Id> | undefined
    : (typeof columns)[Id]['reading'] extends NumberReading
      ? number
      : (typeof columns)[Id]['reading'] extends MaterialReading
        ? MaterialInForce
        : string;
