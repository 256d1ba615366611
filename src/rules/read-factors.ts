import { cellProblem, WashdownError, badInput, type Problem, ended } from '../quantity/problem';
import { comparable, describe, isBlankOrZero, readCell, type Cell } from '../quantity/cell';
import { tradeWord } from '../quantity/trade-word';
import { fromBase, toBase } from '../quantity/conversions';
import { didYouMean, offered } from '../quantity/did-you-mean';
import { unitOf, type System } from '../quantity/systems';
import {
  asksForUnbufferedAcid,
  STRONGEST_CLASS,
  UNBUFFERED_ACID_ANSWER,
  type CleanerClass,
} from './cleaner-classes';
import { factorGroups } from './factor-groups';
import { isStart } from './factor-start';
import { readFactorValue, type Accepted } from './factor-value';
import { factors, formerIds, otherSpellings, type Factor, type FactorId } from './factors';
import { findMaterial, nearestMaterials } from './material-names';
import { materials, type Material } from './materials';
import { numberOf } from './number-of';

/** The factors of one calculation: starting values with the user's own on top. */
export interface FactorsInForce {
  readonly system: System;
  /** The value of a factor in its base (SI) unit. */
  readonly value: (id: FactorId) => number;
  /** Whether the user gave a value in place of the starting one, or of none. */
  readonly overridden: (id: FactorId) => boolean;
  /** Whether the user gave another value than the starting one. */
  readonly changed: (id: FactorId) => boolean;
  /**
   * The user's source of a value that they gave: the third cell beside its factor id, or that of a property of a
   * material, `material.<code>.<property>`. Empty where there is none.
   */
  readonly note: (id: string) => string;
  /** The word that a factor with choices stands at. */
  readonly choice: (id: FactorId) => string;
  /** The cleaner class that the user chose, where they chose one. */
  readonly chosenClass: CleanerClass | undefined;
  /** The materials known, with the user's own values on top. */
  readonly materials: readonly MaterialInForce[];
}

/** A material with its values in base units and word of which are the user's own. */
export interface MaterialInForce extends Omit<Material, 'suction' | 'pressure'> {
  /** Uptake in the first minute, kg/m2. */
  readonly suction: number;
  /** Most pressure at the face, kPa. */
  readonly pressure: number;
  readonly overridden: readonly MaterialProperty[];
  /** Names of the user for it: a factor id `material.<your name>.as`. */
  readonly yourNames: readonly string[];
}

/** What a factor id `material.<code>.<property>` can set. */
export type MaterialProperty = 'ceiling' | 'suction' | 'pressure';

const materialProperties: Record<MaterialProperty, Accepted> = {
  ceiling: { unit: '1', kind: 'class', least: 0, most: STRONGEST_CLASS, whole: true },
  suction: { unit: 'g/30in2', kind: 'suction', least: 0, most: 200 },
  pressure: { unit: 'psi', kind: 'pressure', least: 0, most: 5000 },
};
const propertyNames = Object.keys(materialProperties) as MaterialProperty[];

const startingValues = new Map<string, number>(
  factors.map(({ id, value, unit }) => [id, toBase(value, unit)]),
);
const rowById = new Map<string, Factor>(factors.map((row) => [row.id, row]));
const factorByName = new Map<string, Factor>([
  ...factors.map((row): [string, Factor] => [comparable(row.id), row]),
  ...Object.entries(otherSpellings).map(([other, id]): [string, Factor] => [
    comparable(other),
    // Every second spelling is of an id of the table.
    rowById.get(id) as Factor,
  ]),
]);
const successors = new Map(Object.entries(formerIds).map(([id, successor]) => [comparable(id), successor]));
/** What stands for no class chosen. */
export const BY_NEED = 'by need';
/** The id of the choice of units. */
export const UNITS = 'units';
/** The id of the class that the user chooses. */
export const CHOSEN_CLASS = 'cleaner.class';
const YOUR_NAME = /^material\.(.+)\.as$/i;
// As many digits as a form shows of a starting value.
const SAME = 1e-5;
const titles = new Set(Object.values(factorGroups).map(comparable));
const OWN_MATERIAL = /^material\.(.+)\.(ceiling|suction|pressure)$/i;

/**
 * Reads the range of factor ids and values, with the user's source in a third column where there is one. A header row,
 * blank rows, titles of groups and further columns are left alone. A factor whose value is blank or `start` keeps its
 * starting value.
 * @param range the rows as the host hands them over; none, null or an empty range mean the starting values
 * @returns the factors in force
 * @throws {WashdownError} on an id that is not known, a value out of its range, or an id given twice
 */
export function readFactors(range: unknown): FactorsInForce {
  const rows = factorRows(range);
  const system = readSystem(rows);
  const reader = new OverrideReader(system);
  for (const row of rows) reader.take(row);
  return reader.finish();
}

/**
 * The id of a factor in its one spelling, or of what a range of factors can hold beside: the class chosen, a property of
 * a material. The choice of units is no factor.
 * @param text what was typed
 * @returns the id; undefined where it is none
 */
export function factorIdOf(text: string): string | undefined {
  const name = comparable(text);
  if (name === CHOSEN_CLASS) return CHOSEN_CLASS;
  const material = OWN_MATERIAL.exec(text.trim());
  if (material?.[1] && material[2]) {
    const code = findMaterial(materials, material[1])?.code ?? comparable(material[1]);
    return `material.${code}.${material[2].toLowerCase()}`;
  }
  return factorByName.get(name)?.id;
}

/** Every factor id, to be offered where another was typed. */
export const factorIds: readonly string[] = [...factors.map(({ id }) => id), CHOSEN_CLASS];

interface FactorRow {
  readonly row: number;
  readonly id: string;
  readonly cell: Cell;
  readonly note: string;
}

function factorRows(range: unknown): FactorRow[] {
  if (range === null || range === undefined || range === '') return [];
  if (!Array.isArray(range) || !range.every((row) => Array.isArray(row))) {
    throw badInput('The factors must be a range of two columns: factor id, value.');
  }
  const rows: FactorRow[] = [];
  const problems: Problem[] = [];
  (range as unknown[][]).forEach((cells, index) => {
    const name = readCell(cells[0]);
    const cell = readCell(cells[1]);
    const row = index + 1;
    if (name.type === 'text') {
      if (index > 0 || !isHeading(name.value))
        rows.push({ row, id: name.value, cell, note: noteIn(cells[2]) });
      return;
    }
    const isBlank = name.type === 'blank' || (isBlankOrZero(name) && cell.type !== 'text');
    if (isBlank && isBlankOrZero(cell)) return;
    const seen = isBlank ? 'a blank factor id beside a value' : describe(name);
    problems.push(cellProblem({ row, column: '1' }, seen, 'a factor id'));
  });
  if (rows.length > 0 && (range as unknown[][]).some((cells) => cells.length < 2)) {
    throw badInput('The factors must be a range of two columns: factor id, value.');
  }
  if (problems.length > 0) throw new WashdownError(problems);
  return rows;
}

/** What the user says of a value; an error or a blank says nothing. */
function noteIn(raw: unknown): string {
  const cell = readCell(raw);
  const says = cell.type !== 'blank' && cell.type !== 'error' && cell.type !== 'unknown';
  return says && !isBlankOrZero(cell) ? String(cell.value) : '';
}

/** The title of a group in a form of the factors; a title with a value beside it is an id that is not known. */
function isTitle({ id, cell }: FactorRow): boolean {
  return titles.has(comparable(id)) && isBlankOrZero(cell);
}

function isHeading(text: string): boolean {
  return ['factor', 'factors', 'id', 'factorid'].includes(comparable(text));
}

function readSystem(rows: readonly FactorRow[]): System {
  const given = rows.filter(({ id }) => comparable(id) === UNITS);
  const [first] = given;
  if (first === undefined) return 'US';
  const text = first.cell.type === 'text' ? first.cell.value.toUpperCase() : '';
  if (text === 'US' || text === 'SI') return text;
  throw new WashdownError([
    cellProblem({ row: first.row, label: UNITS, column: 'value' }, describe(first.cell), 'US or SI'),
  ]);
}

class OverrideReader {
  readonly #given = new Map<string, number>();
  readonly #ids = new Set<string>();
  readonly #notes = new Map<string, string>();
  readonly #problems: Problem[] = [];
  readonly #own = new Map<
    string,
    { code: string; row: number } & Partial<Record<MaterialProperty, number>>
  >();
  readonly #yourNames: { readonly row: FactorRow; readonly name: string }[] = [];
  #chosenClass: CleanerClass | undefined;

  readonly #system: System;

  constructor(system: System) {
    this.#system = system;
  }

  take(row: FactorRow): void {
    const factor = factorByName.get(comparable(row.id));
    if (isTitle(row)) return;
    const name = comparable(factor?.id ?? row.id);
    if (this.#ids.has(name)) {
      this.#refuse(row, `the factor "${row.id}" a second time`, 'each factor once');
      return;
    }
    this.#ids.add(name);
    this.#notes.set(comparable(factorIdOf(row.id) ?? row.id), row.note);
    if (name === UNITS) return;
    if (name === CHOSEN_CLASS) {
      this.#takeClass(row);
      return;
    }
    if (factor) {
      this.#takeFactor(row, factor);
      return;
    }
    const material = OWN_MATERIAL.exec(row.id.trim());
    if (material?.[1] && material[2]) {
      this.#takeMaterial(row, material[1], material[2].toLowerCase() as MaterialProperty);
      return;
    }
    const yourName = YOUR_NAME.exec(row.id.trim())?.[1];
    if (yourName !== undefined) {
      this.#yourNames.push({ row, name: yourName.trim() });
      return;
    }
    const successor = successors.get(name);
    if (successor !== undefined) {
      this.#refuse(row, `the factor "${row.id}", which is no longer in use,`, `in its place ${successor}`);
      return;
    }
    const known = [...factors.map(({ id }) => id as string), UNITS, CHOSEN_CLASS, ...materialFactorIds()];
    const accepted = `a factor id of WASH.FACTORS()${didYouMean(row.id, known)}`;
    if (row.row === 1 && row.cell.type === 'text') {
      this.#problems.push({
        type: 'input',
        row: 1,
        column: row.id,
        message: `Row 1: "${row.id}" looks like a heading. Accepted: the headings Factor and Value, or ${ended(accepted)}`,
      });
      return;
    }
    this.#refuse(row, `the factor "${row.id}"`, accepted);
  }

  finish(): FactorsInForce {
    const given = this.#given;
    // Every id of the table has a starting value.
    const value = (id: FactorId): number => given.get(id) ?? (startingValues.get(id) as number);
    const inForce = this.#named(this.#materialsInForce());
    const atMost = (less: FactorId, more: FactorId, wrong: string): void => {
      if (value(less) <= value(more)) return;
      const message = `${wrong} Accepted: ${less} at most ${more}.`;
      this.#problems.push({ type: 'input', column: less, message });
    };
    atMost('dwell.least', 'dwell.most', 'The minimum dwell is longer than the maximum dwell.');
    atMost('patch.least', 'patch.most', 'The smallest patch is larger than the largest.');
    atMost('access.groundMove', 'access.move', 'A move on the ground takes longer than one above it.');
    if (given.has('price.span.least') && given.has('price.span.most')) {
      atMost('price.span.least', 'price.span.most', 'The lowest price per area is above the highest.');
    }
    if (value('setup.perDay') >= value('shift')) {
      this.#problems.push({
        type: 'input',
        column: 'setup.perDay',
        message: 'Set-up takes the whole shift. Accepted: setup.perDay less than shift.',
      });
    }
    if (given.has('price.labor') && given.has('price.crew')) {
      this.#problems.push({
        type: 'input',
        column: 'price.crew',
        message:
          'Both price.labor and price.crew are given. Accepted: one of them: price.labor for one person for one hour, or price.crew for the whole crew.',
      });
    }
    if (this.#problems.length > 0) throw new WashdownError(this.#problems);
    return {
      system: this.#system,
      value,
      overridden: (id) => given.has(id),
      changed: (id) => {
        const own = given.get(id);
        return own !== undefined && (rowById.get(id)?.unset === true || !isSame(own, startingValues.get(id)));
      },
      note: (id) => this.#notes.get(comparable(id)) ?? '',
      choice: (id) => rowById.get(id)?.choices?.[value(id)] ?? '',
      chosenClass: this.#chosenClass,
      materials: inForce,
    };
  }

  #takeFactor(row: FactorRow, factor: Factor): void {
    if (isStart(row.cell)) return;
    const value = this.#valueOf(row, factor);
    if (value !== undefined) this.#given.set(factor.id, value);
  }

  #valueOf(row: FactorRow, range: Accepted): number | undefined {
    const read = readFactorValue(row.cell, range, this.#system);
    if ('value' in read) return read.value;
    this.#refuse(row, describe(row.cell), read.accepted);
    return undefined;
  }

  #takeClass(row: FactorRow): void {
    const { cell } = row;
    if (isStart(cell) || (cell.type === 'text' && comparable(cell.value) === comparable(BY_NEED))) return;
    const seen = numberOf(cell);
    if (seen !== undefined && Number.isInteger(seen) && seen >= 0 && seen <= STRONGEST_CLASS) {
      this.#chosenClass = seen as CleanerClass;
      return;
    }
    const unbuffered =
      cell.type === 'text' ? asksForUnbufferedAcid(cell.value) : seen !== undefined && seen > STRONGEST_CLASS;
    this.#refuse(
      row,
      describe(cell),
      `0 to ${String(STRONGEST_CLASS)} or ${BY_NEED}${unbuffered ? `. ${UNBUFFERED_ACID_ANSWER}` : ''}`,
    );
  }

  #takeMaterial(row: FactorRow, code: string, property: MaterialProperty): void {
    if (isStart(row.cell)) return;
    const value = this.#valueOf(row, materialProperties[property]);
    if (value === undefined) return;
    const known = findMaterial(materials, code);
    const name = comparable(known?.code ?? code);
    const own = this.#own.get(name) ?? { code: known?.name ?? code, row: row.row };
    own[property] = value;
    this.#own.set(name, own);
  }

  #materialsInForce(): MaterialInForce[] {
    const inForce = materials.map((row) => this.#withOwnValues(row));
    const codes = materials.map((row) => row.code);
    for (const [name, own] of this.#own) {
      if (materials.some((row) => comparable(row.code) === name)) continue;
      const { ceiling, suction, pressure } = own;
      if (ceiling === undefined || suction === undefined || pressure === undefined) {
        this.#problems.push(
          cellProblem(
            { row: own.row, column: '1' },
            `the material "${own.code}", which the table does not have,`,
            `ceiling, suction and pressure all three for a material of your own, or a known one${didYouMean(own.code, codes)}`,
          ),
        );
        continue;
      }
      inForce.push({
        code: own.code,
        name: own.code,
        aliases: [],
        masonry: true,
        texture: 'smooth',
        ceiling: ceiling as CleanerClass,
        suction,
        pressure,
        kind: 'override',
        why: "a material of the user's own",
        group: 'other',
        overridden: propertyNames,
        yourNames: [],
      });
    }
    return inForce;
  }

  #withOwnValues(row: Material): MaterialInForce {
    const own = this.#own.get(comparable(row.code));
    const overridden = propertyNames.filter((property) => own?.[property] !== undefined);
    return {
      ...row,
      ceiling: (own?.ceiling ?? row.ceiling) as CleanerClass,
      suction: own?.suction ?? toBase(row.suction, 'g/30in2'),
      pressure: own?.pressure ?? toBase(row.pressure, 'psi'),
      overridden,
      yourNames: [],
    };
  }

  /** The materials with the names of the user. */
  #named(inForce: readonly MaterialInForce[]): MaterialInForce[] {
    const named = new Map<MaterialInForce, string[]>();
    const taken = new Set<string>();
    for (const { row, name } of this.#yourNames) {
      const text = row.cell.type === 'text' ? row.cell.value : '';
      const material = findMaterial(inForce, text);
      const word = tradeWord(name);
      if (taken.has(word)) this.#refuse(row, `the name "${name}" a second time`, 'each name of yours once');
      else if (inForce.some((known) => word === tradeWord(known.code) || word === tradeWord(known.name))) {
        this.#refuse(row, `the name "${name}", which is one of the table,`, 'a name of your own');
      } else if (material === undefined) {
        const offer = offered(text === '' ? [] : nearestMaterials(text, inForce));
        this.#refuse(row, describe(row.cell), `a name or code of the material table${offer}`);
      } else named.set(material, [...(named.get(material) ?? []), name]);
      taken.add(word);
    }
    return inForce.map((material) => ({ ...material, yourNames: named.get(material) ?? [] }));
  }

  #refuse(row: FactorRow, seen: string, accepted: string): void {
    this.#problems.push(cellProblem({ row: row.row, label: row.id, column: 'value' }, seen, accepted));
  }
}

/** Whether two values are one, but for what the conversion of units leaves. */
function isSame(value: number, start = NaN): boolean {
  return Math.abs(value - start) <= SAME * Math.abs(start);
}

function materialFactorIds(): string[] {
  return materials.flatMap(({ code }) => propertyNames.map((property) => `material.${code}.${property}`));
}

/**
 * A factor's starting value as a user of the system sees it.
 * @param factor a row of the table
 * @param system the display system
 * @returns the starting value in the shown unit, its word, or an empty text where there is none
 */
export function shownStart(factor: Factor, system: System): number | string {
  if (factor.unset) return '';
  if (factor.choices) return factor.choices[factor.value] ?? '';
  return fromBase(toBase(factor.value, factor.unit), unitOf(factor.kind, system));
}
