import { partBytes, partText, type Archive } from './archive';
import { workbookPart } from './parts';
import { attribute } from './sheet-scan';

const SETTINGS = /<((?:[\w.-]+:)?calcPr)((?:\s+[\w.:-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>/;

// The settings element stands right after the last of these that the workbook has.
const BEFORE = ['definedNames', 'externalReferences', 'functionGroups', 'sheets'];

function insertSettings(xml: string): string {
  for (const name of BEFORE) {
    const end = new RegExp(`</([\\w.-]+:)?${name}>|<([\\w.-]+:)?${name}(?:\\s[^>]*)?/>`).exec(xml);
    if (!end) continue;
    const at = end.index + end[0].length;
    const prefix = end[1] ?? end[2] ?? '';
    return `${xml.slice(0, at)}<${prefix}calcPr fullCalcOnLoad="1"/>${xml.slice(at)}`;
  }
  return xml;
}

/**
 * Asks the spreadsheet to recalculate on opening: ordinary formulas that read a Washdown cell keep the value they
 * were saved with, which may be out of date.
 * @param archive the file
 * @returns the file with the request in its workbook part
 * @throws {Error} where the file is no workbook
 */
export function withRecalculationOnOpen(archive: Archive): Archive {
  const path = workbookPart(archive);
  const xml = partText(archive, path);
  const settings = SETTINGS.exec(xml);
  const asked = settings && attribute(settings[2] ?? '', 'fullCalcOnLoad');
  if (asked === '1' || asked === 'true') return archive;
  const kept = (settings?.[2] ?? '').replace(/\s+fullCalcOnLoad\s*=\s*(?:"[^"]*"|'[^']*')/, '');
  const changed = settings
    ? xml.replace(SETTINGS, () => `<${settings[1] ?? ''}${kept} fullCalcOnLoad="1"${settings[3] ?? ''}>`)
    : insertSettings(xml);
  return new Map(archive).set(path, partBytes(changed));
}
