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
    expect(written).toEqual(JSON.parse(JSON.stringify(metadata())));
    const ids: string[] = [];
    const host = { associate: (id: string) => ids.push(id) };
    runInNewContext(readFileSync('dist/functions.js', 'utf8'), { CustomFunctions: host });
    expect(ids.sort()).toEqual(written.functions.map(({ id }) => id).sort());
  });

  it('every page and picture of the manifest is in the build', () => {
    const addresses = readFileSync('dist/manifest.xml', 'utf8').matchAll(
      /"https:\/\/localhost:3000\/([^"]+)"/g,
    );
    const files = [...addresses].map(([, file]) => `dist/${file ?? ''}`);
    expect(files).toContain('dist/support.html');
    expect(files.filter((file) => !existsSync(file))).toEqual([]);
  });

  it.each([
    ['dist/functions.js', 48],
    ['dist/taskpane.js', 70],
  ])('%s is at most %i KB gzipped', (file, most) => {
    expect(gzipSync(readFileSync(file)).length).toBeLessThanOrEqual(most * KILOBYTE);
  });
});
