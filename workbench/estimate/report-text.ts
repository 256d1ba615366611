import { addedQuantities, type QuantityId } from '../../src/estimate/quantities';
import { classInWords } from '../../src/rules/cleaner-classes';
import { isCellError, type CellValue } from '../xlsx/cell-value';
import type { Estimate } from './estimate-book';
import { leftCell, type PlainValue, type ReportCell } from './report-cells';

const numbers = new Intl.NumberFormat('en-US', { maximumFractionDigits: 2 });
const money = new Intl.NumberFormat('en-US', { minimumFractionDigits: 2, maximumFractionDigits: 2 });
const MONEY = 'money';
const CLASSES = ['Ceiling', 'Class'];
const PRICE_PER_AREA = 'Price per area';
const AREA_PER_HOUR = 'Area per labor-hour';
const UNIT = / \([^)]*\)$/;
/** What a job is told by, where it has several zones. */
const OF_JOB = ['washedArea', 'water', 'crewHours', 'laborHours', 'price'] as const satisfies QuantityId[];
const priced = new Set<string>([
  ...Object.values(addedQuantities).flatMap(({ heading, kind }) => (kind === 'money' ? [heading] : [])),
  PRICE_PER_AREA,
]);

function shown(value: CellValue | PlainValue): string {
  if (value === null) return '';
  if (isCellError(value)) return value.message ? `${value.error} (${value.message})` : value.error;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'number' ? numbers.format(value) : value;
}

/** A number as an estimator would write it: money with its cents, a class with its words. */
function written(heading: string, value: CellValue | PlainValue): string {
  if (typeof value === 'number' && priced.has(heading.replace(UNIT, ''))) return money.format(value);
  if (typeof value === 'number' && CLASSES.includes(heading)) return classInWords(value);
  return shown(value);
}

function listText(title: string, entries: readonly (readonly [string, CellValue])[]): string {
  const width = Math.max(0, ...entries.map(([label]) => label.length));
  const lines = entries.map(([label, value]) => `  ${label.padEnd(width)}  ${written(label, value)}`);
  return [title, ...lines].join('\n');
}

function zoneText(headings: readonly CellValue[], line: readonly CellValue[]): string {
  const labels = headings.map(shown);
  return listText(
    `${labels[0] ?? ''}: ${shown(line[0] ?? null)}`,
    labels.slice(1).map((label, index) => [label, line[index + 1] ?? null]),
  );
}

/** The sums over the zones; where one has no value there is none, and its reason stands. */
function jobText(headings: readonly CellValue[], lines: readonly CellValue[][]): string[] {
  if (lines.length < 2) return [];
  const place = (heading: string) =>
    headings.findIndex((label) => shown(label).replace(UNIT, '') === heading);
  const sum = (id: QuantityId): CellValue => {
    const at = place(addedQuantities[id].heading);
    const values = lines.map((line) => line[at] ?? null);
    const missing = values.find((value) => typeof value !== 'number');
    return missing === undefined ? values.reduce<number>((so, value) => so + Number(value), 0) : missing;
  };
  const rate = (heading: string, of: QuantityId, by: QuantityId): [string, CellValue][] => {
    const at = place(heading);
    const [over, under] = [sum(of), sum(by)];
    const isRate = at >= 0 && typeof over === 'number' && typeof under === 'number' && under > 0;
    return isRate ? [[shown(headings[at] ?? null), over / under]] : [];
  };
  const entries = [
    ...OF_JOB.flatMap((id): [string, CellValue][] => {
      const at = place(addedQuantities[id].heading);
      return at < 0 ? [] : [[shown(headings[at] ?? null), sum(id)]];
    }),
    ...rate(AREA_PER_HOUR, 'washedArea', 'laborHours'),
    ...rate(PRICE_PER_AREA, 'price', 'washedArea'),
  ];
  return entries.length > 0 ? [listText('Whole job', entries)] : [];
}

function cellText({ sheet, cell, formula, value, error, message, unit }: ReportCell): string {
  const what =
    error !== undefined
      ? `${error}${message === undefined ? '' : ` ${message}`}`
      : Array.isArray(value)
        ? `${String(value.length)} rows x ${String(value[0]?.length ?? 0)} columns`
        : typeof value === 'number' && unit === MONEY
          ? money.format(value)
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
  const zones = tables.flatMap(([headings = [], ...lines]) => [
    ...lines.map((line) => zoneText(headings, line)),
    ...jobText(headings, lines),
  ]);
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
