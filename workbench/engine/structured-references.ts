import { areaAddress, type Area } from '../xlsx/address';
import type { BookTable } from '../xlsx/book';
import { formulaPieces } from '../xlsx/formula-text';

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
const ITEM = /\[((?:'[\s\S]|[^'\]])*)\]/g;
const SECTIONS = ['#all', '#data', '#headers', '#totals', '#this row'];

function same(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}

function quoted(values: readonly string[]): string {
  return values.map((value) => `"${value}"`).join(', ');
}

function columnOf(table: BookTable, heading: string): number {
  const name = heading
    .replace(/'([\s\S])/g, '$1')
    .replace(/\r\n?/g, '\n')
    .trim();
  const index = table.columns.findIndex((column) => same(column.trim(), name));
  if (index < 0) {
    throw new BadReference(`Table ${table.name} has no column "${name}". It has: ${quoted(table.columns)}.`);
  }
  return index;
}

interface Selection {
  readonly sections: readonly string[];
  readonly columns: readonly string[];
}

function parseSelection(body: string): Selection {
  const text = body.trim();
  const sections: string[] = [];
  const columns: string[] = [];
  if (text.startsWith('@')) {
    const rest = parseSelection(text.slice(1));
    return { sections: ['#this row'], columns: rest.columns };
  }
  const items = [...text.matchAll(ITEM)].map((item) => item[1] ?? '');
  for (const item of text.startsWith('[') ? items : [text]) {
    if (item.startsWith('#')) sections.push(item.toLowerCase());
    else if (item) columns.push(item);
  }
  return { sections, columns };
}

function rowsOf(
  table: BookTable,
  sections: readonly string[],
  place: FormulaPlace,
): { top: number; bottom: number } {
  const { top, bottom } = table.area;
  const first = top + table.headerRows;
  const last = bottom - table.totalsRows;
  const ranges = (sections.length === 0 ? ['#data'] : sections).map((section) => {
    switch (section) {
      case '#all':
        return [top, bottom] as const;
      case '#data':
        return [first, last] as const;
      case '#headers':
        if (table.headerRows === 0) throw new BadReference(`Table ${table.name} has no header row.`);
        return [top, first - 1] as const;
      case '#totals':
        if (table.totalsRows === 0) throw new BadReference(`Table ${table.name} has no totals row.`);
        return [last + 1, bottom] as const;
      case '#this row':
        if (place.sheet !== table.sheet || place.row < first || place.row > last) {
          throw new BadReference(
            `The formula asks for its own row of table ${table.name} but stands outside of its rows.`,
          );
        }
        return [place.row, place.row] as const;
      default:
        throw new BadReference(`"${section}" is not part of a table. Accepted: ${SECTIONS.join(', ')}.`);
    }
  });
  return {
    top: Math.min(...ranges.map(([from]) => from)),
    bottom: Math.max(...ranges.map(([, to]) => to)),
  };
}

function rangeText(sheet: string, area: Area): string {
  const fixed = areaAddress(area).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
  return `'${sheet.replace(/'/g, "''")}'!${fixed}`;
}

function resolve(table: BookTable, body: string, place: FormulaPlace): string {
  const { sections, columns } = parseSelection(body);
  const indexes = columns.map((column) => columnOf(table, column));
  const rows = rowsOf(table, sections, place);
  const left = indexes.length === 0 ? 0 : Math.min(...indexes);
  const right = indexes.length === 0 ? table.columns.length - 1 : Math.max(...indexes);
  return rangeText(table.sheet, {
    ...rows,
    left: table.area.left + left,
    right: table.area.left + right,
  });
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
