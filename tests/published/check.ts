import { factors, type FactorId } from '../../src/rules/factors';
import { call, lines, numberIn, text } from '../properties/call';
import type { CellValue } from '../../functions/worksheet-function';

/**
 * How well a value beside ours is founded. `published`: read in a copy of the source or of a page that quotes it.
 * `computed`: worked out from such values. `from memory`: known, not read; then a second way stands beside it.
 */
export type Mark = 'published' | 'computed' | 'from memory' | 'common practice';

/** One value from outside the project, and how ours is got. */
export interface PublishedCheck {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly mark: Mark;
  /** The published value is a bound where it is no equal. */
  readonly relation?: 'at most' | 'at least';
  /** How far ours may be off, in the unit. */
  readonly within: number;
  /** Why it may be off that far. */
  readonly because: string;
  /** True where a value of our tables is only read back: it guards against a slip of the pen, and proves no rule. */
  readonly reading?: true;
  readonly ours: () => number;
  /** Another way to the value, which a value from memory does not go without. */
  readonly second?: { readonly by: string; readonly value: () => number };
}

/** A source and what is checked against it. */
export interface SourceChecks {
  readonly document: string;
  readonly edition: string;
  readonly section: string;
  readonly checks: readonly PublishedCheck[];
}

/** The value is printed to so many decimals. */
export function printed(decimals: number): Pick<PublishedCheck, 'within' | 'because'> {
  // A hair more than half of the last digit, for a value that stands on the edge of rounding.
  const half = 0.5 * 10 ** -decimals * (1 + 1e-9);
  return {
    within: half,
    because: decimals === 0 ? 'printed to the unit' : `printed to ${String(decimals)} decimals`,
  };
}

/** Area per labor-hour of a norm in labor-h/m2, ft2; a square foot is 0.09290304 m2 (NIST SP 811). */
export function perLaborHour(laborHoursPerM2: number): number {
  return 1 / (laborHoursPerM2 * 0.09290304);
}

/** The value is exact by definition or by rule. */
export const exact: Pick<PublishedCheck, 'within' | 'because'> = { within: 1e-9, because: 'exact' };

/** The starting value of a factor as `FACTORS` shows it. */
export function factor(id: FactorId, units: 'US' | 'SI' = 'US'): number {
  const known = factors.some((row) => row.id === id);
  const row = lines('FACTORS', [['units', units]]).find((line) => line['Factor'] === id);
  if (!known || row === undefined) throw new Error(`There is no factor ${id}.`);
  return numberIn(row, 'Value');
}

/** A number of the material table as `MATERIALS` shows it. */
export function material(
  name: string,
  column: 'Ceiling' | 'Suction' | 'Pressure',
  units: 'US' | 'SI' = 'US',
): number {
  return numberIn(
    lines('MATERIALS', [['units', units]]).find((line) => line['Material'] === name),
    column,
  );
}

/** A line of a function of plain numbers, by its label. */
export function plain(label: string, name: string, ...args: readonly unknown[]): number {
  const spilled = call(name, ...args) as CellValue[][];
  const line = spilled.find(([says]) => says === label);
  if (typeof line?.[1] !== 'number') throw new Error(`${name} gives no ${label}.`);
  return line[1];
}

/** How many findings of a check `CHECKS` spills. */
export function findings(check: string, walls: unknown[][], factorLines: unknown[][] = []): number {
  return lines('CHECKS', walls, null, factorLines).filter((line) => text(line['Check']) === check).length;
}
