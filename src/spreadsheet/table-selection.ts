/** A table as a reference sees it. Rows and columns count as those of whoever asks. */
export interface TableShape {
  readonly name: string;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly headings: readonly string[];
  readonly headerRows: number;
  readonly totalsRows: number;
}

/** Cells of a table. */
export interface SelectedCells {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** A part of a table that is not there. */
export class BadSelection extends Error {
  override readonly name = 'BadSelection';

  /**
   * Says what is wrong.
   * @param what what is wrong with the table, its name first
   * @param hint what there is instead, a sentence of its own
   */
  constructor(
    readonly what: string,
    hint = '',
  ) {
    super(`Table ${what}.${hint === '' ? '' : ` ${hint}`}`);
  }
}

const ITEM = /\[((?:'[\s\S]|[^'\][])*)\]/gu;
const SECTIONS = ['#all', '#data', '#headers', '#totals', '#this row'];

/**
 * The cells that a reference to a part of a table stands for.
 * @param table the table
 * @param selection what stands in the brackets, for example `#All` or `[#This Row],[Area]`; empty for its rows
 * @param row the row of the formula that asks; undefined where it stands on another sheet
 * @returns the cells
 * @throws {BadSelection} where the table has no such column or part
 */
export function selectedCells(table: TableShape, selection: string, row: number | undefined): SelectedCells {
  const { sections, columns } = parse(selection);
  const places = columns.map((column) => placeOf(table, column));
  const rows = (sections.length === 0 ? ['#data'] : sections).map((section) => rowsOf(table, section, row));
  return {
    top: Math.min(...rows.map(([from]) => from)),
    bottom: Math.max(...rows.map(([, to]) => to)),
    left: table.left + (places.length === 0 ? 0 : Math.min(...places)),
    right: table.left + (places.length === 0 ? table.headings.length - 1 : Math.max(...places)),
  };
}

function parse(text: string): { readonly sections: readonly string[]; readonly columns: readonly string[] } {
  const trimmed = text.trim();
  if (trimmed.startsWith('@')) return { sections: ['#this row'], columns: parse(trimmed.slice(1)).columns };
  const items = trimmed.startsWith('[')
    ? [...trimmed.matchAll(ITEM)].map(([, item]) => item ?? '')
    : [trimmed];
  const isSection = (item: string): boolean => item.startsWith('#');
  return {
    sections: items.filter(isSection).map((item) => item.toLowerCase()),
    columns: items.filter((item) => item !== '' && !isSection(item)),
  };
}

function rowsOf(table: TableShape, section: string, row: number | undefined): readonly [number, number] {
  const { name, top, bottom } = table;
  const first = top + table.headerRows;
  const last = bottom - table.totalsRows;
  switch (section) {
    case '#all':
      return [top, bottom];
    case '#data':
      return [first, last];
    case '#headers':
      if (table.headerRows === 0) throw new BadSelection(`${name} has no header row`);
      return [top, first - 1];
    case '#totals':
      if (table.totalsRows === 0) throw new BadSelection(`${name} has no totals row`);
      return [last + 1, bottom];
    case '#this row':
      if (row !== undefined && row >= first && row <= last) return [row, row];
      throw new BadSelection(`${name} has no row for a formula that stands outside of its rows`);
    default:
      throw new BadSelection(
        `${name} has no such part: "${section}" is no part of a table`,
        `Accepted: ${SECTIONS.join(', ')}.`,
      );
  }
}

function placeOf({ name, headings }: TableShape, column: string): number {
  const said = column.replace(/'([\s\S])/gu, '$1');
  const wanted = plain(said);
  const place = headings.findIndex((heading) => plain(heading) === wanted);
  if (place < 0) {
    const known = headings.map((heading) => `"${heading}"`).join(', ');
    throw new BadSelection(`${name} has no column "${said}"`, `It has: ${known}.`);
  }
  return place;
}

function plain(heading: string): string {
  return heading.replace(/\r\n?/g, '\n').trim().toLowerCase();
}
