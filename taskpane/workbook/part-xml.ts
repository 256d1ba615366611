import type { PartName } from './port';

// What XML cannot hold or a host may rewrite, and the sign of the escape itself.

const UNSAFE = /[%<>&"'\u0000-\u001f\u007f-\u009f\ud800-\udfff\ufffe\uffff]/g;
const ESCAPE = /%([0-9a-f]{4})/g;
const KEPT = /<kept\b[^>]*>([^<]*)<\/kept>/;
const HEXADECIMAL = 16;

/**
 * The namespace of a kept text.
 * @param name what it is kept for
 * @returns for example `urn:washdown:steps`
 */
export function partNamespace(name: PartName): string {
  return `urn:washdown:${name}`;
}

/**
 * A text as an XML part.
 * @param name what it is kept for
 * @param text any text
 * @returns the XML
 */
export function partXml(name: PartName, text: string): string {
  const safe = text.replace(
    UNSAFE,
    (unit) => `%${unit.charCodeAt(0).toString(HEXADECIMAL).padStart(4, '0')}`,
  );
  return `<kept xmlns="${partNamespace(name)}">${safe}</kept>`;
}

/**
 * The text of an XML part.
 * @param xml the part, perhaps with a declaration before it
 * @returns the text; undefined where it is none of ours
 */
export function partText(xml: string): string | undefined {
  return KEPT.exec(xml)?.[1]?.replace(ESCAPE, (_, code: string) =>
    String.fromCharCode(parseInt(code, HEXADECIMAL)),
  );
}
