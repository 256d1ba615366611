import { tokensOf, type Token } from './tokens';

/** A stretch of a formula: code, a text in quotes, a quoted sheet name, or a bracketed reference. */
export interface FormulaPiece {
  readonly kind: 'code' | 'text' | 'sheet' | 'brackets';
  readonly text: string;
}

/**
 * Cuts a formula into stretches, so that a rewrite of code leaves texts and names alone.
 * @param formula the formula without `=`
 * @returns the stretches; joined they are the formula again
 */
export function formulaPieces(formula: string): FormulaPiece[] {
  const pieces: FormulaPiece[] = [];
  let code = '';
  const putCode = (): void => {
    if (code !== '') pieces.push({ kind: 'code', text: code });
    code = '';
  };
  for (const piece of tokensOf(formula).flatMap(stretchesOf)) {
    if (piece.kind === 'code') code += piece.text;
    else {
      putCode();
      pieces.push(piece);
    }
  }
  putCode();
  return pieces;
}

function stretchesOf({ kind, text }: Token): FormulaPiece[] {
  if (kind === 'text' || kind === 'brackets') return [{ kind, text }];
  if (text.startsWith('"')) return [{ kind: 'text', text }];
  if (!text.startsWith("'")) return [{ kind: 'code', text }];
  if (kind === 'quoted') return [{ kind: 'sheet', text }];
  const end = text.lastIndexOf('!');
  return [
    { kind: 'sheet', text: text.slice(0, end) },
    { kind: 'code', text: text.slice(end) },
  ];
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
