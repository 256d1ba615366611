import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { RULES_VERSION } from '../../src/rules/version';
import { call, column, spill } from '../functions/call';

const walls = [
  ['Wall', 'Material', 'Area'],
  ['A', 'Red clay brick', 100],
];

it('FACTORS and the head of TRACE show the version', () => {
  const shown = spill('FACTORS');
  const row = column(shown, 'Factor').indexOf('rules');
  expect(column(shown, 'Value')[row]).toBe(Number(RULES_VERSION));
  const [head = []] = spill('TRACE', 'water', walls);
  expect(head).toContain(`Rule (rules ${RULES_VERSION})`);
});

it('a version among the factors, as a copy of FACTORS has it, changes nothing', () => {
  expect(() => readFactors([['rules', 999]])).not.toThrow();
  expect(call('WATER', walls, null, [['rules', 999]])).toBe(call('WATER', walls));
});

it('the changelog says of the present version, first of all, what it changed', () => {
  const [first] = [...readFileSync('CHANGELOG.md', 'utf8').matchAll(/^## Rules (.+)$/gm)];
  expect(first?.[1]).toBe(RULES_VERSION);
});
