import { isBlankOrZero, readCell } from '../quantity/cell';
import type { System } from '../quantity/systems';
import { matchHeadings } from './match-headings';

const EXAMPLE = /^example\s*:/i;
// Small letters differ from capitals in one bit.
const SMALL = 0x20;
const FIRST_LETTER = 'e'.charCodeAt(0);

/**
 * Marks the label of a row that shows what the columns take, and is no wall of the job.
 * @param label what the row is of
 * @returns the label of an example
 */
export function exampleLabel(label: string): string {
  return `Example: ${label}`;
}

/**
 * Whether a row is an example: it is left out of the job until its label is the user's own. Where every row is one, the
 * examples are worked out.
 * @param label the label of the row
 * @returns true where it starts with `Example:`
 */
export function isExample(label: string): boolean {
  // Asked for every row of a long table.
  return (label.charCodeAt(0) | SMALL) === FIRST_LETTER && EXAMPLE.test(label);
}

/** The example rows of a range. */
export interface ExampleRows {
  readonly labels: readonly string[];
  /** No row is the user's, so that the examples are worked out. */
  readonly areAll: boolean;
}

/**
 * Finds the example rows of a range that can be read.
 * @param range its rows, the first being the headings
 * @param system the display system of the numbers
 * @param headings optional rows (our column, their heading)
 * @returns their labels
 */
export function exampleRows(range: unknown, system: System, headings?: unknown): ExampleRows {
  const [header = [], ...lines] = range as unknown[][];
  const place = matchHeadings(header, system, headings).get('wall') ?? 0;
  const labels = lines
    .map((cells) => readCell(cells[place]))
    .flatMap((cell) => ('value' in cell && !isBlankOrZero(cell) ? [String(cell.value)] : []));
  const examples = labels.filter(isExample);
  return { labels: examples, areAll: examples.length === labels.length };
}
