import { percentShown, readCell } from '../../../src/quantity/cell';
import { WashdownError, type Problem } from '../../../src/quantity/problem';
import { cellAddress } from '../../../src/spreadsheet/address';
import type { FactorLine } from '../../../src/rules/factor-lines';
import { isStart, START } from '../../../src/rules/factor-start';
import { percentOf } from '../../../src/rules/percent';
import { readFactors } from '../../../src/rules/read-factors';
import { isIdOf, NOTE, rowOfFactor, VALUE, type FactorRows } from '../../shared/factor-rows';
import type { FactorCells } from '../../shared/factor-writing';
import type { FactorContent } from '../../shared/wall-source';
import { areaOf } from '../../workbook/block-area';
import type { CellContent, Place } from '../../workbook/port';

/** What the user typed in the form, by factor; what is left out stays as it is. */
export type Edits = ReadonlyMap<string, Edit>;

/** What the user typed beside a factor. */
export interface Edit {
  /** Empty for the starting value. */
  readonly value?: string;
  readonly note?: string;
}

/** A factor as it stands in the range. */
export interface Standing {
  /** Its row, from 0; undefined where the range does not have it. */
  readonly row: number | undefined;
  /** Its value as a field shows it; empty for the starting value. */
  readonly value: string;
  readonly note: string;
}

/** A cell that is to change. */
export interface Change {
  readonly id: string;
  readonly of: 'value' | 'note';
  /** Where it stands; undefined for a row that is added. */
  readonly place: Place | undefined;
  readonly from: string;
  readonly to: string;
  readonly content: CellContent;
}

const THOUSANDS = /^\d{1,3}(,\d{3})+(\.\d+)?$/;

/**
 * How a factor stands in the range.
 * @param rows the rows of the range
 * @param id the factor
 * @returns its row, its value and its note
 */
export function standingOf(rows: FactorRows, id: string): Standing {
  const row = rowOfFactor(rows, id);
  const cells = rows[row ?? -1] ?? [];
  return {
    row,
    value: shownContent(cells[VALUE]),
    note: shownContent(cells[NOTE]),
  };
}

/**
 * What is wrong with the range once edits are made, by factor; under '' what concerns none of the form.
 * @param rows the rows of the range
 * @param lines the factors of the form
 * @param edits what was typed
 * @returns a sentence for each factor that cannot be used
 */
export function refusals(rows: FactorRows, lines: readonly FactorLine[], edits: Edits): Map<string, string> {
  const after = rows.map((cells) => [...cells]);
  for (const [id, { value }] of edits) {
    if (value === undefined) continue;
    const { row } = standingOf(rows, id);
    const typed = typedContent(value);
    if (row === undefined) after.push([id, typed]);
    else (after[row] ?? []).splice(VALUE, 1, typed);
  }
  const found = new Map<string, string>();
  for (const problem of problemsOf(after)) {
    const at = problem.row === undefined ? problem.column : after[problem.row - 1]?.[0];
    const id = lines.find((line) => isIdOf(at, line.id))?.id ?? '';
    if (!found.has(id)) found.set(id, id === '' ? problem.message : wordsOf(problem));
  }
  return found;
}

/**
 * The cells that edits change.
 * @param rows the rows of the range
 * @param place where the range stands
 * @param lines the factors of the form
 * @param edits what was typed
 * @returns the changes; empty where all is as it was
 */
export function changesOf(
  rows: FactorRows,
  place: Place,
  lines: readonly FactorLine[],
  edits: Edits,
): Change[] {
  const { top, left } = areaOf(place.address);
  return [...edits].flatMap(([id, { value, note }]) => {
    const standing = standingOf(rows, id);
    const line = lines.find((each) => each.id === id);
    const at = (column: number): Place | undefined =>
      standing.row === undefined
        ? undefined
        : { sheet: place.sheet, address: cellAddress(top + standing.row, left + column) };
    const changes: Change[] = [];
    if (value !== undefined && value.trim() !== standing.value) {
      const cell = standing.row === undefined ? undefined : rows[standing.row]?.[VALUE];
      const content = writtenContent(value, line?.unit === '%', typeof cell === 'object');
      changes.push({ id, of: 'value', place: at(VALUE), from: standing.value, to: value.trim(), content });
    }
    if (note !== undefined && note.trim() !== standing.note) {
      changes.push({
        id,
        of: 'note',
        place: at(NOTE),
        from: standing.note,
        to: note.trim(),
        content: note.trim(),
      });
    }
    return changes;
  });
}

/**
 * What the factors are to have by the changes.
 * @param changes the changes
 * @returns value and note of each factor, in their order
 */
export function cellsOf(changes: readonly Change[]): FactorCells[] {
  const found = new Map<string, FactorCells>();
  for (const { id, of, to, content } of changes)
    found.set(id, { ...found.get(id), id, ...(of === 'value' ? { value: content } : { note: to }) });
  return [...found.values()];
}

/** As a cell holds it that the user types into. */
function typedContent(typed: string): CellContent {
  const text = typed.trim().replace(/^'/, '');
  if (text === '') return START;
  if (THOUSANDS.test(text)) return Number(text.replace(/,/g, ''));
  return Number.isNaN(Number(text)) ? text : Number(text);
}

/** As it is written: a percent that a formula could not tell from a share is a text. */
function writtenContent(typed: string, isPercent: boolean, inPercentCell: boolean): CellContent {
  const content = typedContent(typed);
  const percent = percentOf(readCell(content));
  if (!isPercent || percent === undefined) return content;
  const isPlain = !inPercentCell && (percent === 0 || percent >= 1);
  return isPlain ? percent : `${String(percent)}%`;
}

/** As a field shows it. */
function shownContent(content: FactorContent | undefined): string {
  if (typeof content === 'object') return `${String(percentShown(content.basicValue))}%`;
  return content === undefined || isStart(readCell(content)) ? '' : String(content).trim();
}

function problemsOf(rows: FactorRows): readonly Problem[] {
  try {
    readFactors(rows);
    return [];
  } catch (error) {
    if (error instanceof WashdownError) return error.problems;
    throw error;
  }
}

/** At the field itself nobody asks for the row. */
function wordsOf({ seen, accepted, message }: Problem): string {
  return seen !== undefined && accepted !== undefined
    ? `${seen} cannot be used. Accepted: ${accepted}.`
    : message;
}
