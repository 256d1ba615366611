import { WashdownError } from '../../quantity/problem';
import { areaKey, type AuditedBook, type SheetArea, type Shown } from './audited-book';
import { causeOf } from './cause';
import type { Expression } from '../../spreadsheet/expression';
import { NotFollowed } from '../../spreadsheet/not-followed';
import { arithmetic, comparison, ordinaryFunctions } from './ordinary-functions';
import { isError, isRows, valueOf, type Outcome, type Value } from './outcome';
import { parseFormula } from '../../spreadsheet/parse-formula';
import { areaOf, nameOf, type SheetPlace } from './references';
import { washdownName } from './washdown-calls';

/** A Washdown function as the audit calls it. */
export interface AuditedFunction {
  readonly parameters: readonly {
    readonly name: string;
    readonly dimensionality: 'matrix' | 'scalar';
    readonly optional: boolean;
  }[];
  readonly run: (args: readonly unknown[]) => Outcome;
}

/** An argument with a text that stands for it: two calls with equal texts are one question. */
export interface Argument {
  readonly value: unknown;
  readonly key: string;
  /** Where it stands, where it is a range. */
  readonly area?: SheetArea | undefined;
}

/** The arguments of a call of a Washdown function, by the name of the parameter; an omitted one is null. */
export type Call = ReadonlyMap<string, Argument>;

/** Works formulas out against the cells as they are shown now. Equal questions are asked once. */
export class WorkOut {
  private readonly answers = new Map<string, Outcome>();
  private readonly parsed = new Map<string, Expression>();
  private readonly spilling = new Set<string>();

  /**
   * Works on one workbook.
   * @param book its cells
   * @param functionCalled finds a Washdown function by its name
   * @param seen told of every call and its function, a repeated one too
   */
  constructor(
    private readonly book: AuditedBook,
    private readonly functionCalled: (name: string) => AuditedFunction | undefined,
    private readonly seen: (call: Call, name: string) => void = () => undefined,
  ) {}

  /**
   * What a formula gives.
   * @param formula with `=`
   * @param at where it stands
   * @returns a value, or rows where it spills
   * @throws {NotFollowed} where it cannot be worked out here
   */
  formula(formula: string, at: SheetPlace): Outcome {
    let expression = this.parsed.get(formula);
    if (expression === undefined) {
      expression = parseFormula(formula);
      this.parsed.set(formula, expression);
    }
    return this.outcome(expression, at);
  }

  private outcome(expression: Expression, at: SheetPlace): Outcome {
    switch (expression.is) {
      case 'value':
        return valueOf(expression.value);
      case 'omitted':
        return '';
      case 'array':
        return expression.rows.map((row) => row.map((cell) => this.value(cell, at)));
      case 'cells':
      case 'table':
      case 'name':
        return this.referred(expression, at);
      case 'spill':
        return this.spill(expression.of, at);
      case 'single':
        return this.oneOf(expression.of, at);
      case 'sign': {
        const value = this.value(expression.of, at);
        return expression.sign === '-' ? arithmetic('*', -1, value) : value;
      }
      case 'percent':
        return arithmetic('/', this.value(expression.of, at), 100);
      case 'binary':
        return this.binary(
          expression.sign,
          this.value(expression.left, at),
          this.value(expression.right, at),
        );
      case 'call':
        return this.call(expression.name, expression.args, at);
    }
  }

  private binary(sign: string, left: Value, right: Value): Value {
    if (sign === '&') {
      if (isError(left)) return left;
      return isError(right) ? right : written(left) + written(right);
    }
    return '+-*/^'.includes(sign) ? arithmetic(sign, left, right) : comparison(sign, left, right);
  }

  /** A single value; rows of several cells are not worked through one by one here. */
  private value(expression: Expression, at: SheetPlace): Value {
    const outcome = this.outcome(expression, at);
    if (!isRows(outcome)) return outcome;
    const [[only = ''] = [], ...more] = outcome;
    if (more.length > 0 || (outcome[0]?.length ?? 0) > 1) {
      throw new NotFollowed('it has a range where one value belongs');
    }
    return only;
  }

  private referred(reference: Expression, at: SheetPlace): Outcome {
    const area = areaOf(this.book, reference, at);
    if (area === undefined) {
      return reference.is === 'name'
        ? this.outcome(nameOf(this.book, reference.name, reference.sheet ?? at.sheet), at)
        : '';
    }
    const rows = this.book.rows(area);
    const [[only = ''] = []] = rows;
    return area.top === area.bottom && area.left === area.right
      ? valueOf(only)
      : rows.map((row) => row.map(valueOf));
  }

  /** `@`: of a range the cell in the formula's own row or column, of a result its first cell. */
  private oneOf(expression: Expression, at: SheetPlace): Value {
    const area = areaOf(this.book, expression, at);
    if (area === undefined) {
      const outcome = this.outcome(expression, at);
      return isRows(outcome) ? (outcome[0]?.[0] ?? '') : outcome;
    }
    const row = area.top === area.bottom ? area.top : at.row;
    const column = area.left === area.right ? area.left : at.column;
    const inside = row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
    return inside ? valueOf(this.book.value(area.sheet, row, column)) : { error: '#VALUE!', message: '' };
  }

  private spill(expression: Expression, at: SheetPlace): Outcome {
    const area = areaOf(this.book, expression, at);
    const formula = area && this.book.formula(area.sheet, area.top, area.left);
    if (area === undefined || formula === undefined)
      throw new NotFollowed('it reads a spill that is not there');
    const key = areaKey(area);
    if (this.spilling.has(key)) throw new NotFollowed('it reads its own spill');
    this.spilling.add(key);
    try {
      return this.formula(formula, { sheet: area.sheet, row: area.top, column: area.left });
    } finally {
      this.spilling.delete(key);
    }
  }

  private call(called: string, args: readonly Expression[], at: SheetPlace): Outcome {
    const name = washdownName(called);
    if (name !== undefined) return this.washdown(name, args, at);
    const plain = called.toUpperCase().replace(/^_XLFN\./, '');
    const [first] = args;
    if (plain === 'ANCHORARRAY' && first) return this.spill(first, at);
    // How a file says `@`.
    if (plain === 'SINGLE' && first) return this.oneOf(first, at);
    const work = ordinaryFunctions[plain];
    if (!work) throw new NotFollowed(`it uses ${plain}, which Review does not work out`);
    return work(args.map((arg) => this.outcome(arg, at)));
  }

  private washdown(name: string, args: readonly Expression[], at: SheetPlace): Outcome {
    const called = this.functionCalled(name);
    if (!called) throw new NotFollowed(`there is no function WASH.${name}`);
    const { parameters } = called;
    if (args.length > parameters.length) {
      throw new NotFollowed(`WASH.${name} takes ${String(parameters.length)} arguments at most`);
    }
    const given = parameters.map(({ name: parameter, dimensionality, optional }, place): Argument => {
      const arg = args[place];
      if (arg === undefined || arg.is === 'omitted') {
        if (optional) return { value: null, key: '' };
        throw new NotFollowed(`WASH.${name} is missing its argument ${parameter}`);
      }
      return dimensionality === 'matrix' ? this.matrix(arg, at) : this.scalar(arg, at);
    });
    this.seen(new Map(given.map((arg, place) => [parameters[place]?.name ?? '', arg])), name);
    const key = [name, ...given.map((arg) => arg.key)].join('\n');
    const known = this.answers.get(key);
    if (known !== undefined) return known;
    const result = answerOf(
      called,
      given.map(({ value }) => value),
    );
    const answer = this.blamed(result, given);
    this.answers.set(key, answer);
    return answer;
  }

  /** An error with the cell that is to blame for it, where that is known. */
  private blamed(result: Outcome, given: readonly Argument[]): Outcome {
    if (isRows(result) || !isError(result)) return result;
    const areas = given.flatMap(({ area }) => area ?? []);
    const cause = causeOf(this.book, result.problem, areas);
    return cause ? { ...result, cause } : result;
  }

  private matrix(arg: Expression, at: SheetPlace): Argument {
    const area = arg.is === 'spill' ? undefined : areaOf(this.book, arg, at);
    if (area) return { value: this.book.rows(area), key: areaKey(area), area };
    const outcome = this.outcome(arg, at);
    const rows = isRows(outcome) ? outcome.map((row) => row.map(handedOver)) : [[handedOver(outcome)]];
    return { value: rows, key: JSON.stringify(rows) };
  }

  private scalar(arg: Expression, at: SheetPlace): Argument {
    const value = handedOver(this.value(arg, at));
    return { value, key: JSON.stringify(value) };
  }
}

function written(value: string | number | boolean): string {
  return typeof value === 'boolean' ? String(value).toUpperCase() : String(value);
}

function handedOver(value: Value): Shown {
  return isError(value) ? value.error : value;
}

/**
 * What a Washdown function gives.
 * @param called the function
 * @param args its arguments in order
 * @returns its result; an error in place of a refusal
 */
export function answerOf(called: AuditedFunction, args: readonly unknown[]): Outcome {
  try {
    return called.run(args);
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    const nothing = error.problems.every(({ type }) => type === 'nothing');
    const [problem] = error.problems;
    return {
      error: nothing ? '#N/A' : '#VALUE!',
      message: error.message,
      ...(problem?.row !== undefined && { problem }),
    };
  }
}
