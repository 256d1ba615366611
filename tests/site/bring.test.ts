import { describe, expect, it } from 'vitest';
import { toBase } from '../../src/quantity/conversions';
import { inContainers, toBring, tradeAmount } from '../../src/site/bring';
import { estimated } from './job';

const wall = (name: string, material: string, area: number, masked = 'no') => [
  ...[name, 'South', 1, material, area, 10, 0, 0, 0, 'N', 'light', 30, masked, ''],
];

describe('a quantity to bring', () => {
  it.each([
    [1236, '1,300 gal'],
    [137, '140 gal'],
    [37.2, '38 gal'],
    [4.44, '5 gal'],
    [0.3, '1 gal'],
    [120, '120 gal'],
    [0, '0 gal'],
  ])('of %d gal is rounded up to two digits and whole units', (gallons, text) => {
    expect(tradeAmount(toBase(gallons, 'gal'), 'volume', 'US')).toBe(text);
  });

  it('is in the units of the user', () => {
    expect(tradeAmount(81.2, 'area', 'SI')).toBe('82 m²');
  });
});

describe('concentrate', () => {
  const US = estimated([wall('S-1', 'Red clay brick', 1000)], [['units', 'US']]).factors;
  const metric = estimated(
    [wall('S-1', 'Red clay brick', 1000)],
    [
      ['units', 'SI'],
      ['cleaner.container', 20],
    ],
  ).factors;

  it.each([
    // 11.3 / 5 = 2.26 pails; 10 and 15 fill theirs; 0.05 gal are 6.4 of 128 fl oz.
    [11.3, '3 containers of 5 gal (11.3 gal needed)'],
    [10, '2 containers of 5 gal (10 gal needed)'],
    [15.2, '4 containers of 5 gal (15.2 gal needed)'],
    [0.05, '1 container of 5 gal (0.05 gal = 6.4 fl oz needed)'],
  ])('of %d gal is brought in whole containers, with what is needed', (gallons, words) => {
    expect(inContainers(toBase(gallons, 'gal'), US)).toBe(words);
  });

  it('is in the units and the container of the user', () => {
    expect(inContainers(41, metric)).toBe('3 containers of 20 L (41 L needed)');
    expect(inContainers(0.25, metric)).toBe('1 container of 20 L (0.25 L = 250 mL needed)');
  });
});

describe('what to bring', () => {
  const FACTORS = [
    ['cleaner.class', 2],
    ['cleaner.coverage', 100],
    ['cleaner.dilution.2', 4],
    ['cleaner.applications', 1],
    ['dwell.most', 10],
    ['reclean.share', 0],
    ['mask.lap', 0],
    ['film.waste', 0],
    ['tape.waste', 0],
  ];
  const { zones, factors } = estimated(
    [
      wall('S-1', 'Red clay brick', 1000),
      wall('S-2', 'Red clay brick', 500),
      wall('S-3', 'Coated glass', 200, 'yes'),
    ],
    FACTORS,
  );
  const [zone] = zones;
  if (zone === undefined) throw new Error('no zone');
  const of = (...walls: string[]) =>
    new Map(
      toBring(zone, zones, new Set(zone.zone.rows.filter((row) => walls.includes(row.wall))), factors).map(
        ({ label, value }) => [label, value],
      ),
    );
  const MIX = 'Mixed cleaner: class 2 (buffered mild acid)';
  const STRONG = 'Concentrate in it: class 2 (buffered mild acid)';

  it('is that of the walls of today alone', () => {
    // One pass at 100 ft2 a gallon, 1 part to 4 of water.
    expect([of('S-1').get(MIX), of('S-1').get(STRONG)]).toEqual([
      '10 gal',
      '1 container of 5 gal (2 gal needed)',
    ]);
    expect([of('S-1', 'S-2').get(MIX), of('S-1', 'S-2').get(STRONG)]).toEqual([
      '15 gal',
      '1 container of 5 gal (3 gal needed)',
    ]);
    // 200 ft2 of glass, 20 ft by 10 ft: no laps, so its own area of film, and 60 ft of edge.
    expect([of('S-3').get('Masking film'), of('S-3').get('Masking tape')]).toEqual(['200 ft²', '60 ft']);
    expect(of('S-1').has('Masking film')).toBe(false);
    expect(of('S-3').has(MIX)).toBe(false);
  });

  it('is nothing where the zone has no numbers', () => {
    const bad = estimated(
      [wall('S-1', 'Red clay brick', 1000)],
      [
        ['cleaner.class', 2],
        ['rate.apply', 1],
      ],
    );
    const [without] = bad.zones;
    if (without === undefined) throw new Error('no zone');
    expect(without.finding).toBeDefined();
    expect(toBring(without, bad.zones, new Set(without.zone.rows), bad.factors)).toEqual([]);
  });
});
