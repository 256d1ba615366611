import { cellAddress, cellsIn, parseArea, type Area } from './address';
import { BadFile } from './bad-file';
import type { BookCell } from './book';
import type { CellValue } from './cell-value';
import { counted, MOST_ARRAY_CELLS } from './limits';
import { attribute, type ScannedCell, type ScannedSheet } from './sheet-scan';
import { moveFormula, type CellPlace } from '../../src/spreadsheet/move-formula';
import { decodeEscapes, decodeXml, plainMarkup } from './xml';

const FORMULA = /<(?:[\w.-]+:)?f((?:\s[^<>]*?)?)(?:\/>|>([^<]*)<\/(?:[\w.-]+:)?f>)/;
const VALUE = /<(?:[\w.-]+:)?v(?:\s[^<>]*)?>([^<]*)<\/(?:[\w.-]+:)?v>/;
const TEXT = /<(?:[\w.-]+:)?t(?:\s[^<>]*)?>([^<]*)<\/(?:[\w.-]+:)?t>/g;
const PHONETIC = /<(?:[\w.-]+:)?rPh[\s>][\s\S]*?<\/(?:[\w.-]+:)?rPh>/g;

const DAY = 86_400_000;
const EPOCH = Date.UTC(1899, 11, 30);

/** A formula element as it stands in the file. */
export interface StoredFormula {
  readonly attributes: string;
  /** Decoded; empty in the later cells of a shared formula. */
  readonly text: string;
}

/**
 * The formula of a cell element.
 * @param inner what stands between the tags of the cell
 * @returns the formula, or undefined
 */
export function storedFormula(inner: string): StoredFormula | undefined {
  // Most cells have none, and a sheet may have a million.
  const found = inner.includes('f') ? FORMULA.exec(plainMarkup(inner, 'a cell')) : null;
  return found ? { attributes: found[1] ?? '', text: decodeXml(found[2] ?? '') } : undefined;
}

/**
 * The plain text of a rich or plain string element.
 * @param inner what stands between the tags of the string
 * @returns the text, runs joined, reading aids left out
 */
export function stringText(inner: string): string {
  return [...plainMarkup(inner, 'a text').replace(PHONETIC, '').matchAll(TEXT)]
    .map((run) => decodeEscapes(decodeXml(run[1] ?? '')))
    .join('');
}

function sharedText(strings: readonly string[], text: string, { row, column }: ScannedCell): string {
  const shared = strings[Number(text)];
  if (shared !== undefined) return shared;
  throw new BadFile(
    `The workbook is damaged: cell ${cellAddress(row, column)} has the shared text number ${text}, and there are ${counted(strings.length)}.`,
  );
}

function numberOf(number: number, text: string): CellValue {
  if (Number.isFinite(number)) return number;
  return { error: '#NUM!', message: `The file has "${text.slice(0, 40)}" where a number should be.` };
}

function arrayArea(reference: string): Area {
  const area = parseArea(reference);
  if (cellsIn(area) > MOST_ARRAY_CELLS) {
    throw new BadFile(
      `The array formula of ${reference} fills ${counted(cellsIn(area))} cells. Accepted: ${counted(MOST_ARRAY_CELLS)} at most.`,
    );
  }
  return area;
}

function storedValue(cell: ScannedCell, strings: readonly string[]): CellValue {
  const type = attribute(cell.attributes, 't') ?? 'n';
  if (type === 'inlineStr') return stringText(cell.inner) || null;
  const found = VALUE.exec(plainMarkup(cell.inner, 'a cell'));
  if (!found) return null;
  const text = decodeXml(found[1] ?? '');
  switch (type) {
    case 's':
      return sharedText(strings, text, cell);
    case 'str':
      return decodeEscapes(text);
    case 'b':
      return text.trim() === '1' || text.trim() === 'true';
    case 'e':
      return { error: text.trim() };
    case 'd':
      return numberOf((Date.parse(text.endsWith('Z') ? text : `${text}Z`) - EPOCH) / DAY, text);
    default:
      return text.trim() === '' ? null : numberOf(Number(text), text);
  }
}

/**
 * Reads the cells of a sheet, also formula cells that carry no value.
 * @param sheet the sheet as scanned
 * @param strings the workbook's shared strings
 * @param percents the formats that show a percent, by their number
 * @returns the cells that hold something, by address
 */
export function readCells(
  sheet: ScannedSheet,
  strings: readonly string[],
  percents: ReadonlyMap<number, string> = new Map(),
): Map<string, BookCell> {
  const cells = new Map<string, BookCell>();
  const masters = new Map<string, { formula: string; row: number; column: number }>();
  for (const row of sheet.rows) {
    for (const cell of row.cells) {
      const value = storedValue(cell, strings);
      const stored = storedFormula(cell.inner);
      if (value === null && !stored) continue;
      const address = cellAddress(cell.row, cell.column);
      if (cells.has(address)) {
        throw new BadFile(`The workbook is damaged: a sheet has cell ${address} twice.`);
      }
      const percent =
        percents.size > 0 ? percents.get(Number(attribute(cell.attributes, 's') ?? 0)) : undefined;
      cells.set(address, {
        row: cell.row,
        column: cell.column,
        value,
        ...(percent === undefined ? {} : { percent }),
        ...(stored ? formulaFields(stored, cell, masters) : {}),
      });
    }
  }
  return cells;
}

/** A cell as a formula counts it, from 1. */
function placeOf({ row, column }: { row: number; column: number }): CellPlace {
  return { row: row + 1, column: column + 1 };
}

function formulaFields(
  stored: StoredFormula,
  cell: ScannedCell,
  masters: Map<string, { formula: string; row: number; column: number }>,
): Partial<BookCell> {
  const type = attribute(stored.attributes, 't');
  if (type === 'dataTable') return { dataTable: true, formula: stored.text };
  if (type === 'array') {
    const reference = attribute(stored.attributes, 'ref') ?? cellAddress(cell.row, cell.column);
    return { formula: stored.text, array: arrayArea(reference) };
  }
  if (type !== 'shared') return { formula: stored.text };
  const shared = attribute(stored.attributes, 'si') ?? '';
  if (stored.text) masters.set(shared, { formula: stored.text, row: cell.row, column: cell.column });
  const master = masters.get(shared);
  if (!master) return {};
  return {
    formula: moveFormula(master.formula, placeOf(master), placeOf(cell)),
    shared,
  };
}
