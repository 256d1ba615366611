import type { AuditedBook, SheetArea } from './audited-book';
import type { Expression } from '../../spreadsheet/expression';
import type { CellPlace } from '../../spreadsheet/move-formula';
import { NotFollowed } from '../../spreadsheet/not-followed';
import { parseFormula } from '../../spreadsheet/parse-formula';
import { referencedArea } from '../../spreadsheet/reference';
import { tableArea } from './table-reference';

/** A cell of a sheet. */
export interface SheetPlace extends CellPlace {
  readonly sheet: string;
}

// A name that stands for a name, and so on, ends somewhere.
const DEEPEST_NAME = 8;

/**
 * The cells that a reference stands for.
 * @param book the workbook
 * @param reference addresses, part of a table, or a name
 * @param at where the formula stands
 * @param depth how many names were looked through on the way
 * @returns the area; undefined where a name stands for something that is no reference: `nameOf` gives what it is
 * @throws {NotFollowed} where it points to nothing that is there
 */
export function areaOf(
  book: AuditedBook,
  reference: Expression,
  at: SheetPlace,
  depth = 0,
): SheetArea | undefined {
  switch (reference.is) {
    case 'cells':
      return cellsArea(book, reference.sheet, reference.address, at);
    case 'table': {
      const { name, selection } = reference;
      const table =
        name === undefined
          ? book.tableAt(at.sheet, at.row, at.column)
          : book.tables.find((candidate) => same(candidate.name, name));
      if (!table) throw new NotFollowed(`there is no table ${name ?? 'around it'}`);
      return tableArea(table, selection, at.row);
    }
    case 'name': {
      const table = book.tables.find(({ name }) => same(name, reference.name));
      if (table) return tableArea(table, '', at.row);
      if (depth > DEEPEST_NAME) throw new NotFollowed(`the name ${reference.name} refers to itself`);
      return areaOf(book, nameOf(book, reference.name, reference.sheet ?? at.sheet), at, depth + 1);
    }
    default:
      return undefined;
  }
}

/**
 * What a defined name stands for.
 * @param book the workbook
 * @param name the name
 * @param sheet the sheet on which it is asked for: a name of its own goes before one of the workbook
 * @returns the expression
 * @throws {NotFollowed} where there is no such name
 */
export function nameOf(book: AuditedBook, name: string, sheet: string): Expression {
  const called = book.names.filter((candidate) => same(candidate.name, name));
  const found =
    called.find((candidate) => candidate.sheet !== undefined && same(candidate.sheet, sheet)) ??
    called.find((candidate) => candidate.sheet === undefined);
  if (!found) throw new NotFollowed(`there is no name or table "${name}"`);
  return parseFormula(found.refersTo);
}

function cellsArea(
  book: AuditedBook,
  sheetName: string | undefined,
  address: string,
  at: SheetPlace,
): SheetArea {
  const sheet = sheetName === undefined ? at.sheet : book.sheetCalled(sheetName);
  if (sheet === undefined) {
    throw new NotFollowed(`the sheet "${String(sheetName)}" is empty or not there`);
  }
  const area = referencedArea(address);
  if (!area) throw new NotFollowed(`"${address}" is not an address`);
  return { sheet, ...area };
}

function same(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
