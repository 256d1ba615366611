import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { freshReadme } from '../../scripts/write-docs';

it('the tables of the README are those of the code', async () => {
  expect(readFileSync('README.md', 'utf8')).toBe(await freshReadme());
});
