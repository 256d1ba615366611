import { catalogue } from '../../functions/catalogue';
import {
  areaAddress,
  cellAddress,
  columnLetters,
  meet,
  parseAddress,
  type Area,
} from '../../src/spreadsheet/address';
import type { System } from '../../src/quantity/systems';
import type { SourceRanges, WallSource } from '../shared/wall-source';
import type { Block, Formula, Place, TableInfo } from '../workbook/port';
import { formulaFor, quoted } from '../shared/formulas';
import { functionNamed, jobSummary } from '../shared/job-summary';
import { cleanerClasses } from '../../src/rules/cleaner-classes';

/** What can be put into cells. */
export type Wanted =
  /** The quantities of the whole job, one a row. */
  | { readonly is: 'summary' }
  /** One function; for one zone, for the whole job, or with a row for each zone. */
  | { readonly is: 'function'; readonly name: string; readonly zone: string; readonly eachZone: boolean };

const QUANTITY = '#,##0.0';
const MONEY = '#,##0.00';
const CLASS = '0';

/** The functions that can be put into cells: those that read the walls and need nothing else. */
export const insertable = catalogue.filter(
  ({ parameters }) =>
    parameters.some(({ name }) => name === 'walls') &&
    parameters.every(({ name, optional }) => optional || name === 'walls'),
);

/**
 * Formulas at a cell.
 * @param wanted what to put there
 * @param at the top left cell
 * @param source where walls, factors and headings stand
 * @param job what the labels need
 * @param job.zones names of the zones
 * @param job.system the units of the factors
 * @param job.priced whether there is a price
 * @returns what to write
 */
export function formulasAt(
  wanted: Wanted,
  at: Place,
  source: WallSource,
  job: { readonly zones: readonly string[]; readonly system: System; readonly priced?: boolean },
): Block {
  if (wanted.is === 'summary') return { ...at, rows: jobSummary(source, job.system, job.priced) };
  const called = functionNamed(wanted.name);
  const { top = 1, left = 1 } = parseAddress(at.address) ?? {};
  const words = (row: number, column: number) =>
    isClass(wanted) ? [classWords(cellAddress(row, column))] : [];
  if (!wanted.eachZone || called.result === 'matrix') {
    const zone = wanted.zone === '' ? {} : { zone: quoted(wanted.zone) };
    return { ...at, rows: [[formulaFor(called, source, zone), ...words(top, left)]] };
  }
  const rows = job.zones.map((zone, index) => {
    const row = top + index;
    const label = `$${columnLetters(left)}${String(row)}`;
    return [zone, formulaFor(called, source, { zone: label }), ...words(row, left + 1)];
  });
  return { ...at, rows };
}

/**
 * Whether what is put into cells is a class, beside which its words stand.
 * @param wanted what to put there
 * @returns true for one class a cell
 */
export function isClass(wanted: Wanted): boolean {
  return wanted.is === 'function' && functionNamed(wanted.name).unit === 'class';
}

/** The words of the class in a cell, followed as the class changes. */
function classWords(cell: string): Formula {
  const words = cleanerClasses.reduceRight(
    (otherwise, { class: of, name }) => `IF(${cell}=${String(of)},${quoted(name)},${otherwise})`,
    '""',
  );
  // A zone in which nothing is washed has no class, and a blank equals 0.
  return { formula: `=IF(${cell}="","",${words})` };
}

/**
 * A block without its words of classes.
 * @param wanted what is put there
 * @param block what to write
 * @returns the block without its last column, where that holds them
 */
export function withoutWords(wanted: Wanted, block: Block): Block {
  return isClass(wanted) ? { ...block, rows: block.rows.map((row) => row.slice(0, -1)) } : block;
}

/**
 * Number formats of the formulas in a block.
 * @param wanted what is put there
 * @param block what to write
 * @returns a format by address, for each cell that holds a number of one quantity
 */
export function formatsOf(wanted: Wanted, block: Block): Record<string, string> {
  const { top = 1, left = 1 } = parseAddress(block.address) ?? {};
  const column = wanted.is === 'summary' || wanted.eachZone ? 1 : 0;
  const format = wanted.is === 'summary' ? QUANTITY : formatFor(wanted.name);
  if (format === undefined) return {};
  return Object.fromEntries(block.rows.map((_, row) => [cellAddress(top + row, left + column), format]));
}

function formatFor(name: string): string | undefined {
  const { unit, result } = functionNamed(name);
  if (unit === 'text' || result === 'matrix') return undefined;
  return unit === 'class' ? CLASS : unit === 'money' ? MONEY : QUANTITY;
}

/**
 * The cells that a spilling formula fills beyond its own.
 * @param wanted what is put into a cell
 * @param at the cell
 * @param ranges the walls, factors and headings as they are now
 * @returns the place; undefined where nothing spills, or where there is no result yet
 */
export async function spillOf(wanted: Wanted, at: Place, ranges: SourceRanges): Promise<Place | undefined> {
  if (wanted.is === 'summary') return undefined;
  const { name: wantedName, parameters, result } = functionNamed(wanted.name);
  const corner = parseAddress(at.address);
  if (result !== 'matrix' || !corner) return undefined;
  const given: Readonly<Record<string, unknown>> = { ...ranges, zone: wanted.zone };
  try {
    // What the functions do is large, and the panel opens without it.
    const { worksheetFunctions } = await import('../../functions/worksheet-functions');
    const rows = worksheetFunctions
      .find(({ name }) => name === wantedName)
      ?.run(parameters.map(({ name }) => given[name] ?? null));
    return Array.isArray(rows) ? { sheet: at.sheet, address: areaAddress(sized(corner, rows)) } : undefined;
  } catch {
    // The cell will say what is wrong with the walls.
    return undefined;
  }
}

/**
 * Whether what is put into a cell may fill others.
 * @param wanted what is put into a cell
 * @returns true for a function that spills
 */
export function fillsMore(wanted: Wanted): boolean {
  return wanted.is === 'function' && functionNamed(wanted.name).result === 'matrix';
}

/**
 * The table into which a spill would reach: Excel lets no formula fill cells of a table.
 * @param place the cells of the spill; undefined where nothing spills
 * @param tables the tables of the workbook
 * @returns its name, or undefined
 */
export function tableUnder(place: Place | undefined, tables: readonly TableInfo[]): string | undefined {
  const area = place && parseAddress(place.address);
  if (!area) return undefined;
  return tables.find(({ sheet, address }) => {
    const of = parseAddress(address);
    return sheet.toLowerCase() === place.sheet.toLowerCase() && of !== undefined && meet(area, of);
  })?.name;
}

/**
 * Those cells of a spill that are filled, its own cell aside.
 * @param spill the cells of the spill
 * @param rows what they hold
 * @returns their addresses
 */
export function inTheWay(spill: Place, rows: readonly (readonly unknown[])[]): string[] {
  const corner = parseAddress(spill.address);
  if (!corner) return [];
  return rows.flatMap((row, down) =>
    row.flatMap((value, across) =>
      value === '' || (down === 0 && across === 0)
        ? []
        : [cellAddress(corner.top + down, corner.left + across)],
    ),
  );
}

function sized({ top, left }: Area, rows: readonly (readonly unknown[])[]): Area {
  return { top, left, bottom: top + rows.length - 1, right: left + (rows[0]?.length ?? 1) - 1 };
}
