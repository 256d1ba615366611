import type { AuditFinding } from '../audit-finding';
import { cellAddress, meet } from '../../../spreadsheet/address';
import type { SheetPlace } from '../references';
import type { BidBook } from './bid-book';
import { isBidTotal } from './left-out';
import type { Step } from './ways';
import { cellNamed, shownAt } from './words';

const MARKUP = /\b(?:overhead|profit|mark-?ups?|margin|contingency|oh ?& ?p|o ?& ?p)\b/i;
const BID_PRICE =
  /\b(?:bid|contract|tender)\b.*\b(?:price|total|sum|amount)\b|\b(?:price|total|sum|amount)\b.*\b(?:bid|contract|tender)\b|\bgrand total\b|\bbase bid\b/i;
// A bid is written in whole money at most.
const ROUNDING = 1;
// Below this a number is equal to a total by chance, or no price of a bid.
const LEAST_COPIED = 1000;
// What goes with a bid and is not its price.
const BESIDE_BID = /\b(?:bond|security|deposit|minimum|last|previous|budget|per|date|number|no)\b/i;
const FARTHEST_LABEL = 12;

/**
 * Typed numbers that a total takes beside another total with a price in it, where the words beside them name a mark-up:
 * a mark-up follows what it is a share of.
 * @param book the workbook
 * @returns one finding for each cell
 */
export function typedMarkups(book: BidBook): AuditFinding[] {
  const { totals, adds, priceWay } = book;
  return totals.flatMap((total) => {
    const direct = adds.direct(total);
    const marked = direct.find(({ step }) => step?.role.is === 'total' && priceWay.has(step));
    if (!marked) return [];
    return direct.flatMap(({ place, step }) => {
      const label = step ? '' : labelOf(book, place);
      return MARKUP.test(label)
        ? [
            found(
              place,
              `Holds ${shownAt(book.ways, place)} beside “${label}”: a markup that does not follow ${cellNamed(marked.place)}.`,
              'Put the formula back, or note the reason beside it.',
            ),
          ]
        : [];
    });
  });
}

/**
 * Typed numbers on other sheets that stand for a total with a price in it which no formula reads: they are equal to it,
 * or the words beside them name the price of the bid.
 * @param book the workbook
 * @returns one finding for each cell
 */
export function typedCopies(book: BidBook): AuditFinding[] {
  const { ways, totals, priceWay } = book;
  if (ways.readsAnywhere) return [];
  const ends = totals.filter((total) => priceWay.has(total) && total.readers.length === 0);
  if (ends.length === 0) return [];
  const bids = ends.filter((total) => isBidTotal(book, total));
  const bid = bids.length === 1 ? bids[0] : undefined;
  const given = ways.steps.filter(({ asked }) => asked.length > 0).flatMap(({ reads }) => reads.areas);
  return [...ways.book.typedNumbers()].flatMap(({ value, ...place }) => {
    const copied = ends.find((end) => end.sheet !== place.sheet && isCopy(value, amountOf(book, end)));
    const isNamed = bid?.sheet !== place.sheet && value >= LEAST_COPIED && namesBid(labelOf(book, place));
    const end = copied ?? (isNamed ? bid : undefined);
    const isGiven = given.some(
      (area) =>
        area.sheet === place.sheet &&
        meet(area, { top: place.row, bottom: place.row, left: place.column, right: place.column }),
    );
    if (!end || isGiven || ways.at(place)) return [];
    return [
      found(
        place,
        `Holds ${shownAt(ways, place)}, typed, ${copied ? 'as' : 'while'} ${cellNamed(end)}, the total with the price in it, ${copied ? 'is now' : 'is used by no formula'}.`,
        'Link the total, or note the reason beside the cell.',
      ),
    ];
  });
}

function isCopy(value: number, total: number): boolean {
  return total >= LEAST_COPIED && Math.abs(value - total) <= ROUNDING;
}

function namesBid(label: string): boolean {
  return BID_PRICE.test(label) && !BESIDE_BID.test(label);
}

function amountOf({ ways }: BidBook, { sheet, row, column }: Step): number {
  const shown = ways.book.value(sheet, row, column);
  return typeof shown === 'number' ? shown : NaN;
}

/** The nearest text to the left of a cell, or that above it. */
function labelOf({ ways: { book } }: BidBook, { sheet, row, column }: SheetPlace): string {
  for (let left = column - 1; left >= Math.max(1, column - FARTHEST_LABEL); left--) {
    const shown = book.value(sheet, row, left);
    if (typeof shown === 'string' && shown !== '') return shown;
  }
  const above = row > 1 ? book.value(sheet, row - 1, column) : '';
  return typeof above === 'string' ? above : '';
}

function found({ sheet, row, column }: SheetPlace, what: string, todo: string): AuditFinding {
  return { kind: 'typed over', sheet, address: cellAddress(row, column), what, todo };
}
