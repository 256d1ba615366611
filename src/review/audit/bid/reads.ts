import type { AuditedBook, SheetArea } from '../audited-book';
import type { Expression } from '../../../spreadsheet/expression';
import { NotFollowed } from '../../../spreadsheet/not-followed';
import { parseFormula } from '../../../spreadsheet/parse-formula';
import { areaOf, nameOf, type SheetPlace } from '../references';
import { tokensOf } from '../../../spreadsheet/tokens';

/** What a formula reads, as far as its text says. */
export interface Reads {
  readonly areas: readonly SheetArea[];
  /** Whether it may also read cells that stand nowhere in its text. */
  readonly anywhere: boolean;
  /** The formula taken apart; undefined where it cannot be. */
  readonly expression: Expression | undefined;
}

const READS_ANYWHERE = /^(?:_xlfn\.)?(?:INDIRECT|OFFSET)$/i;
const DEEPEST_NAME = 8;

/**
 * The cells that a formula reads.
 * @param book the workbook
 * @param formula with `=`
 * @param at where it stands
 * @returns the areas; what points to nothing is left out
 */
export function readsOf(book: AuditedBook, formula: string, at: SheetPlace): Reads {
  const tokens = tokensOf(formula);
  const anywhere = tokens.some(({ kind, text }) => kind === 'call' && READS_ANYWHERE.test(text));
  try {
    const expression = parseFormula(formula);
    return { areas: areasIn(book, expression, at, 0), anywhere, expression };
  } catch (error) {
    if (!(error instanceof NotFollowed)) throw error;
    const areas = tokens.flatMap(({ kind, text }) => (kind === 'reference' ? readAlone(book, text, at) : []));
    return { areas, anywhere, expression: undefined };
  }
}

function readAlone(book: AuditedBook, text: string, at: SheetPlace): SheetArea[] {
  try {
    return areasIn(book, parseFormula(`=${text}`), at, 0);
  } catch (error) {
    if (error instanceof NotFollowed) return [];
    throw error;
  }
}

function areasIn(book: AuditedBook, expression: Expression, at: SheetPlace, depth: number): SheetArea[] {
  const inside = (of: Expression) => areasIn(book, of, at, depth);
  switch (expression.is) {
    case 'value':
    case 'omitted':
      return [];
    case 'array':
      return expression.rows.flat().flatMap(inside);
    case 'cells':
    case 'table':
    case 'name':
      return referred(book, expression, at, depth);
    case 'spill':
    case 'single':
    case 'sign':
    case 'percent':
      return inside(expression.of);
    case 'binary':
      return [...inside(expression.left), ...inside(expression.right)];
    case 'call':
      return expression.args.flatMap(inside);
  }
}

function referred(book: AuditedBook, reference: Expression, at: SheetPlace, depth: number): SheetArea[] {
  try {
    const area = areaOf(book, reference, at);
    if (area) return [area];
    if (reference.is !== 'name' || depth > DEEPEST_NAME) return [];
    return areasIn(book, nameOf(book, reference.name, reference.sheet ?? at.sheet), at, depth + 1);
  } catch (error) {
    if (error instanceof NotFollowed) return [];
    throw error;
  }
}
