import { XMLSerializer, type Document, type Element } from '@xmldom/xmldom';
import { partBytes, partText, type Archive } from './archive';
import { relationships, relationshipsPath } from './parts';
import { elements, parseXml } from './xml';

/** The parts of a file that is being changed. */
export type Parts = Map<string, Uint8Array>;

/** Declares the format of a part. */
export const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TYPES = '[Content_Types].xml';

/**
 * The text of a document.
 * @param document the document
 * @returns its XML with a declaration
 */
export function documentText(document: Document): string {
  const xml = new XMLSerializer().serializeToString(document);
  return xml.startsWith('<?xml') ? xml : DECLARATION + xml;
}

/**
 * The root of a document.
 * @param document the document
 * @returns its element
 */
export function rootOf(document: Document): Element {
  const { documentElement } = document;
  if (!documentElement) throw new Error('A part of the workbook is empty.');
  return documentElement;
}

/**
 * Makes an element of the same vocabulary as another.
 * @param like that element
 * @param name the local name
 * @param attributes its attributes; undefined ones are left out
 * @returns the element, not yet in the document
 */
export function makeElement(
  like: Element,
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>> = {},
): Element {
  const document = like.ownerDocument as Document;
  const qualified = like.prefix ? `${like.prefix}:${name}` : name;
  const element = document.createElementNS(like.namespaceURI, qualified);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) element.setAttribute(key, String(value));
  }
  return element;
}

/**
 * The child of an element, made where it is missing.
 * @param parent the element
 * @param name the local name of the child
 * @param order local names of the children in the order that the format wants
 * @returns the child
 */
export function orderedChild(parent: Element, name: string, order: readonly string[]): Element {
  const nodes = Array.from(parent.childNodes) as Element[];
  const found = nodes.find(({ localName }) => localName === name);
  if (found) return found;
  const after = order.slice(order.indexOf(name) + 1);
  const next = nodes.find(({ localName }) => after.includes(localName ?? ''));
  const made = makeElement(parent, name);
  parent.insertBefore(made, next ?? null);
  return made;
}

/**
 * Takes an element out of its document.
 * @param element the element
 */
export function removeElement(element: Element | undefined): void {
  element?.parentNode?.removeChild(element);
}

/**
 * Changes a part.
 * @param parts the file
 * @param path the part
 * @param change changes its document
 */
export function editPart(parts: Parts, path: string, change: (root: Element) => void): void {
  const document = parseXml(partText(parts, path), path);
  change(rootOf(document));
  parts.set(path, partBytes(documentText(document)));
}

/** Some readers know no path that starts at the root of the file. */
function pathFrom(part: string, target: string): string {
  const from = part.split('/').slice(0, -1);
  const to = target.split('/');
  let same = 0;
  while (same < from.length && from[same] === to[same]) same += 1;
  return [...from.slice(same).map(() => '..'), ...to.slice(same)].join('/');
}

/**
 * Adds a relationship.
 * @param parts the file
 * @param from the part that it starts from
 * @param type its type
 * @param target the part that it leads to
 * @returns its id
 */
export function addRelationship(parts: Parts, from: string, type: string, target: string): string {
  const path = relationshipsPath(from);
  if (!parts.has(path)) {
    parts.set(path, partBytes(`${DECLARATION}<Relationships xmlns="${PACKAGE}/relationships"/>`));
  }
  let id = '';
  editPart(parts, path, (root) => {
    const taken = new Set(elements(root, 'Relationship').map((each) => each.getAttribute('Id')));
    let number = taken.size + 1;
    while (taken.has(`rId${number}`)) number += 1;
    id = `rId${number}`;
    root.appendChild(
      makeElement(root, 'Relationship', { Id: id, Type: type, Target: pathFrom(from, target) }),
    );
  });
  return id;
}

/**
 * Takes relationships of a part away.
 * @param parts the file
 * @param from the part
 * @param unwanted which of them, by id
 */
export function removeRelationships(parts: Parts, from: string, unwanted: ReadonlySet<string>): void {
  if (unwanted.size === 0) return;
  editPart(parts, relationshipsPath(from), (root) => {
    for (const each of elements(root, 'Relationship')) {
      if (unwanted.has(each.getAttribute('Id') ?? '')) removeElement(each);
    }
  });
}

/**
 * Adds a part.
 * @param parts the file
 * @param path the part
 * @param type what kind of content it has
 * @param text its XML
 */
export function addPart(parts: Parts, path: string, type: string, text: string): void {
  parts.set(path, partBytes(text));
  setContentType(parts, path, type);
}

/**
 * Says what kind of content a part has.
 * @param parts the file
 * @param path the part
 * @param type the kind
 */
export function setContentType(parts: Parts, path: string, type: string): void {
  editPart(parts, TYPES, (root) => {
    const found = elements(root, 'Override').find((each) => each.getAttribute('PartName') === `/${path}`);
    if (found) found.setAttribute('ContentType', type);
    else root.appendChild(makeElement(root, 'Override', { PartName: `/${path}`, ContentType: type }));
  });
}

/**
 * A path that no part has yet.
 * @param parts the file
 * @param start what the path starts with
 * @param end what it ends with
 * @returns the two with the first free number between them
 */
export function freePath(parts: Archive, start: string, end = '.xml'): string {
  let number = 1;
  while (parts.has(`${start}${number}${end}`)) number += 1;
  return `${start}${number}${end}`;
}

/**
 * The parts that a reader of a file comes to.
 * @param archive the file
 * @returns their paths
 */
export function reachable(archive: Archive): Set<string> {
  const found = new Set<string>();
  const ahead = [''];
  for (let part = ahead.pop(); part !== undefined; part = ahead.pop()) {
    for (const { target } of relationships(archive, part)) {
      if (found.has(target) || !archive.has(target)) continue;
      found.add(target);
      ahead.push(target);
    }
  }
  return found;
}

/**
 * Takes away what nothing leads to any more.
 * @param parts the file
 * @param before the parts that something led to before it was changed
 */
export function sweep(parts: Parts, before: ReadonlySet<string>): void {
  const now = reachable(parts);
  const gone = [...before].filter((path) => !now.has(path) && parts.has(path));
  if (gone.length === 0) return;
  for (const path of gone) {
    parts.delete(path);
    parts.delete(relationshipsPath(path));
  }
  editPart(parts, TYPES, (root) => {
    for (const each of elements(root, 'Override')) {
      if (gone.includes((each.getAttribute('PartName') ?? '').slice(1))) removeElement(each);
    }
  });
}
