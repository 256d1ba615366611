import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

// What the pages call by the pane's own words is in bold; the pane's code has them as a text of their own.
const code = readdirSync('taskpane', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.tsx'))
  .map((file) => readFileSync(join('taskpane', file), 'utf8'))
  .join('\n');

it.each(['docs/try-in-excel.md', 'docs/for-the-receiver.md'])('%s uses the words of the pane', (page) => {
  const labels = [...readFileSync(page, 'utf8').matchAll(/\*\*([^*]+)\*\*/g)]
    .map(([, label = '']) => label.replace(/\s+/g, ' '))
    .filter((label) => !label.startsWith('#'));
  expect(labels.length).toBeGreaterThan(0);
  const missing = labels.filter(
    (label) => !code.includes(`>${label}<`) && !code.includes(`'${label}'`) && !code.includes(`  ${label}\n`),
  );
  expect(missing).toEqual([]);
});
