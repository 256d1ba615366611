import { formulaPieces, rewriteCode } from '../../src/spreadsheet/formula-pieces';

// Some writers keep the dot of the typed form behind the stored prefix, and some fold the case.
const STORED = /(?<![\w.])_xldudf_WASH[_.]([A-Z][A-Z0-9.]*)(?=\s*\()/gi;
const TYPED = /(?<![\w.])WASH\.([A-Z][A-Z0-9.]*)(?=\s*\()/gi;

/**
 * A formula as a person reads it.
 * @param formula without `=`, in either form
 * @returns with `WASH.WATER(` in place of the stored `_xldudf_WASH_WATER(`
 */
export function readableFormula(formula: string): string {
  return rewriteCode(formula, (code) =>
    code
      .replace(STORED, (_, id: string) => `WASH.${id.toUpperCase()}`)
      .replace(TYPED, (_, id: string) => `WASH.${id.toUpperCase()}`),
  );
}

/**
 * A formula as the file keeps it, so that the spreadsheet finds the functions.
 * @param formula without `=`, in either form
 * @returns with `_xldudf_WASH_WATER(` in place of the typed `WASH.WATER(`; the stored form stays as it is
 */
export function storedForm(formula: string): string {
  return rewriteCode(formula, (code) =>
    code.replace(TYPED, (_, id: string) => `_xldudf_WASH_${id.toUpperCase()}`),
  );
}

/**
 * The Washdown functions that a formula calls.
 * @param formula without `=`, in either form
 * @returns their ids in the order of the formula; empty for an ordinary formula
 */
export function washdownCalls(formula: string): string[] {
  return formulaPieces(readableFormula(formula))
    .filter((piece) => piece.kind === 'code')
    .flatMap((piece) => [...piece.text.matchAll(TYPED)].map((call) => call[1] ?? ''));
}

/**
 * The one Washdown function that a formula is, with nothing around it.
 * @param formula without `=`, in either form
 * @returns its id, or undefined where the formula is a mixture
 */
export function soleCall(formula: string): string | undefined {
  const text = readableFormula(formula).trim();
  const head = /^WASH\.([A-Z0-9.]+)\s*\(/.exec(text);
  if (!head) return undefined;
  let depth = 0;
  let closed = false;
  for (const piece of formulaPieces(text)) {
    if (closed && piece.text.trim()) return undefined;
    if (piece.kind !== 'code') continue;
    for (const character of piece.text) {
      if (closed && character.trim()) return undefined;
      if (character === '(') depth += 1;
      if (character === ')') {
        depth -= 1;
        closed = depth === 0;
      }
    }
  }
  return closed ? head[1] : undefined;
}
