import { moneyIds } from '../src/estimate/quantities';
import { didYouMean } from '../src/quantity/did-you-mean';
import { ended, badInput, nothingHere } from '../src/quantity/problem';
import { RULES_VERSION } from '../src/rules/version';
import type { Recorder, TraceLine } from '../src/trace/recorder';
import { readChoice, readName, readQuestion, type Question } from './arguments';
import { requirePrice } from './bid-price';
import { NOTHING_WASHED } from './governing';
import { recordOf } from './kept-record';
import { narrower } from './narrower';
import { added, byFactors, byJob, byRow, byZone, traceNames } from './trace-names';
import type { Run } from './worksheet-function';

/**
 * Most lines of a spill: on the web a result of more than 5 MB is refused (platform documentation, "Resource limits and
 * performance optimization"), and a line has up to 800 characters.
 */
export const MOST_LINES = 5_000;

/** The lines that a number rests on, and all that was taken down for them. */
export interface Traced {
  readonly rec: Recorder;
  /** The number's own last. */
  readonly lines: TraceLine[];
  readonly symbol: string;
}

/**
 * The lines that a number rests on, its own last.
 * @param quantity what to explain, one of the names of `traceNames`
 * @param question factors and zones
 * @param wall label of one wall row, or empty
 * @returns the lines
 * @throws {WashdownError} where there is no such number
 */
export function linesOf(quantity: string, question: Question, wall: string): TraceLine[] {
  return traced(quantity, question, wall).lines;
}

/**
 * What a number rests on, all zones of the job taken down, so that what a zone has of the job can be followed too.
 * @param quantity what to explain, one of the names of `traceNames`
 * @param question factors and zones
 * @param wall label of one wall row, or empty
 * @returns the record, and the symbol of the number in it
 * @throws {WashdownError} where there is no such number
 */
export function tracedInJob(quantity: string, question: Question, wall: string): Traced {
  return traced(quantity, question, wall, question.job);
}

function traced(quantity: string, question: Question, wall: string, taken = question.zones): Traced {
  if (isMoney(quantity)) requirePrice(question.factors);
  const { rec, estimate } = recordOf(question, taken);
  const finding = estimate.zones.find(
    ({ zone, finding: of }) => of !== undefined && question.zones.includes(zone),
  )?.finding;
  const symbol = symbolFor(quantity, question, wall);
  const lines = rec.linesFor(symbol);
  const last = lines.at(-1);
  // A class that cannot be used is no answer.
  const refused = finding !== undefined && quantity === 'class';
  if (refused || last === undefined || Number.isNaN(last.value)) {
    if (finding !== undefined) throw badInput(finding);
    throw nothingHere(
      quantity in byFactors || quantity in byZone || quantity in byRow
        ? `There is no ${quantity} here: nothing is washed, clear water is used, or nothing evaporates.`
        : NOTHING_WASHED,
    );
  }
  return { rec, lines, symbol };
}

function isMoney(quantity: string): boolean {
  return quantity === 'bid price' || moneyIds.some((id) => id === added[quantity]);
}

function symbolFor(quantity: string, { zones, job }: Question, wall: string): string {
  const ofRow = byRow[quantity];
  const sum = added[quantity];
  if (wall !== '') {
    const symbol = sum ?? ofRow;
    if (symbol === undefined)
      throw badInput(`The ${quantity} belongs to a zone, not to a wall row. Accepted: no wall.`);
    const rows = zones.flatMap((zone) => zone.rows);
    const row = rows.find((candidate) => candidate.wall === wall);
    if (row !== undefined) return `${symbol}_r${String(row.row)}`;
    const labels = rows.map((candidate) => candidate.wall);
    throw nothingHere(
      `No wall row has the label "${wall}". Accepted: ${ended(`the label of a wall${didYouMean(wall, labels)}`)}`,
    );
  }
  if (ofRow !== undefined)
    throw badInput(`Each wall has its own ${quantity}. Accepted: the label of one wall.`);
  const [only] = zones;
  const one = zones.length === 1 && only ? `_z${String(job.indexOf(only) + 1)}` : undefined;
  if (sum !== undefined) return one === undefined ? sum : sum + one;
  const ofJob = byJob[quantity];
  if (ofJob !== undefined) return one === undefined ? ofJob : ofJob + one;
  const ofZone = byZone[quantity];
  if (ofZone === undefined) return byFactors[quantity] ?? '';
  if (one !== undefined) return ofZone + one;
  throw badInput(
    `Each zone has its own ${quantity}. Accepted: the name of one zone: ${zones.map(({ name }) => name).join(', ')}.`,
  );
}

/** Spills how a number was worked out. */
export const runTrace: Run = ([quantity, walls, zone, factors, headings, wall]) => {
  const asked = readName(quantity, 'quantity');
  const wanted = readChoice(asked, 'quantity', traceNames);
  if (wanted === undefined) throw badInput(`TRACE needs a quantity. Accepted: ${traceNames.join(', ')}.`);
  const question = readQuestion(walls, zone, factors, headings);
  const { rec, lines, symbol } = traced(wanted, question, readName(wall, 'wall'));
  // The last line is the number itself.
  const left = lines.length - MOST_LINES;
  return [
    [
      'Symbol',
      'Expression',
      'Value',
      'Unit',
      `Rule (rules ${RULES_VERSION})`,
      'Source',
      'Kind of source',
      left > 0 ? `Where. ${left} left out: ${narrower(rec, symbol, question, MOST_LINES)}` : 'Where',
    ],
    ...lines
      .slice(-MOST_LINES)
      .map((line) => [
        line.symbol,
        line.expression,
        line.value,
        line.unit,
        line.rule,
        line.source,
        line.kind,
        line.where,
      ]),
  ];
};
