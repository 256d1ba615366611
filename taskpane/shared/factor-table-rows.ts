import { START } from '../../src/rules/factor-start';
import { classLine, factorLines, unitsLine, type FactorLine } from '../../src/rules/factor-lines';
import type { System } from '../../src/quantity/systems';
import { cellAddress } from '../../src/spreadsheet/address';
import type { Block, CellContent, Place } from '../workbook/port';

/** The headings of a table of factors; the first three are read, the others tell what a factor is. */
export const formHeadings = [
  'Factor',
  'Value',
  'Note',
  'Unit',
  'Starting value',
  'Minimum',
  'Maximum',
  'What it is',
] as const;

// Characters: the same order.
const WIDTHS = [25, 12, 34, 13, 14, 10, 10, 70];

/**
 * A table of factors to be filled in, grouped by sense: `start` leaves a factor at its starting value.
 * @param system the units
 * @returns the rows, the headings first, and which of them are titles, from 0
 */
export function formRows(system: System): {
  readonly rows: CellContent[][];
  readonly titles: readonly number[];
} {
  const rows: CellContent[][] = [[...formHeadings], formRow(unitsLine, system)];
  const titles: number[] = [];
  for (const { title, lines } of factorLines(system)) {
    titles.push(rows.length);
    rows.push([title, ...formHeadings.slice(1).map(() => '')]);
    rows.push(...lines.map((line) => formRow(line, line.id === classLine.id ? classLine.start : START)));
  }
  return { rows, titles };
}

/**
 * The row of one factor.
 * @param line the factor as a form shows it
 * @param value what stands beside its id
 * @param note the user's source of it
 * @returns one cell for each heading
 */
export function formRow(line: FactorLine, value: CellContent, note = ''): CellContent[] {
  const { id, unit, start, least, most, choices, meaning, bracket } = line;
  const accepted = choices.length > 0 ? `. Accepted: ${choices.join(', ')}` : '';
  const published = bracket === '' ? '' : `. Published for like work: ${bracket}`;
  return [id, value, note, unit, start, least, most, `${meaning}${accepted}${published}`];
}

/**
 * The form on a sheet of its own.
 * @param system the units
 * @param place where it stands, and the name of its table
 * @param own rows of the user's own, factor id and value
 * @returns what to write
 */
export function formBlock(
  system: System,
  place: Pick<Place, 'sheet'> & { readonly table: string },
  own: readonly (readonly [string, CellContent])[] = [],
): Block {
  const { rows, titles } = formRows(system);
  const blank = formHeadings.slice(2).map(() => '');
  return {
    ...place,
    address: 'A1',
    rows: [...rows, ...own.map((row) => [...row, ...blank])],
    widths: WIDTHS,
    bold: titles.map((row) => cellAddress(row + 1, 1)),
  };
}

/** What the user is told of the form. */
export const FORM_SAYS =
  'type your values over the word start, which leaves a factor at its starting value, and note where they come from';
