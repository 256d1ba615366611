import type { Recorder, Statement, TraceLine } from './recorder';

/** How the parts of a number make it up. */
export type Makes =
  /** Their sum is the number. */
  | 'sum'
  /** The expression over them gives the number. */
  | 'expression'
  /** There are none: the value is stated, or the rule says it. */
  | 'nothing';

/** A number with the parts that make it up. */
export interface TraceNode {
  readonly line: TraceLine;
  readonly made: Makes;
  /** Symbols of the parts, in the order of the expression, each once. */
  readonly parts: readonly string[];
  /** The line of the value as its cell states it; another than `line` where that is converted. */
  readonly asStated: TraceLine;
  /** What states the value; left out where the expression or its rule gives it. */
  readonly stated?: Statement;
}

const SUM = /^\w+(?: \+ \w+)*$/;
const WORD = /[A-Za-z_]\w*/g;
const PIECE = /_to\d+$/;
const PLACE = /(?:_z\d+|_r\d+(?:_c\d+)?)$/;
const CONVERSION = /^(?:k_|degF)/;
/** Sums on the way to a sum, which a person would not part from it. */
const STEPS: readonly string[] = ['priceBefore', 'priceDirect', 'otherHours', 'ownHours'];

/**
 * What a symbol stands for, whatever the zone or row.
 * @param symbol a symbol of a trace
 * @returns the symbol without its place, for example `water` for `water_z2`
 */
export function stemOf(symbol: string): string {
  return symbol.replace(PIECE, '').replace(PLACE, '');
}

/**
 * A number of a record with the parts that it is made up of, one level down. A sum that goes over several lines, or by
 * way of sums of the same place, is one level; a value with its conversion is one number.
 * @param rec what was taken down
 * @param symbol name of the number
 * @returns the number; undefined where there is no such number
 */
export function traceNode(rec: Recorder, symbol: string): TraceNode | undefined {
  const line = rec.lineOf(symbol);
  if (line === undefined) return undefined;
  const asStated = statedLine(rec, line);
  if (asStated.stated) return { line, made: 'nothing', parts: [], asStated, stated: asStated.stated };
  const known = namesIn(rec, line);
  const isSum = known.length > 0 && SUM.test(line.expression);
  return {
    line,
    made: known.length === 0 ? 'nothing' : isSum ? 'sum' : 'expression',
    parts: isSum ? termsOf(rec, line, placeOf(line.symbol)) : [...new Set(known)],
    asStated,
  };
}

/** The line of a value as it is stated, where the line does no more than convert it. */
function statedLine(rec: Recorder, line: TraceLine): TraceLine {
  const given = rec.lineOf(`${line.symbol}_given`);
  const isConversion =
    given !== undefined && namesIn(rec, line).every((name) => name === given.symbol || CONVERSION.test(name));
  return isConversion ? given : line;
}

function termsOf(rec: Recorder, { expression }: TraceLine, place: string): string[] {
  return expression.split(' + ').flatMap((name) => {
    const term = rec.lineOf(name);
    const isStep = PIECE.test(name) || (STEPS.includes(stemOf(name)) && placeOf(name) === place);
    return term && isStep && SUM.test(term.expression) ? termsOf(rec, term, place) : [name];
  });
}

function placeOf(symbol: string): string {
  return PLACE.exec(symbol.replace(PIECE, ''))?.[0] ?? '';
}

function namesIn(rec: Recorder, { expression }: TraceLine): string[] {
  return (expression.match(WORD) ?? []).filter((name) => rec.lineOf(name) !== undefined);
}
