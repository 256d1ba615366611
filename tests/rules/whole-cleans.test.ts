import { expect, it } from 'vitest';
import { toBase } from '../../src/quantity/conversions';
import { factors } from '../../src/rules/factors';
import { startsAtNothing } from '../../src/rules/starts-at-nothing';
import { wholeCleans } from '../../src/rules/whole-cleans';

it('the norms of whole cleans run from 25 to 68 ft2 per labor-hour', () => {
  const shown = wholeCleans.map(({ value, unit }) => Math.round(toBase(value, unit) / 0.09290304));
  // 1 / (0.4302 * 0.0929), 60 / 2, 1 / (0.33 * 0.0929), 1 / (0.2 * 0.0929) twice, 100 / (15.8 * 0.0929).
  expect(shown).toEqual([25, 30, 33, 54, 54, 68]);
});

it('what starts at nothing is yours to state and starts at nothing', () => {
  for (const id of startsAtNothing.flatMap(({ ids }) => ids)) {
    const { value, sourceKind } = factors.find((row) => row.id === id) ?? {};
    expect([id, value, sourceKind]).toEqual([id, 0, 'yours to state']);
  }
});

it('every price of the table is among what starts at nothing', () => {
  const listed = new Set<string>(startsAtNothing.flatMap(({ ids }) => ids));
  // A span is what a price is checked against.
  const prices = factors.map(({ id }) => id).filter((id) => /^price\.(?!span\.)/.test(id));
  expect(prices.filter((id) => !listed.has(id))).toEqual([]);
});
