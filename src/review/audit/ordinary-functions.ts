import { isError, isRows, type ErrorValue, type Outcome, type Value } from './outcome';

/** An ordinary worksheet function over arguments that are worked out; an error among them is handed over. */
export type OrdinaryFunction = (args: readonly Outcome[]) => Outcome;

const VALUE_ERROR: ErrorValue = { error: '#VALUE!', message: '' };
const DIVIDED_BY_ZERO: ErrorValue = { error: '#DIV/0!', message: '' };
const NO_SUCH_CELL: ErrorValue = { error: '#REF!', message: '' };

/**
 * A value as a number, as a spreadsheet takes it.
 * @param value a value; a blank is 0
 * @returns the number, or the error that comes of it
 */
export function numberOf(value: Value): number | ErrorValue {
  if (isError(value)) return value;
  if (typeof value === 'number') return value;
  if (typeof value === 'boolean') return value ? 1 : 0;
  const number = Number(value);
  return Number.isFinite(number) ? number : VALUE_ERROR;
}

/**
 * Arithmetic over two values.
 * @param sign one of + - * / ^
 * @param left a value
 * @param right a value
 * @returns the result, or an error
 */
export function arithmetic(sign: string, left: Value, right: Value): Value {
  const a = numberOf(left);
  const b = numberOf(right);
  if (typeof a !== 'number') return a;
  if (typeof b !== 'number') return b;
  switch (sign) {
    case '+':
      return a + b;
    case '-':
      return a - b;
    case '*':
      return a * b;
    case '/':
      return b === 0 ? DIVIDED_BY_ZERO : a / b;
    default:
      return a ** b;
  }
}

/**
 * Comparison of two values.
 * @param sign one of = <> < > <= >=
 * @param left a value
 * @param right a value
 * @returns TRUE or FALSE, or an error
 */
export function comparison(sign: string, left: Value, right: Value): Value {
  if (isError(left)) return left;
  if (isError(right)) return right;
  const order = compare(left, right);
  switch (sign) {
    case '=':
      return order === 0;
    case '<>':
      return order !== 0;
    case '<':
      return order < 0;
    case '>':
      return order > 0;
    case '<=':
      return order <= 0;
    default:
      return order >= 0;
  }
}

function compare(left: Exclude<Value, ErrorValue>, right: Exclude<Value, ErrorValue>): number {
  const rank = { number: 0, string: 1, boolean: 2 };
  const [a, b] = [left, right].map((value, index) => {
    const other = index === 0 ? right : left;
    return value === '' && typeof other === 'number'
      ? 0
      : typeof value === 'string'
        ? value.toLowerCase()
        : value;
  });
  if (typeof a !== typeof b) {
    return rank[typeof a as keyof typeof rank] - rank[typeof b as keyof typeof rank];
  }
  return a === b ? 0 : (a ?? 0) < (b ?? 0) ? -1 : 1;
}

function single(outcome: Outcome | undefined): Value {
  if (outcome === undefined) return 0;
  return isRows(outcome) ? (outcome[0]?.[0] ?? '') : outcome;
}

/** Numbers among the arguments, as SUM and MAX take them: texts and blanks in a range do not count. */
function numbersIn(args: readonly Outcome[]): number[] | ErrorValue {
  const numbers: number[] = [];
  for (const arg of args) {
    for (const value of isRows(arg) ? arg.flat() : [arg]) {
      if (isError(value)) return value;
      if (typeof value === 'number') numbers.push(value);
      else if (!isRows(arg)) {
        const number = numberOf(value);
        if (typeof number !== 'number') return number;
        numbers.push(number);
      }
    }
  }
  return numbers;
}

const over =
  (work: (numbers: readonly number[]) => number): OrdinaryFunction =>
  (args) => {
    const numbers = numbersIn(args);
    return Array.isArray(numbers) ? work(numbers) : numbers;
  };

const rounding =
  (round: (scaled: number) => number): OrdinaryFunction =>
  ([number, digits]) => {
    const value = numberOf(single(number));
    const places = numberOf(single(digits));
    if (typeof value !== 'number') return value;
    if (typeof places !== 'number') return places;
    const scale = 10 ** Math.trunc(places);
    // Cut to 14 digits first, so that 1.005 * 100 counts as 100.5.
    const scaled = Number((Math.abs(value) * scale).toPrecision(14));
    return (Math.sign(value) * round(scaled)) / scale;
  };

/** The ordinary functions that stand around Washdown's in estimates; what uses others is listed as not checked. */
export const ordinaryFunctions: Readonly<Record<string, OrdinaryFunction>> = {
  SUM: over((numbers) => numbers.reduce((sum, number) => sum + number, 0)),
  MIN: over((numbers) => (numbers.length === 0 ? 0 : Math.min(...numbers))),
  MAX: over((numbers) => (numbers.length === 0 ? 0 : Math.max(...numbers))),
  ROUND: rounding(Math.round),
  ROUNDUP: rounding(Math.ceil),
  ROUNDDOWN: rounding(Math.floor),
  ABS: ([number]) => {
    const value = numberOf(single(number));
    return typeof value === 'number' ? Math.abs(value) : value;
  },
  IF: ([condition, yes = true, no = false]) => {
    const value = single(condition);
    if (isError(value)) return value;
    const truth = numberOf(value);
    return typeof truth === 'number' ? (truth !== 0 ? yes : no) : truth;
  },
  IFERROR: ([value = '', otherwise = '']) =>
    isRows(value)
      ? value.map((row) => row.map((cell) => (isError(cell) ? single(otherwise) : cell)))
      : isError(value)
        ? otherwise
        : value,
  INDEX: ([rows = '', row, column]) => {
    const lines = isRows(rows) ? rows : [[rows]];
    const down = numberOf(single(row));
    const across = numberOf(single(column));
    if (typeof down !== 'number') return down;
    if (typeof across !== 'number') return across;
    const oneRow = lines.length === 1 && column === undefined;
    const [line, place] = oneRow ? [1, down] : [down, column === undefined ? 1 : across];
    return lines[line - 1]?.[place - 1] ?? NO_SUCH_CELL;
  },
};
