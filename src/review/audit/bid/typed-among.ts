import type { AuditFinding } from '../audit-finding';
import { said } from '../agree';
import { cellAddress, parseAddress } from '../../../spreadsheet/address';
import { moveFormula } from '../../../spreadsheet/move-formula';
import { placeKey } from '../remembered';
import type { SheetPlace } from '../references';
import { tokensOf } from '../../../spreadsheet/tokens';
import { readable } from '../washdown-calls';
import type { BidBook } from './bid-book';
import { directions, nearestFormula, stepped } from './neighbors';
import type { Step, Ways } from './ways';
import { cellNamed } from './words';

// A total stands this far below its lines at most.
const BELOW = 3;

/**
 * Typed numbers that a total takes among lines of one formula, where all that the formula would read is filled in; and
 * among links to totals, where such a total, with a price in it, is used by no formula.
 * @param book the workbook
 * @returns one finding for each cell
 */
export function typedAmongLines(book: BidBook): AuditFinding[] {
  const { totals, adds, ways } = book;
  const found = new Map<string, AuditFinding>();
  for (const total of totals) {
    for (const { place, step } of adds.direct(total)) {
      if (step) continue;
      const line = directions
        .map((way) => nearestFormula(ways, place, way))
        .find((beside) => beside && belongs(ways, beside, place));
      if (line) found.set(placeKey(place), typed(ways, place, moveFormula(line.formula, line, place)));
      const cut = cutOff(book, total, place);
      if (cut) found.set(placeKey(place), typedLink(ways, place, cut));
    }
  }
  return [...found.values()];
}

/**
 * Typed numbers below or beside lines of a price that no formula takes: where their total belongs.
 * @param book the workbook
 * @returns one finding for each cell
 */
export function typedTotals({ ways, priceWay }: BidBook): AuditFinding[] {
  if (ways.readsAnywhere) return [];
  const found = new Map<string, AuditFinding>();
  for (const step of priceWay) {
    if (step.readers.length > 0) continue;
    const place = [directions[0], directions[2]].flatMap((way) =>
      way ? (firstNumber(ways, step, way) ?? []) : [],
    )[0];
    if (!place) continue;
    found.set(placeKey(place), {
      kind: 'typed over',
      sheet: place.sheet,
      address: cellAddress(place.row, place.column),
      what: `Holds ${said(ways.book.value(place.sheet, place.row, place.column))} below or beside ${cellNamed(step)}, which carries a price and is used by no formula.`,
      todo: 'Put the total back as a formula, or note the reason beside it.',
    });
  }
  return [...found.values()];
}

function belongs(ways: Ways, line: Step, place: SheetPlace): boolean {
  if (line.sheet !== place.sheet || line.role.is === 'total' || line.asked.length > 0) return false;
  const here = tokensOf(line.formula);
  const there = tokensOf(moveFormula(line.formula, line, place));
  const moved = there.filter(({ kind, text }, index) => kind === 'reference' && text !== here[index]?.text);
  return (
    moved.length > 0 &&
    moved.every(({ text }) => {
      const area = text.includes('!') ? undefined : parseAddress(text);
      return area !== undefined && typeof ways.book.value(place.sheet, area.top, area.left) === 'number';
    })
  );
}

/** The total with a price in it that the typed cell may have linked to: read by nothing, its like linked beside the cell. */
function cutOff(book: BidBook, total: Step, place: SheetPlace): Step | undefined {
  const { ways, priceWay } = book;
  if (ways.readsAnywhere) return undefined;
  const links = directions.flatMap((way) => {
    const beside = nearestFormula(ways, place, way);
    return beside?.role.is === 'link'
      ? (ways.at({ sheet: beside.role.to.sheet, row: beside.role.to.top, column: beside.role.to.left }) ?? [])
      : [];
  });
  if (!links.some(({ role, sheet }) => role.is === 'total' && sheet !== place.sheet)) return undefined;
  return [...priceWay].find(
    (step) =>
      step.role.is === 'total' &&
      step.readers.length === 0 &&
      step !== total &&
      !ways.from(total).has(step) &&
      step.sheet !== place.sheet &&
      book.adds
        .direct(step)
        .some(
          (line) =>
            line.step === undefined || (line.step.asked.length === 0 && line.step.role.is === 'other'),
        ),
  );
}

/** The first number below or beside a cell, over lines of the same formula and blanks, where it is typed. */
function firstNumber(ways: Ways, from: Step, way: { row: number; column: number }): SheetPlace | undefined {
  let blanks = 0;
  for (let distance = 1; blanks < BELOW; distance++) {
    const place = stepped(from, way, distance);
    const step = ways.at(place);
    if (step && step.form === from.form && step.readers.length === 0) continue;
    if (step) return undefined;
    const shown = ways.book.value(place.sheet, place.row, place.column);
    if (typeof shown === 'number') return place;
    if (shown !== '') return undefined;
    blanks++;
  }
  return undefined;
}

function typed(ways: Ways, place: SheetPlace, formula: string): AuditFinding {
  return {
    kind: 'typed over',
    sheet: place.sheet,
    address: cellAddress(place.row, place.column),
    what: `Holds ${said(ways.book.value(place.sheet, place.row, place.column))} where a formula belongs.`,
    todo: 'Put the formula back, or note the reason beside it.',
    formula: readable(formula),
  };
}

function typedLink(ways: Ways, place: SheetPlace, cut: Step): AuditFinding {
  return {
    kind: 'typed over',
    sheet: place.sheet,
    address: cellAddress(place.row, place.column),
    what: `Holds ${said(ways.book.value(place.sheet, place.row, place.column))} among links to other totals, while ${cellNamed(cut)}, with a price in it, is used by no formula.`,
    todo: 'Link the total, or note the reason beside the cell.',
  };
}
