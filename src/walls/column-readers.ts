import { offered } from '../quantity/did-you-mean';
import { amountIn, type Amount } from '../quantity/amount-text';
import { comparable, describe, isBlankOrZero, readCell, type Cell } from '../quantity/cell';
import { dayIn } from '../quantity/day';
import { DIGITS, shownNumber, tidy } from '../quantity/shown-number';
import { shownUnit, unitInWords } from '../quantity/shown-unit';
import { inSystem } from '../quantity/stated-unit';
import { take, unitOf, type Kind, type System } from '../quantity/systems';
import { findMaterial, nearestMaterials } from '../rules/material-names';
import type { MaterialInForce } from '../rules/read-factors';
import {
  columns,
  type ChoiceOf,
  type ChoiceReading,
  type ColumnId,
  type ColumnsRead,
  type NumberReading,
  type TextReading,
} from './columns';

/** A cell that its column cannot use. */
export class Refusal {
  /** Name of the column. */
  readonly column: string;
  /** The value seen, described. */
  readonly seen: string;
  /** What the column takes instead. */
  readonly accepted: string;

  /**
   * Says what cannot be used.
   * @param id the column
   * @param seen the value seen, described
   * @param accepted what the column takes instead
   */
  constructor(id: ColumnId, seen: string, accepted: string) {
    this.column = columns[id].name;
    this.seen = seen;
    this.accepted = accepted;
  }
}

/** Reads the cells of a column. */
export interface ColumnReader<Id extends ColumnId, Value> {
  readonly id: Id;
  /** Where the cells stand in a row. */
  readonly place: number;
  /** Gives the value of a cell as the host hands it over. */
  readonly read: (raw: unknown) => Value | Refusal;
}

/** Reads the cells of a column of numbers; the plain ones are read by `readNumber` at once. */
export interface NumberReader<Id extends ColumnId = ColumnId> extends ColumnReader<Id, number> {
  readonly kind: Kind;
  /** The display system of the cells. */
  readonly system: System;
  /** Base value of a shown 1. */
  readonly factor: number;
  /** Bounds of what is not 0, in the base unit. */
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
  /** The first number that is a date; Infinity where the column takes none. */
  readonly datesFrom: number;
  /** The day up to which a date is counted. */
  readonly countedTo: number | undefined;
}

/**
 * A number in the base unit. Made for every cell of a long table, so the common cases come first.
 * @param raw the cell as the host hands it over
 * @param column its column
 * @returns the number, 0 for a blank cell; NaN where it cannot be used
 */
export function readNumber(raw: unknown, column: NumberReader): number {
  if (raw === undefined || raw === '' || raw === null) return 0;
  const seen = typeof raw === 'number' ? raw : numberIn(readCell(raw), column);
  if (seen >= column.datesFrom) return daysSince(seen, column);
  const value = seen * column.factor;
  const fits = value >= column.least && value <= column.most && !(column.whole && !Number.isInteger(value));
  return fits || seen === 0 ? value : NaN;
}

function numberIn(cell: Cell, { kind, system, datesFrom }: NumberReader): number {
  if (cell.type === 'blank') return 0;
  if (cell.type === 'number') return cell.value;
  const amount = cell.type === 'text' ? amountIn(cell.value) : undefined;
  if (amount) return isTaken(amount, kind, system) && amount.value < datesFrom ? amount.value : NaN;
  const date = datesFrom === Infinity ? undefined : dayIn(cell);
  return date !== undefined && date >= datesFrom ? date : NaN;
}

function isTaken({ unit, inDoubt }: Amount, kind: Kind, system: System): boolean {
  return unit.kind === kind && unit.systems.includes(system) && !inDoubt;
}

function daysSince(date: number, { countedTo = NaN }: NumberReader): number {
  const days = countedTo - Math.floor(date);
  return days > 0 ? days : NaN;
}

/**
 * A reader of numbers.
 * @param id the column
 * @param place where its cells stand
 * @param system the display system of the cells
 * @param countedTo the day up to which a date is counted; undefined where none is given
 * @returns the reader
 */
export function numberReader<Id extends ColumnsRead<'number'>>(
  id: Id,
  place: number,
  system: System,
  countedTo?: number,
): NumberReader<Id> {
  const reading: NumberReading = columns[id].reading;
  const { kind, least, most, whole = false, datesFrom = Infinity } = reading;
  const reader: NumberReader<Id> = {
    id,
    place,
    kind,
    system,
    factor: take(1, kind, system),
    least,
    most,
    whole,
    datesFrom,
    countedTo,
    read(raw) {
      const value = readNumber(raw, reader);
      return Number.isNaN(value) ? refusedNumber(raw, reader) : value;
    },
  };
  return reader;
}

function refusedNumber(raw: unknown, column: NumberReader): Refusal {
  const { id, kind, system, least, most, whole, datesFrom, countedTo } = column;
  const cell = readCell(raw);
  const unit = unitOf(kind, system);
  const what = (whole ? 'a whole number' : 'a number') + (unit === '1' ? '' : ` of ${unitInWords(unit)}`);
  const bounds = [least, most].map((bound) => shownNumber(bound, kind, system, DIGITS.typed));
  const number = `${least > 0 ? 'blank, or ' : ''}${what} from ${bounds.join(' to ')}`;
  const amount = cell.type === 'text' ? amountIn(cell.value) : undefined;
  if (amount) return new Refusal(id, describe(cell), `${number}${cureOf(amount, column)}`);
  if (datesFrom === Infinity) return new Refusal(id, describe(cell), number);
  const day = dayIn(cell);
  if (day === undefined || day < datesFrom) {
    const order =
      cell.type === 'date' && day === undefined ? ' written as 2026-03-31, so that its order is known' : '';
    return new Refusal(id, describe(cell), `${number}, or a date${order}`);
  }
  const date =
    cell.type === 'text' ? describe(cell) : `${String(cell.type === 'blank' ? '' : cell.value)} (a date)`;
  return countedTo === undefined
    ? new Refusal(id, date, `${number}; a date only where the factor wash.date says up to when it is counted`)
    : new Refusal(id, date, `${number}, or a date before the wash.date, ${String(countedTo)}`);
}

/** What to type in place of a number with a unit; empty where the number itself is not accepted. */
function cureOf({ value, unit, inDoubt }: Amount, { kind, system }: NumberReader): string {
  if (unit.kind !== kind) return `; ${unit.shown} measure something else`;
  if (inDoubt) return '; type the number without a sign between thousands';
  if (unit.systems.includes(system)) return '';
  const inForce = shownUnit(unitOf(kind, system));
  const converted = inSystem(value, unit, kind, system);
  return converted === undefined
    ? `; convert ${unit.shown} to ${inForce}`
    : `; ${String(value)} ${unit.shown} ${value === 1 ? 'is' : 'are'} ${String(tidy(converted, DIGITS.typed))} ${inForce}`;
}

/**
 * A reader of texts.
 * @param id the column
 * @param place where its cells stand
 * @returns the reader
 */
export function textReader<Id extends ColumnsRead<'text'>>(id: Id, place: number): ColumnReader<Id, string> {
  const { blank, spelling }: TextReading = columns[id].reading;
  const spelled = new Map<string, string>();
  return remembering(id, place, (cell) => {
    if (isBlankOrZero(cell)) return blank;
    if (!isName(cell)) return new Refusal(id, describe(cell), 'a text or a number as a label');
    const name = String(cell.value);
    if (spelling !== 'first') return name;
    const first = spelled.get(comparable(name)) ?? name;
    spelled.set(comparable(name), first);
    return first;
  });
}

function isName(cell: Cell): cell is Extract<Cell, { value: string | number }> {
  return ['text', 'number', 'number as text', 'date'].includes(cell.type);
}

/**
 * A reader of materials.
 * @param id the column
 * @param place where its cells stand
 * @param materials the materials known
 * @returns the reader
 */
export function materialReader<Id extends ColumnsRead<'material'>>(
  id: Id,
  place: number,
  materials: readonly MaterialInForce[],
): ColumnReader<Id, MaterialInForce> {
  return remembering(id, place, (cell) => {
    const text = cell.type === 'text' ? cell.value : '';
    const offer = (): string => offered(text === '' ? [] : nearestMaterials(text, materials));
    return (
      findMaterial(materials, text) ??
      new Refusal(id, describe(cell), `a name or code of the material table${offer()}`)
    );
  });
}

const ANSWERS: Readonly<Record<string, string>> = { y: 'yes', n: 'no', true: 'yes', false: 'no' };

/**
 * A reader of words of a choice.
 * @param id the column
 * @param place where its cells stand
 * @returns the reader; a blank cell is undefined
 */
export function choiceReader<Id extends ColumnsRead<'choice'>>(
  id: Id,
  place: number,
): ColumnReader<Id, ChoiceOf<Id> | undefined> {
  const { choices, leaveOff }: ChoiceReading = columns[id].reading;
  return remembering(id, place, (cell) => {
    if (isBlankOrZero(cell)) return undefined;
    const text = cell.type === 'text' ? cell.value : '';
    const said = cell.type === 'boolean' ? (cell.value ? 'yes' : 'no') : comparable(text);
    const plain = leaveOff === undefined ? said : said.replace(leaveOff, '');
    const meant = choices.includes('yes') ? (ANSWERS[plain] ?? plain) : plain;
    const found = choices.find((choice): choice is ChoiceOf<Id> => comparable(choice) === meant);
    return found ?? new Refusal(id, describe(cell), `${choices.join(', ')}, or blank`);
  });
}

/** The same few cells come again and again. */
function remembering<Id extends ColumnId, Value>(
  id: Id,
  place: number,
  read: (cell: Cell) => Value | Refusal,
): ColumnReader<Id, Value> {
  const known = new Map<unknown, { readonly value: Value | Refusal }>();
  return {
    id,
    place,
    read(raw) {
      const found = known.get(raw) ?? { value: read(readCell(raw)) };
      known.set(raw, found);
      return found.value;
    },
  };
}
