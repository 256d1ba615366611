import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runEstimate } from '../../workbench/estimate/run';
import { saveFile } from '../../workbench/estimate/save-file';
import { packArchive, partBytes, partText, type Archive } from '../../workbench/xlsx/archive';
import { fakeBundle, fakeUnit } from './fake-bundle';
import { rawArchive, WALLS, type RawSheet } from './raw-workbook';

const BID: RawSheet = {
  name: 'Bid',
  rows: '<row r="1"><c r="A1"><f>_xldudf_WASH_WATER(Walls[#All])</f></c></row>',
};

let folder = '';
let bid = '';
let before: Uint8Array;
let out = '';
let err = '';

async function run(...args: string[]): Promise<number> {
  out = '';
  err = '';
  return runEstimate(args, {
    bundle: fakeBundle,
    unitOf: fakeUnit,
    print: (text) => (out += text),
    warn: (text) => (err += text),
  });
}

const at = (name: string): string => join(folder, name);

function ofKind(type: string): Archive {
  const parts = new Map(rawArchive([WALLS, BID]));
  const types = '[Content_Types].xml';
  const text = partText(parts, types).replace(
    '</Types>',
    `<Override PartName="/xl/workbook.xml" ContentType="${type}"/></Types>`,
  );
  return parts.set(types, partBytes(text));
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'washdown-'));
  bid = at('bid.xlsx');
  before = packArchive(rawArchive([WALLS, BID]));
  writeFileSync(bid, before);
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

describe('npm run estimate without a target', () => {
  it.each([[[]], [['--json']]])('prints and writes nothing, with %j', async (args) => {
    expect(await run(bid, ...args)).toBe(0);
    expect(out).toContain('360');
    expect(err).toContain('Nothing is written. --out FILE or --in-place');
    expect(readFileSync(bid)).toEqual(Buffer.from(before));
    expect(readdirSync(folder)).toEqual(['bid.xlsx']);
  });
});

describe('the target of --out', () => {
  it('is a file that is not there, or one that is replaced and keeps its rights', async () => {
    expect(await run(bid, '--out', at('new.xlsx'))).toBe(0);
    writeFileSync(at('old.xlsx'), before, { mode: 0o600 });
    expect(await run(bid, '--out', at('old.xlsx'))).toBe(0);
    expect(readFileSync(at('old.xlsx'))).toEqual(readFileSync(at('new.xlsx')));
    expect(statSync(at('old.xlsx')).mode & 0o777).toBe(0o600);
    writeFileSync(at('empty.xlsx'), '');
    expect(await run(bid, '--out', at('empty.xlsx'))).toBe(0);
    expect(readFileSync(bid)).toEqual(Buffer.from(before));
  });

  it('may be a link to such a file, which stays a link', async () => {
    writeFileSync(at('real.xlsx'), before);
    symlinkSync(at('real.xlsx'), at('link.xlsx'));
    expect(await run(bid, '--out', at('link.xlsx'))).toBe(0);
    expect(lstatSync(at('link.xlsx')).isSymbolicLink()).toBe(true);
    expect(readFileSync(at('real.xlsx'))).not.toEqual(Buffer.from(before));
  });

  it.each<[string, () => void, RegExp]>([
    ['bid.csv', () => undefined, /does not end in \.xlsx/],
    ['bid.xls', () => undefined, /does not end in \.xlsx/],
    ['bid.xlsm', () => undefined, /does not end in \.xlsx/],
    ['bid', () => undefined, /does not end in \.xlsx/],
    [
      'folder.xlsx',
      () => {
        mkdirSync(at('folder.xlsx'));
      },
      /is a folder\. Name a file in it/,
    ],
    ['none/bid.xlsx', () => undefined, /the folder is not there\. Make it first/],
    ['bid.xlsx/more.xlsx', () => undefined, /a part of the path is a file/],
    [
      'dangling.xlsx',
      () => {
        symlinkSync(at('nothing'), at('dangling.xlsx'));
      },
      /a link that leads nowhere/,
    ],
    [
      'circle.xlsx',
      () => {
        symlinkSync(at('circle.xlsx'), at('circle.xlsx'));
      },
      /a link that leads nowhere/,
    ],
    [
      'device.xlsx',
      () => {
        symlinkSync('/dev/null', at('device.xlsx'));
      },
      /does not end in \.xlsx|a device/,
    ],
    ['pipe.xlsx', () => execFileSync('mkfifo', [at('pipe.xlsx')]), /a device or a pipe/],
    [
      'notes.xlsx',
      () => {
        writeFileSync(at('notes.xlsx'), 'my notes');
      },
      /is there and is not a workbook/,
    ],
    [
      'kept.xlsx',
      () => {
        writeFileSync(at('kept.xlsx'), before);
        chmodSync(at('kept.xlsx'), 0o444);
      },
      /is read-only/,
    ],
  ])('is refused with what to do: %s', async (name, make, reason) => {
    make();
    const there = existsSync(at(name)) && statSync(at(name)).isFile() ? readFileSync(at(name)) : undefined;
    const names = readdirSync(folder);
    expect(await run(bid, '--out', at(name))).toBe(1);
    expect(err).toMatch(reason);
    expect(err).not.toMatch(/E[A-Z]{4,}/);
    expect(readdirSync(folder)).toEqual(names);
    if (there) expect(readFileSync(at(name))).toEqual(there);
  });

  it.each<[string, () => void]>([
    ['bid.xlsx', () => undefined],
    [
      'link.xlsx',
      () => {
        symlinkSync(bid, at('link.xlsx'));
      },
    ],
    [
      'hard.xlsx',
      () => {
        linkSync(bid, at('hard.xlsx'));
      },
    ],
  ])('may not be the workbook itself, as %s', async (name, make) => {
    make();
    expect(await run(bid, '--out', at(name))).toBe(2);
    expect(err).toContain('--in-place');
    expect(readFileSync(bid)).toEqual(Buffer.from(before));
  });

  it.each([
    ['application/vnd.ms-excel.sheet.macroEnabled.main+xml', '.xlsm'],
    ['application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml', '.xltx'],
    ['application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml', '.xlsx'],
  ])('has the ending of %s', async (type, ending) => {
    const file = at(`input${ending}`);
    writeFileSync(file, packArchive(ofKind(type)));
    for (const other of ['.xlsx', '.xlsm', '.xltx']) {
      expect(await run(file, '--out', at(`out${other}`)), other).toBe(other === ending ? 0 : 1);
    }
  });
});

describe('saving', () => {
  it('prints first, so that a save that fails still shows the estimate', async () => {
    // The draft of the save cannot be made where a folder has its name.
    mkdirSync(at(`.late.xlsx.${process.pid}.tmp`));
    expect(await run(bid, '--out', at('late.xlsx'))).toBe(1);
    expect(out).toContain('360');
    expect(err).toContain('late.xlsx is not written');
    expect(existsSync(at('late.xlsx'))).toBe(false);
  });

  it('warns where a spreadsheet has the file open, and writes', async () => {
    for (const lock of ['~$bid.xlsx', '.~lock.bid.xlsx#']) {
      writeFileSync(at(lock), '');
      expect(await run(bid, '--in-place')).toBe(0);
      expect(err).toContain(`${lock} says that a spreadsheet has`);
      rmSync(at(lock));
    }
  });

  it('says that a signature is void before it writes', async () => {
    const signed = new Map(rawArchive([WALLS, BID]));
    const links = '_rels/.rels';
    const link =
      '<Relationship Id="rId2" Type="http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin" Target="_xmlsignatures/origin.sigs"/>';
    signed.set(
      links,
      partBytes(partText(signed, links).replace('</Relationships>', `${link}</Relationships>`)),
    );
    signed.set('_xmlsignatures/origin.sigs', new Uint8Array());
    writeFileSync(bid, packArchive(signed));
    expect(await run(bid)).toBe(0);
    expect(err).not.toContain('signed');
    expect(await run(bid, '--in-place')).toBe(0);
    expect(err).toMatch(/The workbook is signed\.[\s\S]*Values written/);
  });

  it('removes the drafts of runs that were killed, and of no other', () => {
    const { pid: gone } = spawnSync(process.execPath, ['-e', '0']);
    const names = [`.bid.xlsx.${gone}.tmp`, `.other.xlsx.${gone}.tmp`, `.bid.xlsx.${process.ppid}.tmp`];
    for (const name of names) writeFileSync(at(name), 'half a workbook');
    saveFile(bid, Buffer.from('whole'));
    expect(readFileSync(bid, 'utf8')).toBe('whole');
    expect(readdirSync(folder).sort()).toEqual(['bid.xlsx', ...names.slice(1)].sort());
  });

  it('reads no device and no pipe', async () => {
    execFileSync('mkfifo', [at('in.xlsx')]);
    expect(await run(at('in.xlsx'))).toBe(1);
    expect(err).toContain('This is a device or a pipe');
  });
});
