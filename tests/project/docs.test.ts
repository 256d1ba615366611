import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { pages } from '../../scripts/docs/pages';

it.each(Object.entries(pages))('%s is as `npm run docs` makes it', async (file, fresh) => {
  expect(readFileSync(file, 'utf8')).toBe(await fresh());
});
