import { unzipSync, zipSync, type Zippable } from 'fflate';
import { BadFile } from './bad-file';

/** The parts of a workbook file, by path, in the order of the file. */
export type Archive = ReadonlyMap<string, Uint8Array>;

const decoder = new TextDecoder('utf-8');
const encoder = new TextEncoder();

// A fixed stamp, so that the same input always gives the same file.
const STAMP = new Date(1980, 0, 1);

const OLD_WORKBOOK = [0xd0, 0xcf, 0x11, 0xe0];
const ZIP = [0x50, 0x4b];

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

/**
 * Opens a workbook file.
 * @param bytes the file
 * @returns its parts
 * @throws {BadFile} where the bytes are no .xlsx file
 */
export function openArchive(bytes: Uint8Array): Archive {
  if (bytes.length === 0) throw new BadFile('The file is empty. Accepted: an .xlsx workbook.');
  if (startsWith(bytes, OLD_WORKBOOK)) {
    throw new BadFile(
      'The file is an old .xls workbook or is protected by a password. Accepted: an .xlsx workbook without a password; save it as one.',
    );
  }
  if (!startsWith(bytes, ZIP)) {
    throw new BadFile('The file is not a workbook: it is not a zip file. Accepted: an .xlsx workbook.');
  }
  let parts: Record<string, Uint8Array>;
  try {
    parts = unzipSync(bytes);
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new BadFile(
      `The file is damaged: its zip cannot be read (${reason}). Accepted: an .xlsx workbook.`,
    );
  }
  return new Map(Object.entries(parts));
}

/**
 * Packs the parts of a workbook file.
 * @param archive the parts
 * @returns the bytes of the file
 */
export function packArchive(archive: Archive): Uint8Array {
  const parts: Zippable = {};
  // Folders have nothing to compress, and some readers want them stored.
  for (const [path, bytes] of archive)
    parts[path] = [bytes, { mtime: STAMP, level: bytes.length > 0 ? 6 : 0 }];
  return zipSync(parts);
}

/**
 * The text of a part.
 * @param archive the file
 * @param path the part
 * @returns its text
 * @throws {BadFile} where the part is missing
 */
export function partText(archive: Archive, path: string): string {
  const bytes = archive.get(path);
  if (!bytes) throw new BadFile(`The workbook is damaged: its part ${path} is missing.`);
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  return decoder.decode(bytes);
}

/**
 * The bytes of a text.
 * @param text the text of a part
 * @returns its bytes
 */
export function partBytes(text: string): Uint8Array {
  return encoder.encode(text);
}
