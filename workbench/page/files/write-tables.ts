import type { Element } from '@xmldom/xmldom';
import { areaAddress, cellAddress, parseArea, type Area } from '../../xlsx/address';
import { partText } from '../../xlsx/archive';
import { relationships } from '../../xlsx/parts';
import type { CellValue } from '../../xlsx/cell-value';
import { decodeEscapes, elements, encodeEscapes, parseXml } from '../../xlsx/xml';
import { CONTENT, MAIN, OFFICE, pointWith, relationshipId } from '../../xlsx/format-names';
import {
  addPart,
  addRelationship,
  DECLARATION,
  editPart,
  freePath,
  makeElement,
  orderedChild,
  removeElement,
  removeRelationships,
  type Parts,
} from '../../xlsx/package-parts';
import { children } from './read-looks';
import { contentOf } from './read-sheet';
import type { ShownTable } from './shown-workbook';
import { SHEET_ORDER } from './sheet-order';

const TABLE_ORDER = ['autoFilter', 'sortState', 'tableColumns', 'tableStyleInfo', 'extLst'];

interface FiledTable {
  readonly path: string;
  readonly relationship: string;
  readonly name: string;
  readonly hasHeadings: boolean;
}

/** Headings of a table as the file wants them: texts, none blank, none twice. */
function tableHeadings(shown: readonly string[]): string[] {
  const taken = new Set<string>();
  return shown.map((text, index) => {
    let heading = text || `Column${index + 1}`;
    for (let number = 2; taken.has(heading.toLowerCase()); number += 1)
      heading = `${text || 'Column'}${number}`;
    taken.add(heading.toLowerCase());
    return heading;
  });
}

function storedHeading(heading: string): string {
  return encodeEscapes(heading).replace(/\n/g, '_x000a_');
}

function newTable(table: ShownTable, id: number): string {
  const total = table.totals ? 'totalsRowCount="1"' : 'totalsRowShown="0"';
  return (
    `${DECLARATION}<table xmlns="${MAIN}" id="${id}" name="${table.name}" displayName="${table.name}" ` +
    `ref="${table.address}" ${total}><autoFilter/><tableColumns/>` +
    '<tableStyleInfo name="TableStyleMedium2" showFirstColumn="0" showLastColumn="0" showRowStripes="1" ' +
    'showColumnStripes="0"/></table>'
  );
}

function setColumns(root: Element, headings: readonly string[]): boolean {
  const list = orderedChild(root, 'tableColumns', TABLE_ORDER);
  const before = children(list, 'tableColumn');
  const names = before.map((each) => decodeEscapes(each.getAttribute('name') ?? ''));
  if (names.length === headings.length && names.every((name, index) => name === headings[index]))
    return false;
  let last = Math.max(0, ...before.map((each) => Number(each.getAttribute('id'))));
  const columns = headings.map((heading, index) => {
    const place = names.indexOf(heading);
    // A column that was renamed stays the same column; one among others of another number is known by its name alone.
    const known = place >= 0 ? before[place] : names.length === headings.length ? before[index] : undefined;
    const isFree = known && (place >= 0 || !headings.includes(names[index] ?? ''));
    last += 1;
    const column = isFree ? known : makeElement(list, 'tableColumn', { id: last });
    column.setAttribute('name', storedHeading(heading));
    return column;
  });
  for (const each of before) removeElement(each);
  for (const each of columns) list.appendChild(each);
  list.setAttribute('count', String(columns.length));
  return true;
}

function setTable(root: Element, table: ShownTable, headings: readonly string[]): void {
  const area = parseArea(table.address);
  const moved = root.getAttribute('ref') !== table.address;
  root.setAttribute('ref', table.address);
  if (table.totals) {
    root.setAttribute('totalsRowCount', '1');
    root.removeAttribute('totalsRowShown');
  } else root.removeAttribute('totalsRowCount');
  const changed = setColumns(root, headings);
  if (moved || changed) for (const each of elements(root, 'sortState')) removeElement(each);
  const [filter] = children(root, 'autoFilter');
  if (!filter) return;
  const filtered = table.totals ? { ...area, bottom: area.bottom - 1 } : area;
  filter.setAttribute('ref', areaAddress(filtered));
  if (changed) for (const each of children(filter, 'filterColumn')) removeElement(each);
}

function tablesInFile(parts: Parts, sheet: string): FiledTable[] {
  return relationships(parts, sheet)
    .filter(({ kind, target }) => kind === 'table' && parts.has(target))
    .map(({ id, target }) => {
      const [root] = elements(parseXml(partText(parts, target), target), 'table');
      return {
        path: target,
        relationship: id,
        name: root?.getAttribute('displayName') ?? '',
        hasHeadings: root?.getAttribute('headerRowCount') !== '0',
      };
    });
}

function highestId(parts: Parts): number {
  let highest = 0;
  for (const path of parts.keys()) {
    if (!/\/tables\/[^/]*\.xml$/.test(path)) continue;
    const [root] = elements(parseXml(partText(parts, path), path), 'table');
    highest = Math.max(highest, Number(root?.getAttribute('id') ?? 0));
  }
  return highest;
}

/**
 * Gives a sheet of the file the tables that the page shows.
 * @param parts the file
 * @param sheet path of the sheet's part
 * @param frame root of the sheet
 * @param tables the tables of the sheet
 * @param valueAt what a cell of the sheet holds
 * @returns headings that have to differ from what the cells show, by address
 */
export function writeTables(
  parts: Parts,
  sheet: string,
  frame: Element,
  tables: readonly ShownTable[],
  valueAt: (row: number, column: number) => CellValue,
): Map<string, string> {
  const filed = tablesInFile(parts, sheet);
  const wanted = new Set(tables.map(({ name }) => name.toLowerCase()));
  const gone = filed.filter(({ name, hasHeadings }) => hasHeadings && !wanted.has(name.toLowerCase()));
  const unwanted = new Set(gone.map(({ relationship }) => relationship));
  removeRelationships(parts, sheet, unwanted);
  for (const each of elements(frame, 'tablePart'))
    if (unwanted.has(relationshipId(each))) removeElement(each);
  const forced = new Map<string, string>();
  for (const table of tables) {
    const area = parseArea(table.address);
    const headings = headingsOf(area, valueAt, forced);
    let path = filed.find(({ name }) => name.toLowerCase() === table.name.toLowerCase())?.path;
    if (path === undefined) {
      path = freePath(parts, 'xl/tables/table');
      addPart(parts, path, CONTENT.table, newTable(table, highestId(parts) + 1));
      const list = orderedChild(frame, 'tableParts', SHEET_ORDER);
      const part = makeElement(list, 'tablePart');
      list.appendChild(part);
      pointWith(part, addRelationship(parts, sheet, `${OFFICE}/table`, path));
    }
    editPart(parts, path, (root) => {
      setTable(root, table, headings);
    });
  }
  const [list] = elements(frame, 'tableParts');
  const count = children(list, 'tablePart').length;
  if (count === 0) removeElement(list);
  else list?.setAttribute('count', String(count));
  return forced;
}

function headingsOf(
  area: Area,
  valueAt: (row: number, column: number) => CellValue,
  forced: Map<string, string>,
): string[] {
  const columns = Array.from({ length: area.right - area.left + 1 }, (_, index) => area.left + index);
  const shown = columns.map((column) => valueAt(area.top, column));
  const headings = tableHeadings(shown.map((value) => String(contentOf(value))));
  for (const [index, column] of columns.entries()) {
    const heading = headings[index] ?? '';
    if (heading !== shown[index]) forced.set(cellAddress(area.top, column), heading);
  }
  return headings;
}
