import { describe, expect, it } from 'vitest';
import { methods, type Method } from '../../src/rules/methods';

const entries: readonly Method[] = Object.values(methods);

describe('the table of rules', () => {
  it('calls a number the same in each case that gives it', () => {
    const names = new Map<string, Set<string | undefined>>();
    for (const { symbol, called } of entries) {
      const stem = symbol?.replace(/[#@~]$/, '') ?? '';
      names.set(stem, new Set(names.get(stem)).add(called));
    }
    expect([...names].filter(([, different]) => different.size > 1).map(([stem]) => stem)).toEqual([]);
  });

  it('calls no two numbers alike', () => {
    const stems = new Map(
      entries.flatMap(({ symbol, called }) =>
        called === undefined ? [] : [[symbol?.replace(/[#@~]$/, ''), called] as const],
      ),
    );
    expect(new Set(stems.values()).size).toBe(stems.size);
  });
});
