import { partText, type Archive } from './archive';
import { BadFile } from './bad-file';
import { counted, MOST_CELLS } from './limits';
import { parseArea } from './address';
import type { Book, BookName, BookSheet, BookTable } from './book';
import { relationships, workbookPart } from './parts';
import { percentStyles } from './percent-styles';
import { readCells, stringText } from './read-cells';
import { scanSheet } from './sheet-scan';
import { decodeEscapes, elements, parseXml, plainMarkup } from './xml';

const STRING_TAG = /<(\/?)(?:[\w.-]+:)?si(?:\s[^<>]*?)?(\/?)>/g;

function sharedStrings(archive: Archive, path: string | undefined): string[] {
  if (path === undefined) return [];
  const xml = plainMarkup(partText(archive, path), path);
  const texts: string[] = [];
  let start = -1;
  for (const tag of xml.matchAll(STRING_TAG)) {
    const end = tag.index + tag[0].length;
    if (tag[2]) texts.push('');
    else if (tag[1] === '') start = start < 0 ? end : NaN;
    else {
      texts.push(stringText(xml.slice(start, tag.index)));
      start = -1;
    }
    if (Number.isNaN(start)) break;
  }
  if (start !== -1) throw new BadFile(`The workbook is damaged: ${path} has a text that does not end.`);
  return texts;
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
  const percents = percentStyles(archive, parts.find((part) => part.kind === 'styles')?.target);
  const listed = elements(workbook, 'sheet');
  const sheets: BookSheet[] = [];
  const tables: BookTable[] = [];
  const taken = new Set<string>();
  const once = (what: string): void => {
    if (taken.has(what)) throw new BadFile(`The workbook is damaged: ${what} is there twice.`);
    taken.add(what);
  };
  let cells = 0;
  for (const element of listed) {
    const id = Array.from(element.attributes).find((each) => each.localName === 'id' && each.prefix)?.value;
    const part = parts.find((each) => each.id === id);
    const name = element.getAttribute('name') ?? '';
    once(`the sheet "${name.toLowerCase()}"`);
    if (!part) throw new BadFile(`The workbook is damaged: its sheet "${name}" leads to no part.`);
    // Chart and dialog sheets have no cells.
    if (part.kind !== 'worksheet') continue;
    once(`the part ${part.target} of a sheet`);
    const read = readCells(scanSheet(partText(archive, part.target), part.target), strings, percents);
    cells += read.size;
    if (cells > MOST_CELLS) {
      throw new BadFile(
        `The workbook has more than ${counted(MOST_CELLS)} cells. Accepted: that many at most.`,
      );
    }
    sheets.push({ name, part: part.target, cells: read });
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
