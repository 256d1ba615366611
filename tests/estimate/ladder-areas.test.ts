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
  ];
  return zonesOf(readWalls(walls, factors)).flatMap((zone) => maskOptions(zone, factors));
};

it('what is masked for a class stays unwashed with its area less its openings', () => {
  // Class 1 masks the marble, 30 - 5; class 2 the limestone too, 50 - 20 more.
  expect(ladder('').map(({ leftUnwashed }) => leftUnwashed)).toEqual([0, 25, 55, 55]);
  // Marble takes clear water alone, so that class 0 is what the zone has as it stands.
  expect(ladder('').map(({ asItStands }) => asItStands)).toEqual([true, false, false, false]);
});

it('a class that cannot be allowed masks nothing and has no estimate', () => {
  const [, , second, third] = ladder('never');
  for (const option of [second, third])
    expect(option).toMatchObject({
      toMask: [],
      leftUnwashed: 0,
      estimate: undefined,
      reason: 'cannot be masked: B (Limestone)',
      asItStands: false,
    });
});
