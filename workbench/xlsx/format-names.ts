import type { Element } from '@xmldom/xmldom';

/** Vocabularies of the format (ECMA-376 Part 1, annex A, transitional). */
export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
/** Start of the types of relationships between parts, and the vocabulary of their ids. */
export const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
/** Kinds of content, by part. */
export const CONTENT = {
  workbook: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml',
  worksheet: 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml',
  styles: 'application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml',
  table: 'application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml',
  customXmlProperties: 'application/vnd.openxmlformats-officedocument.customXmlProperties+xml',
} as const;

/**
 * The id of the relationship that an element points with.
 * @param element for example `<sheet r:id="rId1"/>`
 * @returns the id
 */
export function relationshipId(element: Element): string {
  return Array.from(element.attributes).find((each) => each.localName === 'id' && each.prefix)?.value ?? '';
}

/**
 * Has an element point with a relationship.
 * @param element the element
 * @param id the relationship's id
 */
export function pointWith(element: Element, id: string): void {
  const prefix = element.lookupPrefix(OFFICE) ?? 'r';
  element.setAttributeNS(OFFICE, `${prefix}:id`, id);
}
