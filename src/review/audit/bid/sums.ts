import type { AuditedBook, SheetArea } from '../audited-book';
import type { Expression } from '../../../spreadsheet/expression';
import { NotFollowed } from '../../../spreadsheet/not-followed';
import { areaOf, type SheetPlace } from '../references';

const ROUNDS = /^(?:ROUND|ROUNDUP|ROUNDDOWN)$/i;
const ADDS = /^SUM$/i;
// It leaves other subtotals in its range out, so that a line is not taken twice.
const SUBTOTALS = /^SUBTOTAL$/i;

/** What a formula is to the cells that it reads. */
export type Role =
  /** It adds up what stands in these areas, and maybe more. */
  | { readonly is: 'total'; readonly takes: readonly SheetArea[]; readonly skipsSubtotals: boolean }
  /** It hands one cell on. */
  | { readonly is: 'link'; readonly to: SheetArea }
  | { readonly is: 'other' };

/**
 * Whether a formula adds up, hands on, or does something else.
 * @param book the workbook
 * @param expression the formula taken apart; undefined where it cannot be
 * @param at where it stands
 * @returns its role
 */
export function roleOf(book: AuditedBook, expression: Expression | undefined, at: SheetPlace): Role {
  if (expression === undefined) return { is: 'other' };
  const { areas, summed, skipsSubtotals } = termsOf(book, expression, at);
  const [only, ...more] = areas;
  if (only === undefined) return { is: 'other' };
  if (summed || more.length > 0) return { is: 'total', takes: areas, skipsSubtotals };
  return isCell(only) && isLink(expression) ? { is: 'link', to: only } : { is: 'other' };
}

interface Terms {
  readonly areas: readonly SheetArea[];
  readonly summed: boolean;
  readonly skipsSubtotals: boolean;
}

const NO_TERMS: Terms = { areas: [], summed: false, skipsSubtotals: false };

function termsOf(book: AuditedBook, expression: Expression, at: SheetPlace): Terms {
  switch (expression.is) {
    case 'cells':
    case 'table':
    case 'name':
    case 'spill': {
      const area = areaAt(book, expression.is === 'spill' ? expression.of : expression, at);
      return area ? { ...NO_TERMS, areas: [area] } : NO_TERMS;
    }
    case 'sign':
      return expression.sign === '+' ? termsOf(book, expression.of, at) : NO_TERMS;
    case 'single':
      return termsOf(book, expression.of, at);
    case 'binary':
      return expression.sign === '+' ? joined([expression.left, expression.right], book, at) : NO_TERMS;
    case 'call': {
      const [first, ...rest] = expression.args;
      if (ROUNDS.test(expression.name) && first) return termsOf(book, first, at);
      if (ADDS.test(expression.name)) return { ...joined(expression.args, book, at), summed: true };
      if (
        SUBTOTALS.test(expression.name) &&
        first?.is === 'value' &&
        [9, 109].includes(Number(first.value))
      ) {
        return { ...joined(rest, book, at), summed: true, skipsSubtotals: true };
      }
      return NO_TERMS;
    }
    default:
      return NO_TERMS;
  }
}

function joined(terms: readonly Expression[], book: AuditedBook, at: SheetPlace): Terms {
  const all = terms.map((term) => termsOf(book, term, at));
  return {
    areas: all.flatMap(({ areas }) => areas),
    summed: all.some(({ summed }) => summed),
    skipsSubtotals: all.some(({ skipsSubtotals }) => skipsSubtotals),
  };
}

function areaAt(book: AuditedBook, reference: Expression, at: SheetPlace): SheetArea | undefined {
  try {
    return areaOf(book, reference, at);
  } catch (error) {
    if (error instanceof NotFollowed) return undefined;
    throw error;
  }
}

function isCell({ top, bottom, left, right }: SheetArea): boolean {
  return top === bottom && left === right;
}

function isLink(expression: Expression): boolean {
  if (expression.is === 'call')
    return ROUNDS.test(expression.name) && expression.args[0] !== undefined && isLink(expression.args[0]);
  if (expression.is === 'sign' || expression.is === 'single') return isLink(expression.of);
  return ['cells', 'table', 'name'].includes(expression.is);
}
