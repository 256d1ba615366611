import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { RULES_VERSION } from '../../src/rules/version';
import { spill } from '../functions/call';

const walls = [
  ['Wall', 'Material', 'Area'],
  ['A', 'Red clay brick', 100],
];

it('the heads of FACTORS and TRACE show the version', () => {
  expect(spill('FACTORS')[0]).toContain(`Source (rules ${RULES_VERSION})`);
  expect(spill('TRACE', 'water', walls)[0]).toContain(`Rule (rules ${RULES_VERSION})`);
});

it('the changelog says of the present version, first of all, what it changed', () => {
  const [first] = [...readFileSync('CHANGELOG.md', 'utf8').matchAll(/^## Rules (.+)$/gm)];
  expect(first?.[1]).toBe(RULES_VERSION);
});
