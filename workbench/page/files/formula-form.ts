import { readableFormula, storedForm } from '../../engine/washdown-names';
import { formulaPieces, rewriteCode, type FormulaPiece } from '../../../src/spreadsheet/formula-pieces';
import { FUTURE_PREFIX } from './future-functions';
import { markedParameters } from './parameters';

const CELL = String.raw`(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}\$?\d{1,7}`;
const STORED_SPILL = new RegExp(String.raw`(?<![\w.])(?:_xlfn\.)?ANCHORARRAY\(\s*(${CELL})\s*\)`, 'giu');
const TYPED_SPILL = new RegExp(String.raw`(?<![\p{L}\p{N}_.$!'])(${CELL})#`, 'giu');
const STORED_SINGLE = new RegExp(
  String.raw`(?<![\w.])_xlfn\.SINGLE\(\s*(${CELL}(?::\$?[A-Z]{1,3}\$?\d{1,7})?|[\p{L}_][\p{L}\p{N}_.]*)\s*\)`,
  'giu',
);
const TYPED_SINGLE = new RegExp(
  String.raw`@(${CELL}(?::\$?[A-Z]{1,3}\$?\d{1,7})?|[\p{L}_][\p{L}\p{N}_.]*(?![\p{L}\p{N}_.(!]))`,
  'giu',
);
const STORED_PREFIX = /(?<![\w.])(?:_xlfn\.(?:_xlws\.)?|_xlws\.|_xlpm\.|_xludf\.)(?=[A-Z_])/gi;
const CALL = /(?<![\w.])([A-Z][A-Z0-9.]*)(?=\s*\()/gi;

function rewriteBetween(
  formula: string,
  kept: readonly FormulaPiece['kind'][],
  rewrite: (stretch: string) => string,
): string {
  let result = '';
  let stretch = '';
  for (const { kind, text } of formulaPieces(formula)) {
    if (kept.includes(kind)) {
      result += rewrite(stretch) + text;
      stretch = '';
    } else stretch += text;
  }
  return result + rewrite(stretch);
}

/**
 * A formula as a person types it.
 * @param stored as the file has it, without `=`
 * @returns with `=`, and without the prefixes that only files have
 */
export function typedFormula(stored: string): string {
  const referred = rewriteBetween(stored, ['text'], (code) =>
    code.replace(STORED_SPILL, '$1#').replace(STORED_SINGLE, '@$1'),
  );
  return `=${rewriteCode(readableFormula(referred), (code) => code.replace(STORED_PREFIX, ''))}`;
}

const THIS_ROW = /^\[@(?:\[(.*)\]|(.*))\]$/s;

/** `[@Area]` is how the row at hand is typed; a file says it in full, with the name of the table. */
function withRowsInFull(formula: string, table: string | undefined): string {
  let before = '';
  return formulaPieces(formula)
    .map(({ kind, text }) => {
      const row = kind === 'brackets' ? THIS_ROW.exec(text) : null;
      const owner = /[\p{L}\p{N}_.]$/u.test(before) ? '' : (table ?? '');
      before = text;
      if (!row) return text;
      const column = row[1] ?? row[2] ?? '';
      return `${owner}${column ? `[[#This Row],[${column}]]` : '[#This Row]'}`;
    })
    .join('');
}

/**
 * A formula as a file keeps it.
 * @param typed with `=`
 * @param table name of the table that its cell stands in, if any
 * @returns without `=`, and with the prefixes that files have
 */
export function filedFormula(typed: string, table?: string): string {
  const plain = withRowsInFull(typed.replace(/^=/, ''), table);
  const referred = rewriteBetween(plain, ['text', 'brackets'], (code) =>
    code.replace(TYPED_SPILL, '_xlfn.ANCHORARRAY($1)').replace(TYPED_SINGLE, '_xlfn.SINGLE($1)'),
  );
  return rewriteCode(markedParameters(storedForm(referred)), (code) =>
    code.replace(CALL, (name) => `${FUTURE_PREFIX.get(name.toUpperCase()) ?? ''}${name}`),
  );
}
