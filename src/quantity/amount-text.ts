import { unitWritten, type StatedUnit } from './stated-unit';

/** A number with its unit, as a cell of a bid states it. */
export interface Amount {
  readonly value: number;
  readonly unit: StatedUnit;
  /** The number may also be another: its one comma or point may stand between thousands or before decimals. */
  readonly inDoubt: boolean;
}

const INCHES_OF_A_FOOT = 12;
const NUMBER_AND_UNIT = /^([\d.,'’ \u00a0\u202f]*\d)\s*([^\d\s.,'’].*|['’])$/u;
const GROUPED = /^\d{1,3}([,'’ \u00a0\u202f])\d{3}(\1\d{3})*(\.\d+)?$/u;
const PLAIN = /^\d+(\.\d+)?$/;
const ONE_COMMA = /^\d+,\d+$/;
const INCHES =
  /^(?:(\d{1,2}(?:\.\d+)?)(?![\d/]))?[\s-]*(?:(\d{1,2})\/(\d{1,2})|([½¼¾⅛⅜⅝⅞]))?\s*(["”″]|''|’’|′′|in\.?|inch|inches)?$/iu;
// 14'-6", 14' 6 1/2", 14'6: a mark of feet.
const AFTER_MARK = /^(\d+)\s*['’′]\s*[-–]?\s*(.*)$/u;
// 14 ft 6 in.: feet by letters, so that the inches must say what they are: 1200 ft2 are none.
const AFTER_LETTERS = /^(\d+)\s*(?:ft\.?|feet|foot)[\s,–-]+(.*(?:["”″]|in\.?|inch|inches))$/iu;
const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/**
 * The number and the unit of a text.
 * @param text for example `1,200 sf` or `14'-6"`
 * @returns both; undefined where the text is not a number with a unit
 */
export function amountIn(text: string): Amount | undefined {
  const trimmed = text.trim();
  const feet = feetIn(trimmed);
  if (feet !== undefined) return { ...feet, inDoubt: false };
  const [, number = '', written = ''] = NUMBER_AND_UNIT.exec(trimmed) ?? [];
  const unit = unitWritten(written)?.unit;
  if (unit === undefined) return undefined;
  const value = PLAIN.test(number)
    ? Number(number)
    : GROUPED.test(number)
      ? Number(number.replace(/[,'’ \u00a0\u202f]/gu, ''))
      : ONE_COMMA.test(number)
        ? Number(number.replace(',', '.'))
        : NaN;
  if (Number.isNaN(value)) return undefined;
  return { value, unit, inDoubt: isInDoubt(number, unit) };
}

/** Feet with inches beside them, down to sixty-fourths: the one pair of units that stands in one cell. */
function feetIn(text: string): Pick<Amount, 'value' | 'unit'> | undefined {
  const [, feet, rest = ''] = AFTER_MARK.exec(text) ?? AFTER_LETTERS.exec(text) ?? [];
  const found = INCHES.exec(rest);
  const unit = unitWritten('ft')?.unit;
  if (feet === undefined || !found || !unit) return undefined;
  const [, whole = '0', over = '0', under = '1', sign = ''] = found;
  const inches = Number(whole) + Number(over) / Number(under) + (FRACTIONS[sign] ?? 0);
  return inches < INCHES_OF_A_FOOT ? { value: Number(feet) + inches / INCHES_OF_A_FOOT, unit } : undefined;
}

/** In US units a point stands before decimals and a comma between thousands; elsewhere either may be both. */
function isInDoubt(number: string, { systems }: StatedUnit): boolean {
  if (ONE_COMMA.test(number)) return !(systems.includes('US') && /^\d{1,3},\d{3}$/.test(number));
  return /^\d{1,3}\.\d{3}$/.test(number) && !systems.includes('US');
}
