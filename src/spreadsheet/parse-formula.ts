import type { Expression } from './expression';
import { NotFollowed } from './not-followed';
import { referenceParts } from './reference';
import { tokensOf, type Token } from './tokens';

// Weakest first, as a spreadsheet binds them.
const LEVELS: readonly (readonly string[])[] = [
  ['=', '<>', '<', '>', '<=', '>='],
  ['&'],
  ['+', '-'],
  ['*', '/'],
  ['^'],
];
const UNREADABLE = 'it cannot be read';

/**
 * Takes a formula apart.
 * @param formula with or without its `=`
 * @returns its parts
 * @throws {NotFollowed} where it uses something that is not followed here
 */
export function parseFormula(formula: string): Expression {
  const parser = new Parser(tokensOf(formula.replace(/^=/, '')).filter(({ kind }) => kind !== 'space'));
  return parser.whole();
}

class Parser {
  private at = 0;

  constructor(private readonly tokens: readonly Token[]) {}

  whole(): Expression {
    const expression = this.binary(0);
    if (this.at < this.tokens.length) throw new NotFollowed(unusual(this.tokens[this.at]?.text));
    return expression;
  }

  private binary(level: number): Expression {
    const signs = LEVELS[level];
    if (!signs) return this.signed();
    let left = this.binary(level + 1);
    for (let sign = this.takeOne(signs); sign !== undefined; sign = this.takeOne(signs)) {
      left = { is: 'binary', sign, left, right: this.binary(level + 1) };
    }
    return left;
  }

  private signed(): Expression {
    const sign = this.takeOne(['-', '+', '@']);
    if (sign === '@') return { is: 'single', of: this.signed() };
    if (sign !== undefined) return { is: 'sign', sign, of: this.signed() };
    let of = this.operand();
    while (this.takeOne(['%']) !== undefined) of = { is: 'percent', of };
    return of;
  }

  private operand(): Expression {
    const token = this.tokens[this.at];
    if (!token) throw new NotFollowed(UNREADABLE);
    this.at++;
    const { kind, text } = token;
    switch (kind) {
      case 'number':
        return { is: 'value', value: Number(text) };
      case 'text':
        return { is: 'value', value: text.slice(1, -1).replace(/""/g, '"') };
      case 'error':
        return { is: 'value', value: text.toUpperCase() };
      case 'reference':
        return this.perhapsSpill({ is: 'cells', ...withoutSheet(text) });
      case 'call':
        return this.call(text);
      case 'name':
        return this.named(text);
      case 'brackets':
        return this.table(undefined, text);
      default:
        return this.grouped(text);
    }
  }

  private named(text: string): Expression {
    if (/^(true|false)$/i.test(text)) return { is: 'value', value: text.toUpperCase() === 'TRUE' };
    const next = this.tokens[this.at];
    if (next?.kind === 'brackets') {
      this.at++;
      return this.table(text, next.text);
    }
    const { sheet, address } = withoutSheet(text);
    return this.perhapsSpill({ is: 'name', sheet, name: address });
  }

  private table(name: string | undefined, brackets: string): Expression {
    const next = this.tokens[this.at];
    // `[Book]Sheet!A1`: the brackets name another workbook.
    if (name === undefined && next && (next.kind === 'reference' || next.kind === 'name')) {
      throw new NotFollowed('it reads another workbook');
    }
    return { is: 'table', name, selection: brackets.slice(1, -1) };
  }

  private call(name: string): Expression {
    this.expect('(');
    const args: Expression[] = [];
    if (this.takeOne([')']) !== undefined) return this.perhapsSpill({ is: 'call', name, args });
    for (;;) {
      args.push(this.nextIs([',', ')']) ? { is: 'omitted' } : this.binary(0));
      if (this.takeOne([')']) !== undefined) return this.perhapsSpill({ is: 'call', name, args });
      this.expect(',');
    }
  }

  private grouped(sign: string): Expression {
    if (sign === '(') {
      const inner = this.binary(0);
      if (this.nextIs([','])) throw new NotFollowed('it joins several ranges into one');
      this.expect(')');
      return inner;
    }
    if (sign === '{') return this.array();
    throw new NotFollowed(unusual(sign));
  }

  private array(): Expression {
    const rows: Expression[][] = [[]];
    for (;;) {
      rows.at(-1)?.push(this.signed());
      const sign = this.takeOne([',', ';', '}']);
      if (sign === '}') return { is: 'array', rows };
      if (sign === ';') rows.push([]);
      else if (sign === undefined) throw new NotFollowed(UNREADABLE);
    }
  }

  private perhapsSpill(of: Expression): Expression {
    if (this.nextIs([':'])) throw new NotFollowed('it makes a range out of two references');
    return this.takeOne(['#']) === undefined ? of : { is: 'spill', of };
  }

  private nextIs(signs: readonly string[]): boolean {
    const next = this.tokens[this.at];
    return next?.kind === 'sign' && signs.includes(next.text);
  }

  private takeOne(signs: readonly string[]): string | undefined {
    return this.nextIs(signs) ? this.tokens[this.at++]?.text : undefined;
  }

  private expect(sign: string): void {
    if (this.takeOne([sign]) === undefined) throw new NotFollowed(unusual(this.tokens[this.at]?.text));
  }
}

function withoutSheet(text: string): { sheet: string | undefined; address: string } {
  const { sheet, rest } = referenceParts(text);
  if (sheet?.includes('[')) throw new NotFollowed('it reads another workbook');
  return { sheet, address: rest };
}

function unusual(text: string | undefined): string {
  return text === undefined ? UNREADABLE : `it cannot be read from "${text}" on`;
}
