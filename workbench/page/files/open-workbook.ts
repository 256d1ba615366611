import type { IWorkbookData } from '@univerjs/presets';
import type { NameInfo } from '../../../taskpane/workbook/port';
import { areaAddress } from '../../xlsx/address';
import { openArchive, partText, type Archive } from '../../xlsx/archive';
import { BadFile } from '../../xlsx/bad-file';
import type { Book } from '../../xlsx/book';
import { workbookPart } from '../../xlsx/parts';
import { readBook } from '../../xlsx/read-book';
import { elements, parseXml } from '../../xlsx/xml';
import { typedFormula } from './formula-form';
import { readKeptTexts } from '../../xlsx/kept-parts';
import { meansKeptName, withoutShadowed } from './shadowed-names';
import { kindsOfThings } from './kinds-of-things';
import { BUILT_IN_NAME, sheetId } from './names-of-file';
import { readLooks } from './read-looks';
import {
  isTrue,
  readSheet,
  sheetFrame,
  styleId,
  wholeStyle,
  wholeStyleId,
  type ReadSheet,
} from './read-sheet';
import type { OpenedWorkbook, ShownTable } from './shown-workbook';

function namesOf(book: Book): NameInfo[] {
  return book.names
    .filter(({ name }) => !BUILT_IN_NAME.test(name))
    .map(({ name, formula, sheet }) => ({
      name,
      ...(sheet === undefined ? {} : { sheet }),
      refersTo: typedFormula(formula),
    }));
}

function tablesOf(book: Book): ShownTable[] {
  return book.tables
    .filter(({ headerRows }) => headerRows > 0)
    .map(({ name, sheet, area, totalsRows }) => ({
      name,
      sheet,
      address: areaAddress(area),
      totals: totalsRows > 0,
    }));
}

function read(archive: Archive): OpenedWorkbook {
  const path = workbookPart(archive);
  const book = readBook(archive);
  const workbook = parseXml(partText(archive, path), path);
  const looks = readLooks(archive, path);
  const listed = new Map(
    elements(workbook, 'sheet').map((element) => [element.getAttribute('name') ?? '', element]),
  );
  const shared = {
    ...looks,
    date1904: isTrue(elements(workbook, 'workbookPr')[0]?.getAttribute('date1904')),
  };
  const names = withoutShadowed(namesOf(book));
  const sheets = book.sheets.map(({ name, part, cells }): ReadSheet => {
    const element = listed.get(name);
    const tables = book.tables.filter(({ sheet }) => sheet === name).map(({ area }) => area);
    const hidden = (element?.getAttribute('state') ?? 'visible') !== 'visible';
    const id = sheetId(element?.getAttribute('sheetId') ?? name);
    const source = sheetFrame(partText(archive, part), part);
    const isKept = (formula: string): boolean => meansKeptName(formula, name, names.kept);
    return readSheet({ id, name, hidden, ...source, cells, tables, isKept }, shared);
  });
  const whole = new Set(sheets.flatMap((sheet) => [...sheet.whole]));
  const styles = Object.fromEntries(looks.styles.map((style, number) => [styleId(number), style]));
  const behind = new Set(
    sheets.flatMap(({ data: { rowData = {}, columnData = {} } }) =>
      [...Object.values(rowData), ...Object.values(columnData)].map((line) => String(line?.s)),
    ),
  );
  const theirs = [...behind].flatMap((id) => styles[id] ?? []);
  const ids = sheets.map(({ data }) => data.id ?? '');
  const snapshot: IWorkbookData = {
    id: 'workbook',
    name: '',
    appVersion: '',
    locale: 'enUS' as IWorkbookData['locale'],
    styles: {
      ...styles,
      ...Object.fromEntries(
        [...whole].map((number) => [wholeStyleId(number), wholeStyle(looks.styles[number] ?? {}, theirs)]),
      ),
    },
    sheetOrder: ids,
    sheets: Object.fromEntries(sheets.map(({ data }, index) => [ids[index] ?? '', data])),
  };
  return {
    snapshot,
    tables: tablesOf(book),
    names: names.shown,
    keptNames: names.kept,
    spills: sheets.flatMap(({ spills }) => spills),
    parts: readKeptTexts(archive, path),
    notShown: kindsOfThings(archive),
  };
}

/**
 * Opens a workbook file for the page.
 * @param bytes the file
 * @returns what the page shows, and what it does not
 * @throws {BadFile} where the file cannot be used, with the reason
 */
export function openWorkbook(bytes: Uint8Array): Promise<OpenedWorkbook> {
  return Promise.resolve().then(() => {
    try {
      return read(openArchive(bytes));
    } catch (cause) {
      if (cause instanceof BadFile) throw cause;
      const reason = cause instanceof Error ? cause.message : String(cause);
      throw new BadFile(`The workbook is damaged (${reason}). Accepted: an .xlsx workbook.`);
    }
  });
}
