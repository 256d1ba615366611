import { deflateRawSync, gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { openArchive, packArchive, partBytes, partText } from '../../workbench/xlsx/archive';
import { BadFile } from '../../workbench/xlsx/bad-file';
import { rawArchive, WALLS } from './raw-workbook';

interface Made {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** What the directory says instead of the truth. */
  readonly stated?: number;
  readonly flags?: number;
  readonly method?: number;
}

/** A zip file put together by hand, so that each field of it can be wrong. */
function zip(parts: readonly Made[]): Uint8Array {
  const local: Buffer[] = [];
  const listed: Buffer[] = [];
  let at = 0;
  for (const { name, bytes, stated = bytes.length, flags = 0, method = 8 } of parts) {
    const packed = method === 8 ? deflateRawSync(bytes) : Buffer.from(bytes);
    const rest = Buffer.alloc(26);
    rest.writeUInt16LE(20, 0);
    rest.writeUInt16LE(flags, 2);
    rest.writeUInt16LE(method, 4);
    // The format of gzip ends with the same checksum and the length.
    rest.set(gzipSync(bytes).subarray(-8, -4), 10);
    rest.writeUInt32LE(packed.length, 14);
    rest.writeUInt32LE(stated, 18);
    rest.writeUInt16LE(name.length, 22);
    const place = Buffer.alloc(14);
    place.writeUInt32LE(at, 10);
    local.push(Buffer.from('PK\x03\x04'), rest, Buffer.from(name), packed);
    listed.push(Buffer.from('PK\x01\x02\x14\x00'), rest, place, Buffer.from(name));
    at += 30 + name.length + packed.length;
  }
  const directory = Buffer.concat(listed);
  const end = Buffer.alloc(18);
  end.writeUInt16LE(parts.length, 4);
  end.writeUInt16LE(parts.length, 6);
  end.writeUInt32LE(directory.length, 8);
  end.writeUInt32LE(at, 12);
  return Buffer.concat([...local, directory, Buffer.from('PK\x05\x06'), end]);
}

const text = (value: string): Uint8Array => Buffer.from(value);

describe('opening a zip file', () => {
  it('takes parts that are stored and parts that are deflated', () => {
    const archive = openArchive(
      zip([
        { name: 'a.xml', bytes: text('<a/>'), method: 0 },
        { name: 'b/c.xml', bytes: text('<c/>'.repeat(1000)) },
      ]),
    );
    expect([...archive].map(([name, bytes]) => [name, Buffer.from(bytes).toString()])).toEqual([
      ['a.xml', '<a/>'],
      ['b/c.xml', '<c/>'.repeat(1000)],
    ]);
  });

  it.each<[string, Made[], RegExp]>([
    ['more than it states', [{ name: 'a', bytes: Buffer.alloc(5000), stated: 4999 }], /a does not agree/],
    ['less than it states', [{ name: 'a', bytes: Buffer.alloc(5000), stated: 5001 }], /a does not agree/],
    ['a part of 200 MB', [{ name: 'a', bytes: text('x'), stated: 200 * 2 ** 20 }], /a unpacks to 200 MB/],
    [
      'parts of 400 MB together',
      ['a', 'b', 'c', 'd'].map((name) => ({ name, bytes: text('x'), stated: 100 * 2 ** 20 })),
      /unpacks to 400 MB/,
    ],
    ['a part twice', [1, 2].map(() => ({ name: 'a', bytes: text('x') })), /a is there twice/],
    ['a password', [{ name: 'a', bytes: text('x'), flags: 1 }], /protected by a password/],
    ['another way of packing', [{ name: 'a', bytes: text('x'), method: 12 }], /packed in a way/],
    ['the name of an object', [{ name: '__proto__', bytes: text('x') }], /is not the name of a part/],
  ])('refuses %s', (_, parts, reason) => {
    expect(() => openArchive(zip(parts))).toThrow(reason);
    expect(() => openArchive(zip(parts))).toThrow(BadFile);
  });

  it('refuses more parts than a workbook has', () => {
    const parts = Array.from({ length: 10_001 }, (_, index) => ({ name: `p${index}`, bytes: text('') }));
    expect(() => openArchive(zip(parts))).toThrow(/10001 parts/);
  });

  it('gives what was packed, or a refusal, when any one bit of the file is another', () => {
    const parts = rawArchive([WALLS]);
    const file = packArchive(parts);
    let [same, refused] = [0, 0];
    for (let at = 0; at < file.length; at += 1) {
      const flipped = file.slice();
      flipped[at] = (flipped[at] ?? 0) ^ (1 << (at % 8));
      try {
        expect(openArchive(flipped)).toEqual(parts);
        same += 1;
      } catch (cause) {
        if (!(cause instanceof BadFile)) throw cause;
        refused += 1;
      }
    }
    expect(same + refused).toBe(file.length);
    // Dates, versions and the like carry no value; what is packed does.
    expect(refused).toBeGreaterThan(file.length / 2);
    expect(same).toBeGreaterThan(0);
  });

  it('gives what was packed, or a refusal, when the file ends early', () => {
    const file = packArchive(rawArchive([WALLS]));
    for (let length = 0; length < file.length; length += 7) {
      expect(() => openArchive(file.slice(0, length))).toThrow(BadFile);
    }
  });
});

describe('the text of a part', () => {
  const xml = (encoding: string): string => `<?xml version="1.0" encoding="${encoding}"?><a>façade — ß</a>`;
  const swapped = (bytes: Buffer): Buffer => Buffer.from(bytes).swap16();
  const utf16 = Buffer.from(xml('UTF-16'), 'utf16le');

  it.each<[string, Uint8Array]>([
    ['UTF-8', text(xml('UTF-8'))],
    ['UTF-8 with a mark', Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), text(xml('utf-8'))])],
    ['UTF-16, low byte first', Buffer.concat([Buffer.from([0xff, 0xfe]), utf16])],
    ['UTF-16, high byte first', Buffer.concat([Buffer.from([0xfe, 0xff]), swapped(utf16)])],
    ['UTF-16 without a mark', utf16],
  ])('is read from %s', (_, bytes) => {
    expect(partText(new Map([['a', bytes]]), 'a').toUpperCase()).toBe(xml('UTF-8').toUpperCase());
  });

  it('is read from ISO-8859-1, and states the encoding in which it is written back', () => {
    const bytes = Buffer.from("<?xml version='1.0' encoding='ISO-8859-1'?><a>façade</a>", 'latin1');
    const read = partText(new Map([['a', bytes]]), 'a');
    expect(read).toBe("<?xml version='1.0' encoding='UTF-8'?><a>façade</a>");
    expect(partText(new Map([['a', partBytes(read)]]), 'a')).toBe(read);
  });

  it('is refused where its bytes are not what it states', () => {
    const latin = Buffer.from('<a>façade</a>', 'latin1');
    expect(() => partText(new Map([['a', latin]]), 'a')).toThrow(/a has bytes that are not UTF-8/);
    const unknown = text('<?xml version="1.0" encoding="x-own"?><a/>');
    expect(() => partText(new Map([['a', unknown]]), 'a')).toThrow(/encoding x-own, which is not known/);
  });
});
