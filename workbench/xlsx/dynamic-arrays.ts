import { XMLSerializer, type Document, type Element } from '@xmldom/xmldom';
import { partBytes, partText, type Archive } from './archive';
import { relationships, relationshipsPath, workbookPart } from './parts';
import { elements, parseXml } from './xml';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const ARRAY = 'http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray';
const RELATIONSHIP = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata';
const CONTENT = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml';
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

const TYPE =
  '<metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>';
const PROPERTY = `<bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties xmlns:xda="${ARRAY}" fDynamic="1" fCollapsed="0"/></ext></extLst></bk>`;
const EMPTY = `${DECLARATION}<metadata xmlns="${MAIN}"/>`;

// Children of the metadata element stand in this order.
const ORDER = [
  'metadataTypes',
  'metadataStrings',
  'mdxMetadata',
  'futureMetadata',
  'cellMetadata',
  'valueMetadata',
  'extLst',
];

function fragment(document: Document, xml: string): Element {
  const root = parseXml(`<root xmlns="${MAIN}">${xml}</root>`, 'xl/metadata.xml').documentElement;
  const [child] = root ? Array.from(root.childNodes) : [];
  if (!child) throw new Error('An empty piece of XML cannot be inserted.');
  return document.importNode(child, true) as Element;
}

function childElements(parent: Element, name: string): Element[] {
  return elements(parent, name).filter((child) => child.parentNode === parent);
}

function list(document: Document, name: string, match: (element: Element) => boolean = () => true): Element {
  const root = document.documentElement;
  if (!root) throw new Error('The cell metadata has no root element.');
  const found = childElements(root, name).find(match);
  if (found) return found;
  const made = document.createElementNS(
    root.namespaceURI ?? MAIN,
    root.prefix ? `${root.prefix}:${name}` : name,
  );
  const after = ORDER.slice(ORDER.indexOf(name) + 1);
  const next = Array.from(root.childNodes).find((node) => after.includes((node as Element).localName ?? ''));
  root.insertBefore(made, next ?? null);
  return made;
}

function append(document: Document, parent: Element, xml: string, item: string): number {
  parent.appendChild(fragment(document, xml));
  const count = childElements(parent, item).length;
  parent.setAttribute('count', String(count));
  return count;
}

function isDynamic(block: Element): boolean {
  return elements(block, 'dynamicArrayProperties').some((each) =>
    ['1', 'true'].includes(each.getAttribute('fDynamic') ?? ''),
  );
}

function markNumber(document: Document): { number: number; added: boolean } {
  const types = list(document, 'metadataTypes');
  const named =
    childElements(types, 'metadataType').findIndex((each) => each.getAttribute('name') === 'XLDAPR') + 1;
  const type = named || append(document, types, TYPE, 'metadataType');
  const future = list(document, 'futureMetadata', (each) => each.getAttribute('name') === 'XLDAPR');
  future.setAttribute('name', 'XLDAPR');
  const property = childElements(future, 'bk').findIndex(isDynamic);
  const value = property >= 0 ? property : append(document, future, PROPERTY, 'bk') - 1;
  const cells = list(document, 'cellMetadata');
  const block = childElements(cells, 'bk').findIndex((each) => {
    const [record] = elements(each, 'rc');
    return record?.getAttribute('t') === String(type) && record.getAttribute('v') === String(value);
  });
  if (block >= 0) return { number: block + 1, added: false };
  const xml = `<bk><rc t="${String(type)}" v="${String(value)}"/></bk>`;
  return { number: append(document, cells, xml, 'bk'), added: true };
}

function freeId(archive: Archive, part: string): string {
  const taken = new Set(relationships(archive, part).map((each) => each.id));
  let number = taken.size + 1;
  const text = partText(archive, relationshipsPath(part));
  while (text.includes(`"rId${String(number)}"`)) number += 1;
  return `rId${String(number)}`;
}

function insertBefore(text: string, closing: RegExp, addition: (prefix: string) => string): string {
  return text.replace(closing, (end: string, prefix: string | undefined) => addition(prefix ?? '') + end);
}

function addPart(parts: Map<string, Uint8Array>, workbook: string, path: string): void {
  const links = relationshipsPath(workbook);
  const id = freeId(parts, workbook);
  const linked = insertBefore(
    partText(parts, links),
    /<\/([\w.-]+:)?Relationships>/,
    (prefix) => `<${prefix}Relationship Id="${id}" Type="${RELATIONSHIP}" Target="/${path}"/>`,
  );
  parts.set(links, partBytes(linked));
  const types = '[Content_Types].xml';
  const typed = insertBefore(
    partText(parts, types),
    /<\/([\w.-]+:)?Types>/,
    (prefix) => `<${prefix}Override PartName="/${path}" ContentType="${CONTENT}"/>`,
  );
  parts.set(types, partBytes(typed));
}

/**
 * Makes sure that the workbook has the cell metadata which marks a formula as a dynamic array; without it a
 * spreadsheet takes a spilling formula for an old array formula of fixed size.
 * @param archive the file
 * @returns the file, with the mark added if it was missing, and the number to put on the cells
 * @throws {Error} where the file is damaged
 */
export function withDynamicArrayMark(archive: Archive): { archive: Archive; mark: number } {
  const workbook = workbookPart(archive);
  const linked = relationships(archive, workbook).find((each) => each.kind === 'sheetMetadata')?.target;
  const path = linked ?? `${workbook.slice(0, workbook.lastIndexOf('/') + 1)}metadata.xml`;
  const document = parseXml(archive.has(path) ? partText(archive, path) : EMPTY, path);
  const { number, added } = markNumber(document);
  if (!added && linked !== undefined) return { archive, mark: number };
  const parts = new Map(archive);
  const xml = new XMLSerializer().serializeToString(document);
  parts.set(path, partBytes(xml.startsWith('<?xml') ? xml : DECLARATION + xml));
  if (linked === undefined) addPart(parts, workbook, path);
  return { archive: parts, mark: number };
}
