import { BadFile } from './bad-file';

const DECLARED = /^(\s*<\?xml\s[^>]*?encoding\s*=\s*)(["'])([A-Za-z][\w.-]*)\2/;
// A declaration is plain letters in every encoding that it can name.
const DECLARATION_BYTES = 200;

/** The Unicode encoding that the first bytes of an XML text tell (XML 1.0, appendix F). */
function markedEncoding([a, b, c, d]: Uint8Array): string | undefined {
  if (a === 0xef && b === 0xbb && c === 0xbf) return 'utf-8';
  if ((a === 0xff && b === 0xfe) || (a === 0x3c && b === 0 && c === 0x3f && d === 0)) return 'utf-16le';
  if ((a === 0xfe && b === 0xff) || (a === 0 && b === 0x3c && c === 0 && d === 0x3f)) return 'utf-16be';
  return undefined;
}

function decoderFor(label: string, path: string): TextDecoder {
  try {
    return new TextDecoder(label, { fatal: true });
  } catch {
    throw new BadFile(`The workbook's part ${path} is in the encoding ${label}, which is not known here.`);
  }
}

/**
 * Reads the bytes of an XML text in the encoding that they state.
 * @param bytes the bytes
 * @param path the part, for the error
 * @returns the text, which states UTF-8 from then on: that is how it is written back
 * @throws {BadFile} where the bytes are not in that encoding, or it is not known
 */
export function statedText(bytes: Uint8Array, path: string): string {
  const marked = markedEncoding(bytes);
  const start = new TextDecoder('windows-1252').decode(bytes.subarray(0, DECLARATION_BYTES));
  const label = marked ?? DECLARED.exec(start)?.[3] ?? 'utf-8';
  let text: string;
  try {
    text = decoderFor(label, path).decode(bytes);
  } catch (cause) {
    if (cause instanceof BadFile) throw cause;
    throw new BadFile(`The workbook is damaged: ${path} has bytes that are not ${label.toUpperCase()}.`);
  }
  return /^utf-?8$/i.test(DECLARED.exec(text)?.[3] ?? 'utf-8')
    ? text
    : text.replace(DECLARED, (_, before: string, quote: string) => `${before}${quote}UTF-8${quote}`);
}
