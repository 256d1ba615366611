import { percentShown, type Cell } from '../quantity/cell';
import { numberOf } from './number-of';

const PERCENT_TEXT = /^([-+]?(?:\d+\.?\d*|\.\d+))\s*%$/;

/** A cell that holds a plain number. */
type NumberCell = Extract<Cell, { type: 'number' }>;

/**
 * The percent of a cell beside a factor in %. A blank reads as 0: the host does not tell the two apart.
 * @param cell the cell
 * @returns 10 for a plain 10, for a cell that shows 10% and for the text 10%; undefined where it holds no such number
 */
export function percentOf(cell: Cell): number | undefined {
  if (cell.type === 'number' && cell.percent) return percentShown(cell.value);
  const text = cell.type === 'number as text' ? PERCENT_TEXT.exec(cell.value) : null;
  return text ? Number(text[1]) : numberOf(cell);
}

/**
 * Whether a number may be one percent or a hundred times it: a worksheet formula cannot see whether the cell shows it as
 * a percent. It does not know what 0.1 stands for, and would take a cell that shows 120% for 1.2%.
 * @param cell the cell beside a factor in %
 * @returns true above 0 and below 1 where the cell's format is not known, and from 100% on where it is
 */
export function isPercentInDoubt(cell: Cell): cell is NumberCell {
  return cell.type === 'number' && (cell.percent ? cell.value >= 1 : cell.value > 0 && cell.value < 1);
}

/**
 * What to type in place of such a number: as a text, since a percent cell takes a typed 10 for 0.1 again.
 * @param seen the number
 * @returns a sentence with both readings
 */
export function percentInDoubt(seen: number): string {
  const ofCell = String(percentShown(seen));
  return `${String(seen)} may be ${ofCell}% in a percent cell, or ${String(seen)}%: type '${ofCell}% or '${String(seen)}%, with the apostrophe in front`;
}
