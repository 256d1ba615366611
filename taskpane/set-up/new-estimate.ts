import type { System } from '../../src/quantity/systems';
import { columnIds, columns, type ColumnId } from '../../src/walls/columns';
import { exampleLabel } from '../../src/walls/example-rows';
import type { WallSource } from '../shared/wall-source';
import type { Block, CellContent } from '../workbook/port';
import { FORM_SAYS, formBlock } from '../shared/factor-table-rows';
import { formulaFor } from '../shared/formulas';
import { functionNamed, jobSummary } from '../shared/job-summary';
import type { FreeNames } from '../shared/free-names';

/** Blocks to write, and the walls that they make. */
export interface Plan {
  readonly blocks: readonly Block[];
  readonly source: WallSource;
  /** What is written and where, for the user. */
  readonly says: readonly string[];
}

type Example = Partial<Record<ColumnId, CellContent>>;

// Three rows to be typed over, in whole numbers of each system; they show what each column takes.
const EXAMPLES: Readonly<Record<System, readonly Example[]>> = {
  US: [
    { ...brick('upper wall', 1), area: 1200, height: 14, openings: 260, openingPerimeter: 180 },
    { ...brick('lower wall', 2), area: 980, height: 12, openings: 340, openingPerimeter: 170 },
    { ...base('base'), area: 310, height: 3 },
  ],
  SI: [
    { ...brick('upper wall', 1), area: 110, height: 4.2, openings: 24, openingPerimeter: 55 },
    { ...brick('lower wall', 2), area: 90, height: 3.6, openings: 30, openingPerimeter: 52 },
    { ...base('base'), area: 29, height: 1 },
  ],
};
const SUMMARY_ROW = 3;
// A column is left free, so that neither grows into the other.
const BESIDE_THE_FORM = 'J1';
const QUANTITY = '#,##0.00';
// From here on a schedule holds quantities; a job rarely has more zones.
const FIRST_QUANTITY = 'E';
const LAST_QUANTITY = 'BZ';
const ZONES = 200;

function brick(wall: string, level: number): Example {
  const zone = 'Example zone';
  return {
    wall: exampleLabel(wall),
    zone,
    level,
    material: 'Red clay brick',
    mortar: 'N',
    residue: 'moderate',
    brushed: 'yes',
    age: 35,
    masked: 'no',
  };
}

function base(wall: string): Example {
  return { ...brick(wall, 3), material: 'Limestone', residue: 'light', age: 40 };
}

/**
 * The headings of a wall table, and rows to be typed over.
 * @param system the units of the rows
 * @returns the rows, the headings first
 */
export function exampleWalls(system: System): CellContent[][] {
  return [
    columnIds.map((id) => columns[id].name),
    ...EXAMPLES[system].map((example) => columnIds.map((id) => example[id] ?? '')),
  ];
}

/**
 * A new estimate on sheets of its own: walls, factors, estimate, checks.
 * @param system the units
 * @param names gives names that are not taken
 * @returns what to write
 */
export function newEstimate(system: System, names: FreeNames): Plan {
  const walls = { table: names.table('Walls'), sheet: names.sheet('Walls') };
  const factors = { table: names.table('Factors'), sheet: names.sheet('Factors') };
  const estimate = names.sheet('Estimate');
  const checks = names.sheet('Checks');
  const source: WallSource = { walls: { table: walls.table }, factors: { table: factors.table } };
  const summary = jobSummary(source, system);
  const schedule = SUMMARY_ROW + summary.length + 1;
  const firstZone = schedule + 2;
  const formats = {
    [`B${String(SUMMARY_ROW)}:B${String(SUMMARY_ROW + summary.length - 1)}`]: QUANTITY,
    [`${FIRST_QUANTITY}${String(firstZone)}:${LAST_QUANTITY}${String(firstZone + ZONES - 1)}`]: QUANTITY,
  };
  const one = (sheet: string, address: string, name: string): Block => ({
    sheet,
    address,
    rows: [[formulaFor(functionNamed(name), source)]],
  });
  return {
    source,
    blocks: [
      { sheet: walls.sheet, address: 'A1', rows: exampleWalls(system), table: walls.table },
      formBlock(system, factors),
      one(factors.sheet, BESIDE_THE_FORM, 'FACTORS'),
      { sheet: estimate, address: 'A1', rows: [['Wash-down, whole job']], heading: true },
      { sheet: estimate, address: `A${String(SUMMARY_ROW)}`, rows: summary, formats },
      { sheet: estimate, address: `A${String(schedule)}`, rows: [['Zone by zone']], heading: true },
      one(estimate, `A${String(schedule + 1)}`, 'SCHEDULE'),
      one(checks, 'A1', 'CHECKS'),
    ],
    says: [
      `Sheet ${walls.sheet}: the table ${walls.table} with three example rows. Type over them: they count until you enter a wall of your own.`,
      `Sheet ${factors.sheet}: the table ${factors.table}: ${FORM_SAYS}. Beside it every factor in force.`,
      `Sheet ${estimate}: the quantities of the job, and a line for each zone.`,
      `Sheet ${checks}: what to look at on these walls.`,
    ],
  };
}
