import { parseAddress } from './address';
import type { AuditedTable, SheetArea } from './audited-book';
import { NotFollowed } from './not-followed';

const ITEM = /\[((?:'.|[^'\][])*)\]/gu;

interface Selection {
  readonly sections: readonly string[];
  readonly columns: readonly string[];
}

/**
 * The cells of a table reference.
 * @param table the table
 * @param selection what stands in the brackets, for example `#All` or `[#This Row],[Area]`
 * @param row the row of the formula that asks
 * @returns the area
 * @throws {NotFollowed} where the table has no such column or part
 */
export function tableArea(table: AuditedTable, selection: string, row: number): SheetArea {
  const area = parseAddress(table.address);
  if (!area) throw new NotFollowed(`the place of the table ${table.name} cannot be read`);
  const { sections, columns } = parseSelection(selection);
  const first = area.top + 1;
  const last = area.bottom - (table.totals ? 1 : 0);
  const parts = (sections.length === 0 ? ['#data'] : sections).map((section): [number, number] => {
    switch (section) {
      case '#all':
        return [area.top, area.bottom];
      case '#data':
        return [first, last];
      case '#headers':
        return [area.top, area.top];
      case '#totals':
        if (table.totals) return [area.bottom, area.bottom];
        throw new NotFollowed(`the table ${table.name} has no totals row`);
      case '#this row':
        if (row >= first && row <= last) return [row, row];
        throw new NotFollowed(`it asks for its own row of the table ${table.name} from outside of its rows`);
      default:
        throw new NotFollowed(`"${section}" is not part of a table`);
    }
  });
  const places = columns.map((column) => placeOf(table, column));
  return {
    sheet: table.sheet,
    top: Math.min(...parts.map(([top]) => top)),
    bottom: Math.max(...parts.map(([, bottom]) => bottom)),
    left: places.length === 0 ? area.left : area.left + Math.min(...places),
    right: places.length === 0 ? area.right : area.left + Math.max(...places),
  };
}

function parseSelection(text: string): Selection {
  const trimmed = text.trim();
  if (trimmed.startsWith('@'))
    return { sections: ['#this row'], columns: parseSelection(trimmed.slice(1)).columns };
  const items = trimmed.startsWith('[')
    ? [...trimmed.matchAll(ITEM)].map(([, item]) => item ?? '')
    : [trimmed];
  const isSection = (item: string) => item.startsWith('#');
  return {
    sections: items.filter(isSection).map((item) => item.toLowerCase()),
    columns: items.filter((item) => item !== '' && !isSection(item)),
  };
}

function placeOf(table: AuditedTable, column: string): number {
  const wanted = plain(column.replace(/'(.)/gsu, '$1'));
  const place = table.headings.findIndex((heading) => plain(heading) === wanted);
  if (place < 0) throw new NotFollowed(`the table ${table.name} has no column "${column}"`);
  return place;
}

function plain(heading: string): string {
  return heading.trim().toLowerCase();
}
