import { addedQuantities, moneyIds, quantityIds } from '../src/estimate/quantities';
import { nearest } from '../src/quantity/nearest';
import { badInput, nothingHere } from '../src/quantity/problem';
import { RULES_VERSION } from '../src/rules/version';
import { explainedByFactors, explainedByJob, explainedByZone } from '../src/trace/explained';
import { Recorder, type TraceLine } from '../src/trace/recorder';
import { answer, readChoice, readName, readQuestion, type Question } from './arguments';
import { requirePrice } from './bid-price';
import { NOTHING_WASHED } from './governing';
import type { Run } from './worksheet-function';

/**
 * Most lines of a spill: on the web a result of more than 5 MB is refused (platform documentation, "Resource limits and
 * performance optimization"), and a line has up to 800 characters.
 */
export const MOST_LINES = 5_000;

/** What adds up over rows, by heading and by the name of its worksheet function. */
const added: Readonly<Record<string, string>> = {
  ...Object.fromEntries(quantityIds.map((id) => [addedQuantities[id].heading.toLowerCase(), id])),
  cleaner: 'concentrate',
};
const byJob: Readonly<Record<string, string>> = explainedByJob;
const byZone: Readonly<Record<string, string>> = explainedByZone;
const byFactors: Readonly<Record<string, string>> = explainedByFactors;
const names = [
  ...Object.keys(added),
  ...Object.keys(byJob),
  ...Object.keys(byZone),
  ...Object.keys(byFactors),
];

/**
 * The lines that a number rests on, its own last.
 * @param quantity what to explain, one of the names of `traceNames`
 * @param question factors and zones
 * @param wall label of one wall row, or empty
 * @returns the lines
 * @throws {WashdownError} where there is no such number
 */
export function linesOf(quantity: string, question: Question, wall: string): TraceLine[] {
  if (isMoney(quantity)) requirePrice(question.factors);
  const rec = new Recorder(question.factors);
  const { finding } = answer(question, { rec });
  const lines = rec.linesFor(symbolFor(quantity, question, wall));
  const last = lines.at(-1);
  if (last === undefined || Number.isNaN(last.value)) {
    if (finding !== undefined) throw badInput(finding);
    throw nothingHere(
      quantity in byFactors || quantity in byZone
        ? `There is no ${quantity} here: every row is masked, clear water is used, or nothing evaporates.`
        : NOTHING_WASHED,
    );
  }
  return lines;
}

function isMoney(quantity: string): boolean {
  return quantity === 'bid price' || moneyIds.some((id) => id === added[quantity]);
}

/** Names that TRACE takes. */
export const traceNames: readonly string[] = names;

function symbolFor(quantity: string, { zones }: Question, wall: string): string {
  const sum = added[quantity];
  if (sum !== undefined && wall !== '') {
    const row = zones.flatMap(({ rows }) => rows).find((candidate) => candidate.wall === wall);
    if (row !== undefined) return `${sum}_r${String(row.row)}`;
    const labels = zones.flatMap(({ rows }) => rows.map((candidate) => candidate.wall));
    throw nothingHere(
      `No wall row has the label "${wall}". The nearest are ${nearest(wall, labels).join(', ')}.`,
    );
  }
  if (wall !== '') throw badInput(`The ${quantity} belongs to a zone, not to a wall row. Accepted: no wall.`);
  const one = zones.length === 1;
  if (sum !== undefined) return one ? `${sum}_z1` : sum;
  const ofJob = byJob[quantity];
  if (ofJob !== undefined) return one ? `${ofJob}_z1` : ofJob;
  const ofZone = byZone[quantity];
  if (ofZone === undefined) return byFactors[quantity] ?? '';
  if (one) return `${ofZone}_z1`;
  throw badInput(
    `Each zone has its own ${quantity}. Accepted: the name of one zone: ${zones.map(({ name }) => name).join(', ')}.`,
  );
}

/** Spills how a number was worked out. */
export const runTrace: Run = ([quantity, walls, zone, factors, headings, wall]) => {
  const asked = readName(quantity, 'quantity');
  const wanted = readChoice(asked, 'quantity', names);
  if (wanted === undefined) throw badInput(`TRACE needs a quantity. Accepted: ${names.join(', ')}.`);
  const question = readQuestion(walls, zone, factors, headings);
  const lines = linesOf(wanted, question, readName(wall, 'wall'));
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
      left > 0 ? `Where. ${left} left out: name one zone` : 'Where',
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
