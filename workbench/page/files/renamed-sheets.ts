import { partBytes, partText } from '../../xlsx/archive';
import { formulaPieces } from '../../xlsx/formula-text';
import { decodeXml, encodeXml } from '../../xlsx/xml';
import type { Parts } from './package-parts';

/** New names of sheets by their old ones. */
export type Renames = ReadonlyMap<string, string>;

const UNQUOTED = /(?<![\p{L}\p{N}_.'!])([\p{L}_][\p{L}\p{N}_.]*)(?=!)/gu;
const FORMULA =
  /(<(?:[\w.-]+:)?(?:f|formula|formula1|formula2|calculatedColumnFormula|totalsRowFormula|definedName)(?:\s[^<>]*)?>)([^<]+)(?=<)/g;
const LOCATION = /(<(?:[\w.-]+:)?hyperlink\s[^<>]*\blocation=")([^"]*)(?=")/g;
const SOURCE = /(<(?:[\w.-]+:)?worksheetSource\s[^<>]*\bsheet=")([^"]*)(?=")/g;

function quoted(name: string): string {
  return `'${name.replace(/'/g, "''")}'`;
}

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
        const name = renames.get(text.slice(1, -1).replace(/''/g, "'"));
        return name === undefined ? text : quoted(name);
      }
      // Behind brackets stands a sheet of another workbook.
      if (kind !== 'code' || pieces[index - 1]?.kind === 'brackets') return text;
      return text.replace(UNQUOTED, (name) => {
        const renamed = renames.get(name);
        return renamed === undefined ? name : quoted(renamed);
      });
    })
    .join('');
}

/**
 * Has every formula of a file know sheets by their new names, also those of charts, rules and print areas.
 * @param parts the file
 * @param renames the new names
 */
export function renameInFormulas(parts: Parts, renames: Renames): void {
  if (renames.size === 0) return;
  const rewrite = (_: string, start: string, formula: string): string =>
    start + encodeXml(withNewNames(decodeXml(formula), renames));
  for (const path of parts.keys()) {
    if (!/^xl\/.*\.xml$/i.test(path)) continue;
    const text = partText(parts, path);
    const renamed = text
      .replace(FORMULA, rewrite)
      .replace(LOCATION, rewrite)
      .replace(SOURCE, (whole, start: string, name: string) => {
        const next = renames.get(decodeXml(name));
        return next === undefined ? whole : start + encodeXml(next);
      });
    if (renamed !== text) parts.set(path, partBytes(renamed));
  }
}
