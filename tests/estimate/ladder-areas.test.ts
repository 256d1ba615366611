import { expect, it } from 'vitest';
import { maskOptions } from '../../src/estimate/options';
import { readFactors } from '../../src/rules/read-factors';
import { readWalls } from '../../src/walls/read-walls';
import { zonesOf } from '../../src/walls/zones';

const factors = readFactors([['units', 'SI']]);
const ladder = (neverMasked: string) => {
  const walls = [
    ['Wall', 'Material', 'Area', 'Openings', 'Residue', 'Masked'],
    ['A', 'Red clay brick', 100, 10, 'heavy', ''],
    ['B', 'Limestone', 50, 20, '', neverMasked],
    ['C', 'Marble', 30, 5, '', ''],
    ['D', 'Coated glass', 12, 0, '', ''],
  ];
  const zones = zonesOf(readWalls(walls, factors));
  return maskOptions(zones, zones, factors).flat();
};

it('every line leaves the same area clean: the masonry without its openings', () => {
  // 90 + 30 + 25; glass is only protected. Class 1 masks marble and glass, class 2 the limestone too.
  expect(ladder('').map(({ estimate }) => estimate?.totals.washedArea)).toEqual([145, 145, 145, 145, 145]);
  expect(ladder('').map(({ masked }) => masked.map(({ wall }) => wall).join(''))).toEqual([
    '',
    '',
    'CD',
    'BCD',
    'BCD',
  ]);
});

it('a class that cannot be allowed masks nothing and has no estimate', () => {
  const [, , , second, third] = ladder('never');
  for (const option of [second, third])
    expect(option).toMatchObject({
      masked: [],
      estimate: undefined,
      job: NaN,
      reason: 'cannot be masked: B (Limestone)',
      cheapest: false,
    });
});
