import { referencedArea } from '../../src/spreadsheet/reference';
import { tokensOf, type Token } from '../../src/spreadsheet/tokens';
import { cellAddress, cellsIn, fromZero } from '../xlsx/address';

// A formula without the mark of an array gives one value: where it computes with a range it takes the cell of the
// range that is in its own row or column (platform documentation, "Implicit intersection operator: @").

const OPERATOR = /^(?:[-+*/^&=<>%]|<=|>=|<>)$/;

/** Functions whose arguments are single values, so that a range among them stands for one of its cells. */
const OF_SINGLES = new Set(
  (
    'ABS ACOS ACOSH ASIN ASINH ATAN ATAN2 ATANH CEILING CHAR CLEAN CODE COS COSH DATE DATEVALUE DAY DEGREES EVEN EXACT ' +
    'EXP FACT FIND FIXED FLOOR HOUR IF INT ISBLANK ISERR ISERROR ISEVEN ISLOGICAL ISNA ISNONTEXT ISNUMBER ISODD ISTEXT ' +
    'LEFT LEN LN LOG LOG10 LOWER MID MINUTE MOD MONTH NOT ODD POWER PROPER RADIANS REPLACE REPT RIGHT ROUND ROUNDDOWN ' +
    'ROUNDUP SEARCH SECOND SIGN SIN SINH SQRT SUBSTITUTE TAN TANH TEXT TIME TRIM TRUNC UPPER VALUE WEEKDAY YEAR'
  ).split(' '),
);

/** Functions that compute with whole ranges wherever they stand. */
const OF_ARRAYS =
  /^(?:WASH\..*|SUMPRODUCT|MMULT|MINVERSE|MDETERM|TRANSPOSE|LOOKUP|INDEX|FREQUENCY|AGGREGATE|TREND|LINEST|GROWTH|LOGEST|FILTER|SORT|SORTBY|UNIQUE|SEQUENCE|RANDARRAY|XLOOKUP|XMATCH|LET|LAMBDA|MAP|REDUCE|SCAN|MAKEARRAY|BYROW|BYCOL|VSTACK|HSTACK|TOROW|TOCOL|WRAPROWS|WRAPCOLS|TAKE|DROP|EXPAND|CHOOSEROWS|CHOOSECOLS|TEXTSPLIT|SINGLE)$/i;

function intersection(reference: string, row: number, column: number): string | undefined {
  const end = reference.lastIndexOf('!') + 1;
  const referenced = referencedArea(reference.slice(end));
  if (!referenced) return undefined;
  const area = fromZero(referenced);
  if (cellsIn(area) === 1) return undefined;
  const prefix = reference.slice(0, end);
  const { top, bottom, left, right } = area;
  if (left === right && row >= top && row <= bottom) return prefix + cellAddress(row, left);
  if (top === bottom && column >= left && column <= right) return prefix + cellAddress(top, column);
  return '#VALUE!';
}

/**
 * A formula that is not marked as an array, with one cell in place of each range that it computes with.
 * @param formula without `=`, in the engine's terms
 * @param row row of its cell, counted from 0
 * @param column column of its cell, counted from 0
 * @returns the formula; what takes whole ranges still has them
 */
export function withSingleCells(formula: string, row: number, column: number): string {
  if (!formula.includes(':')) return formula;
  const tokens = tokensOf(formula);
  const solid = tokens.filter(({ kind }) => kind !== 'space');
  const around = new Map(solid.map((token, index) => [token, [solid[index - 1], solid[index + 1]] as const]));
  const calls: string[] = [];
  let called = '';
  const isOperator = (token: Token | undefined): boolean =>
    token?.kind === 'sign' && OPERATOR.test(token.text);
  return tokens
    .map((token) => {
      if (token.kind === 'call') called = token.text.toUpperCase();
      else if (token.text === '(') {
        // Brackets without a name are part of what stands around them.
        calls.push(called || (calls.at(-1) ?? ''));
        called = '';
      } else if (token.text === ')') calls.pop();
      if (token.kind !== 'reference' || calls.some((each) => OF_ARRAYS.test(each))) return token.text;
      const [before, after] = around.get(token) ?? [];
      const within = calls.at(-1) ?? '';
      const alone = within === '' || OF_SINGLES.has(within);
      // What an operator between ranges gives is a range.
      if (before?.text === ':' || after?.text === ':' || after?.text === '#') return token.text;
      if (!alone && !isOperator(before) && !isOperator(after)) return token.text;
      return intersection(token.text, row, column) ?? token.text;
    })
    .join('');
}
