import { partText, type Archive } from './archive';
import { BadFile } from './bad-file';
import { elements, parseXml } from './xml';

/** A relationship of a part to another. */
export interface Relationship {
  readonly id: string;
  /** Last word of its type, for example `worksheet`; the rest differs between dialects of the format. */
  readonly kind: string;
  /** Path of the part it leads to. */
  readonly target: string;
}

function resolvePath(from: string, target: string): string {
  if (target.startsWith('/')) return target.slice(1);
  const segments = from.split('/').slice(0, -1);
  for (const segment of target.split('/')) {
    if (segment === '..') segments.pop();
    else if (segment !== '.') segments.push(segment);
  }
  return segments.join('/');
}

/**
 * Where the relationships of a part are kept.
 * @param part the part, or nothing for the whole file
 * @returns the path of its relationships
 */
export function relationshipsPath(part: string): string {
  const cut = part.lastIndexOf('/') + 1;
  return `${part.slice(0, cut)}_rels/${part.slice(cut)}.rels`;
}

/**
 * The relationships of a part.
 * @param archive the file
 * @param part the part, or nothing for the whole file
 * @returns those that lead to another part of the file
 */
export function relationships(archive: Archive, part: string): Relationship[] {
  const path = relationshipsPath(part);
  if (!archive.has(path)) return [];
  return elements(parseXml(partText(archive, path), path), 'Relationship')
    .filter((element) => element.getAttribute('TargetMode') !== 'External')
    .map((element) => ({
      id: element.getAttribute('Id') ?? '',
      kind: (element.getAttribute('Type') ?? '').split('/').pop() ?? '',
      target: resolvePath(part, element.getAttribute('Target') ?? ''),
    }));
}

/**
 * The part that describes the workbook.
 * @param archive the file
 * @returns its path
 * @throws {BadFile} where the file is something else than an .xlsx workbook
 */
export function workbookPart(archive: Archive): string {
  const part = relationships(archive, '').find((each) => each.kind === 'officeDocument')?.target;
  if (part === undefined || !archive.has('[Content_Types].xml')) {
    throw new BadFile('The file is a zip file but not a workbook. Accepted: an .xlsx workbook.');
  }
  if (part.endsWith('.bin')) {
    throw new BadFile('The file is a binary workbook (.xlsb). Accepted: an .xlsx workbook; save it as one.');
  }
  if (elements(parseXml(partText(archive, part), part), 'workbook').length === 0) {
    throw new BadFile('The file is another kind of document, not a workbook. Accepted: an .xlsx workbook.');
  }
  return part;
}
