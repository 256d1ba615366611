import { addedQuantities, type QuantityId } from '../estimate/quantities';
import { classInWords } from '../rules/cleaner-classes';
import { columns, type ColumnId } from '../walls/columns';
import type { Recorder, TraceLine } from '../trace/recorder';
import { stemOf } from '../trace/trace-tree';

/** What the numbers between are called that no heading names. A number at the end is a level or a class. */
const words: Readonly<Record<string, string>> = {
  aboveGround: 'share above reach from the ground',
  access: 'access factor',
  acid: 'acid collected, as HCl',
  applyTime: 'time to apply, per area',
  applyWork: 'labor to apply, per area',
  bareArea: 'net area',
  beforeBelow: 'team time per area before what lies below is wetted',
  belowPerArea: 'water below, per area',
  belowWork: 'labor to wet what lies below',
  bidPrice: 'bid price',
  ceiling: 'governing ceiling',
  changeWork: 'labor to move to the next patch',
  class: 'class to use',
  classHours: 'labor-hours with class',
  cycle: 'team time per area, wash alone',
  edge: 'edge of the masked wall',
  effort: 'mortar effort',
  evaporation: 'evaporation from the wet face',
  excess: 'helpers’ work that does not fit in',
  fanWidth: 'fan width',
  fieldS: 'suction rate of the wall in the field',
  fixtureArea: 'masking of fixtures',
  fixtures: 'fixtures',
  flow: 'flow of the rinse nozzle',
  foot: 'height at which the wall stands',
  free: 'time that helpers have',
  held: 'pacing and waits',
  highScaffold: 'share above the low scaffold',
  hours: 'labor-hours of washing with that class',
  jobDays: 'days of the job',
  jobHireDays: 'rental days of the job',
  jobHours: 'labor-hours of the job before set-up',
  jobOwnHours: 'labor-hours of all zones by themselves',
  jobPrice: 'price of the job before its minimum',
  jobSampleHours: 'sample hours of the job',
  lapArea: 'band of laps',
  laterCeiling: 'ceiling of the masked wall',
  laterClass: 'class of the masked wall',
  laterClassHours: 'labor-hours of the masked wall with class',
  left: 'residue left to the brush',
  levelHeight: 'height of level',
  masked: 'openings, or the masked wall',
  masonry: 'masonry washed on level',
  mistings: 'mistings in a pass',
  mistPerArea: 'mist water, per area',
  mostNeed: 'strongest class needed',
  need: 'class needed',
  openingsEdge: 'perimeter of the openings',
  otherHours: 'labor-hours before set-up',
  ownHours: 'labor-hours of the zone by itself',
  paced: 'the quicker of applying and rinsing, paced',
  patch: 'largest patch',
  perimeter: 'edges to mask',
  positions: 'positions of the crew',
  preWetPerArea: 'pre-wet water, per area',
  prewetPasses: 'pre-wet passes',
  prewetTime: 'time to keep wet',
  prewetWork: 'labor to pre-wet, per area',
  price: 'price before it is rounded',
  priceBefore: 'price before the minimum',
  priceDirect: 'direct price',
  pressure: 'rinse pressure',
  reactionForce: 'reaction force',
  rinsePerArea: 'rinse water, per area',
  rinseTime: 'time to rinse, per area',
  rinseWork: 'labor to rinse, per area',
  rowHeight: 'wall height',
  S: 'suction rate',
  scrubPass: 'scrubbing of one pass',
  scrubTime: 'time of the team to scrub, per area',
  scrubWork: 'labor to scrub, per area',
  share: 'share of the wall in its zone',
  shortOfMinimum: 'what the job falls short of its minimum',
  slowed: 'factor for access and texture',
  slower: 'the slower of applying and rinsing',
  spare: 'mix of a pass less the film that stays',
  stripBelow: 'strip below',
  takenUp: 'water taken up, per area',
  teamTime: 'team time per area, in all',
  tendWork: 'labor to tend, per area',
  timeToDry: 'time to dry',
  wait: 'wait before rinsing',
  washPasses: 'passes of cleaner',
  wetted: 'area wetted below, per area washed',
  zoneShare: 'share of the zone in the job',
};

const CONSTANTS: Readonly<Record<string, string>> = {
  guard: 'a tiny margin',
  minPerHour: 'minutes in an hour',
};
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
  if (stem in addedQuantities && stem !== 'price') return addedQuantities[stem as QuantityId].heading;
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
