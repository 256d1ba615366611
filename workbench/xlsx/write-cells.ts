import type { ErrorCode } from '../../src/spreadsheet/cell-error';
import { areaAddress, cellAddress, type Area } from './address';
import { isCellError, type CellValue } from './cell-value';
import { attribute, scanSheet, type ScannedCell, type ScannedRow, type ScannedSheet } from './sheet-scan';
import { storedFormula } from './read-cells';
import { encodeEscapes, encodeXml } from './xml';

/** What is to stand in a cell afterwards. A cell without a formula change keeps its formula element as it is. */
export interface CellChange {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  /** A new text for the formula. */
  readonly formula?: string;
  /** Cells that the formula fills: makes it an array formula. */
  readonly array?: Area;
  /** Number of the cell metadata that marks a dynamic array. */
  readonly dynamic?: number;
  /** Takes the formula out of its shared group. */
  readonly unshared?: boolean;
  /** Takes the formula away: the value stands in the cell as if it had been typed. */
  readonly plain?: boolean;
}

const FORMULA_ELEMENT = /<(?:[\w.-]+:)?f(?:\s[^>]*?)?(?:\/>|>[\s\S]*?<\/(?:[\w.-]+:)?f>)/;
const EXTENSION_ELEMENT = /<(?:[\w.-]+:)?extLst[\s>][\s\S]*?<\/(?:[\w.-]+:)?extLst>/;

// The format knows these; newer errors are stored as #VALUE! and found again when the spreadsheet recalculates.
const STORED_ERRORS: ReadonlySet<string> = new Set<ErrorCode>([
  '#DIV/0!',
  '#N/A',
  '#NAME?',
  '#NULL!',
  '#NUM!',
  '#REF!',
  '#VALUE!',
  '#GETTING_DATA',
]);

/**
 * How the file keeps a value.
 * @param value the value
 * @returns the type of the cell, and the text of the value element
 */
export function valueParts(value: CellValue): { type?: string; text?: string } {
  if (value === null) return {};
  if (isCellError(value))
    return { type: 'e', text: STORED_ERRORS.has(value.error) ? value.error : '#VALUE!' };
  if (typeof value === 'number') return { text: String(value) };
  if (typeof value === 'boolean') return { type: 'b', text: value ? '1' : '0' };
  return { type: 'str', text: encodeXml(encodeEscapes(value)) };
}

function without(attributes: string, names: readonly string[]): string {
  return names.reduce(
    (rest, name) => rest.replace(new RegExp(`\\s+${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), ''),
    attributes,
  );
}

function formulaElement(change: CellChange, prefix: string, inner: string): string {
  const raw = FORMULA_ELEMENT.exec(inner)?.[0] ?? '';
  if (change.formula === undefined && !change.array) return raw;
  const stored = storedFormula(inner);
  const text = encodeXml(change.formula ?? stored?.text ?? '').replace(/&quot;/g, '"');
  const own = stored?.attributes ?? '';
  const alone = change.array || change.unshared ? without(own, ['t', 'ref', 'si']) : own;
  const kept = change.array ? `${alone} t="array" ref="${areaAddress(change.array)}"` : alone;
  return `<${prefix}f${kept}>${text}</${prefix}f>`;
}

function cellElement(change: CellChange, prefix: string, old: ScannedCell | undefined): string {
  const { type, text } = valueParts(change.value);
  let attributes = old?.attributes ?? ` r="${cellAddress(change.row, change.column)}"`;
  // Value metadata describes the value that is being replaced.
  attributes = without(attributes, ['t', 'vm', ...(change.plain ? ['cm'] : [])]);
  // What is typed is kept in another way than what a formula gives.
  const typedText = change.plain && type === 'str';
  if (change.dynamic !== undefined)
    attributes = `${without(attributes, ['cm'])} cm="${String(change.dynamic)}"`;
  if (type !== undefined) attributes += ` t="${typedText ? 'inlineStr' : type}"`;
  const value = typedText
    ? `<${prefix}is><${prefix}t xml:space="preserve">${text ?? ''}</${prefix}t></${prefix}is>`
    : `<${prefix}v>${text ?? ''}</${prefix}v>`;
  const inner =
    (change.plain ? '' : formulaElement(change, prefix, old?.inner ?? '')) +
    (text === undefined || (change.plain && text === '') ? '' : value) +
    (EXTENSION_ELEMENT.exec(old?.inner ?? '')?.[0] ?? '');
  if (inner) return `<${prefix}c${attributes}>${inner}</${prefix}c>`;
  // A cell that only carries a format is kept for the format; any other empty cell is not there.
  return attribute(attributes, 's') === undefined ? '' : `<${prefix}c${attributes}/>`;
}

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

function rowEdits(prefix: string, row: ScannedRow, changes: readonly CellChange[]): Edit[] {
  const edits: Edit[] = [];
  const added: { at: number; column: number; text: string }[] = [];
  for (const change of changes) {
    const old = row.cells.find((cell) => cell.column === change.column);
    const text = cellElement(change, prefix, old);
    if (old) edits.push({ start: old.start, end: old.end, text });
    else if (text) {
      const next = row.cells.find((cell) => cell.column > change.column);
      const at = next?.start ?? row.cells.at(-1)?.end ?? row.innerStart;
      added.push({ at, column: change.column, text });
    }
  }
  if (added.length === 0) return edits;
  added.sort((a, b) => a.column - b.column);
  // A row's span of columns is a hint, and no longer true once cells are added.
  const attributes = without(row.attributes, ['spans']);
  if (row.innerStart < 0) {
    const inner = added.map((each) => each.text).join('');
    return [{ start: row.start, end: row.end, text: `<${prefix}row${attributes}>${inner}</${prefix}row>` }];
  }
  if (attributes !== row.attributes) {
    edits.push({ start: row.start, end: row.innerStart, text: `<${prefix}row${attributes}>` });
  }
  for (const each of added) edits.push({ start: each.at, end: each.at, text: each.text });
  return edits;
}

function newRowEdit(sheet: ScannedSheet, number: number, changes: readonly CellChange[]): Edit | undefined {
  const cells = [...changes]
    .sort((a, b) => a.column - b.column)
    .map((change) => cellElement(change, sheet.prefix, undefined))
    .join('');
  if (!cells) return undefined;
  const text = `<${sheet.prefix}row r="${String(number + 1)}">${cells}</${sheet.prefix}row>`;
  const next = sheet.rows.find((row) => row.row > number);
  const at = next?.start ?? sheet.rows.at(-1)?.end ?? sheet.innerStart;
  return { start: at, end: at, text };
}

/**
 * Puts values beside formulas in a sheet's XML and leaves every other character of it alone.
 * @param xml the text of the sheet's part
 * @param path the part, for the error
 * @param changes what is to stand in which cell
 * @returns the text with those cells changed
 * @throws {Error} where the sheet cannot be read
 */
export function writeCells(xml: string, path: string, changes: readonly CellChange[]): string {
  if (changes.length === 0) return xml;
  const sheet = scanSheet(xml, path);
  const byRow = new Map<number, CellChange[]>();
  for (const change of [...changes].sort((a, b) => a.row - b.row)) {
    byRow.set(change.row, [...(byRow.get(change.row) ?? []), change]);
  }
  const rows = new Map(sheet.rows.map((row) => [row.row, row]));
  const edits: Edit[] = [];
  for (const [number, rowChanges] of byRow) {
    const row = rows.get(number);
    if (row) edits.push(...rowEdits(sheet.prefix, row, rowChanges));
    else {
      const edit = newRowEdit(sheet, number, rowChanges);
      if (edit) edits.push(edit);
    }
  }
  if (sheet.innerStart >= 0) return applyEdits(xml, edits);
  const inner = edits.map((edit) => edit.text).join('');
  const filled = `<${sheet.prefix}sheetData>${inner}</${sheet.prefix}sheetData>`;
  return applyEdits(xml, [{ start: sheet.start, end: sheet.end, text: filled }]);
}

function applyEdits(xml: string, edits: readonly Edit[]): string {
  // Edits at the same place were made from left to right and stay in that order.
  const ordered = edits
    .map((edit, order) => ({ edit, order }))
    .sort((a, b) => a.edit.start - b.edit.start || a.edit.end - b.edit.end || a.order - b.order);
  let text = '';
  let at = 0;
  for (const { edit } of ordered) {
    text += xml.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return text + xml.slice(at);
}
