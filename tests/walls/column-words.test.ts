import { expect, it } from 'vitest';
import { columnWords } from '../../src/walls/column-words';
import { columnIds } from '../../src/walls/columns';

it('each column says what it means, and no two say the same', () => {
  const meanings = columnIds.map((id) => columnWords[id].means);
  for (const meaning of meanings) expect(meaning).toMatch(/[a-z]{3}/);
  expect(new Set(meanings).size).toBe(columnIds.length);
});
