import { partBytes, partText, type Archive } from './archive';
import { workbookPart } from './parts';
import { attribute } from './sheet-scan';

const SETTINGS = /<((?:[\w.-]+:)?calcPr)((?:\s+[\w.:-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>/;

// The settings element stands right after the last of these that the workbook has.
const BEFORE = ['definedNames', 'externalReferences', 'functionGroups', 'sheets'];

/**
 * The engine that present spreadsheets name as theirs (from memory of files that they save). A file of an older engine,
 * or of none, is worked out anew on opening, whatever its values (ISO/IEC 29500-1, 18.2.2, calcId).
 */
const PRESENT_ENGINE = 191029;

function inserted(xml: string, settings: string): string {
  for (const name of BEFORE) {
    const end = new RegExp(`</([\\w.-]+:)?${name}>|<([\\w.-]+:)?${name}(?:\\s[^>]*)?/>`).exec(xml);
    if (!end) continue;
    const at = end.index + end[0].length;
    const prefix = end[1] ?? end[2] ?? '';
    return `${xml.slice(0, at)}<${prefix}calcPr${settings}/>${xml.slice(at)}`;
  }
  return xml;
}

function changed(archive: Archive, change: (settings: string) => string): Archive {
  const path = workbookPart(archive);
  const xml = partText(archive, path);
  const found = SETTINGS.exec(xml);
  const [before, name = '', settings = '', empty = ''] = found ?? [];
  const after = found
    ? xml.replace(before ?? '', () => `<${name}${change(settings)}${empty}>`)
    : inserted(xml, change(''));
  return after === xml ? archive : new Map(archive).set(path, partBytes(after));
}

function without(settings: string, name: string): string {
  return settings.replace(new RegExp(`\\s+${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), '');
}

function isOn(settings: string, name: string): boolean {
  const value = attribute(settings, name);
  return value === '1' || value === 'true';
}

/**
 * Asks the spreadsheet to recalculate on opening: for a file in which some formulas have no value that can be relied on.
 * @param archive the file
 * @returns the file with the request in its workbook part
 * @throws {Error} where the file is no workbook
 */
export function withRecalculationOnOpen(archive: Archive): Archive {
  return changed(archive, (settings) =>
    isOn(settings, 'fullCalcOnLoad') ? settings : `${without(settings, 'fullCalcOnLoad')} fullCalcOnLoad="1"`,
  );
}

/**
 * Says of a file that its values are those of its formulas, so that a spreadsheet without the add-in shows them instead
 * of working every Washdown cell out to #NAME?.
 * @param archive the file
 * @returns the file without a request to recalculate, and as one of a present spreadsheet
 * @throws {Error} where the file is no workbook
 */
export function asCalculated(archive: Archive): Archive {
  return changed(archive, (settings) => {
    const unforced = isOn(settings, 'fullCalcOnLoad') ? without(settings, 'fullCalcOnLoad') : settings;
    const engine = Number(attribute(unforced, 'calcId') ?? 0);
    return engine >= PRESENT_ENGINE
      ? unforced
      : ` calcId="${String(PRESENT_ENGINE)}"${without(unforced, 'calcId')}`;
  });
}
