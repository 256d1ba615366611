import { cellAddress, parseAddress } from '../../spreadsheet/address';
import { said } from './agree';
import type { AuditFinding } from './audit-finding';
import type { AuditedBook } from './audited-book';
import { moveFormula } from '../../spreadsheet/move-formula';
import { placeKey, type StandingFormula } from './remembered';
import type { SheetPlace } from './references';
import type { Spills } from './spills';
import { tokensOf } from '../../spreadsheet/tokens';
import { readable } from './washdown-calls';

const DOWN = { row: 1, column: 0 };
const ACROSS = { row: 0, column: 1 };
// Typed cells between two equal formulas are a gap up to this length; beyond it they are something else.
const LONGEST_GAP = 20;

type Step = typeof DOWN;

/**
 * Cells with a typed value in a row or column of one Washdown formula: between two cells that have it, or at an end
 * where what the formula would read is filled in.
 * @param book the workbook
 * @param start one of the Washdown formulas
 * @param forms the relative forms of all of them, by their places
 * @param spills the areas that formulas fill
 * @param gives whether a formula gives a value in a cell: a line of another kind at the end names no zone, for example
 * @returns a finding for each such cell beside the formula
 */
export function typedBeside(
  book: AuditedBook,
  start: StandingFormula,
  forms: ReadonlyMap<string, string>,
  spills: Spills,
  gives: (formula: string, at: SheetPlace) => boolean,
): AuditFinding[] {
  const places = [DOWN, ACROSS].flatMap((step) => [
    ...gapAfter(book, start, forms, step, spills),
    ...[step, { row: -step.row, column: -step.column }]
      .flatMap((way) => typedEnd(book, start, forms, way, spills))
      .filter((place) => gives(moveFormula(start.formula, start, place), place)),
  ]);
  return places.map((place) => typedOver(book, place, moveFormula(start.formula, start, place)));
}

/**
 * What is said of a cell whose formula was typed over.
 * @param book the workbook
 * @param place the cell
 * @param formula the formula that belongs there
 * @returns the finding
 */
export function typedOver(book: AuditedBook, place: SheetPlace, formula: string): AuditFinding {
  const shown = book.value(place.sheet, place.row, place.column);
  return {
    kind: 'typed over',
    sheet: place.sheet,
    address: cellAddress(place.row, place.column),
    what: shown === '' ? 'Is blank where a formula stood.' : `Holds ${said(shown)} where a formula belongs.`,
    todo: 'Put the formula back, or have the reason noted beside it.',
    formula: readable(formula),
  };
}

function gapAfter(
  book: AuditedBook,
  start: StandingFormula,
  forms: ReadonlyMap<string, string>,
  step: Step,
  spills: Spills,
): SheetPlace[] {
  const kind = typeof book.value(start.sheet, start.row, start.column);
  const gap: SheetPlace[] = [];
  for (let distance = 1; distance <= LONGEST_GAP + 1; distance++) {
    const place = stepped(start, step, distance);
    if (book.formula(place.sheet, place.row, place.column) !== undefined) {
      return forms.get(placeKey(place)) === start.form ? gap : [];
    }
    const shown = book.value(place.sheet, place.row, place.column);
    // A label between two blocks of formulas is of another kind than what they give.
    if (shown === '' || typeof shown !== kind || spills.formulaOver(place) !== undefined) return [];
    gap.push(place);
  }
  return [];
}

function typedEnd(
  book: AuditedBook,
  start: StandingFormula,
  forms: ReadonlyMap<string, string>,
  step: Step,
  spills: Spills,
): SheetPlace[] {
  const place = stepped(start, step, 1);
  const isNumber = typeof book.value(place.sheet, place.row, place.column) === 'number';
  return isNumber &&
    book.formula(place.sheet, place.row, place.column) === undefined &&
    forms.get(placeKey(stepped(start, step, -1))) === start.form &&
    spills.formulaOver(place) === undefined &&
    readsFilledCells(book, start, place)
    ? [place]
    : [];
}

/** Whether the cells that the formula would read from its new place, and not from its old one, are all filled. */
function readsFilledCells(book: AuditedBook, start: StandingFormula, place: SheetPlace): boolean {
  const here = tokensOf(start.formula);
  const there = tokensOf(moveFormula(start.formula, start, place));
  const moved = there.filter(({ kind, text }, index) => kind === 'reference' && text !== here[index]?.text);
  return (
    moved.length > 0 &&
    moved.every(({ text }) => {
      const area = text.includes('!') ? undefined : parseAddress(text);
      return area !== undefined && book.value(place.sheet, area.top, area.left) !== '';
    })
  );
}

function stepped(from: SheetPlace, step: Step, distance: number): SheetPlace {
  return {
    sheet: from.sheet,
    row: from.row + step.row * distance,
    column: from.column + step.column * distance,
  };
}
