import crc32 from 'crc-32';
import { inflateSync, zipSync, type Zippable } from 'fflate';
import { BadFile } from './bad-file';
import { megabytes, MOST_BYTES, MOST_FILE_BYTES, MOST_PART_BYTES, MOST_PARTS } from './limits';
import { statedText } from './part-encoding';
import { readZipDirectory, type ZipEntry } from './zip-directory';

/** The parts of a workbook file, by path, in the order of the file. */
export type Archive = ReadonlyMap<string, Uint8Array>;

const encoder = new TextEncoder();

// A fixed stamp, so that the same input always gives the same file.
const STAMP = new Date(1980, 0, 1);

const OLD_WORKBOOK = [0xd0, 0xcf, 0x11, 0xe0];
const ZIP = [0x50, 0x4b];
const STORED = 0;
const DEFLATED = 8;

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

function damagedPart(name: string): BadFile {
  return new BadFile(
    `The file is damaged: its part ${name} does not agree with its checksum. Use another copy of the workbook.`,
  );
}

function unpacked({ name, method, packed, size, checksum }: ZipEntry): Uint8Array {
  if (method !== STORED && method !== DEFLATED) {
    throw new BadFile(`The file's part ${name} is packed in a way that workbooks do not use.`);
  }
  let bytes: Uint8Array = packed;
  if (method === DEFLATED) {
    try {
      // One byte of room beyond what is stated shows whether there is more.
      bytes = inflateSync(packed, { out: new Uint8Array(size + 1) });
    } catch {
      throw damagedPart(name);
    }
  }
  if (bytes.length !== size || crc32.buf(bytes) >>> 0 !== checksum) throw damagedPart(name);
  return bytes;
}

function checkSizes(entries: readonly ZipEntry[]): void {
  const large = entries.find(({ size }) => size > MOST_PART_BYTES);
  if (large) {
    throw new BadFile(
      `The file's part ${large.name} unpacks to ${megabytes(large.size)}. Accepted: ${megabytes(MOST_PART_BYTES)} at most.`,
    );
  }
  const all = entries.reduce((sum, { size }) => sum + size, 0);
  if (all > MOST_BYTES) {
    throw new BadFile(`The file unpacks to ${megabytes(all)}. Accepted: ${megabytes(MOST_BYTES)} at most.`);
  }
}

/**
 * Opens a workbook file. Every part is checked against its checksum, and stated sizes before anything is unpacked.
 * @param bytes the file
 * @returns its parts
 * @throws {BadFile} where the bytes are no .xlsx file, are damaged or too many
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
  if (bytes.length > MOST_FILE_BYTES) {
    throw new BadFile(
      `The file has ${megabytes(bytes.length)}. Accepted: ${megabytes(MOST_FILE_BYTES)} at most.`,
    );
  }
  const entries = readZipDirectory(bytes, MOST_PARTS);
  checkSizes(entries);
  return new Map(entries.map((entry) => [entry.name, unpacked(entry)]));
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
 * The text of a part, in whatever encoding it stands.
 * @param archive the file
 * @param path the part
 * @returns its text; an encoding that it states is UTF-8, in which texts are written
 * @throws {BadFile} where the part is missing or its bytes are not in the encoding that it states
 */
export function partText(archive: Archive, path: string): string {
  const bytes = archive.get(path);
  if (!bytes) throw new BadFile(`The workbook is damaged: its part ${path} is missing.`);
  return statedText(bytes, path);
}

/**
 * The bytes of a text.
 * @param text the text of a part
 * @returns its bytes
 */
export function partBytes(text: string): Uint8Array {
  return encoder.encode(text);
}
