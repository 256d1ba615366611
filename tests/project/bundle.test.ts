import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { createContext, runInContext, runInNewContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { metadata } from '../../functions/catalogue';
import { moreNames } from '../../functions/more-names';
import { moreRuns } from '../../functions/more-runs';

const KILOBYTE = 1024;

describe('built bundles', () => {
  it('are there: run `npm run build` before the tests', () => {
    expect(existsSync('dist/functions.js')).toBe(true);
  });

  it('functions.json is the list, and the bundle brings every function on it', () => {
    const written = JSON.parse(readFileSync('dist/functions.json', 'utf8')) as {
      functions: { id: string }[];
    };
    expect(written).toEqual(JSON.parse(JSON.stringify(metadata('https://localhost:3000'))));
    const ids: string[] = [];
    const host = { associate: (id: string) => ids.push(id) };
    runInNewContext(readFileSync('dist/functions.js', 'utf8'), { CustomFunctions: host });
    expect(ids.sort()).toEqual(written.functions.map(({ id }) => id).sort());
  });

  it('every page and picture of the manifest is in the build', () => {
    const addresses = readFileSync('dist/manifest.xml', 'utf8').matchAll(
      /"https:\/\/localhost:3000\/([^"]+)"/g,
    );
    const files = [...addresses].map(([, file]) => `dist/${file?.replace(/\?v=.*/, '') ?? ''}`);
    expect(files).toContain('dist/support.html');
    expect(files.filter((file) => !existsSync(file))).toEqual([]);
  });

  it('what explains, checks and compares comes when it is called: a host that has both scripts calls it at once', () => {
    const known = new Map<string, (...args: unknown[]) => unknown>();
    const globals: Record<string, unknown> = {
      CustomFunctions: { associate: (id: string, run: () => unknown) => known.set(id, run) },
    };
    globals['self'] = globals;
    const context = createContext(globals);
    for (const file of ['functions.js', 'functions-more.js'])
      runInContext(readFileSync(`dist/${file}`, 'utf8'), context);
    for (const name of moreNames) expect(known.has(name), name).toBe(true);
    // 10 ft2 a minute for 5 min, rinsed at 8: 40 ft2.
    const patch = known.get('PATCH')?.(10, 8, 3, 5) as unknown[][];
    expect(patch[0]?.[1]).toBeCloseTo(40, 9);
    expect(moreNames).toEqual(Object.keys(moreRuns));
  });

  it('what may be kept by a browser has its content in its address, in pages, manifest and scripts', () => {
    const hashOf = (file: string) =>
      createHash('sha256')
        .update(readFileSync(`dist/${file}`))
        .digest('hex')
        .slice(0, 16);
    const loaded = (file: string) =>
      [
        ...readFileSync(`dist/${file}`, 'utf8').matchAll(
          /[="/](\w+\.(?:json|js|css))(?:\?v=(\w+))?(?=["\s>])/g,
        ),
      ].map(([, name = '', hash]) => [name, hash]);
    const page = loaded('taskpane.html').filter(([name]) => name !== 'office.js');
    expect(page.map(([name]) => name)).toEqual(['style.css', 'functions.js', 'taskpane.js']);
    const manifest = loaded('manifest.xml');
    expect(manifest.map(([name]) => name)).toEqual(['functions.js', 'functions.json']);
    for (const [name = '', hash] of [...page, ...manifest])
      expect([name, hash]).toEqual([name, hashOf(name)]);
    // The panels that are loaded when they are shown, and the functions that come later.
    const runtime = readFileSync('dist/functions.js', 'utf8');
    expect(runtime).toMatch(/"\.js\?v="/);
    expect(runtime).toContain(`functions-more.js?v=${hashOf('functions-more.js')}`);
  });

  it.each([
    ['what a workbook loads when it opens', ['functions.js'], 48],
    ['what comes with the first call that explains, checks or compares', ['functions-more.js'], 48],
    ['the first load of the pane', ['functions.js', 'taskpane.js'], 70],
  ])('%s is at most as large as stated, gzipped', (_, files, most) => {
    const sizes = files.map((file) => gzipSync(readFileSync(`dist/${file}`)).length);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(most * KILOBYTE);
  });
});
