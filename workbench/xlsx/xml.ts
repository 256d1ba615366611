import { DOMParser, type Document, type Element } from '@xmldom/xmldom';
import { BadFile } from './bad-file';
import { counted, megabytes, MOST_LEVELS, MOST_TREE_BYTES } from './limits';

const ANY_TAG = /<(\/?)[\p{L}_][\p{L}\p{N}_:.-]*(?:"[^"]*"|'[^']*'|[^<>"'/]|\/(?!>))*(\/?)>/gu;

/** Refuses what would take the reader of trees too long or too deep. */
function checkTree(text: string, path: string): void {
  if (text.length > MOST_TREE_BYTES) {
    throw new BadFile(
      `The workbook's part ${path} has ${megabytes(text.length)}. Accepted: ${megabytes(MOST_TREE_BYTES)} at most.`,
    );
  }
  checkProlog(text, path);
  let level = 0;
  for (const [, closing, empty] of text.matchAll(ANY_TAG)) {
    if (empty) continue;
    level += closing ? -1 : 1;
    if (level > MOST_LEVELS) {
      throw new BadFile(
        `The workbook's part ${path} is nested deeper than ${counted(MOST_LEVELS)} levels, which no workbook is.`,
      );
    }
  }
}

/**
 * Refuses a part that brings definitions of its own: workbooks have none, and they can make it grow without end.
 * @param text the XML
 * @param path the part, for the error
 * @throws {BadFile} where it does
 */
export function checkProlog(text: string, path: string): void {
  const root = text.search(/<[\p{L}_]/u);
  if (text.slice(0, Math.max(0, root)).includes('<!DOCTYPE')) {
    throw new BadFile(`The workbook's part ${path} has a document type, which workbooks do not have.`);
  }
}

const MARKED = /<!--|<!\[CDATA\[/g;

/**
 * XML without comments, and with plain text in place of sections of raw characters.
 * @param text the XML
 * @param path the part, for the error
 * @returns the same content in tags and text alone
 * @throws {BadFile} where a comment or a section does not end
 */
export function plainMarkup(text: string, path: string): string {
  if (!text.includes('<!')) return text;
  let plain = '';
  let at = 0;
  MARKED.lastIndex = 0;
  for (let mark = MARKED.exec(text); mark; mark = MARKED.exec(text)) {
    const isComment = mark[0] === '<!--';
    const end = text.indexOf(isComment ? '-->' : ']]>', MARKED.lastIndex);
    if (end < 0) throw new BadFile(`The workbook is damaged: ${path} has something that does not end.`);
    const raw = isComment ? '' : encodeXml(text.slice(MARKED.lastIndex, end));
    plain += text.slice(at, mark.index) + raw;
    at = end + 3;
    MARKED.lastIndex = at;
  }
  return plain + text.slice(at);
}

/**
 * Reads the XML of a small part.
 * @param text the XML
 * @param path the part, for the error
 * @returns its document
 * @throws {BadFile} where it cannot be read
 */
export function parseXml(text: string, path: string): Document {
  checkTree(text, path);
  try {
    // Warnings are about style; only what makes the part unreadable counts.
    const parser = new DOMParser({
      onError: (level, message) => {
        if (level !== 'warning') throw new Error(message);
      },
    });
    return parser.parseFromString(text.replace(/^\uFEFF/, ''), 'text/xml');
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message.split('\n')[0] : String(cause);
    throw new BadFile(`The workbook is damaged: ${path} cannot be read (${reason ?? ''}).`);
  }
}

/**
 * The elements of a name, whatever their prefix.
 * @param root where to look
 * @param name the local name
 * @returns the elements in order
 */
export function elements(root: Document | Element, name: string): Element[] {
  return Array.from(root.getElementsByTagNameNS('*', name));
}

const ENTITY = /<!\[CDATA\[([\s\S]*?)\]\]>|&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi;

const NAMED: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
};

/**
 * Decodes the entities of XML text.
 * @param text as it stands in the file
 * @returns as it reads
 */
export function decodeXml(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(ENTITY, (whole: string, ...found: (string | undefined)[]) => {
    const [raw, hex, decimal, name] = found;
    if (raw !== undefined) return raw;
    if (hex !== undefined) return String.fromCodePoint(Number.parseInt(hex, 16));
    if (decimal !== undefined) return String.fromCodePoint(Number(decimal));
    return NAMED[name ?? ''] ?? whole;
  });
}

/**
 * Encodes text for XML.
 * @param text as it reads
 * @returns as it stands in the file
 */
export function encodeXml(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}

/**
 * Decodes the file format's own escapes of characters that XML does not take.
 * @param text for example `a_x000a_b`
 * @returns the text with the characters themselves
 */
export function decodeEscapes(text: string): string {
  return text.replace(/_x([0-9a-f]{4})_/gi, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
}

/**
 * Encodes characters that XML does not take, and texts that would be read as such an escape.
 * @param text as it reads
 * @returns the text to store
 */
export function encodeEscapes(text: string): string {
  return text
    .replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_')
    .replace(
      /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g,
      (character) => `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`,
    );
}
