import { columnNumber } from './address';
import { BadFile } from './bad-file';

/** A cell element and where it stands in the text of its sheet. */
export interface ScannedCell {
  readonly row: number;
  readonly column: number;
  /** Attributes of the element as they stand. */
  readonly attributes: string;
  /** What stands between its tags; empty for an empty element. */
  readonly inner: string;
  readonly start: number;
  readonly end: number;
}

/** A row element and where it stands in the text of its sheet. */
export interface ScannedRow {
  readonly row: number;
  readonly attributes: string;
  readonly start: number;
  readonly end: number;
  /** Where a first cell would go; -1 for an empty element, which has no inside. */
  readonly innerStart: number;
  readonly cells: readonly ScannedCell[];
}

/** The cells of a sheet's XML, found without changing or rewriting any of it. */
export interface ScannedSheet {
  /** Prefix of the element names, with its colon, or nothing. */
  readonly prefix: string;
  readonly rows: readonly ScannedRow[];
  /** Start and end of the sheetData element. */
  readonly start: number;
  readonly end: number;
  /** Where a first row would go; -1 for an empty element. */
  readonly innerStart: number;
}

interface OpenRow {
  row: number;
  attributes: string;
  start: number;
  innerStart: number;
  cells: ScannedCell[];
}

const ADDRESS = /^([A-Za-z]{1,3})(\d+)$/;
const TAG =
  /<!--[\s\S]*?-->|<!\[CDATA\[[\s\S]*?\]\]>|<(\/?)([\w.-]+:)?([\w.-]+)((?:\s+[\w.:-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>/g;

// A sheet may have a million cells; a pattern is made once for each name.
const ATTRIBUTES = new Map<string, RegExp>();

/**
 * The value of an attribute.
 * @param attributes the attributes of a tag as they stand
 * @param name its name
 * @returns the value as it stands, or undefined
 */
export function attribute(attributes: string, name: string): string | undefined {
  let pattern = ATTRIBUTES.get(name);
  if (!pattern) {
    pattern = new RegExp(`(?:^|\\s)${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`);
    ATTRIBUTES.set(name, pattern);
  }
  const found = pattern.exec(attributes);
  return found ? (found[1] ?? found[2]) : undefined;
}

function positionOf(attributes: string, row: number, column: number): { row: number; column: number } {
  const address = ADDRESS.exec(attribute(attributes, 'r') ?? '');
  // The address is optional: a cell without one follows the cell before it.
  if (!address) return { row, column };
  return { row: Number(address[2]) - 1, column: columnNumber(address[1] ?? '') };
}

/**
 * Finds the rows and cells of a sheet.
 * @param xml the text of the sheet's part
 * @param path the part, for the error
 * @returns the rows and cells with their places in the text
 * @throws {BadFile} where the sheet has no cell data or it is not closed
 */
export function scanSheet(xml: string, path: string): ScannedSheet {
  const rows: ScannedRow[] = [];
  let sheetStart = -1;
  let sheetInner = -1;
  let prefix = '';
  let row: OpenRow | undefined;
  let cell: { attributes: string; start: number; innerStart: number } | undefined;
  let nextRow = 0;
  let nextColumn = 0;

  const closeCell = (inner: string, start: number, end: number, attributes: string): void => {
    if (!row) return;
    const position = positionOf(attributes, row.row, nextColumn);
    nextColumn = position.column + 1;
    row.cells.push({ ...position, attributes, inner, start, end });
  };
  const closeRow = (open: OpenRow, end: number): void => {
    rows.push({ ...open, end });
    nextRow = open.row + 1;
  };

  TAG.lastIndex = 0;
  for (let tag = TAG.exec(xml); tag; tag = TAG.exec(xml)) {
    const name = tag[3];
    if (name === undefined) continue;
    const closing = tag[1] === '/';
    const empty = tag[5] === '/';
    const attributes = tag[4] ?? '';
    const start = tag.index;
    const end = TAG.lastIndex;
    if (name === 'sheetData') {
      if (!closing) {
        sheetStart = start;
        prefix = tag[2] ?? '';
        if (!empty) sheetInner = end;
      }
      if (closing || empty) return { prefix, rows, start: sheetStart, end, innerStart: sheetInner };
    } else if (sheetStart < 0) {
      continue;
    } else if (name === 'row' && !closing) {
      const number = Number(attribute(attributes, 'r') ?? nextRow + 1) - 1;
      const open: OpenRow = { row: number, attributes, start, innerStart: empty ? -1 : end, cells: [] };
      nextColumn = 0;
      if (empty) closeRow(open, end);
      else row = open;
    } else if (name === 'row' && row) {
      closeRow(row, end);
      row = undefined;
    } else if (name === 'c' && !closing) {
      if (empty) closeCell('', start, end, attributes);
      else cell = { attributes, start, innerStart: end };
    } else if (name === 'c' && cell) {
      closeCell(xml.slice(cell.innerStart, start), cell.start, end, cell.attributes);
      cell = undefined;
    }
  }
  throw new BadFile(`The workbook is damaged: ${path} has no complete cell data.`);
}
