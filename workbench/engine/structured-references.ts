import { areaAddress, type Area } from '../xlsx/address';
import type { BookTable } from '../xlsx/book';
import { formulaPieces } from '../../src/spreadsheet/formula-pieces';
import { quotedSheet } from '../../src/spreadsheet/sheet-name';
import { BadSelection, selectedCells } from '../../src/spreadsheet/table-selection';

// The engine knows table references, but compares table names by case, gives the first data row for `[#This Row]` and
// takes no two sections at once; so they are turned into plain ranges before it sees a formula.

/** Where the formula stands that refers to a table. */
export interface FormulaPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A table reference that leads nowhere. */
export class BadReference extends Error {
  override readonly name = 'BadReference';
}

const NAME_BEFORE = /[\p{L}_\\][\p{L}\p{N}_.\\]*$/u;
const WORD = /(?<![\p{L}\p{N}_.\\$!'])[\p{L}_\\][\p{L}\p{N}_.\\]*(?![\p{L}\p{N}_.\\!(])/gu;

function same(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}

function quoted(values: readonly string[]): string {
  return values.map((value) => `"${value}"`).join(', ');
}

function rangeText(sheet: string, area: Area): string {
  const fixed = areaAddress(area).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
  return `${quotedSheet(sheet)}!${fixed}`;
}

function resolve(table: BookTable, body: string, place: FormulaPlace): string {
  const shape = { ...table, ...table.area, headings: table.columns };
  try {
    return rangeText(
      table.sheet,
      selectedCells(shape, body, place.sheet === table.sheet ? place.row : undefined),
    );
  } catch (cause) {
    if (cause instanceof BadSelection) throw new BadReference(cause.message);
    throw cause;
  }
}

function enclosing(tables: readonly BookTable[], place: FormulaPlace): BookTable {
  const found = tables.find(
    ({ sheet, area }) =>
      sheet === place.sheet &&
      place.row >= area.top &&
      place.row <= area.bottom &&
      place.column >= area.left &&
      place.column <= area.right,
  );
  if (!found)
    throw new BadReference(
      'The formula refers to a table column without naming a table, outside of any table.',
    );
  return found;
}

/**
 * Replaces the table references of a formula by plain ranges.
 * @param formula without `=`
 * @param tables the tables of the workbook
 * @param place where the formula stands
 * @returns the formula with `'Sheet'!$A$1:$C$9` in place of `Walls[#All]` and the like
 * @throws {BadReference} where a table, column or section is not there
 */
export function withoutStructuredReferences(
  formula: string,
  tables: readonly BookTable[],
  place: FormulaPlace,
): string {
  const byName = (name: string): BookTable | undefined => tables.find((table) => same(table.name, name));
  const pieces = formulaPieces(formula);
  let result = '';
  for (const [index, piece] of pieces.entries()) {
    if (piece.kind === 'brackets') {
      const name = NAME_BEFORE.exec(result)?.[0] ?? '';
      const table = name ? byName(name) : enclosing(tables, place);
      if (!table) {
        const known =
          tables.length === 0 ? 'it has none' : `it has ${quoted(tables.map((each) => each.name))}`;
        throw new BadReference(`The workbook has no table named "${name}"; ${known}.`);
      }
      result = result.slice(0, result.length - name.length) + resolve(table, piece.text.slice(1, -1), place);
    } else if (piece.kind === 'code') {
      const beforeBrackets = pieces[index + 1]?.kind === 'brackets';
      result += piece.text.replace(WORD, (word: string, at: number) => {
        const last = at + word.length === piece.text.length;
        const table = last && beforeBrackets ? undefined : byName(word);
        return table ? resolve(table, '', place) : word;
      });
    } else {
      result += piece.text;
    }
  }
  return result;
}
