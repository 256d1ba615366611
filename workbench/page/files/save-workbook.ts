import type { IWorksheetData } from '@univerjs/presets';
import { parseArea } from '../../xlsx/address';
import { openArchive, packArchive, partBytes, partText } from '../../xlsx/archive';
import type { BookSheet } from '../../xlsx/book';
import { withDynamicArrayMark } from '../../xlsx/dynamic-arrays';
import { relationships, workbookPart } from '../../xlsx/parts';
import { readBook } from '../../xlsx/read-book';
import { asCalculated, withRecalculationOnOpen } from '../../xlsx/calculation-settings';
import { isCellError } from '../../xlsx/cell-value';
import { elements, parseXml } from '../../xlsx/xml';
import { BLANK_STYLES, blankFile } from './blank-file';
import { CellLooks } from './cell-looks';
import { shownValueOf } from './cell-xml';
import { CONTENT, OFFICE } from '../../xlsx/format-names';
import { kindsOfThings } from './kinds-of-things';
import { listSheets, renameSheets, shownSheets } from './list-sheets';
import {
  addPart,
  addRelationship,
  documentText,
  freePath,
  reachable,
  removeRelationships,
  rootOf,
  setContentType,
  sweep,
  type Parts,
} from '../../xlsx/package-parts';
import { readLooks, type Looks } from './read-looks';
import { isTrue, readSheet, sheetFrame, type FiledBook } from './read-sheet';
import type { SavedWorkbook, ShownWorkbook } from './shown-workbook';
import { CellsWriter } from './write-cells-of-sheet';
import { writeKeptTexts } from '../../xlsx/write-kept-parts';
import { LooksWriter } from './write-looks';
import { changeFrame, sheetText } from './write-sheet';
import { writeTables } from './write-tables';

// Parts that hold for the file as it was: an order of calculation, a signature. A file with macros has another ending.
const OUTDATED = ['calcChain', 'vbaProject', 'origin'];

function dropOutdated(parts: Parts, workbook: string): void {
  for (const from of ['', workbook]) {
    const outdated = relationships(parts, from).filter(({ kind }) => OUTDATED.includes(kind));
    removeRelationships(parts, from, new Set(outdated.map(({ id }) => id)));
  }
  setContentType(parts, workbook, CONTENT.workbook);
}

function withLooks(parts: Parts, workbook: string): Required<Looks> {
  const gone = relationships(parts, workbook).filter(
    ({ kind, target }) => kind === 'styles' && !parts.has(target),
  );
  removeRelationships(parts, workbook, new Set(gone.map(({ id }) => id)));
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
  const { frame, scan } = sheetFrame(partText(parts, path), path);
  const tables = shown.tables.filter(({ sheet }) => sheet === name);
  const sheet = { id: '', name, hidden: false, frame, scan, cells: filed.cells, tables: [] };
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
  renameSheets(parts, workbook, shown.snapshot);
  listSheets(parts, workbook, shown);
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
  const sheets = shownSheets(shown.snapshot);
  for (const filed of readBook(parts).sheets) {
    const data = sheets.find(({ name }) => name === filed.name);
    if (data) writeSheet(writing, data, filed);
  }
  parts.set(path, partBytes(documentText(document)));
  writeKeptTexts(parts, workbook, shown.parts);
  sweep(parts, reached);
  const saved = isWorkedOut(parts) ? asCalculated(parts) : withRecalculationOnOpen(parts);
  const kinds = new Set(kindsOfThings(saved));
  return { bytes: packArchive(saved), lost: kindsOfThings(source).filter((kind) => !kinds.has(kind)) };
}

/** Whether every formula has a value; one that the page cannot work out shows #NAME?. */
function isWorkedOut(parts: Parts): boolean {
  return readBook(parts).sheets.every(({ cells }) =>
    [...cells.values()].every(
      ({ formula, value }) =>
        formula === undefined || (value !== null && !(isCellError(value) && value.error === '#NAME?')),
    ),
  );
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
