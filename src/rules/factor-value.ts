import { isBlankOrZero, type Cell } from '../quantity/cell';
import { numberOf } from './number-of';
import { isPercentInDoubt, percentInDoubt, percentOf } from './percent';
import { tradeWord } from '../quantity/trade-word';
import { dayIn } from '../quantity/day';
import { toBase } from '../quantity/conversions';
import { DIGITS, tidy } from '../quantity/shown-number';
import { unitInWords } from '../quantity/shown-unit';
import { show, take, unitOf, type System } from '../quantity/systems';
import type { Factor } from './factors';

// Share of the starting value, or of 1 where there is none.
const NEXT_TO_NOTHING = 1e-6;

/** What holds for a value that a user gives. */
export type Accepted = Pick<
  Factor,
  'unit' | 'kind' | 'least' | 'most' | 'positive' | 'whole' | 'choices' | 'date'
> & {
  readonly value?: number;
};

/**
 * Reads the value that a user gives a factor or a property of a material.
 * @param cell the cell beside its id
 * @param range what holds for it
 * @param system the display system that the value is typed in
 * @returns the value in its base unit, or what is accepted instead
 */
export function readFactorValue(
  cell: Cell,
  range: Accepted,
  system: System,
): { readonly value: number } | { readonly accepted: string } {
  if (range.choices) return readWord(cell, range.choices);
  // A value that is next to nothing divides as badly as 0 does: results would overflow.
  const isAboveZero = range.positive === true && range.least === 0;
  const leastUsable = isAboveZero ? (range.value ?? 1) * NEXT_TO_NOTHING : range.least;
  const least = show(toBase(leastUsable, range.unit), range.kind, system);
  const most = show(toBase(range.most, range.unit), range.kind, system);
  const isPercent = range.kind === 'percent';
  const seen = (range.date ? dayIn(cell) : undefined) ?? (isPercent ? percentOf(cell) : numberOf(cell));
  const unit = unitOf(range.kind, system);
  const fits =
    seen !== undefined && seen >= least && seen <= most && !(range.whole && !Number.isInteger(seen));
  if (isPercent && isPercentInDoubt(cell) && (fits || !cell.percent)) {
    return { accepted: `${acceptedRange(least, most, range, unit)}; ${percentInDoubt(cell.value)}` };
  }
  if (fits) return { value: take(seen, range.kind, system) };
  const isTiny = seen !== undefined && seen > 0 && seen < least;
  const from = isAboveZero && !isTiny ? 0 : least;
  return { accepted: acceptedRange(from, most, range, unit) };
}

function readWord(
  cell: Cell,
  choices: readonly string[],
): { readonly value: number } | { readonly accepted: string } {
  const word =
    cell.type === 'text' ? tradeWord(cell.value) : cell.type === 'boolean' ? (cell.value ? 'yes' : 'no') : '';
  const value = isBlankOrZero(cell) ? 0 : choices.indexOf(word);
  return value < 0 ? { accepted: choices.join(', ') } : { value };
}

/**
 * What is accepted, in words.
 * @param least least value, as shown
 * @param most most value, as shown
 * @param row whether it must be whole, or above 0
 * @param unit unit that it is shown in
 * @returns for example `a number from 0 to 120 min`
 */
function acceptedRange(
  least: number,
  most: number,
  row: { positive?: boolean; whole?: boolean },
  unit: string,
): string {
  const what = row.whole ? 'a whole number' : 'a number';
  const bounds =
    row.positive && least === 0
      ? `above 0 and at most ${bound(most)}`
      : `from ${bound(least)} to ${bound(most)}`;
  if (unit === '1' || unit === '%') return `${what} ${bounds}${unit === '%' ? unit : ''}`;
  return `${what} ${bounds} ${unitInWords(unit)}`;
}

function bound(value: number): string {
  return String(tidy(value, DIGITS.typed));
}
