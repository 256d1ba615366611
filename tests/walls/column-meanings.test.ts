import { expect, it } from 'vitest';
import { columnMeanings } from '../../src/walls/column-meanings';
import { columnIds } from '../../src/walls/columns';

it('each column says what it means, and no two say the same', () => {
  const meanings = columnIds.map((id) => columnMeanings[id]);
  for (const meaning of meanings) expect(meaning).toMatch(/[a-z]{3}/);
  expect(new Set(meanings).size).toBe(columnIds.length);
});
