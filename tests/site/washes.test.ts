import { describe, expect, it } from 'vitest';
import { classesOn, strongestClass, washedRows, washesOf } from '../../src/hazards/washed';
import { passesInWords } from '../../src/site/steps/wash-facts';
import { patchesToWash } from '../../src/site/patch-times';
import { rowsOf, siteWashes } from '../../src/site/washes';
import { estimated } from './job';

const row = (name: string, material: string, masked = 'no', area = 400, residue = 'moderate') => [
  ...[name, 'Z', 1, material, area, 10, 0, 0, 0, 'N', residue, 10, masked, ''],
];

function zoneOf(rows: unknown[][], factors: unknown[][] = []) {
  const [zone] = estimated(rows, factors).zones;
  if (!zone) throw new Error('no zone');
  return zone;
}

const labels = (rows: readonly { readonly wall: string }[]) => rows.map(({ wall }) => wall);

const mixed = [
  row('A', 'Red clay brick'),
  row('B', 'Marble', 'yes'),
  row('C', 'Limestone', 'yes', 400, 'light'),
  row('D', 'Red clay brick'),
  row('E', 'Limestone', 'only'),
  row('F', 'Copper', 'yes'),
  row('G', 'Red clay brick', 'no', 0),
  row('H', 'Limestone', 'yes', 100, 'light'),
];

describe('the washes of a zone', () => {
  it('are the bare rows, then the masked masonry, the most tolerant first; what has no face is in none', () => {
    const zone = zoneOf(mixed);
    expect(washesOf(zone).map((wash) => [wash.class, labels(wash.rows)])).toEqual([
      [2, ['A', 'D']],
      [1, ['C', 'H']],
      [0, ['B']],
    ]);
    expect(labels(washedRows(zone))).toEqual(['A', 'B', 'C', 'D', 'H']);
    expect(strongestClass(zone)).toBe(2);
    expect(
      classesOn(
        zone,
        zone.zone.rows.filter(({ wall }) => 'CB'.includes(wall)),
      ),
    ).toEqual([1, 0]);
  });

  it('name every wall of a kind, though one row of each kind was estimated', () => {
    const washes = siteWashes(zoneOf(mixed));
    expect(washes.map((wash) => labels(rowsOf(wash)))).toEqual([['A', 'D'], ['C', 'H'], ['B']]);
    // Net areas in m2.
    const areas = washes.map(({ walls }) => walls.map(({ area }) => area / 0.09290304));
    expect(areas.flat().map((area) => Math.round(area))).toEqual([800, 500, 400]);
  });

  it('make patches as often as they have passes', () => {
    // Heavy limestone at class 1: patches of 8 ft2 in 0.66667 / (5/8 - 0.118585) = 1.31644 passes.
    const zone = zoneOf([row('A', 'Limestone', 'no', 400, 'heavy')]);
    expect(patchesToWash(siteWashes(zone))).toBe(Math.ceil((400 / 8) * 1.31644));
    expect(patchesToWash(siteWashes(zoneOf([row('A', 'Marble')])))).toBe(0);
  });
});

describe('passes in words', () => {
  it.each([
    [1, '1'],
    [1.3, '1, and 30% of the patches, the dirtier ones, again'],
    [2.001, '2'],
    [2.999, '3'],
  ])('%d', (passes, words) => {
    expect(passesInWords(passes)).toBe(words);
  });
});
