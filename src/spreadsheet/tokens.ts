import { ERROR_PATTERN } from './cell-error';
import { columnNumber, LAST_COLUMN, LAST_ROW, parseAddress } from './address';

/** What a piece of a formula is. */
export type TokenKind =
  'space' | 'text' | 'error' | 'reference' | 'call' | 'name' | 'number' | 'brackets' | 'quoted' | 'sign';

/** A piece of a formula; all pieces together are the formula again. */
export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
}

const WORD = String.raw`[\p{L}_\\][\p{L}\p{N}_.\\?]*`;
const SHEET = String.raw`(?:(?:'(?:[^']|'')+'|${WORD})!)?`;
const CELL = String.raw`\$?[A-Z]{1,3}\$?\d{1,7}`;
const COLUMN = String.raw`\$?[A-Z]{1,3}`;
const ROW = String.raw`\$?\d{1,7}`;
const END = String.raw`(?![\p{L}\p{N}_.(!$])`;

// The order matters: an address is also a word, a range of rows starts like a number.
const kinds: readonly (readonly [TokenKind, RegExp])[] = [
  ['sign', /<=|>=|<>|[-+*/^&=<>%@:,;(){}!]/uy],
  ['space', /\s+/uy],
  ['text', /"(?:[^"]|"")*"(?!")/uy],
  ['error', new RegExp(ERROR_PATTERN, 'iuy')],
  [
    'reference',
    new RegExp(`${SHEET}(?:${CELL}(?::${CELL})?|${COLUMN}:${COLUMN}|${ROW}:${ROW})${END}`, 'iuy'),
  ],
  ['call', new RegExp(String.raw`${WORD}(?=\s*\()`, 'uy')],
  ['name', new RegExp(`${SHEET}${WORD}`, 'uy')],
  ['number', /(?:\d+(?:\.\d*)?|\.\d+)(?:E[+-]?\d+)?/iuy],
  // A sheet with no address or name behind, as in 'My walls'!#REF!, or a quote that nothing closes.
  ['quoted', /'(?:[^']|'')*'?|"[^]*/uy],
];

/**
 * Takes a formula apart.
 * @param formula without its `=`
 * @returns its pieces; a character that fits nowhere is a sign of its own
 */
export function tokensOf(formula: string): Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length; at += tokens.at(-1)?.text.length ?? 1) {
    tokens.push(bracketsAt(formula, at) ?? tokenAt(formula, at, tokens.at(-1)));
  }
  return tokens;
}

function tokenAt(formula: string, at: number, before: Token | undefined): Token {
  for (const [kind, pattern] of kinds) {
    // Behind an address or a call, # asks for a whole spill and starts no error.
    if (kind === 'error' && (before?.kind === 'reference' || before?.text === ')')) continue;
    pattern.lastIndex = at;
    const [text] = pattern.exec(formula) ?? [];
    if (text && !(kind === 'reference' && isBeyondSheet(text))) return { kind, text };
  }
  return { kind: 'sign', text: formula.slice(at, at + 1) };
}

/** A word such as XYZ2024 looks like an address, but no sheet has the column: it is a name. */
function isBeyondSheet(reference: string): boolean {
  const corners = reference
    .slice(reference.lastIndexOf('!') + 1)
    .replaceAll('$', '')
    .split(':');
  return !corners.every((corner) => {
    if (/^\d+$/.test(corner)) return Number(corner) >= 1 && Number(corner) <= LAST_ROW;
    return /\d/.test(corner) ? parseAddress(corner) !== undefined : columnNumber(corner) <= LAST_COLUMN;
  });
}

function bracketsAt(formula: string, start: number): Token | undefined {
  if (formula[start] !== '[') return undefined;
  let depth = 0;
  for (let at = start; at < formula.length; at++) {
    const character = formula[at];
    if (character === "'") at++;
    else if (character === '[') depth++;
    else if (character === ']' && --depth === 0)
      return { kind: 'brackets', text: formula.slice(start, at + 1) };
  }
  return { kind: 'brackets', text: formula.slice(start) };
}
