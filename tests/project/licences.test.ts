import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, it } from 'vitest';
import { noticesOf, packagesOf, shippedPackages } from '../../scripts/licence-notices.mjs';

interface Package {
  license?: string;
  dev?: boolean;
}

it('what ships is under a permissive licence', () => {
  const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as { packages: Record<string, Package> };
  const shipped = Object.entries(lock.packages).filter(([path, { dev }]) => path !== '' && dev !== true);
  expect(shipped.map(([path]) => path)).toContain('node_modules/preact');
  for (const [path, { license }] of shipped) expect([path, license]).toEqual([path, 'MIT']);
});

it('what ships brings the licences of its packages, each with its text', () => {
  const text = noticesOf(shippedPackages(resolve('.')));
  expect(text).toMatch(/^This contains 1 packages of others/);
  expect(text).toContain('preact 11.2.0 (MIT)');
  expect(text).toContain(readFileSync('node_modules/preact/LICENSE', 'utf8').trim());
});

it('the packages of a bundle are found from its files, also packages within packages', () => {
  const files = [
    'src/a.ts',
    'node_modules/fflate/esm/index.mjs',
    'node_modules/@xmldom/xmldom/lib/dom.js',
    'node_modules/fflate/lib/b.js',
  ];
  expect(packagesOf('/p', files)).toEqual(['/p/node_modules/@xmldom/xmldom', '/p/node_modules/fflate']);
  const text = noticesOf(packagesOf(resolve('.'), files));
  expect(text).toContain(readFileSync('node_modules/fflate/LICENSE', 'utf8').trim());
});
