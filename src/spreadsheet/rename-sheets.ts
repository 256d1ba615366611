import { formulaPieces } from './formula-pieces';
import { quotedSheet, unquotedSheet } from './sheet-name';

/** New names of sheets by their old ones. */
export type Renames = ReadonlyMap<string, string>;

const UNQUOTED = /(?<![\p{L}\p{N}_.'!])([\p{L}_][\p{L}\p{N}_.]*)(?=!)/gu;

/**
 * A formula after sheets were renamed.
 * @param formula without `=`
 * @param renames the new names
 * @returns with the new names
 */
export function withNewNames(formula: string, renames: Renames): string {
  const pieces = formulaPieces(formula);
  return pieces
    .map(({ kind, text }, index) => {
      if (kind === 'sheet') {
        const name = renames.get(unquotedSheet(text));
        return name === undefined ? text : quotedSheet(name);
      }
      // Behind brackets stands a sheet of another workbook.
      if (kind !== 'code' || pieces[index - 1]?.kind === 'brackets') return text;
      return text.replace(UNQUOTED, (name) => {
        const renamed = renames.get(name);
        return renamed === undefined ? name : quotedSheet(renamed);
      });
    })
    .join('');
}
