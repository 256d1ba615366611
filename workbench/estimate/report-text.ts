import { isCellError, type CellValue } from '../xlsx/cell-value';
import type { Estimate } from './estimate-book';
import { leftCell, type PlainValue, type ReportCell } from './report-cells';

const numbers = new Intl.NumberFormat('en-US', { maximumFractionDigits: 2 });

function shown(value: CellValue | PlainValue): string {
  if (value === null) return '';
  if (isCellError(value)) return value.message ? `${value.error} (${value.message})` : value.error;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'number' ? numbers.format(value) : value;
}

function zoneText(headings: readonly CellValue[], line: readonly CellValue[]): string {
  const labels = headings.slice(1).map(shown);
  const width = Math.max(0, ...labels.map((label) => label.length));
  const lines = labels.map((label, index) => `  ${label.padEnd(width)}  ${shown(line[index + 1] ?? null)}`);
  return [`${shown(headings[0] ?? null)}: ${shown(line[0] ?? null)}`, ...lines].join('\n');
}

function cellText({ sheet, cell, formula, value, error, message, unit }: ReportCell): string {
  const what =
    error !== undefined
      ? `${error}${message === undefined ? '' : ` ${message}`}`
      : Array.isArray(value)
        ? `${String(value.length)} rows x ${String(value[0]?.length ?? 0)} columns`
        : `${shown(value ?? null)}${unit ? ` ${unit}` : ''}`;
  return `  ${sheet}!${cell}  ${formula}\n      ${what}`;
}

function failures(cells: readonly ReportCell[]): number {
  return cells.filter(({ error }) => error !== undefined).length;
}

/**
 * The estimate in words.
 * @param tables a grid with a header row for each set of walls, a zone a line
 * @param cells every Washdown cell
 * @returns the text to print
 */
export function reportText(tables: readonly CellValue[][][], cells: readonly ReportCell[]): string {
  const zones = tables.flatMap(([headings = [], ...lines]) => lines.map((line) => zoneText(headings, line)));
  const failed = failures(cells);
  const title = `${String(cells.length)} Washdown ${cells.length === 1 ? 'cell' : 'cells'}${failed > 0 ? `, ${String(failed)} with an error` : ''}:`;
  return [...zones, [title, ...cells.map(cellText)].join('\n')].join('\n\n');
}

/**
 * What the values in the file do not cover.
 * @param estimate the recalculated workbook
 * @returns sentences, each on a line of its own; empty where everything is worked out
 */
export function leftText({ left, recalculates }: Pick<Estimate, 'left' | 'recalculates'>): string {
  if (!recalculates) return '';
  if (left.length === 0)
    return 'Formulas apart from Washdown have no value yet: let a spreadsheet calculate them.\n';
  const lines = left.map(leftCell).map(({ sheet, cell, formula }) => `  ${sheet}!${cell}  ${formula}\n`);
  return `These depend on Washdown and cannot be worked out here. They keep the value that they had until a spreadsheet with the add-in calculates:\n${lines.join('')}`;
}
