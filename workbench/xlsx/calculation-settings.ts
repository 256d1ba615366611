import { partBytes, partText, type Archive } from './archive';
import { workbookPart } from './parts';
import { attribute } from './sheet-scan';

const SETTINGS = /<((?:[\w.-]+:)?calcPr)((?:\s+[\w.:-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>/;

// The settings element stands right after the last of these that the workbook has.
const BEFORE = ['definedNames', 'externalReferences', 'functionGroups', 'sheets'];

/**
 * The engine that present spreadsheets name as theirs. A file of an older engine, or of none, is worked out anew on
 * opening, whatever its values (ISO/IEC 29500-1, 18.2.2, calcId). No documentation has the number: it and the features
 * below are as several writers of files quote them alike from what those spreadsheets save.
 */
const PRESENT_ENGINE = 191029;

/**
 * What that engine can do. A file that leaves out one of those that the opening spreadsheet knows is worked out anew too
 * ([MS-XLSX] 2.4.82, calcFeatures), so a later spreadsheet, which knows more, may do so all the same.
 */
const FEATURES = ['RD', 'Single', 'FV', 'CNMTM', 'LET_WF', 'LAMBDA_WF', 'ARRAYTEXT_WF'].map(
  (name) => `microsoft.com:${name}`,
);
const FEATURES_NAMESPACE = 'http://schemas.microsoft.com/office/spreadsheetml/2018/calcfeatures';
const FEATURES_EXTENSION = '{B58B0392-4F1F-4190-BB64-5DF3571DCE5F}';
const LISTED = /<((?:[\w.-]+:)?)calcFeatures(?:\s[^>]*)?>([\s\S]*?)<\/\1calcFeatures>/;
// The last child of a workbook; empty where it has no closing tag of its own.
const EXTENSIONS =
  /(?:<\/((?:[\w.-]+:)?)extLst>|<((?:[\w.-]+:)?)extLst(?:\s[^>]*)?\/>)\s*<\/(?:[\w.-]+:)?workbook>\s*$/;
const END = /<\/((?:[\w.-]+:)?)workbook>\s*$/;

/** The workbook part, with all of the features listed. */
function withFeatures(xml: string): string {
  const [whole, prefix = 'xcalcf:', names = ''] = LISTED.exec(xml) ?? [];
  const missing = FEATURES.filter((name) => !names.includes(`"${name}"`) && !names.includes(`'${name}'`));
  if (missing.length === 0) return xml;
  const features = missing.map((name) => `<${prefix}feature name="${name}"/>`).join('');
  if (whole !== undefined)
    return xml.replace(whole, () =>
      whole.replace(`</${prefix}calcFeatures>`, () => `${features}</${prefix}calcFeatures>`),
    );
  const list = (ext: string): string =>
    `<${ext}ext uri="${FEATURES_EXTENSION}" xmlns:xcalcf="${FEATURES_NAMESPACE}"><xcalcf:calcFeatures>${features}</xcalcf:calcFeatures></${ext}ext>`;
  const extensions = EXTENSIONS.exec(xml);
  if (extensions) {
    const [ending, full, empty = ''] = extensions;
    if (full !== undefined) return `${xml.slice(0, extensions.index)}${list(full)}${ending}`;
    const rest = ending.slice(ending.indexOf('>') + 1);
    return `${xml.slice(0, extensions.index)}<${empty}extLst>${list(empty)}</${empty}extLst>${rest}`;
  }
  return xml.replace(END, (end, ext: string) => `<${ext}extLst>${list(ext)}</${ext}extLst>${end}`);
}

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

function changed(
  archive: Archive,
  change: (settings: string) => string,
  and: (xml: string) => string = (xml) => xml,
): Archive {
  const path = workbookPart(archive);
  const xml = partText(archive, path);
  const found = SETTINGS.exec(xml);
  const [before, name = '', settings = '', empty = ''] = found ?? [];
  const after = and(
    found
      ? xml.replace(before ?? '', () => `<${name}${change(settings)}${empty}>`)
      : inserted(xml, change('')),
  );
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
  return changed(
    archive,
    (settings) => {
      const unforced = isOn(settings, 'fullCalcOnLoad') ? without(settings, 'fullCalcOnLoad') : settings;
      const engine = Number(attribute(unforced, 'calcId') ?? 0);
      return engine >= PRESENT_ENGINE
        ? unforced
        : ` calcId="${String(PRESENT_ENGINE)}"${without(unforced, 'calcId')}`;
    },
    withFeatures,
  );
}
