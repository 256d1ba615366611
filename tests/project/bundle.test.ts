import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { metadata } from '../../functions/catalogue';

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
    // The panels that are loaded when they are shown.
    expect(readFileSync('dist/taskpane.js', 'utf8')).toMatch(/"\.js\?v="/);
  });

  it.each([
    ['dist/functions.js', 30],
    ['dist/taskpane.js', 70],
  ])('%s is at most %i KB gzipped', (file, most) => {
    expect(gzipSync(readFileSync(file)).length).toBeLessThanOrEqual(most * KILOBYTE);
  });
});
