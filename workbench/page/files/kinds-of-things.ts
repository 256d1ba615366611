import { partText, type Archive } from '../../xlsx/archive';
import { elements, parseXml } from '../../xlsx/xml';

// Last words of the types of relationships, and what stands at the other end of them.
const BY_RELATIONSHIP: Readonly<Record<string, string>> = {
  chart: 'charts',
  chartEx: 'charts',
  chartsheet: 'chart sheets',
  comments: 'notes',
  threadedComment: 'comments',
  connections: 'data connections',
  control: 'form controls',
  ctrlProp: 'form controls',
  activeXControlBinary: 'form controls',
  diagramData: 'diagrams',
  dialogsheet: 'dialog sheets',
  externalLink: 'links to other workbooks',
  hyperlink: 'hyperlinks',
  image: 'pictures',
  oleObject: 'embedded objects',
  package: 'embedded objects',
  origin: 'digital signatures',
  pivotTable: 'pivot tables',
  queryTable: 'data connections',
  slicer: 'slicers',
  timeline: 'timelines',
  vbaProject: 'macros',
  xlMacrosheet: 'macros',
};

// Elements of sheets and of the parts beside them.
const BY_ELEMENT: readonly (readonly [RegExp, string])[] = [
  [/<(?:\w+:)?conditionalFormatting[\s>]/, 'conditional formats'],
  [/<(?:\w+:)?dataValidation[\s>]/, 'validation of entries'],
  [/<(?:\w+:)?sheetProtection[\s/>]/, 'protection'],
  [/<(?:\w+:)?workbookProtection[\s/>]/, 'protection'],
  [/<(?:\w+:)?sparkline[\s>]/, 'sparklines'],
  [/<(?:\w+:)?scenario[\s>]/, 'scenarios'],
  [/<(?:\w+:)?hyperlink[\s>]/, 'hyperlinks'],
  [/\soutlineLevel="[1-9]/, 'groups of rows or columns'],
  [/<(?:\w+:)?f\s[^<>]*t="dataTable"/, 'what-if tables'],
  [/<(?:\w+:)?rPr[\s/>]/, 'formats within a text'],
  [/<(?:\w+:)?gradientFill[\s>]/, 'fills of more than one color'],
  [/<(?:\w+:)?table\s[^<>]*\sheaderRowCount="0"/, 'tables without headings'],
  [/<(?:xdr:)?(?:sp|cxnSp)[\s>]/, 'shapes'],
];
const FILTER = /<(?:\w+:)?autoFilter[\s>/]/;
const READ_FOR_ELEMENTS =
  /(?:worksheets\/[^/]+|workbook|sharedStrings|styles|tables\/[^/]+|drawings\/[^/]+)\.xml$/i;

/**
 * What a workbook file holds besides cells, tables and names, as far as it is known here.
 * @param archive the file
 * @returns kinds of things in plain words, in the order of the alphabet
 */
export function kindsOfThings(archive: Archive): string[] {
  const kinds = new Set<string>();
  for (const path of archive.keys()) {
    if (path.endsWith('.rels')) {
      for (const element of elements(parseXml(partText(archive, path), path), 'Relationship')) {
        const kind = BY_RELATIONSHIP[element.getAttribute('Type')?.split('/').pop() ?? ''];
        if (kind) kinds.add(kind);
      }
    } else if (READ_FOR_ELEMENTS.test(path)) {
      const text = partText(archive, path);
      for (const [pattern, kind] of BY_ELEMENT) if (pattern.test(text)) kinds.add(kind);
      // A table has a filter whether it is used or not.
      if (path.includes('worksheets/') && FILTER.test(text)) kinds.add('filters');
    }
  }
  return [...kinds].sort();
}
