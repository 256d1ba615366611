import { meet } from '../../../spreadsheet/address';
import type { AuditFinding } from '../audit-finding';
import { areaKey, type SheetArea } from '../audited-book';
import { someOf } from '../spills';
import type { BidBook } from './bid-book';
import { directions, nearestFormula } from './neighbors';
import { kindOf, type Step } from './ways';
import { cellNamed, findingAt } from './words';

/**
 * Bid lines that no total takes though the lines beside them are taken, and prices that reach no total of the bid.
 * Where a formula reads cells that its text does not name, nothing is known to be left out.
 * @param book the workbook
 * @returns the findings
 */
export function leftOut(book: BidBook): AuditFinding[] {
  if (book.ways.readsAnywhere) return [];
  const lines = linesLeftOut(book);
  return [
    ...lines.map(({ finding }) => finding),
    ...pricesLeftOut(book, new Set(lines.map(({ step }) => step))),
  ];
}

function linesLeftOut({
  ways,
  way,
  totals,
  adds,
}: BidBook): { readonly step: Step; readonly finding: AuditFinding }[] {
  const taker = new Map<Step, Step>();
  for (const total of totals) {
    for (const { step } of adds.direct(total)) if (step && !taker.has(step)) taker.set(step, total);
  }
  return ways.steps.flatMap((step) => {
    if (step.readers.length > 0 || step.role.is === 'total') return [];
    if (step.asked.length === 0 && !way.has(step)) return [];
    for (const direction of directions) {
      const beside = nearestFormula(ways, step, direction);
      const total = beside && taker.get(beside);
      // A total of the column says nothing of a cell beside it.
      if (!beside || !total || !isLike(beside, step) || !inLine(total, beside, direction)) continue;
      const what = `No total includes this cell: ${cellNamed(total)} includes ${cellNamed(beside)} and leaves this one out.`;
      return [
        {
          step,
          finding: findingAt(
            step,
            'left out',
            what,
            'Widen the range of the total, or note beside the line why it is left out.',
          ),
        },
      ];
    }
    return [];
  });
}

/** The same formula, or the same number of another zone. */
function isLike(one: Step, other: Step): boolean {
  if (one.form === other.form) return true;
  const [asked, ...more] = one.asked;
  const [also, ...others] = other.asked;
  if (!asked || !also || more.length > 0 || others.length > 0) return false;
  return asked.zone !== '' && also.zone !== '' && kindOf(asked) === kindOf(also);
}

function inLine(total: Step, beside: Step, { row }: { readonly row: number }): boolean {
  return (
    total.sheet !== beside.sheet || (row === 0 ? total.row === beside.row : total.column === beside.column)
  );
}

/** Prices of which no total takes anything, while others of their kind, or other totals, are in the bid. */
function pricesLeftOut(book: BidBook, known: ReadonlySet<Step>): AuditFinding[] {
  const { prices, ways } = book;
  const bidTotals = new Set(book.totals.filter((total) => isBidTotal(book, total)));
  const bid = new Set(prices.filter((price) => [...ways.from(price)].some((step) => bidTotals.has(step))));
  const out = prices.filter((price) => !bid.has(price) && !known.has(price) && !isRate(price));
  if (bid.size === 0) return nothingLinked(book, out);
  const forms = new Set(
    [...bid].filter((price) => !isRate(price)).map(({ sheet, form }) => `${sheet}\n${form}`),
  );
  return out
    .filter(({ sheet, form }) => forms.has(`${sheet}\n${form}`))
    .map((price) =>
      findingAt(
        price,
        'left out',
        `Reaches no total of the bid, as the prices beside it do.${endsAt(book, price)}`,
        'Find the bid line that should use this price: it may have been typed over.',
      ),
    );
}

function nothingLinked(book: BidBook, out: readonly Step[]): AuditFinding[] {
  if (out.length === 0) return [];
  const calls = book.ways.steps.filter(({ asked }) => asked.length > 0);
  const walls = new Map(calls.flatMap(({ reads }) => reads.areas).map((area) => [areaKey(area), area]));
  const other = book.totals.filter((total) => isForeign(book, total, [...walls.values()]));
  const wholes = out.filter(({ asked }) => asked.some(({ zone, part }) => zone === '' && part === ''));
  const named = wholes.length > 0 ? wholes : out.filter(({ asked }) => asked.some(({ part }) => part === ''));
  const [first] = named;
  if (!first || other.length === 0) return [];
  return [
    findingAt(
      first,
      'left out',
      `No total includes this price together with other lines, though there are other totals, such as ${someOf(other.map(cellNamed))}.${endsAt(book, first)}`,
      'Find the bid line that should use this price: it may have been typed over, or never linked.',
    ),
  ];
}

/** Where the way of a price ends, if it goes anywhere. */
function endsAt({ ways }: BidBook, price: Step): string {
  const ends = [...ways.from(price)].filter(({ readers }) => readers.length === 0).map(cellNamed);
  return ends.length === 0 ? ' No formula uses it.' : ` It ends at ${someOf(ends)}.`;
}

/**
 * Whether a total takes more than what Washdown gives: lines of other work.
 * @param book the workbook
 * @param total a total on the way of a price
 * @returns true for a total of the bid
 */
export function isBidTotal({ adds, way }: BidBook, total: Step): boolean {
  return (
    total.role.is === 'total' &&
    [...adds.terms(total).values()].some(
      ({ step }) => step === undefined || (step.asked.length === 0 && !way.has(step)),
    )
  );
}

/** A total of two numbers or more that has nothing to do with Washdown, nor with the walls that it reads. */
function isForeign({ adds, way, ways }: BidBook, total: Step, walls: readonly SheetArea[]): boolean {
  if (way.has(total) || total.asked.length > 0) return false;
  if ([...ways.from(total)].some(({ asked }) => asked.length > 0)) return false;
  const terms = [...adds.terms(total).values()];
  return (
    terms.length > 1 &&
    !terms.some(({ place: { sheet, row, column } }) =>
      walls.some(
        (area) => area.sheet === sheet && meet(area, { top: row, bottom: row, left: column, right: column }),
      ),
    )
  );
}

function isRate({ asked }: Step): boolean {
  return asked.every(({ part }) => part === 'rate');
}
