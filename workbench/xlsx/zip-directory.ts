import { BadFile } from './bad-file';

/** A part as the directory of a zip file lists it (APPNOTE.TXT 6.3, the open description of the format). */
export interface ZipEntry {
  readonly name: string;
  /** 0 stored as it is, 8 deflated. */
  readonly method: number;
  readonly checksum: number;
  readonly size: number;
  /** The bytes as they are packed. */
  readonly packed: Uint8Array;
}

const END = 0x06054b50;
const END_LENGTH = 22;
const END_64 = 0x06064b50;
const LOCATOR_64 = 0x07064b50;
const LOCATOR_64_LENGTH = 20;
const LISTED = 0x02014b50;
const LISTED_LENGTH = 46;
const LOCAL = 0x04034b50;
const LOCAL_LENGTH = 30;
const LONGEST_COMMENT = 0xffff;
const SEE_EXTRA_32 = 0xffffffff;
const SEE_EXTRA_16 = 0xffff;
const ENCRYPTED = 1;
const UTF8 = 0x800;

function damaged(what: string): BadFile {
  return new BadFile(`The file is damaged: its zip cannot be read (${what}). Accepted: an .xlsx workbook.`);
}

/** Sizes and places beyond 32 bits stand in a field of their own; a workbook that needs them is too large anyway. */
function large(view: DataView, at: number): number {
  return Number(view.getBigUint64(at, true));
}

interface Directory {
  readonly count: number;
  readonly start: number;
  readonly length: number;
}

function findDirectory(view: DataView): Directory {
  let at = view.byteLength - END_LENGTH;
  const lowest = Math.max(0, at - LONGEST_COMMENT);
  while (at >= lowest && view.getUint32(at, true) !== END) at -= 1;
  if (at < lowest) throw damaged('it has no end');
  const count = view.getUint16(at + 10, true);
  const length = view.getUint32(at + 12, true);
  const start = view.getUint32(at + 16, true);
  if (count !== SEE_EXTRA_16 && length !== SEE_EXTRA_32 && start !== SEE_EXTRA_32) {
    return { count, length, start };
  }
  const locator = at - LOCATOR_64_LENGTH;
  if (locator < 0 || view.getUint32(locator, true) !== LOCATOR_64) return { count, length, start };
  const end = large(view, locator + 8);
  if (view.getUint32(end, true) !== END_64) throw damaged('its end is in another place');
  return { count: large(view, end + 32), length: large(view, end + 40), start: large(view, end + 48) };
}

/** The values that did not fit into their fields, in the order in which the format lists them. */
function largeValues(view: DataView, start: number, end: number, wanted: number): number[] {
  for (let at = start; at + 4 <= end;) {
    const [id, length] = [view.getUint16(at, true), view.getUint16(at + 2, true)];
    if (id === 1) return Array.from({ length: wanted }, (_, index) => large(view, at + 4 + 8 * index));
    at += 4 + length;
  }
  return [];
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, index) => byte === b[index]);
}

/**
 * Reads the directory of a zip file and checks that it agrees with what it lists.
 * @param bytes the file
 * @param most how many parts are accepted
 * @returns its parts, not unpacked
 * @throws {BadFile} where the directory does not hold together
 */
export function readZipDirectory(bytes: Uint8Array, most: number): ZipEntry[] {
  try {
    return readEntries(bytes, most);
  } catch (cause) {
    // A place outside of the file.
    if (cause instanceof RangeError) throw damaged('it ends too early');
    throw cause;
  }
}

function readEntries(bytes: Uint8Array, most: number): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < END_LENGTH) throw damaged('it ends too early');
  const { count, start, length } = findDirectory(view);
  if (count > most) {
    throw new BadFile(`The file has ${String(count)} parts. Accepted: ${String(most)} at most.`);
  }
  const entries: ZipEntry[] = [];
  const names = new Set<string>();
  let at = start;
  for (let number = 0; number < count; number += 1) {
    if (view.getUint32(at, true) !== LISTED) throw damaged('its directory is broken');
    const flags = view.getUint16(at + 8, true);
    const [nameLength, extraLength, commentLength] = [28, 30, 32].map((field) =>
      view.getUint16(at + field, true),
    ) as [number, number, number];
    const fields = [24, 20, 42].map((field) => view.getUint32(at + field, true));
    const extra = at + LISTED_LENGTH + nameLength;
    const missing = fields.filter((value) => value === SEE_EXTRA_32).length;
    const found = missing > 0 ? largeValues(view, extra, extra + extraLength, missing) : [];
    const [size = 0, packedSize = 0, local = 0] = fields.map((value) =>
      value === SEE_EXTRA_32 ? (found.shift() ?? value) : value,
    );
    const rawName = bytes.subarray(at + LISTED_LENGTH, extra);
    const name = new TextDecoder(flags & UTF8 ? 'utf-8' : 'windows-1252').decode(rawName);
    if (flags & ENCRYPTED) {
      throw new BadFile(
        `The file's part ${name} is protected by a password. Accepted: an .xlsx workbook without one.`,
      );
    }
    if (view.getUint32(local, true) !== LOCAL) throw damaged(`${name} is not where it should be`);
    const localName = local + LOCAL_LENGTH;
    const localNameEnd = localName + view.getUint16(local + 26, true);
    // A name that is damaged in one place would make a part vanish.
    if (!sameBytes(rawName, bytes.subarray(localName, localNameEnd))) {
      throw damaged(`${name} has two names`);
    }
    if (names.has(name)) throw damaged(`${name} is there twice`);
    names.add(name);
    // The packer keeps parts by name in an object, which has this one already.
    if (name === '__proto__') throw damaged(`${name} is not the name of a part`);
    const from = localNameEnd + view.getUint16(local + 28, true);
    if (from + packedSize > bytes.length) throw damaged('it ends too early');
    entries.push({
      name,
      method: view.getUint16(at + 10, true),
      checksum: view.getUint32(at + 16, true),
      size,
      packed: bytes.subarray(from, from + packedSize),
    });
    at = extra + extraLength + commentLength;
  }
  if (at !== start + length) throw damaged('its directory is not as long as it says');
  return entries;
}
