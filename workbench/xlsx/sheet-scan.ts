import { columnNumber, SHEET_COLUMNS, SHEET_ROWS } from './address';
import { BadFile } from './bad-file';
import { counted, MOST_CELLS } from './limits';
import { checkProlog } from './xml';

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
  /<!--|<!\[CDATA\[|<(\/?)([\w.-]+:)?([\w.-]+)((?:\s+[\w.:-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>/g;

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
 * @param most how many rows and cells are accepted
 * @returns the rows and cells with their places in the text
 * @throws {BadFile} where the sheet has no cell data, it is not closed, or there is too much of it
 */
export function scanSheet(xml: string, path: string, most = MOST_CELLS): ScannedSheet {
  checkProlog(xml, path);
  const rows: ScannedRow[] = [];
  const numbers = new Set<number>();
  let count = 0;
  let open = 0;
  let sheetStart = -1;
  let sheetInner = -1;
  let prefix = '';
  let row: OpenRow | undefined;
  let cell: { attributes: string; start: number; innerStart: number } | undefined;
  let nextRow = 0;
  let nextColumn = 0;

  const counting = (): void => {
    count += 1;
    if (count > most) {
      throw new BadFile(
        `The sheet ${path} has more than ${counted(most)} rows and cells. Accepted: that many at most.`,
      );
    }
  };
  const closeCell = (inner: string, start: number, end: number, attributes: string): void => {
    if (!row) return;
    const position = positionOf(attributes, row.row, nextColumn);
    if (position.row !== row.row || position.column >= SHEET_COLUMNS) {
      throw new BadFile(
        `The workbook is damaged: ${path} has a cell ${attribute(attributes, 'r') ?? ''} in row ${String(row.row + 1)}.`,
      );
    }
    counting();
    nextColumn = position.column + 1;
    row.cells.push({ ...position, attributes, inner, start, end });
  };
  const closeRow = (closed: OpenRow, end: number): void => {
    counting();
    if (numbers.has(closed.row) || !(closed.row >= 0 && closed.row < SHEET_ROWS)) {
      throw new BadFile(
        `The workbook is damaged: ${path} has row ${String(closed.row + 1)} twice or beyond the end of a sheet.`,
      );
    }
    numbers.add(closed.row);
    rows.push({ ...closed, end });
    nextRow = closed.row + 1;
  };

  TAG.lastIndex = 0;
  for (let tag = TAG.exec(xml); tag; tag = TAG.exec(xml)) {
    const name = tag[3];
    if (name === undefined) {
      const past = xml.indexOf(tag[0] === '<!--' ? '-->' : ']]>', TAG.lastIndex);
      if (past < 0) break;
      TAG.lastIndex = past + 3;
      continue;
    }
    const closing = tag[1] === '/';
    const empty = tag[5] === '/';
    const attributes = tag[4] ?? '';
    const start = tag.index;
    const end = TAG.lastIndex;
    if (!empty) open += closing ? -1 : 1;
    if (name === 'sheetData') {
      if (!closing) {
        sheetStart = start;
        prefix = tag[2] ?? '';
        if (!empty) sheetInner = end;
      }
      if (row) break;
      if (closing || empty) return { prefix, rows, start: sheetStart, end, innerStart: sheetInner };
    } else if (sheetStart < 0) {
      continue;
    } else if (name === 'row' && !closing) {
      const number = Number(attribute(attributes, 'r') ?? nextRow + 1) - 1;
      const opened: OpenRow = { row: number, attributes, start, innerStart: empty ? -1 : end, cells: [] };
      nextColumn = 0;
      if (row) break;
      if (empty) closeRow(opened, end);
      else row = opened;
    } else if (name === 'row' && row) {
      closeRow(row, end);
      row = undefined;
    } else if (name === 'c' && !closing) {
      if (cell) break;
      if (empty) closeCell('', start, end, attributes);
      else {
        cell = { attributes, start, innerStart: end };
        open = 0;
      }
    } else if (name === 'c' && cell) {
      // Everything in the cell has ended, so that what is in it can be told apart.
      if (open !== -1) break;
      closeCell(xml.slice(cell.innerStart, start), cell.start, end, cell.attributes);
      cell = undefined;
    }
  }
  throw new BadFile(`The workbook is damaged: ${path} has no complete cell data.`);
}
