import { cellAddress, parseArea } from './address';
import type { BookCell } from './book';
import type { CellValue } from './cell-value';
import { attribute, type ScannedCell, type ScannedSheet } from './sheet-scan';
import { moveFormula, type CellPlace } from '../../src/review/audit/move-formula';
import { decodeEscapes, decodeXml } from './xml';

const FORMULA = /<(?:[\w.-]+:)?f((?:\s[^>]*?)?)(?:\/>|>([\s\S]*?)<\/(?:[\w.-]+:)?f>)/;
const VALUE = /<(?:[\w.-]+:)?v(?:\s[^>]*)?>([\s\S]*?)<\/(?:[\w.-]+:)?v>/;
const TEXT = /<(?:[\w.-]+:)?t(?:\s[^>]*)?>([\s\S]*?)<\/(?:[\w.-]+:)?t>/g;
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
  const found = inner.includes('f') ? FORMULA.exec(inner) : null;
  return found ? { attributes: found[1] ?? '', text: decodeXml(found[2] ?? '') } : undefined;
}

/**
 * The plain text of a rich or plain string element.
 * @param inner what stands between the tags of the string
 * @returns the text, runs joined, reading aids left out
 */
export function stringText(inner: string): string {
  return [...inner.replace(PHONETIC, '').matchAll(TEXT)]
    .map((run) => decodeEscapes(decodeXml(run[1] ?? '')))
    .join('');
}

function storedValue(cell: ScannedCell, strings: readonly string[]): CellValue {
  const type = attribute(cell.attributes, 't') ?? 'n';
  if (type === 'inlineStr') return stringText(cell.inner) || null;
  const found = VALUE.exec(cell.inner);
  if (!found) return null;
  const text = decodeXml(found[1] ?? '');
  switch (type) {
    case 's':
      return strings[Number(text)] ?? null;
    case 'str':
      return decodeEscapes(text);
    case 'b':
      return text.trim() === '1' || text.trim() === 'true';
    case 'e':
      return { error: text.trim() };
    case 'd':
      return (Date.parse(text.endsWith('Z') ? text : `${text}Z`) - EPOCH) / DAY;
    default:
      return text.trim() === '' ? null : Number(text);
  }
}

/**
 * Reads the cells of a sheet, also formula cells that carry no value.
 * @param sheet the sheet as scanned
 * @param strings the workbook's shared strings
 * @returns the cells that hold something, by address
 */
export function readCells(sheet: ScannedSheet, strings: readonly string[]): Map<string, BookCell> {
  const cells = new Map<string, BookCell>();
  const masters = new Map<string, { formula: string; row: number; column: number }>();
  for (const row of sheet.rows) {
    for (const cell of row.cells) {
      const value = storedValue(cell, strings);
      const stored = storedFormula(cell.inner);
      if (value === null && !stored) continue;
      cells.set(cellAddress(cell.row, cell.column), {
        row: cell.row,
        column: cell.column,
        value,
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
    return { formula: stored.text, array: parseArea(reference) };
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
