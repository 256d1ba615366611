import type { Bundle } from '../../workbench/engine/bundle';
import { estimateBook } from '../../workbench/estimate/estimate-book';
import { openWorkbook } from '../../workbench/page/files/open-workbook';
import { saveWorkbook } from '../../workbench/page/files/save-workbook';
import { cellAddress } from '../../workbench/xlsx/address';
import { openArchive, packArchive, partBytes, partText, type Archive } from '../../workbench/xlsx/archive';
import { BadFile } from '../../workbench/xlsx/bad-file';
import type { Book, BookSheet } from '../../workbench/xlsx/book';
import { isCellError, type CellValue } from '../../workbench/xlsx/cell-value';
import { readBook } from '../../workbench/xlsx/read-book';
import { writeCells, type CellChange } from '../../workbench/xlsx/write-cells';

/** What became of a workbook. */
export type Outcome = 'held' | 'refused' | 'changed' | 'failed';

/** All of them, in the order in which they are reported. */
export const OUTCOMES: readonly Outcome[] = ['held', 'refused', 'changed', 'failed'];

/** A wall table without its sheet: headings, and one wall of 100 square feet. */
const WALLS: readonly (readonly CellValue[])[] = [
  ['Wall', 'Zone', 'Material', 'Area'],
  ['W1', 'South', 'Limestone', 100],
];
/** Parts that say what the others are: an estimate may add the mark of arrays and the request to recalculate. */
const DIRECTORY = /^\[Content_Types\]\.xml$|_rels\/workbook\.xml\.rels$|\/workbook\.xml$|\/metadata\.xml$/i;

/**
 * Adds walls and a Washdown formula below what the first sheet of a workbook holds.
 * @param archive the file
 * @returns the file with them, and where the formula stands
 */
export function withWalls(
  archive: Archive,
): { archive: Archive; sheet: string; address: string } | undefined {
  const [sheet] = readBook(archive).sheets;
  if (!sheet) return undefined;
  let last = 0;
  for (const { row, array } of sheet.cells.values()) last = Math.max(last, row, array?.bottom ?? 0);
  const top = last + 2;
  const range = `A${String(top + 1)}:D${String(top + 2)}`;
  const changes = WALLS.flatMap((line, r) =>
    line.map((value, c): CellChange => ({ row: top + r, column: c, value })),
  );
  changes.push({ row: top + 3, column: 0, value: null, formula: `_xldudf_WASH_MASKING(${range})` });
  const text = writeCells(partText(archive, sheet.part), sheet.part, changes);
  return {
    archive: new Map(archive).set(sheet.part, partBytes(text)),
    sheet: sheet.name,
    address: cellAddress(top + 3, 0),
  };
}

function same(a: CellValue, b: CellValue): boolean {
  return isCellError(a) && isCellError(b) ? a.error === b.error : Object.is(a, b);
}

function differing(was: BookSheet, is: BookSheet | undefined, but: string): string | undefined {
  for (const [address, cell] of was.cells) {
    const other = is?.cells.get(address);
    if (address === but) continue;
    if (!other || !same(cell.value, other.value) || cell.formula !== other.formula) {
      return `${was.name}!${address}: ${JSON.stringify(cell.value)} became ${JSON.stringify(other?.value)}`;
    }
  }
  return undefined;
}

function differingBook(was: Book, is: Book, ours?: { sheet: string; address: string }): string | undefined {
  for (const sheet of was.sheets) {
    const other = is.sheets.find(({ name }) => name === sheet.name);
    const found = differing(sheet, other, ours?.sheet === sheet.name ? ours.address : '');
    if (found !== undefined) return found;
  }
  return undefined;
}

function differingPart(was: Archive, is: Archive, sheets: readonly string[]): string | undefined {
  for (const [path, bytes] of was) {
    if (DIRECTORY.test(path) || sheets.includes(path)) continue;
    const other = is.get(path);
    if (!other || Buffer.compare(bytes, other) !== 0) return `the part ${path} differs`;
  }
  return undefined;
}

async function onCommand(archive: Archive, bundle: Bundle): Promise<string | undefined> {
  const made = withWalls(archive);
  if (!made) return undefined;
  const { archive: done, washdown } = await estimateBook(made.archive, bundle);
  const own = washdown.find(
    ({ row, column, sheet }) => sheet === made.sheet && cellAddress(row, column) === made.address,
  );
  if (typeof own?.result !== 'number') return `the Washdown cell came to ${JSON.stringify(own?.result)}`;
  const packed = openArchive(packArchive(done));
  const sheet = readBook(made.archive).sheets.find(({ name }) => name === made.sheet);
  return (
    differingPart(made.archive, packed, [sheet?.part ?? '']) ??
    differingBook(readBook(made.archive), readBook(packed), made)
  );
}

async function onPage(bytes: Uint8Array, archive: Archive): Promise<string | undefined> {
  const saved = await saveWorkbook(await openWorkbook(bytes), bytes);
  return differingBook(readBook(archive), readBook(openArchive(saved.bytes)));
}

/**
 * Opens a workbook, estimates and saves it with walls of ours, and opens and saves it as the page does.
 * @param bytes the file
 * @param bundle the built functions
 * @returns what became of it, and why where it did not hold
 */
export async function checkBook(
  bytes: Uint8Array,
  bundle: Bundle,
): Promise<{ outcome: Outcome; why: string }> {
  try {
    const archive = openArchive(bytes);
    const why = (await onCommand(archive, bundle)) ?? (await onPage(bytes, archive));
    return why === undefined ? { outcome: 'held', why: '' } : { outcome: 'changed', why };
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    return { outcome: cause instanceof BadFile ? 'refused' : 'failed', why };
  }
}
