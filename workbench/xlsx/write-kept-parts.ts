import { partXml } from '../../taskpane/workbook/part-xml';
import type { PartName } from '../../taskpane/workbook/port';
import { partNamespace } from '../../taskpane/workbook/part-xml';
import { partBytes } from './archive';
import { CONTENT, OFFICE } from './format-names';
import { keptPartPath, PART_NAMES } from './kept-parts';
import { addPart, addRelationship, DECLARATION, freePath, type Parts } from './package-parts';

// ECMA-376 Part 1, 15.2.5 and 22.5: a part of custom XML, and beside it the part that names its vocabulary.
const PROPERTIES = 'http://schemas.openxmlformats.org/officeDocument/2006/customXml';

// The format wants an id; one for each purpose, so that the same workbook always gives the same file.
const IDS: Readonly<Record<PartName, string>> = {
  source: '{7E6B1C52-3F0A-4D2B-9C41-5A1D0E8F7A01}',
  formulas: '{7E6B1C52-3F0A-4D2B-9C41-5A1D0E8F7A02}',
  steps: '{7E6B1C52-3F0A-4D2B-9C41-5A1D0E8F7A03}',
  rules: '{7E6B1C52-3F0A-4D2B-9C41-5A1D0E8F7A04}',
};

function propertiesXml(name: PartName): string {
  return (
    `${DECLARATION}<ds:datastoreItem ds:itemID="${IDS[name]}" xmlns:ds="${PROPERTIES}"><ds:schemaRefs>` +
    `<ds:schemaRef ds:uri="${partNamespace(name)}"/></ds:schemaRefs></ds:datastoreItem>`
  );
}

/**
 * Keeps texts in a workbook. Those that it keeps under other names stay.
 * @param parts the file
 * @param workbook path of its workbook part
 * @param texts the texts by name
 */
export function writeKeptTexts(
  parts: Parts,
  workbook: string,
  texts: Readonly<Partial<Record<PartName, string>>>,
): void {
  for (const name of PART_NAMES) {
    const text = texts[name];
    if (text === undefined) continue;
    const known = keptPartPath(parts, workbook, name);
    const path = known ?? freePath(parts, 'customXml/item');
    parts.set(path, partBytes(DECLARATION + partXml(name, text)));
    if (known !== undefined) continue;
    const properties = freePath(parts, 'customXml/itemProps');
    addPart(parts, properties, CONTENT.customXmlProperties, propertiesXml(name));
    addRelationship(parts, path, `${OFFICE}/customXmlProps`, properties);
    addRelationship(parts, workbook, `${OFFICE}/customXml`, path);
  }
}
