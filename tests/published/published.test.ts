import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { freshTable } from '../../scripts/write-published-table';
import type { PublishedCheck } from './check';
import { checkedSources } from './sources';

function holds({ relation, value, within }: PublishedCheck, ours: number): boolean {
  if (relation === 'at most') return ours <= value + within;
  if (relation === 'at least') return ours >= value - within;
  return Math.abs(ours - value) <= within;
}

const all = checkedSources.flatMap(({ checks }) => checks);

describe.each(checkedSources.map(({ document, checks }) => ({ document, checks })))(
  '$document',
  ({ checks }) => {
    it.each(checks.map((check) => ({ ...check })))('$what', (check) => {
      const ours = check.ours();
      expect(
        holds(check, ours),
        `ours ${String(ours)}, ${check.relation ?? 'to be'} ${String(check.value)} ${check.unit} within ${String(check.within)}`,
      ).toBe(true);
      if (check.second) {
        // The second way knows no more than the value beside it does.
        const other = check.second.value();
        expect(Math.abs(ours - other), `${check.second.by} gives ${String(other)}`).toBeLessThanOrEqual(
          2 * check.within,
        );
      }
    });
  },
);

it('no value from memory goes without a second way', () => {
  const alone = all.filter(({ mark, second }) => mark === 'from memory' && second === undefined);
  expect(alone.map(({ what }) => what)).toEqual([]);
});

it('40 values that were read in a source check a result of ours, and more', () => {
  const read = all.filter(({ mark, reading }) => mark === 'published' && reading !== true);
  expect(read.length).toBeGreaterThanOrEqual(40);
});

it('each check stands once', () => {
  const names = checkedSources.flatMap(({ document, checks }) =>
    checks.map(({ what }) => `${document}: ${what}`),
  );
  expect(new Set(names).size).toBe(names.length);
});

it('a check bites: a value that is a little off is refused', () => {
  for (const check of all) {
    const [ours, off] = [check.ours(), 3 * check.within + 0.05 * Math.abs(check.value) + 0.01];
    const wrong = check.relation === 'at most' ? check.value + off : check.value - off;
    expect(holds(check, wrong), `${check.what}: ${String(ours)}`).toBe(false);
  }
});

it('the table of the docs is that of the checks', async () => {
  expect(readFileSync('docs/published-checks.md', 'utf8')).toBe(await freshTable());
});
