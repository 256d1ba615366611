import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

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
