import { expect, it } from 'vitest';
import { openWorkbook } from '../../workbench/page/files/open-workbook';
import { openArchive, packArchive, partBytes, partText, type Archive } from '../../workbench/xlsx/archive';
import { BadFile } from '../../workbench/xlsx/bad-file';
import { readBook } from '../../workbench/xlsx/read-book';
import { Random } from '../properties/random';
import { foreignFile } from '../workbench/page/files/foreign-file';
import { rawArchive, WALLS } from '../workbench/raw-workbook';

// Workbooks that are wrong in ways that know what a workbook is made of. All of them: FILES=10000 npx vitest run
// tests/prove/fuzz-files.test.ts

const FILES = Number(process.env['FILES'] ?? 400);
const SEED = Number(process.env['SEED'] ?? 11);
// A file that takes longer than this hangs.
const LONGEST = 60_000;

type Change = (text: string, random: Random) => string;

const TAG = /<[^<>]*>/g;

function atTag(text: string, random: Random, change: (tag: string) => string): string {
  const tags = [...text.matchAll(TAG)];
  if (tags.length === 0) return text;
  const { 0: tag, index } = random.of(tags);
  return text.slice(0, index) + change(tag) + text.slice(index + tag.length);
}

const CHANGES: Readonly<Record<string, Change>> = {
  tagGone: (text, random) => atTag(text, random, () => ''),
  tagTwice: (text, random) => atTag(text, random, (tag) => tag + tag),
  tagOften: (text, random) => atTag(text, random, (tag) => tag.repeat(2000)),
  tagCut: (text, random) => atTag(text, random, (tag) => tag.slice(0, -1)),
  tagClosed: (text, random) => atTag(text, random, (tag) => tag.replace(/\/?>$/, '/>')),
  textCut: (text, random) => text.slice(0, random.below(text.length)),
  pieceGone: (text, random) => {
    const from = random.below(text.length);
    return text.slice(0, from) + text.slice(from + random.below(200));
  },
  pieceTwice: (text, random) => {
    const from = random.below(text.length);
    const piece = text.slice(from, from + random.below(400));
    return text.slice(0, from) + piece + text.slice(from);
  },
  valueChanged: (text, random) =>
    text.replace(/"[^"]*"/g, (value) =>
      random.percent(3)
        ? `"${random.of(['', '0', '-1', '1e9', 'A1:XFD1048576', 'ZZZ9999999', '__proto__', '../../x', 'NaN', '99999999999', '&#0;', '#REF!'])}"`
        : value,
    ),
  numberChanged: (text, random) =>
    text.replace(/\d+/g, (number) =>
      random.percent(3) ? random.of(['-1', '0', '1e999', '4294967296', '16384', '1048577', 'x']) : number,
    ),
  formula: (text, random) =>
    text.replace(
      /(<f[^>]*>)[^<]*/g,
      (_, tag: string) =>
        tag +
        random.of([
          '(((((',
          '"',
          "'",
          '[[[[',
          '{1,',
          'A1:',
          '#',
          '-'.repeat(500),
          'Walls[',
          "'[1]x'!A1",
          'A1#',
          '@',
          'LET(',
          '&amp;&amp;',
        ]),
    ),
  deep: (text, random) => atTag(text, random, (tag) => '<x>'.repeat(500) + tag),
  bytes: (text, random) =>
    text.slice(0, random.below(text.length)) +
    random.of([
      '\u0000',
      '\ud800',
      '\ufffe',
      '<!--',
      '<![CDATA[',
      '<?',
      '<!DOCTYPE x [',
      '&',
      '&#x110000;',
      '&lol;',
    ]) +
    text,
};

const PARTS: Readonly<Record<string, (parts: Map<string, Uint8Array>, random: Random) => void>> = {
  gone: (parts, random) => {
    parts.delete(random.of([...parts.keys()]));
  },
  empty: (parts, random) => {
    parts.set(random.of([...parts.keys()]), new Uint8Array());
  },
  swapped: (parts, random) => {
    const [a, b] = [random.of([...parts.keys()]), random.of([...parts.keys()])];
    const bytes = parts.get(a);
    parts.set(a, parts.get(b) ?? new Uint8Array());
    parts.set(b, bytes ?? new Uint8Array());
  },
  cyclic: (parts, random) => {
    const links = [...parts.keys()].filter((path) => path.endsWith('.rels'));
    if (links.length === 0) return;
    const path = random.of(links);
    const targets = [...parts.keys()].map((each) => `/${each}`);
    const text = Buffer.from(parts.get(path) ?? [])
      .toString()
      .replace(/Target="[^"]*"/g, () => `Target="${random.of(targets)}"`);
    parts.set(path, partBytes(text));
  },
  noise: (parts, random) => {
    parts.set(
      random.of([...parts.keys()]),
      Uint8Array.from({ length: 500 }, () => random.below(256)),
    );
  },
};

function damaged(archive: Archive, random: Random, seen: Set<string>): Uint8Array {
  const parts = new Map(archive);
  for (let times = 1 + random.below(3); times > 0; times -= 1) {
    const path = random.of([...parts.keys()]);
    if (random.percent(25)) {
      const kind = random.of(Object.keys(PARTS));
      seen.add(kind);
      PARTS[kind]?.(parts, random);
      continue;
    }
    const kind = random.of(Object.keys(CHANGES));
    seen.add(kind);
    let text = '';
    try {
      text = partText(parts, path);
    } catch {
      continue;
    }
    parts.set(path, partBytes(CHANGES[kind]?.(text, random) ?? text));
  }
  return packArchive(parts);
}

it(
  `${String(FILES)} damaged workbooks, seed ${String(SEED)}, are read or refused in words, and soon`,
  { timeout: Math.max(LONGEST, FILES * 100) },
  async () => {
    const random = new Random(SEED);
    const sources = [rawArchive([WALLS]), openArchive(await foreignFile())];
    const seen = new Set<string>();
    let [read, refused, slowest] = [0, 0, 0];
    const uncaught: string[] = [];
    for (let count = 0; count < FILES; count += 1) {
      const file = damaged(random.of(sources), random, seen);
      const start = performance.now();
      try {
        readBook(openArchive(file));
        await openWorkbook(file);
        read += 1;
      } catch (cause) {
        if (cause instanceof BadFile) refused += 1;
        else
          uncaught.push(
            `${String(count)}: ${cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)}`,
          );
      }
      slowest = Math.max(slowest, (performance.now() - start) / 1000);
    }
    console.log(
      `${String(FILES)} files: ${String(read)} read, ${String(refused)} refused, the slowest took ${slowest.toFixed(2)} s`,
    );
    expect(uncaught).toEqual([]);
    expect(read + refused).toBe(FILES);
    expect(read).toBeGreaterThan(FILES / 20);
    expect(refused).toBeGreaterThan(FILES / 20);
    expect([...seen].sort()).toEqual([...Object.keys(CHANGES), ...Object.keys(PARTS)].sort());
  },
);
