import { partBytes, partText } from '../../xlsx/archive';
import { withNewNames, type Renames } from '../../../src/spreadsheet/rename-sheets';
import { decodeXml, encodeXml } from '../../xlsx/xml';
import type { Parts } from '../../xlsx/package-parts';

const FORMULA =
  /(<(?:[\w.-]+:)?(?:f|formula|formula1|formula2|calculatedColumnFormula|totalsRowFormula|definedName)(?:\s[^<>]*)?>)([^<]+)(?=<)/g;
const LOCATION = /(<(?:[\w.-]+:)?hyperlink\s[^<>]*\blocation=")([^"]*)(?=")/g;
const SOURCE = /(<(?:[\w.-]+:)?worksheetSource\s[^<>]*\bsheet=")([^"]*)(?=")/g;

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
