import { alternatesOf } from '../src/alternates/alternates';
import { bidPrice } from '../src/estimate/price';
import { perUnit, shownUnit } from '../src/quantity/shown-unit';
import { show, unitOf, type System } from '../src/quantity/systems';
import { pageParts, type PageLine } from '../src/site/bid/page-line';
import { pageLines } from '../src/site/bid/page-lines';
import { statedNumber } from '../src/site/bid/stated-number';
import { cutToLines } from '../src/site/cut-to-lines';
import { answer, readName, readQuestion } from './arguments';
import { whatInWords } from './alternates-words';
import type { CellValue, Run } from './worksheet-function';

// So many characters fit the column of the sentences on a sheet that prints upright.
const LINE = 80;

/** Spills a page to send: scope, quantities, inclusions, exclusions, alternates, clarifications, price. */
export const runBidPage: Run = ([walls, zone, factors, alternates, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  const lines = [
    ...pageLines(answer(question), question.factors),
    ...(isGiven(alternates) ? alternateLines({ walls, alternates, zone, factors, headings }) : []),
  ];
  const filled = pageParts.filter((part) => lines.some((line) => line.part === part));
  return filled.flatMap((part, of) => [
    ...(of > 0 ? [['', '', '', '', '']] : []),
    ...lines.filter((line) => line.part === part).flatMap((line, place) => rowsOf(line, place === 0, system)),
  ]);
};

function rowsOf({ part, text, amount }: PageLine, isFirst: boolean, system: System): CellValue[][] {
  return cutToLines(text, LINE).map((piece, cut) => [
    isFirst && cut === 0 ? part : '',
    piece,
    ...(amount && cut === 0 ? amountCells(amount, system) : ['', '', '']),
  ]);
}

function isGiven(alternates: unknown): boolean {
  return Array.isArray(alternates) && alternates.length > 0;
}

function alternateLines(range: {
  walls: unknown;
  alternates: unknown;
  zone: unknown;
  factors: unknown;
  headings: unknown;
}): PageLine[] {
  const { lines, priced } = alternatesOf({ ...range, zone: readName(range.zone, 'zone') });
  return lines.map(({ alternate, added, estimate }) => {
    const text = `${alternate.name}: ${whatInWords(alternate)}; ${added < 0 ? 'deduct' : 'add'}.`;
    if (estimate.finding !== undefined) return { part: 'Alternates', text: `${text} ${estimate.finding}` };
    return {
      part: 'Alternates',
      text: priced ? text : `${alternate.name}: ${whatInWords(alternate)}.`,
      ...(priced ? { amount: { value: added, kind: 'money' } as const } : {}),
    };
  });
}

/** Quantity, unit and money of a line: money and rates to cents, everything else whole, one decimal below ten. */
function amountCells({ value, kind }: NonNullable<PageLine['amount']>, system: System): CellValue[] {
  const shown = show(value, kind, system);
  const unit = unitOf(kind, system);
  if (kind === 'money' || kind === 'moneyPerArea') {
    return ['', perUnit(unit) ?? '', bidPrice(shown)];
  }
  return [statedNumber(shown), shownUnit(unit), ''];
}
