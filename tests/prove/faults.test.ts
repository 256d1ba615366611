import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync, chmodSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openArchive, packArchive } from '../../workbench/xlsx/archive';
import { BadFile } from '../../workbench/xlsx/bad-file';
import { readBook } from '../../workbench/xlsx/read-book';
import { rawArchive, WALLS } from '../workbench/raw-workbook';

// What goes wrong with disks and files. More of it: FLIPS=100000 KILLS=200 npx vitest run tests/prove/faults.test.ts

const FLIPS = Number(process.env['FLIPS'] ?? 3_000);
const KILLS = Number(process.env['KILLS'] ?? 6);

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'washdown-faults-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

describe('a workbook of which one bit is another', () => {
  it(`is refused or holds the same values, ${String(FLIPS)} times over all of its bytes`, () => {
    const file = packArchive(rawArchive([WALLS]));
    const before = readBook(openArchive(file));
    let [same, refused] = [0, 0];
    for (let count = 0; count < FLIPS; count += 1) {
      const flipped = file.slice();
      // Every byte in turn, each time with the next bit.
      const at = Math.floor((count / FLIPS) * file.length * 8);
      const byte = at >> 3;
      flipped[byte] = (flipped[byte] ?? 0) ^ (1 << (at % 8));
      try {
        expect(readBook(openArchive(flipped))).toEqual(before);
        same += 1;
      } catch (cause) {
        if (!(cause instanceof BadFile)) throw cause;
        refused += 1;
      }
    }
    console.log(`${String(FLIPS)} flips: ${String(refused)} refused, ${String(same)} with the same values`);
    expect(same + refused).toBe(FLIPS);
    expect(refused).toBeGreaterThan(FLIPS / 3);
  });
});

const SAVES = `
  import { saveFile } from './workbench/estimate/save-file.ts';
  const [path, size] = process.argv.slice(1);
  const bytes = [65, 66].map((letter) => Buffer.alloc(Number(size), letter));
  process.stdout.write('ready');
  for (let turn = 0; turn < 100000; turn += 1) saveFile(path, bytes[turn % 2]);
`;
const SAVE_ONCE = `
  import { saveFile } from './workbench/estimate/save-file.ts';
  import { reasonOf } from './workbench/estimate/target.ts';
  const [path, size] = process.argv.slice(1);
  process.on('SIGXFSZ', () => undefined);
  try { saveFile(path, Buffer.alloc(Number(size), 66)); } catch (cause) { console.log(reasonOf(cause)); }
`;
const node = (script: string): string[] => ['--import', 'tsx', '--input-type=module', '-e', script];
const SIZE = 400_000;

// Counts what the command asks of the system for files in a folder, and at the wanted time has it go wrong.
const FAULTY = `
  const fs = require('node:fs');
  const { syncBuiltinESMExports } = require('node:module');
  const { FOLDER, FAULT, AT } = process.env;
  const NEED_ROOM = ['openSync', 'writeSync', 'fsyncSync', 'renameSync'];
  const handles = new Set();
  const asked = [];
  // Writing a file as a whole asks to write its pieces.
  for (const name of Object.keys(fs).filter((each) => each.endsWith('Sync') && each !== 'writeFileSync')) {
    const real = fs[name];
    fs[name] = (on, ...rest) => {
      if (typeof on === 'string' ? !on.startsWith(FOLDER) : !handles.has(on)) return real(on, ...rest);
      asked.push(name);
      const due = asked.length === Number(AT) || (FAULT === 'ENOSPC' && asked.length > AT && NEED_ROOM.includes(name));
      if (due && name === 'writeSync') real(on, rest[0], 0, rest[0].length >> 1);
      if (due && FAULT === 'kill') process.kill(process.pid, 'SIGKILL');
      if (due && name === 'existsSync') return false;
      if (due) throw Object.assign(new Error(FAULT + ': ' + name), { code: FAULT });
      const result = real(on, ...rest);
      if (name === 'openSync') handles.add(result);
      if (name === 'closeSync') handles.delete(on);
      return result;
    };
  }
  syncBuiltinESMExports();
  process.on('exit', () => process.stdout.write('ASKED ' + asked.join(' ')));
`;
const ESTIMATE = resolve('out/commands/estimate.mjs');

describe('a save by the command, at each thing that it asks of the system', () => {
  const BID = {
    name: 'Bid',
    rows: '<row r="1"><c r="A1"><f>_xldudf_WASH_MASKING(Walls!A1:D4)</f></c></row>',
  };
  const former = packArchive(rawArchive([WALLS, BID]));
  const home = mkdtempSync(join(tmpdir(), 'washdown-faulty-'));
  afterAll(() => {
    rmSync(home, { recursive: true });
  });

  function save(fault: string, at: number) {
    const [preload, input, path] = [
      join(home, 'faulty.cjs'),
      join(home, 'input.xlsx'),
      join(folder, 'bid.xlsx'),
    ];
    writeFileSync(preload, FAULTY);
    writeFileSync(input, former);
    writeFileSync(path, former);
    const { status, signal, stdout, stderr } = spawnSync(
      process.execPath,
      ['--require', preload, ESTIMATE, input, '--out', path],
      { encoding: 'utf8', env: { ...process.env, FOLDER: folder, FAULT: fault, AT: String(at) } },
    );
    const asked = (/ASKED (.*)$/.exec(stdout)?.[1] ?? '').split(' ');
    return { status, signal, stderr, asked, bytes: readFileSync(path), files: readdirSync(folder) };
  }

  it.each(['kill', 'EIO', 'ENOSPC'])('%s', (fault) => {
    const { bytes: written, asked, status: good } = save('', 0);
    expect(good).toBe(0);
    expect(asked).toEqual(expect.arrayContaining(['writeSync', 'fsyncSync', 'renameSync']));
    expect(Buffer.compare(written, former)).not.toBe(0);
    const counts = { 'former file': 0, 'new file': 0, drafts: 0 };
    for (let at = 1; at <= asked.length; at += 1) {
      for (const name of readdirSync(folder)) rmSync(join(folder, name));
      const where = `${fault} at ${String(at)}, ${asked[at - 1] ?? ''}`;
      const { status, signal, stderr, bytes, files } = save(fault, at);
      const isNew = Buffer.compare(bytes, written) === 0;
      expect(isNew || Buffer.compare(bytes, former) === 0, where).toBe(true);
      counts[isNew ? 'new file' : 'former file'] += 1;
      counts.drafts += files.length - 1;
      if (fault === 'kill') {
        expect(signal, where).toBe('SIGKILL');
        continue;
      }
      // What is not needed for a file that is whole may fail.
      expect(status, where).toBe(isNew ? 0 : 1);
      const said =
        fault === 'EIO' ? 'the disk has an error. Choose another disk.' : 'the disk is full. Make room';
      if (isNew) expect(stderr, where).toContain('Values written');
      else expect(stderr, where).toContain(said);
      expect(stderr, where).not.toMatch(/E[A-Z]{2,}:|\n\s+at /);
      expect(files, where).toEqual(['bid.xlsx']);
    }
    console.log(`${fault} at each of ${String(asked.length)}: ${JSON.stringify(counts)}`);
    expect(counts['former file']).toBeGreaterThan(0);
    expect(counts['new file']).toBeGreaterThan(0);
  });

  it('killed before its draft takes the name leaves a draft, which the next run removes', () => {
    const { asked } = save('', 0);
    expect(save('kill', asked.indexOf('renameSync') + 1).files).toHaveLength(2);
    expect(save('', 0).files).toEqual(['bid.xlsx']);
  });
});

describe('saving', () => {
  it(`that is killed in the middle leaves the one file or the other whole, ${String(KILLS)} times`, async () => {
    const path = join(folder, 'bid.xlsx');
    let drafts = 0;
    for (let count = 0; count < KILLS; count += 1) {
      writeFileSync(path, Buffer.alloc(SIZE, 65));
      const child = spawn(process.execPath, [...node(SAVES), path, String(SIZE)], {
        stdio: ['ignore', 'pipe', 'inherit'],
      });
      await new Promise((resolve) => child.stdout.once('data', resolve));
      // Another moment of the save each time.
      await new Promise((resolve) => setTimeout(resolve, (count * 7) % 40));
      child.kill('SIGKILL');
      await new Promise((resolve) => child.once('exit', resolve));
      const bytes = readFileSync(path);
      expect(bytes).toHaveLength(SIZE);
      expect([65, 66]).toContain(bytes[0]);
      expect(bytes.every((byte) => byte === bytes[0])).toBe(true);
      drafts += readdirSync(folder).length - 1;
    }
    console.log(`${String(KILLS)} kills: every file whole, ${String(drafts)} drafts seen`);
    // The next run takes away what a killed one left.
    spawnSync(process.execPath, [...node(SAVE_ONCE), path, '10']);
    expect(readdirSync(folder)).toEqual(['bid.xlsx']);
  });

  it('onto a disk that is full leaves the former file and says so, wherever it ends', () => {
    const path = join(folder, 'bid.xlsx');
    for (const blocks of [0, 1, 100, 390]) {
      writeFileSync(path, 'former');
      const { stdout } = spawnSync(
        'bash',
        [
          '-c',
          `ulimit -f ${String(blocks)}; exec "$0" "$@"`,
          process.execPath,
          ...node(SAVE_ONCE),
          path,
          String(SIZE),
        ],
        { encoding: 'utf8' },
      );
      expect(stdout).toContain('the file is larger than may be written there');
      expect(readFileSync(path, 'utf8')).toBe('former');
      expect(readdirSync(folder)).toEqual(['bid.xlsx']);
    }
  });

  it.skipIf(process.getuid?.() === 0)('into a folder that is read-only leaves everything as it was', () => {
    const path = join(folder, 'bid.xlsx');
    writeFileSync(path, 'former');
    chmodSync(folder, 0o555);
    const { stdout } = spawnSync(process.execPath, [...node(SAVE_ONCE), path, '10'], { encoding: 'utf8' });
    chmodSync(folder, 0o755);
    expect(stdout).toContain('you may not write there');
    expect(readFileSync(path, 'utf8')).toBe('former');
  });
});
