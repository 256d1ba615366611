/** A stretch of a formula: code, a text in quotes, a quoted sheet name, or a bracketed reference. */
export interface FormulaPiece {
  readonly kind: 'code' | 'text' | 'sheet' | 'brackets';
  readonly text: string;
}

function endOfQuoted(formula: string, start: number, quote: string): number {
  let at = start + 1;
  while (at < formula.length) {
    if (formula[at] === quote) {
      if (formula[at + 1] !== quote) return at + 1;
      at += 1;
    }
    at += 1;
  }
  return formula.length;
}

function endOfBrackets(formula: string, start: number): number {
  let depth = 0;
  let at = start;
  while (at < formula.length) {
    const character = formula[at];
    // Inside brackets an apostrophe makes the next character part of a heading.
    if (character === "'") at += 1;
    else if (character === '[') depth += 1;
    else if (character === ']') {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
    at += 1;
  }
  return formula.length;
}

/**
 * Cuts a formula into stretches, so that a rewrite of code leaves texts and names alone.
 * @param formula the formula without `=`
 * @returns the stretches; joined they are the formula again
 */
export function formulaPieces(formula: string): FormulaPiece[] {
  const pieces: FormulaPiece[] = [];
  let code = '';
  let at = 0;
  const push = (kind: FormulaPiece['kind'], end: number): void => {
    if (code) pieces.push({ kind: 'code', text: code });
    code = '';
    pieces.push({ kind, text: formula.slice(at, end) });
    at = end;
  };
  while (at < formula.length) {
    const character = formula[at];
    if (character === '"') push('text', endOfQuoted(formula, at, '"'));
    else if (character === "'") push('sheet', endOfQuoted(formula, at, "'"));
    else if (character === '[') push('brackets', endOfBrackets(formula, at));
    else {
      code += character ?? '';
      at += 1;
    }
  }
  if (code) pieces.push({ kind: 'code', text: code });
  return pieces;
}

/**
 * Rewrites the code of a formula and leaves texts, quoted names and brackets as they are.
 * @param formula the formula without `=`
 * @param rewrite what to do with a stretch of code
 * @returns the formula with its code rewritten
 */
export function rewriteCode(formula: string, rewrite: (code: string) => string): string {
  return formulaPieces(formula)
    .map((piece) => (piece.kind === 'code' ? rewrite(piece.text) : piece.text))
    .join('');
}
