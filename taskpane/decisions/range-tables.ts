import { comparable } from '../../src/quantity/cell';
import { toBase } from '../../src/quantity/conversions';
import { DIGITS, tidy } from '../../src/quantity/shown-number';
import { shownUnit } from '../../src/quantity/shown-unit';
import { show, unitOf } from '../../src/quantity/systems';
import { factors as table, type Factor, type FactorId } from '../../src/rules/factors';
import type { FactorsInForce } from '../../src/rules/read-factors';
import type { CellContent, TableInfo } from '../workbook/port';

const COLUMNS = ['Factor', 'Low', 'Likely', 'High'] as const;
// What a first guess is off by; the user puts the crew's own figures in its place.
const EITHER_WAY = 0.25;
const STARTERS: readonly FactorId[] = [
  'rate.scrape.moderate',
  'scrub.full',
  'rate.apply',
  'rinse.perArea',
  'rate.maskOn',
  'price.labor',
];

/**
 * Whether a table can hold ranges of factors.
 * @param info the table
 * @returns true where it has the four columns, in any order
 */
export function holdsRanges({ headings }: Pick<TableInfo, 'headings'>): boolean {
  return placesOf(headings) !== undefined;
}

/**
 * The four columns of a table of ranges, whatever stands beside and between them.
 * @param rows the table with its headings
 * @returns rows of factor, low, likely, high, the headings first; no row where a column is missing
 */
export function rangeColumns(rows: readonly (readonly CellContent[])[]): CellContent[][] {
  const places = placesOf((rows[0] ?? []).map(String));
  return places ? rows.map((row) => places.map((place) => row[place] ?? '')) : [];
}

/**
 * Rows to start a table of ranges with: a few factors that weigh much, a quarter either way of the value in force.
 * @param factors the factors in force
 * @returns the rows, the headings first
 */
export function starterRanges(factors: FactorsInForce): CellContent[][] {
  const rows = table
    .filter(({ id }) => STARTERS.includes(id) && factors.value(id) > 0)
    .map((factor) => starterRow(factor, factors));
  return [[...COLUMNS, 'Unit', 'Meaning'], ...rows];
}

function starterRow(factor: Factor & { id: FactorId }, { value, system }: FactorsInForce): CellContent[] {
  const { id, kind, unit, meaning } = factor;
  const likely = value(id);
  const low = Math.max(likely * (1 - EITHER_WAY), toBase(factor.least, unit));
  const high = Math.min(likely * (1 + EITHER_WAY), toBase(factor.most, unit));
  const shown = [low, likely, high].map((end) => tidy(show(end, kind, system), DIGITS.typed));
  return [id, ...shown, shownUnit(unitOf(kind, system)), meaning];
}

function placesOf(headings: readonly string[]): number[] | undefined {
  const seen = headings.map(comparable);
  const places = COLUMNS.map((column) => seen.indexOf(comparable(column)));
  return places.includes(-1) ? undefined : places;
}
