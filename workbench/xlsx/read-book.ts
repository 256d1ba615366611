import { partText, type Archive } from './archive';
import { parseArea } from './address';
import type { Book, BookName, BookSheet, BookTable } from './book';
import { relationships, workbookPart } from './parts';
import { readCells, stringText } from './read-cells';
import { scanSheet } from './sheet-scan';
import { decodeEscapes, elements, parseXml } from './xml';

const STRING_ITEM = /<(?:[\w.-]+:)?si(?:\s[^>]*)?(?:\/>|>([\s\S]*?)<\/(?:[\w.-]+:)?si>)/g;

function sharedStrings(archive: Archive, path: string | undefined): string[] {
  if (path === undefined || !archive.has(path)) return [];
  return [...partText(archive, path).matchAll(STRING_ITEM)].map((item) => stringText(item[1] ?? ''));
}

function readTable(archive: Archive, path: string, sheet: string): BookTable | undefined {
  const [table] = elements(parseXml(partText(archive, path), path), 'table');
  const reference = table?.getAttribute('ref');
  if (!table || !reference) return undefined;
  return {
    name: table.getAttribute('displayName') ?? table.getAttribute('name') ?? '',
    sheet,
    area: parseArea(reference),
    columns: elements(table, 'tableColumn').map((column) => decodeEscapes(column.getAttribute('name') ?? '')),
    headerRows: Number(table.getAttribute('headerRowCount') ?? 1),
    totalsRows: Number(table.getAttribute('totalsRowCount') ?? 0),
  };
}

/**
 * Reads a workbook file.
 * @param archive the parts of the file
 * @returns its worksheets, tables and names
 * @throws {BadFile} where the file is no workbook or is damaged
 */
export function readBook(archive: Archive): Book {
  const path = workbookPart(archive);
  const workbook = parseXml(partText(archive, path), path);
  const parts = relationships(archive, path);
  const strings = sharedStrings(archive, parts.find((part) => part.kind === 'sharedStrings')?.target);
  const listed = elements(workbook, 'sheet');
  const sheets: BookSheet[] = [];
  const tables: BookTable[] = [];
  for (const element of listed) {
    const id = Array.from(element.attributes).find((each) => each.localName === 'id' && each.prefix)?.value;
    const part = parts.find((each) => each.id === id);
    // Chart and dialog sheets have no cells.
    if (part?.kind !== 'worksheet') continue;
    const name = element.getAttribute('name') ?? '';
    sheets.push({
      name,
      part: part.target,
      cells: readCells(scanSheet(partText(archive, part.target), part.target), strings),
    });
    for (const other of relationships(archive, part.target)) {
      const table = other.kind === 'table' ? readTable(archive, other.target, name) : undefined;
      if (table) tables.push(table);
    }
  }
  const names = elements(workbook, 'definedName').map((element): BookName => {
    const local = element.getAttribute('localSheetId');
    const sheet = local === null ? undefined : listed[Number(local)]?.getAttribute('name');
    return {
      name: element.getAttribute('name') ?? '',
      formula: element.textContent ?? '',
      ...(sheet ? { sheet } : {}),
    };
  });
  return { sheets, tables, names };
}
