import type { Element } from '@xmldom/xmldom';
import type { IWorksheetData } from '@univerjs/presets';
import { parseArea } from '../../xlsx/address';
import { openArchive, packArchive, partBytes, partText } from '../../xlsx/archive';
import type { BookSheet } from '../../xlsx/book';
import { withDynamicArrayMark } from '../../xlsx/dynamic-arrays';
import { relationships, workbookPart } from '../../xlsx/parts';
import { readBook } from '../../xlsx/read-book';
import { withRecalculationOnOpen } from '../../xlsx/recalculate-on-open';
import { elements, parseXml } from '../../xlsx/xml';
import { BLANK_SHEET, BLANK_STYLES, blankFile } from './blank-file';
import { CellLooks } from './cell-looks';
import { shownValueOf } from './cell-xml';
import { CONTENT, OFFICE, pointWith, relationshipId } from './format-names';
import { kindsOfThings } from './kinds-of-things';
import { sheetId } from './names-of-file';
import {
  addPart,
  addRelationship,
  documentText,
  editPart,
  freePath,
  makeElement,
  orderedChild,
  reachable,
  removeElement,
  removeRelationships,
  rootOf,
  setContentType,
  sweep,
  type Parts,
} from './package-parts';
import { readLooks, type Looks } from './read-looks';
import { isTrue, readSheet, sheetFrame, type FiledBook } from './read-sheet';
import { renameInFormulas } from './renamed-sheets';
import type { SavedWorkbook, ShownWorkbook } from './shown-workbook';
import { CellsWriter } from './write-cells-of-sheet';
import { writeKeptTexts } from './write-kept-parts';
import { LooksWriter } from './write-looks';
import { WORKBOOK_ORDER, writeNames } from './write-names';
import { changeFrame, sheetText } from './write-sheet';
import { writeTables } from './write-tables';

// Parts that hold for the file as it was: an order of calculation, a signature. A file with macros has another ending.
const OUTDATED = ['calcChain', 'vbaProject', 'origin'];
const MACRO_SHEETS = ['xlMacrosheet', 'xlIntlMacrosheet'];

/** A sheet that is listed in the workbook. */
interface Listed {
  readonly element: Element;
  readonly relationship: string;
  readonly id: string;
  readonly name: string;
  readonly kind: string;
}

function listedSheets(parts: Parts, workbook: string, root: Element): Listed[] {
  const links = relationships(parts, workbook);
  return elements(root, 'sheet').map((element) => {
    const relationship = relationshipId(element);
    return {
      element,
      relationship,
      id: sheetId(element.getAttribute('sheetId') ?? ''),
      name: element.getAttribute('name') ?? '',
      kind: links.find(({ id }) => id === relationship)?.kind ?? '',
    };
  });
}

function shownSheets({ snapshot }: ShownWorkbook): Partial<IWorksheetData>[] {
  return snapshot.sheetOrder.map((id) => ({ id, ...snapshot.sheets[id] }));
}

function renameSheets(parts: Parts, workbook: string, shown: ShownWorkbook): void {
  const renames = new Map<string, string>();
  editPart(parts, workbook, (root) => {
    for (const { id, name, kind, element } of listedSheets(parts, workbook, root)) {
      const next = kind === 'worksheet' ? shown.snapshot.sheets[id]?.name : undefined;
      if (next === undefined || next === name) continue;
      renames.set(name, next);
      element.setAttribute('name', next);
    }
  });
  renameInFormulas(parts, renames);
}

function isHidden(sheet: Element): boolean {
  return (sheet.getAttribute('state') ?? 'visible') !== 'visible';
}

/** The list of sheets as the page has it; what the page does not show keeps its place. */
function listSheets(parts: Parts, workbook: string, root: Element, shown: ShownWorkbook): void {
  const before = listedSheets(parts, workbook, root);
  const sheets = shownSheets(shown);
  const known = new Map(before.filter(({ kind }) => kind === 'worksheet').map((each) => [each.id, each]));
  const isKept = ({ id, kind }: Listed): boolean =>
    kind === 'worksheet' ? sheets.some((sheet) => sheet.id === id) : !MACRO_SHEETS.includes(kind);
  const list = orderedChild(root, 'sheets', WORKBOOK_ORDER);
  let highest = Math.max(0, ...before.map(({ element }) => Number(element.getAttribute('sheetId'))));
  const now = sheets.map((sheet): Element => {
    const found = known.get(sheet.id ?? '')?.element;
    if (found) return found;
    const path = freePath(parts, 'xl/worksheets/sheet');
    addPart(parts, path, CONTENT.worksheet, BLANK_SHEET);
    highest += 1;
    const element = makeElement(list, 'sheet', { name: sheet.name ?? '', sheetId: highest });
    list.appendChild(element);
    pointWith(element, addRelationship(parts, workbook, `${OFFICE}/worksheet`, path));
    return element;
  });
  for (const [place, each] of before.entries()) {
    if (each.kind !== 'worksheet' && isKept(each)) now.splice(place, 0, each.element);
  }
  const gone = before.filter((each) => !isKept(each));
  removeRelationships(parts, workbook, new Set(gone.map(({ relationship }) => relationship)));
  const active = Number(elements(root, 'workbookView')[0]?.getAttribute('activeTab') ?? 0);
  for (const each of elements(list, 'sheet')) removeElement(each);
  for (const each of now) list.appendChild(each);
  for (const sheet of sheets) {
    const element = now.find((each) => each.getAttribute('name') === sheet.name);
    if (!element || isHidden(element) === (sheet.hidden === 1)) continue;
    element.setAttribute('state', sheet.hidden === 1 ? 'hidden' : 'visible');
  }
  const view = elements(root, 'workbookView')[0];
  const front = before[active]?.element;
  const isFrontVisible = front && now.includes(front) && !isHidden(front);
  const tab = isFrontVisible ? now.indexOf(front) : now.findIndex((each) => !isHidden(each));
  if (view && tab !== active) {
    view.setAttribute('activeTab', String(tab));
    view.removeAttribute('firstSheet');
  }
  const names = new Set(now.map((each) => each.getAttribute('name')));
  writeNames(
    root,
    shown.names,
    before.map(({ name }) => (names.has(name) ? name : undefined)),
    now.map((each) => each.getAttribute('name') ?? ''),
  );
}

function dropOutdated(parts: Parts, workbook: string): void {
  for (const from of ['', workbook]) {
    const outdated = relationships(parts, from).filter(({ kind }) => OUTDATED.includes(kind));
    removeRelationships(parts, from, new Set(outdated.map(({ id }) => id)));
  }
  setContentType(parts, workbook, CONTENT.workbook);
}

function withLooks(parts: Parts, workbook: string): Required<Looks> {
  let looks = readLooks(parts, workbook);
  if (looks.path === undefined || looks.document === undefined) {
    const path = freePath(parts, 'xl/styles');
    addPart(parts, path, CONTENT.styles, BLANK_STYLES);
    addRelationship(parts, workbook, `${OFFICE}/styles`, path);
    looks = readLooks(parts, workbook);
  }
  return looks as Required<Looks>;
}

/** What writing one sheet needs to know of the workbook. */
interface Writing {
  readonly parts: Parts;
  readonly shown: ShownWorkbook;
  readonly looks: LooksWriter;
  readonly book: FiledBook;
  readonly filling: ReadonlySet<string>;
  readonly mark: () => number;
}

function writeSheet(writing: Writing, data: Partial<IWorksheetData>, filed: BookSheet): void {
  const { parts, shown, book } = writing;
  const { part: path, name } = filed;
  const xml = partText(parts, path);
  const { frame, scan } = sheetFrame(xml, path);
  const tables = shown.tables.filter(({ sheet }) => sheet === name);
  const sheet = { id: '', name, hidden: false, xml, path, cells: filed.cells, tables: [] };
  const before = readSheet(sheet, book).data;
  const looks = new CellLooks(writing.looks, shown.snapshot.styles, data);
  const headings = writeTables(parts, path, rootOf(frame), tables, (row, column) =>
    shownValueOf(data.cellData?.[row]?.[column]),
  );
  const cells = new CellsWriter({
    data,
    before,
    scan,
    cells: filed.cells,
    spills: shown.spills.filter((spill) => spill.sheet === name),
    tables: tables.map((table) => ({ name: table.name, area: parseArea(table.address) })),
    headings,
    looks,
    date1904: book.date1904,
    filling: writing.filling,
    mark: writing.mark,
  });
  changeFrame(frame, data, before, looks);
  parts.set(path, partBytes(sheetText(frame, cells.rows(), scan.prefix)));
}

function write(
  shown: ShownWorkbook,
  original: Uint8Array | undefined,
  filling: ReadonlySet<string>,
): SavedWorkbook {
  const source = original ? openArchive(original) : blankFile();
  const parts: Parts = new Map(source);
  const workbook = workbookPart(parts);
  const reached = reachable(parts);
  dropOutdated(parts, workbook);
  renameSheets(parts, workbook, shown);
  editWorkbook(parts, workbook, shown);
  const { path, document, styles, palette } = withLooks(parts, workbook);
  const looks = new LooksWriter(rootOf(document), styles);
  const root = rootOf(parseXml(partText(parts, workbook), workbook));
  const date1904 = isTrue(elements(root, 'workbookPr')[0]?.getAttribute('date1904'));
  let mark: number | undefined;
  const writing: Writing = {
    parts,
    shown,
    looks,
    filling,
    book: { styles, palette, date1904 },
    mark: () => {
      if (mark === undefined) {
        const marked = withDynamicArrayMark(parts);
        mark = marked.mark;
        for (const [each, bytes] of marked.archive) parts.set(each, bytes);
      }
      return mark;
    },
  };
  const sheets = shownSheets(shown);
  for (const filed of readBook(parts).sheets) {
    const data = sheets.find(({ name }) => name === filed.name);
    if (data) writeSheet(writing, data, filed);
  }
  parts.set(path, partBytes(documentText(document)));
  writeKeptTexts(parts, workbook, shown.parts);
  sweep(parts, reached);
  const saved = withRecalculationOnOpen(parts);
  const kinds = new Set(kindsOfThings(saved));
  return { bytes: packArchive(saved), lost: kindsOfThings(source).filter((kind) => !kinds.has(kind)) };
}

function editWorkbook(parts: Parts, workbook: string, shown: ShownWorkbook): void {
  const document = parseXml(partText(parts, workbook), workbook);
  listSheets(parts, workbook, rootOf(document), shown);
  parts.set(workbook, partBytes(documentText(document)));
}

/**
 * Makes the file of a workbook that the page shows. What the page does not show stays as it is in the original.
 * @param shown what the page shows
 * @param original the file that it was opened from; without it a new one is made
 * @param filling ids of the Washdown functions whose result may fill several cells
 * @returns the file, and what of the original it does not hold
 * @throws {BadFile} where the original cannot be used, with the reason
 */
export function saveWorkbook(
  shown: ShownWorkbook,
  original?: Uint8Array,
  filling: ReadonlySet<string> = new Set(),
): Promise<SavedWorkbook> {
  return Promise.resolve().then(() => write(shown, original, filling));
}
