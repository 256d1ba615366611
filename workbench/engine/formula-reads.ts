import { tokensOf } from '../../src/review/audit/tokens';
import { columnNumber, parseArea, SHEET_COLUMNS, SHEET_ROWS, type Area } from '../xlsx/address';

/** Cells that a formula reads. */
export interface Read {
  /** Name of the sheet in small letters. */
  readonly sheet: string;
  readonly area: Area;
  /** Whole columns or rows, which end where the engine's sheet does; any other range has all of its cells there. */
  readonly open: boolean;
}

/** What a formula reads, as far as its text says. */
export interface FormulaReads {
  readonly reads: readonly Read[];
  /** Whether it also reads cells that stand nowhere in its text. */
  readonly anywhere: boolean;
}

const COLUMNS = /^\$?([A-Z]{1,3}):\$?([A-Z]{1,3})$/i;
const ROWS = /^\$?(\d{1,7}):\$?(\d{1,7})$/;
const READS_ANYWHERE = /^(?:INDIRECT|OFFSET)$/i;

/**
 * The cells of a reference.
 * @param address without a sheet: a cell, a range, whole columns or rows
 * @returns the cells, undefined where it is no reference
 */
export function areaOfReference(address: string): Area | undefined {
  const [, from, to] = COLUMNS.exec(address) ?? [];
  if (from !== undefined && to !== undefined) {
    const columns = [columnNumber(from), columnNumber(to)];
    return { top: 0, bottom: SHEET_ROWS - 1, left: Math.min(...columns), right: Math.max(...columns) };
  }
  const rows = (ROWS.exec(address) ?? []).slice(1).map((row) => Number(row) - 1);
  if (rows.length > 0) {
    return { left: 0, right: SHEET_COLUMNS - 1, top: Math.min(...rows), bottom: Math.max(...rows) };
  }
  try {
    return parseArea(address);
  } catch {
    return undefined;
  }
}

function split(text: string, own: string): { sheet: string; address: string } {
  const end = text.lastIndexOf('!');
  if (end < 0) return { sheet: own, address: text };
  return {
    sheet: text.slice(0, end).replace(/^'|'$/g, '').replace(/''/g, "'"),
    address: text.slice(end + 1),
  };
}

function isOpen(address: string): boolean {
  return COLUMNS.test(address) || ROWS.test(address);
}

/**
 * What a formula reads.
 * @param formula without `=`, in the engine's terms
 * @param sheet the sheet of the formula
 * @returns the cells that it names
 */
export function readsOf(formula: string, sheet: string): FormulaReads {
  const reads: Read[] = [];
  let anywhere = false;
  for (const { kind, text } of tokensOf(formula)) {
    // A range from or to what a function gives ends somewhere else.
    if ((kind === 'call' && READS_ANYWHERE.test(text)) || (kind === 'sign' && text === ':')) anywhere = true;
    if (kind !== 'reference') continue;
    const { sheet: named, address } = split(text, sheet);
    const area = areaOfReference(address);
    if (area) reads.push({ sheet: named.toLowerCase(), area, open: isOpen(address) });
  }
  return { reads, anywhere };
}
