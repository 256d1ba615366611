import { addedQuantities } from '../estimate/quantities';
import { classInWords } from '../rules/cleaner-classes';
import { methods, type LineId, type Method } from '../rules/methods';
import { columns, type ColumnId } from '../walls/columns';
import type { Recorder, TraceLine } from '../trace/recorder';
import { stemOf } from '../trace/trace-tree';

/** What numbers are called that no heading and no entry of a rule names. A number at the end is a level or a class. */
const words: Readonly<Record<string, string>> = {
  class: 'class to use',
  classHours: 'labor-hours with class',
  fixtures: 'fixtures',
  jobOwnHours: 'labor-hours of all zones by themselves',
  jobPrice: 'price of the job before its minimum',
  laterClass: 'class of the masked wall',
  laterClassHours: 'labor-hours of the masked wall with class',
  levelHeight: 'height of level',
  masonry: 'masonry washed on level',
  share: 'share of the wall in its zone',
  zoneShare: 'share of the zone in the job',
};

const ofRules: readonly Method[] = Object.values(methods);
const called = new Map(
  ofRules.flatMap(({ symbol = '', called: name }) =>
    name === undefined ? [] : [[symbol.replace(/[#@~]$/, ''), name] as const],
  ),
);

type Stem<Symbol extends string> = Symbol extends `${infer Name}${'#' | '@' | '~'}` ? Name : Symbol;
type Headed = { [Id in LineId]: (typeof methods)[Id] extends { called: string } ? never : Id }[LineId];

// A rule whose number is no quantity says in its entry what that is called; where it does not, this does not compile.
const quantities: Readonly<Record<Stem<(typeof methods)[Headed]['symbol']>, { readonly heading: string }>> =
  addedQuantities;

const CONSTANTS: Readonly<Record<string, string>> = { guard: 'a hair', minPerHour: 'minutes in an hour' };
const NUMBERED = /^(.*?)(\d+)$/;
const CONVERSION = /^k_/;
const TOKENS = /[A-Za-z_]\w*|\d[\d.e+-]*|==|<=|[-+*/^(),?:]/g;
const FUNCTIONS: Readonly<Record<string, string>> = {
  ceil: 'rounded up',
  max: 'the greater of',
  min: 'the lesser of',
  round: 'rounded',
  sqrt: 'square root of',
  tan: 'tangent of',
};
const SIGNS: Readonly<Record<string, string>> = {
  '*': ' × ',
  '/': ' / ',
  '+': ' + ',
  '-': ' − ',
  ',': '; ',
  '^': ' to the power ',
  '==': ' is ',
  '<=': ' is at most ',
  '?': ' → ',
  ':': '; else ',
};

/**
 * What a number is called, whatever its zone or wall.
 * @param rec what was taken down
 * @param symbol name of the number in the trace
 * @returns the heading of a quantity, the id of a factor, the column of a cell, or words
 */
export function nameOf(rec: Recorder, symbol: string): string {
  const stated = (rec.lineOf(`${symbol}_given`) ?? rec.lineOf(symbol))?.stated;
  if (stated?.by === 'factor') return stated.id;
  if (stated?.by === 'cell' && stated.column in columns) return columns[stated.column as ColumnId].name;
  const stem = stemOf(symbol);
  const ofRule = called.get(stem);
  if (ofRule !== undefined) return ofRule;
  if (stem in quantities) return quantities[stem as keyof typeof quantities].heading;
  if (CONVERSION.test(stem)) return `conversion to ${rec.lineOf(symbol)?.unit ?? 'the unit'}`;
  const [, base = stem, number] = NUMBERED.exec(stem) ?? [];
  const known = words[base];
  if (known !== undefined) return number === undefined ? known : `${known} ${number}`;
  return CONSTANTS[stem] ?? rec.lineOf(symbol)?.rule ?? stem;
}

/**
 * What a part of a number is called beside its fellows: by its zone or wall where that alone tells it from the whole.
 * @param rec what was taken down
 * @param part the line of the part
 * @param whole symbol of the number that it is a part of
 * @returns for example `Library south`, or `Labor price`
 */
export function partName(rec: Recorder, part: TraceLine, whole: string): string {
  const name = nameOf(rec, part.symbol);
  const isAlike = stemOf(part.symbol) === stemOf(whole);
  if (isAlike && part.where !== '') return part.where;
  const isElsewhere = part.where !== '' && part.where !== rec.lineOf(whole)?.where;
  return isElsewhere && part.stated === undefined ? `${name}, ${part.where}` : name;
}

/**
 * The expression of a number in words.
 * @param rec what was taken down
 * @param line the line of the number
 * @returns for example `Labor-hours × price.labor`; empty where the value is stated
 */
export function expressionInWords(rec: Recorder, line: TraceLine): string {
  return (line.expression.match(TOKENS) ?? [])
    .map((token) => {
      const part = rec.lineOf(token);
      if (part) return partName(rec, part, line.symbol);
      return FUNCTIONS[token] ?? SIGNS[token] ?? token;
    })
    .join('')
    .replace(/^rounded\((.*); 2\)$/, '$1, rounded to cents')
    .replace(/(?<=\w)\(/g, ' (')
    .replace(/ +/g, ' ')
    .trim();
}

const CLASSES: readonly string[] = ['class', 'ceiling', 'laterClass', 'laterCeiling', 'mostNeed', 'need'];

/**
 * A number that is a class, in words.
 * @param line the line of the number
 * @returns for example `class 2 (buffered mild acid)`; undefined where the number is no class
 */
export function classText({ symbol, value, stated }: TraceLine): string | undefined {
  const isClass =
    CLASSES.includes(stemOf(symbol)) || (stated?.by === 'factor' && stated.id.endsWith('.ceiling'));
  return isClass ? classInWords(value) : undefined;
}
