import type { Cell } from './cell';

// A time that ends in Z may lie on another day where the user is.
const ISO = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ][^Z]*)?$/;
const DAY_MONTH_YEAR = /^(\d{1,2})[\s.-]*([a-z]{3,9})\.?[\s,.-]*(\d{4})$/i;
const MONTH_DAY_YEAR = /^([a-z]{3,9})\.?[\s-]*(\d{1,2})(?:st|nd|rd|th)?[\s,-]+(\d{4})$/i;
const MONTHS = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];
const DAYS_OF_MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const DAYS_OF_YEAR = 365;
// Days of the calendar up to 1899-12-30, the day that the spreadsheet counts as 0.
const DAYS_BEFORE_COUNTING = 693_594;

/**
 * The day of a cell, as the spreadsheet counts: a number, a date cell, or a text whose order of day, month and year can
 * be one only: 2026-02-03, Feb 3, 2026, 3-Feb-2026.
 * @param cell the cell
 * @returns the day with its part of a day; undefined where it is none, or its order is not known
 */
export function dayIn(cell: Cell): number | undefined {
  if (cell.type === 'number') return cell.value;
  if (cell.type !== 'date' && cell.type !== 'text') return undefined;
  const counted = Number(cell.value);
  if (!Number.isNaN(counted)) return counted;
  const [, year, month, day] = ISO.exec(cell.value) ?? [];
  if (year !== undefined) return counting(Number(year), Number(month), Number(day));
  const [, before, name, ofYear] = DAY_MONTH_YEAR.exec(cell.value) ?? [];
  if (name !== undefined) return counting(Number(ofYear), monthOf(name), Number(before));
  const [, first = '', after, inYear] = MONTH_DAY_YEAR.exec(cell.value) ?? [];
  return counting(Number(inYear), monthOf(first), Number(after));
}

function monthOf(name: string): number {
  const small = name.toLowerCase();
  const sept = small === 'sept' ? 'sep' : small;
  return MONTHS.findIndex((month) => month === sept || month.slice(0, 3) === sept) + 1;
}

/** The day as the spreadsheet counts; undefined where the calendar (Gregorian) has no such day. */
function counting(year: number, month: number, day: number): number | undefined {
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const lengths = DAYS_OF_MONTHS.map((days, index) => (index === 1 && isLeap ? days + 1 : days));
  if (!(day >= 1 && day <= (lengths[month - 1] ?? 0))) return undefined;
  const before = year - 1;
  const leapDays = Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  const ofYear = lengths.slice(0, month - 1).reduce((sum, days) => sum + days, day);
  return DAYS_OF_YEAR * before + leapDays + ofYear - DAYS_BEFORE_COUNTING;
}
