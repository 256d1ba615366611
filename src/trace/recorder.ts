import { conversionFactor } from '../quantity/conversions';
import { shownUnit } from '../quantity/shown-unit';
import { coherentKind, show, unitOf, type Kind, type System } from '../quantity/systems';
import { constants, type ConstantId } from '../rules/constants';
import { factors, type FactorId } from '../rules/factors';
import {
  methods,
  type JobLineId,
  type LineEntry,
  type LineId,
  type MethodId,
  type ZoneLineId,
} from '../rules/methods';
import type { FactorsInForce, MaterialInForce, MaterialProperty } from '../rules/read-factors';
import type { SourceKind } from '../rules/source-kinds';
import { sources } from '../rules/sources';
import { namedIn, WHOLE_JOB, type Place } from './place';

/** What states the value of a line that is not worked out. */
export type Statement =
  /** A cell of the walls: its row within the range, and the name of its column in the code. */
  | { readonly by: 'cell'; readonly row: number; readonly column: string }
  /** A factor or a property of a material, by the id that the factors take it under. */
  | { readonly by: 'factor'; readonly id: string }
  /** A definition or a published equation, or the conversion of a unit. */
  | { readonly by: 'constant' }
  /** A zone that is not worked out here. */
  | { readonly by: 'zone' };

/** One line of how a number was worked out. */
export interface TraceLine {
  /** Name of the number, a word that an expression can use. */
  readonly symbol: string;
  /** Arithmetic over the symbols above; empty where the value is given. */
  readonly expression: string;
  /** Value in `unit`. */
  readonly value: number;
  readonly unit: string;
  readonly rule: string;
  readonly source: string;
  readonly kind: SourceKind;
  /** The wall or zone that the line belongs to; empty for the whole job. */
  readonly where: string;
  /** Row of the wall within the range, its header being row 1; left out for what belongs to no wall. */
  readonly row?: number;
  /** Left out where the expression gives the value. */
  readonly stated?: Statement;
}

const SYMBOL = /[A-Za-z_][A-Za-z0-9_]*/g;
// A long sum is written in pieces, because a cell holds no more than 32,767 characters.
const TERMS_A_LINE = 20;

const GIVEN = /_given$/;

type FactorRow = (typeof factors)[number];
const symbolOf = (id: FactorId): string => id.replaceAll('.', '_');
const factorOf = new Map<string, FactorRow>(factors.map((row) => [symbolOf(row.id), row]));

/** What takes the places in braces of an expression, by their names. */
export type Filling = Readonly<Record<string, string | number>>;

/**
 * Takes down how a number is worked out, while it is worked out: the record of a job, which makes that of a zone, which
 * makes that of a row, all with the same lines. In symbols and expressions `@` stands for the zone at hand and `#` for
 * the wall row at hand. A factor's symbol is its id with `_` for the dots; the factors and constants that an expression
 * takes are taken down before it.
 */
export class Recorder<Rule extends LineId = JobLineId> {
  /**
   * Starts an empty record.
   * @param factorsInForce the factors of the calculation, whose display system the lines use
   * @param place whose the lines are
   * @param lines those taken down so far, by name
   */
  constructor(
    protected readonly factorsInForce: FactorsInForce,
    protected readonly place: Place = WHOLE_JOB,
    protected readonly lines = new Map<string, TraceLine>(),
  ) {}

  /** How many lines are taken down. */
  get size(): number {
    return this.lines.size;
  }

  private get system(): System {
    return this.factorsInForce.system;
  }

  /**
   * The record of a zone, whose lines stand among those of the job.
   * @param index number of the zone within the calculation
   * @param label name of the zone
   * @returns its record
   */
  zone(index: number, label: string): ZoneRecord {
    const zone = { suffix: `_z${String(index + 1)}`, label };
    return new ZoneRecord(this.factorsInForce, { sign: '@', zone }, this.lines);
  }

  /**
   * A number that was worked out by a rule of its own.
   * @param rule the rule, whose entry says what the number is called and what it measures
   * @param value in the base unit
   * @param how what takes the places in braces of its expression, or another expression where the usual one does not hold
   */
  line(rule: Rule, value: number, how?: string | Filling): void {
    const { symbol, measures, is = '' }: LineEntry = methods[rule];
    const expression = typeof how === 'string' ? how : filled(is, how);
    const { sign } = this.place;
    this.lineNamed(symbol.replaceAll('~', sign), expression.replaceAll('~', sign), value, measures, rule);
  }

  /**
   * A number of a rule that gives several.
   * @param symbol its name
   * @param expression arithmetic over earlier symbols, factors and constants
   * @param value in the base unit
   * @param kind what it measures
   * @param method the rule that it follows
   */
  lineNamed(symbol: string, expression: string, value: number, kind: Kind, method: MethodId): void {
    for (const name of this.named(expression).match(SYMBOL) ?? []) {
      if (this.lines.has(name)) continue;
      const row = factorOf.get(name.replace(GIVEN, ''));
      if (row) this.factor(row);
      else if (name in constants) this.constant(name as ConstantId);
    }
    const { rule, source, kind: sourceKind } = methods[method];
    this.put(symbol, expression, value, kind, rule, sources[source], sourceKind);
  }

  /**
   * A number that is 0 by a rule.
   * @param symbol its name
   * @param kind what it would measure
   * @param method the rule that says that there is nothing
   */
  nothing(symbol: string, kind: Kind, method: MethodId): void {
    this.lineNamed(symbol, '0', 0, kind, method);
  }

  /**
   * A number that was worked out likewise elsewhere, and is not taken apart here.
   * @param symbol its name
   * @param value in the base unit
   * @param kind what it measures
   * @param method the rule that it follows
   */
  given(symbol: string, value: number, kind: Kind, method: MethodId): void {
    const { rule, source, kind: sourceKind } = methods[method];
    this.put(symbol, '', value, kind, rule, sources[source], sourceKind, { by: 'zone' });
  }

  /**
   * The value of a factor in the base unit.
   * @param id the factor
   * @returns its value in force
   */
  value(id: FactorId): number {
    return this.factorsInForce.value(id);
  }

  /**
   * A property of a material.
   * @param symbol its name in the expressions
   * @param material the material in force
   * @param property which of its numbers
   * @param kind what it measures
   */
  material(symbol: string, material: MaterialInForce, property: MaterialProperty, kind: Kind): void {
    const overridden = material.overridden.includes(property);
    const id = `material.${material.code}.${property}`;
    const own = this.isConverted(kind);
    const rule = `${material.name}, ${property}: ${material.why}`;
    const source = overridden
      ? this.ownSource(id)
      : material.kind === 'from memory'
        ? sources.memory
        : material.kind === 'common practice'
          ? sources.practice
          : sources.estimate;
    this.put(
      own ? `${symbol}_given` : symbol,
      '',
      material[property],
      kind,
      rule,
      source,
      overridden ? 'override' : material.kind,
      { by: 'factor', id },
    );
    if (own) this.convert(symbol, material[property], kind);
  }

  /**
   * A sum of many numbers, in pieces that a cell can hold.
   * @param symbol name of the sum
   * @param terms names of what is summed, in order
   * @param values their values in the base unit, in the same order
   * @param kind what they measure
   * @param method the rule that the sum follows
   */
  sum(
    symbol: string,
    terms: readonly string[],
    values: readonly number[],
    kind: Kind,
    method: MethodId,
  ): void {
    let soFar = '';
    let total = 0;
    for (let start = 0; start < terms.length; start += TERMS_A_LINE) {
      const end = Math.min(start + TERMS_A_LINE, terms.length);
      const piece = terms.slice(start, end).join(' + ');
      for (let index = start; index < end; index++) total += values[index] ?? 0;
      const name = end === terms.length ? symbol : `${symbol}_to${String(end)}`;
      this.lineNamed(
        name,
        soFar === '' ? piece : `${soFar} + ${piece}`,
        total,
        kind,
        end === terms.length ? method : 'sum',
      );
      soFar = name;
    }
    if (terms.length === 0) this.nothing(symbol, kind, method);
  }

  /**
   * The greatest of many numbers, in pieces that a cell can hold.
   * @param symbol name of the greatest
   * @param terms names of the numbers, in order
   * @param values their values in the base unit, in the same order
   * @param kind what they measure
   * @param method the rule that it follows
   */
  most(
    symbol: string,
    terms: readonly string[],
    values: readonly number[],
    kind: Kind,
    method: MethodId,
  ): void {
    let soFar: string[] = [];
    let most = -Infinity;
    for (let start = 0; start < terms.length; start += TERMS_A_LINE) {
      const end = Math.min(start + TERMS_A_LINE, terms.length);
      most = Math.max(most, ...values.slice(start, end));
      const name = end === terms.length ? symbol : `${symbol}_to${String(end)}`;
      this.lineNamed(name, `max(${[...soFar, ...terms.slice(start, end)].join(', ')})`, most, kind, method);
      soFar = [name];
    }
  }

  /**
   * The lines that a number rests on, in the order in which they were worked out, the number itself last.
   * @param symbol name of the number
   * @returns its lines; empty where no such number was worked out
   */
  linesFor(symbol: string): TraceLine[] {
    const wanted = this.under(symbol, Infinity);
    const target = this.lines.get(symbol);
    const before = [...this.lines.values()].filter((line) => line !== target && wanted.has(line.symbol));
    return target === undefined ? [] : [...before, target];
  }

  /**
   * Whether a number was worked out from no more than so many lines.
   * @param symbol name of the number
   * @param most how many, its own included
   * @returns false where there is no such number too
   */
  isWithin(symbol: string, most: number): boolean {
    const { size } = this.under(symbol, most);
    return size > 0 && size <= most;
  }

  /**
   * The line of a number.
   * @param symbol name of the number
   * @returns its line; undefined where no such number was worked out
   */
  lineOf(symbol: string): TraceLine | undefined {
    return this.lines.get(symbol);
  }

  /**
   * The names in the expression of a number.
   * @param symbol name of the number
   * @returns the names in their order; none where there is no such number
   */
  namedIn(symbol: string): string[] {
    return this.lines.get(symbol)?.expression.match(SYMBOL) ?? [];
  }

  /** The lines that a number rests on, its own included, by name; a few more than `most` where there are more. */
  private under(symbol: string, most: number): Set<string> {
    const found = new Set<string>();
    const open = [symbol];
    for (let name = open.pop(); name !== undefined && found.size <= most; name = open.pop()) {
      if (found.has(name) || !this.lines.has(name)) continue;
      found.add(name);
      open.push(...this.namedIn(name));
    }
    return found;
  }

  /** Whether a trace computes in another unit than the table shows. */
  protected isConverted(kind: Kind): boolean {
    return unitOf(kind, this.system) !== unitOf(coherentKind(kind), this.system);
  }

  protected convert(symbol: string, value: number, kind: Kind): void {
    const to = coherentKind(kind);
    const fromUnit = unitOf(kind, this.system);
    const toUnit = unitOf(to, this.system);
    if (kind === 'temperature' && fromUnit === 'degF') {
      this.lineNamed(symbol, `(${symbol}_given - degFAtZeroC) / degFPerDegC`, value, to, 'kelvin');
      return;
    }
    const factor = `k_${plain(fromUnit)}_${plain(toUnit)}`;
    if (!this.lines.has(factor)) {
      this.lines.set(factor, {
        symbol: factor,
        expression: '',
        value: conversionFactor(fromUnit, toUnit),
        unit: `${shownUnit(toUnit)} per ${shownUnit(fromUnit)}`,
        rule: methods.convert.rule,
        source: citationOf(sources.sp811),
        kind: 'published',
        where: '',
        stated: { by: 'constant' },
      });
    }
    this.lineNamed(symbol, `${symbol}_given * ${factor}`, value, to, 'convert');
  }

  /** A factor of the table, with its conversion where its customary unit is not the one computed in. */
  private factor({ id, kind, meaning, source, sourceKind }: FactorRow): void {
    const symbol = symbolOf(id);
    const overridden = this.factorsInForce.overridden(id);
    const value = this.factorsInForce.value(id);
    const own = this.isConverted(kind);
    this.put(
      own ? `${symbol}_given` : symbol,
      '',
      value,
      kind,
      `${id}: ${meaning}`,
      overridden ? this.ownSource(id) : sources[source],
      overridden ? 'override' : sourceKind,
      { by: 'factor', id },
    );
    if (own) this.convert(symbol, value, kind);
  }

  /** Where a value of the user's own comes from: what they say of it, or no more than that it is theirs. */
  private ownSource(id: string): Source {
    const note = this.factorsInForce.note(id);
    return note === '' ? sources.factors : { document: note, edition: '', section: '' };
  }

  private constant(id: ConstantId): void {
    const { value, kind, meaning, source, sourceKind } = constants[id];
    this.put(id, '', value, kind, meaning, sources[source], sourceKind, { by: 'constant' });
  }

  protected put(
    symbol: string,
    expression: string,
    value: number,
    kind: Kind,
    rule: string,
    source: Source,
    sourceKind: SourceKind,
    stated?: Statement,
  ): void {
    const name = this.named(symbol);
    const { zone, row } = this.place;
    const ofRow = symbol.includes('#');
    const ofZone = symbol.includes('@');
    this.lines.set(name, {
      symbol: name,
      expression: this.named(expression),
      value: show(value, kind, this.system),
      unit: shownUnit(unitOf(kind, this.system)),
      rule,
      source: citationOf(source),
      kind: sourceKind,
      where: (ofRow ? row?.label : ofZone ? zone?.label : undefined) ?? '',
      ...(ofRow && row && { row: row.number }),
      ...(stated && { stated }),
    });
  }

  private named(text: string): string {
    return namedIn(text, this.place);
  }
}

/** The record of a zone. */
export class ZoneRecord<Rule extends LineId = ZoneLineId> extends Recorder<Rule> {
  /**
   * The record of a wall row of the zone.
   * @param number row number within the range
   * @param label the wall's label
   * @param tried class of cleaner that the lines try out, where it is not yet the one that is used
   * @returns its record
   */
  row(number: number, label: string, tried?: number): RowRecord {
    const trying = tried === undefined ? '' : `_c${String(tried)}`;
    const row = { suffix: `_r${String(number)}${trying}`, label, number };
    return new RowRecord(this.factorsInForce, { ...this.place, sign: '#', row }, this.lines);
  }
}

/** The record of a wall row. */
export class RowRecord extends ZoneRecord<LineId> {
  /**
   * A number that the row states.
   * @param symbol its name
   * @param value in the base unit
   * @param kind what it measures
   * @param what the rule beside it
   * @param column the column of its cell, by its name in the code
   */
  input(symbol: string, value: number, kind: Kind, what: string, column: string): void {
    const own = this.isConverted(kind);
    const { row } = this.place;
    const stated: Statement | undefined = row && { by: 'cell', row: row.number, column };
    this.put(own ? `${symbol}_given` : symbol, '', value, kind, what, sources.rows, 'input', stated);
    if (own) this.convert(symbol, value, kind);
  }
}

/** A document as a trace names it. */
interface Source {
  readonly document: string;
  readonly edition: string;
  readonly section: string;
}

/**
 * A source as a line of a trace names it.
 * @param source the document
 * @returns title, edition and section
 */
export function citationOf({ document, edition, section }: Source): string {
  return [document, edition, section].filter((part) => part !== '').join(', ');
}

function plain(unit: string): string {
  return unit === '%' ? 'pct' : unit.replace(/[^A-Za-z0-9]+/g, '');
}

function filled(expression: string, filling: Filling | undefined): string {
  return filling === undefined
    ? expression
    : expression.replace(/\{(\w+)\}/g, (_, name: string) => String(filling[name] ?? ''));
}
