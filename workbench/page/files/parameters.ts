import { formulaPieces, rewriteCode } from '../../../src/spreadsheet/formula-pieces';

const NAME = /^\s*([\p{L}_][\p{L}\p{N}_]*)\s*$/u;

interface OpenCall {
  readonly kind: 'LET' | 'LAMBDA' | undefined;
  readonly args: string[];
}

/** Names that a LET or LAMBDA gives: every second argument of the one, all but the last of the other. */
function namesOf({ kind, args }: OpenCall): string[] {
  return args
    .slice(0, -1)
    .filter((_, index) => kind === 'LAMBDA' || (kind === 'LET' && index % 2 === 0))
    .flatMap((arg) => NAME.exec(arg)?.[1] ?? []);
}

function givenNames(formula: string): Set<string> {
  const names = new Set<string>();
  const open: OpenCall[] = [];
  let word = '';
  const add = (text: string): void => {
    const call = open.at(-1);
    if (call) call.args.push((call.args.pop() ?? '') + text);
  };
  for (const { kind, text } of formulaPieces(formula)) {
    if (kind !== 'code') {
      add(text);
      word = '';
      continue;
    }
    for (const character of text) {
      if (character === '(' || character === '{') {
        const called = /(?:^|[^\w.])(LET|LAMBDA)\s*$/i.exec(word)?.[1]?.toUpperCase();
        open.push({ kind: called as OpenCall['kind'], args: [''] });
      } else if (character === ')' || character === '}') {
        const closed = open.pop();
        if (closed) for (const name of namesOf(closed)) names.add(name.toLowerCase());
        // What stood in the brackets is no name.
        add('()');
      } else if (character === ',' && open.length > 0) open.at(-1)?.args.push('');
      else add(character);
      word = /[\w.\s]/.test(character) ? word + character : '';
    }
  }
  return names;
}

/**
 * Marks the names that LET and LAMBDA give, as files have them.
 * @param formula without `=`
 * @returns with `_xlpm.` before each of those names
 */
export function markedParameters(formula: string): string {
  if (!/(?<![\w.])(?:LET|LAMBDA)\s*\(/i.test(formula)) return formula;
  const names = givenNames(formula);
  return rewriteCode(formula, (code) =>
    code.replace(/(?<![\p{L}\p{N}_.$])[\p{L}_][\p{L}\p{N}_]*(?![\p{L}\p{N}_.!])/gu, (word) =>
      names.has(word.toLowerCase()) ? `_xlpm.${word}` : word,
    ),
  );
}
