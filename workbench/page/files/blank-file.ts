import { partBytes } from '../../xlsx/archive';
import { CONTENT, MAIN, OFFICE } from '../../xlsx/format-names';
import { DECLARATION, type Parts } from '../../xlsx/package-parts';
import { PLAIN } from './read-looks';

const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const XF = '<xf numFmtId="0" fontId="0" fillId="0" borderId="0"';

const STYLES =
  `<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="${PLAIN.fs ?? 11}"/><name val="${PLAIN.ff ?? ''}"/></font></fonts>` +
  // The first two fills are fixed.
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  `<cellStyleXfs count="1">${XF}/></cellStyleXfs><cellXfs count="1">${XF} xfId="0"/></cellXfs>` +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>';

const PARTS: Readonly<Record<string, string>> = {
  '[Content_Types].xml':
    `<Types xmlns="${PACKAGE}/content-types">` +
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
    '<Default Extension="xml" ContentType="application/xml"/>' +
    `<Override PartName="/xl/workbook.xml" ContentType="${CONTENT.workbook}"/>` +
    `<Override PartName="/xl/styles.xml" ContentType="${CONTENT.styles}"/></Types>`,
  '_rels/.rels':
    `<Relationships xmlns="${PACKAGE}/relationships">` +
    `<Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets/></workbook>`,
  'xl/_rels/workbook.xml.rels':
    `<Relationships xmlns="${PACKAGE}/relationships">` +
    `<Relationship Id="rId1" Type="${OFFICE}/styles" Target="styles.xml"/></Relationships>`,
  'xl/styles.xml': STYLES,
};

/**
 * A workbook file without a sheet.
 * @returns its parts
 */
export function blankFile(): Parts {
  return new Map(Object.entries(PARTS).map(([path, xml]) => [path, partBytes(DECLARATION + xml)]));
}

/** The XML of a sheet without a cell. */
export const BLANK_SHEET = `${DECLARATION}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheetData/></worksheet>`;

/** The XML of looks that hold one format, the plain one. */
export const BLANK_STYLES = DECLARATION + STYLES;
