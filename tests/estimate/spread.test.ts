import { describe, expect, it } from 'vitest';
import { chance, triangular } from '../../src/estimate/chance';
import { spreadOf, spreadSteps } from '../../src/estimate/spread';
import { readFactors } from '../../src/rules/read-factors';
import { readRanges } from '../../src/rules/read-ranges';
import { readWalls } from '../../src/walls/read-walls';
import { zonesOf } from '../../src/walls/zones';

const walls = [
  ['Wall', 'Material', 'Area', 'Residue'],
  ['A', 'Red clay brick', 1000, 'moderate'],
];
const factors = readFactors([['price.labour', 50]]);
const zones = zonesOf(readWalls(walls, factors));
const DRAWS = 10_000;

const spread = (ranges: unknown[][], seed = 1) =>
  spreadOf(zones, factors, readRanges(ranges, 'US'), { draws: DRAWS, seed, rankBy: 'price' });

describe('ranges of crew-hours and price', () => {
  it('come to the closed form where labour alone has a range', () => {
    // Nothing but labour is priced, so price = hours * p with p triangular over 40, 50, 80.
    const { price, laborHours } = spread([['price.labour', 40, 50, 80]]);
    const hours = laborHours.threePoint.likely;
    expect(price.threePoint).toEqual({ low: hours * 40, likely: hours * 50, high: hours * 80 });
    // Mean (a + b + c) / 3, variance (a2 + b2 + c2 - ab - ac - bc) / 18; four standard errors of the mean allowed.
    const mean = (40 + 50 + 80) / 3;
    const variance = (40 ** 2 + 50 ** 2 + 80 ** 2 - 40 * 50 - 40 * 80 - 50 * 80) / 18;
    const error = 4 * Math.sqrt(variance / DRAWS);
    expect(Math.abs(price.mean / hours - mean)).toBeLessThan(error);
    // Tenth and ninth tenth of the distribution: share = (x - 40)^2 / (40 * 10) and 1 - (80 - x)^2 / (40 * 30).
    expect(Math.abs(price.drawn.low / hours - (40 + Math.sqrt(0.1 * 40 * 10)))).toBeLessThan(0.5);
    expect(Math.abs(price.drawn.high / hours - (80 - Math.sqrt(0.1 * 40 * 30)))).toBeLessThan(0.5);
    // Hours do not depend on a price.
    expect(laborHours.drawn).toEqual({ low: hours, likely: hours, high: hours });
  });

  it('go from the ends that give less to the ends that give more, whichever way a factor works', () => {
    // Faster scraping gives fewer hours: 1000 / rate, by the 50-minute hour and grossed up by set-up 8 / 7.25; the rest
    // of the wall stays.
    const { laborHours } = spread([['rate.scrape.moderate', 100, 200, 400]]);
    const each = (60 / 50) * (8 / 7.25);
    const others = laborHours.threePoint.likely - (1000 / 200) * each;
    expect(laborHours.threePoint.low).toBeCloseTo(others + (1000 / 400) * each, 9);
    expect(laborHours.threePoint.high).toBeCloseTo(others + (1000 / 100) * each, 9);
  });

  it('rank the factors by what they move', () => {
    // Scraping is 6.6 labor-hours of some 26, so half to double of it moves less than a price of labour of half to double.
    const { swings } = spread([
      ['rate.scrape.moderate', 190, 200, 210],
      ['price.labour', 25, 50, 100],
    ]);
    expect(swings.map(({ id }) => id)).toEqual(['price.labor', 'rate.scrape.moderate']);
  });

  it('rank by the width between the ends, not by how high they lie', () => {
    // Some 26 labor-hours: labor moves the price by 26 * 31, nearly all of it down; scraping by less, nearly all up.
    const { swings } = spread([
      ['rate.scrape.moderate', 150, 200, 210],
      ['price.labour', 20, 50, 51],
    ]);
    expect(swings.map(({ id }) => id)).toEqual(['price.labor', 'rate.scrape.moderate']);
  });

  it('draw whole numbers where a factor is one', () => {
    // 1.5 persons round to 2: an eighth of the triangle 1, 2, 3 lies below it, and an eighth above 2.5.
    const high = zonesOf(
      readWalls(
        [
          ['Wall', 'Material', 'Area', 'Height'],
          ['A', 'Red clay brick', 1000, 10],
        ],
        factors,
      ),
    );
    const ranges = readRanges([['team.size', 1, 2, 3]], 'US');
    const { laborHours } = spreadOf(high, factors, ranges, { draws: 2000, seed: 1, rankBy: 'laborHours' });
    expect(laborHours.threePoint.high).toBeGreaterThan(laborHours.threePoint.likely);
    expect(laborHours.drawn).toEqual(laborHours.threePoint);
  });

  it('take a share between two draws in proportion', () => {
    // Seed 1 starts at 2: the draws are 16807 * 2 and 16807^2 * 2 by 2^31 - 1, below and above a share of a quarter.
    const [first, second] = [16807 * 2, 16807 ** 2 * 2].map((state) => state / (2 ** 31 - 1)) as [
      number,
      number,
    ];
    const least = 40 + Math.sqrt(first * 40 * 10);
    const most = 80 - Math.sqrt((1 - second) * 40 * 30);
    const ranges = readRanges([['price.labour', 40, 50, 80]], 'US');
    const of = (draws: number) => {
      const { price, laborHours } = spreadOf(zones, factors, ranges, { draws, seed: 1, rankBy: 'price' });
      const { low, likely, high } = price.drawn;
      return [low, likely, high].map((value) => value / laborHours.threePoint.likely);
    };
    const [low, likely, high] = of(2);
    expect(low).toBeCloseTo(least + 0.1 * (most - least), 9);
    expect(likely).toBeCloseTo((least + most) / 2, 9);
    expect(high).toBeCloseTo(least + 0.9 * (most - least), 9);
    for (const value of of(1)) expect(value).toBeCloseTo(least, 9);
  });

  it('are the same for the same seed, and others for another', () => {
    const ranges = [['rinse.perArea', 0.4, 0.6, 0.8]];
    expect(spread(ranges, 7)).toEqual(spread(ranges, 7));
    expect(spread(ranges, 8).laborHours.mean).not.toBe(spread(ranges, 7).laborHours.mean);
  });

  it('come to the same step by step: one for each factor, one for each draw', () => {
    const ranges = readRanges(
      [
        ['rinse.perArea', 0.4, 0.6, 0.8],
        ['price.labour', 40, 50, 80],
      ],
      'US',
    );
    const steps = spreadSteps(zones, factors, ranges, { draws: 20, seed: 3, rankBy: 'price' });
    const done: number[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) done.push(step.value.done);
    expect(done).toEqual([0, 0, ...Array.from({ length: 20 }, (_, index) => index + 1)]);
    expect(step.value).toEqual(spreadOf(zones, factors, ranges, { draws: 20, seed: 3, rankBy: 'price' }));
  });

  it('have no number where a draw has none, and rank the factor that takes it away first', () => {
    // The label's maximum dwell is 5 minutes: a minimum dwell of 9 leaves no contact window. By the rule clear water would do.
    const acid = readFactors([
      ['price.labour', 50],
      ['cleaner.class', 2],
    ]);
    const ranges = readRanges(
      [
        ['price.labour', 5, 50, 5000],
        ['dwell.least', 1, 3, 9],
      ],
      'US',
    );
    const { price, laborHours, swings } = spreadOf(zones, acid, ranges, {
      draws: DRAWS,
      seed: 1,
      rankBy: 'price',
    });
    for (const { drawn, mean } of [price, laborHours]) {
      expect([drawn.low, drawn.likely, drawn.high, mean]).toEqual([NaN, NaN, NaN, NaN]);
    }
    expect(swings.map(({ id, high }) => [id, Number.isNaN(high)])).toEqual([
      ['dwell.least', true],
      ['price.labor', false],
    ]);
  });
});

describe('chance', () => {
  it('is the generator of Park and Miller: from 1 its 10,000th state is 1043618065', () => {
    // Park and Miller, Communications of the ACM 31 (1988), section "A minimal standard": from memory, and reckoned
    // again here with whole numbers of any size.
    let state = 1n;
    for (let step = 0; step < 10_000; step++) state = (state * 16807n) % 2147483647n;
    expect(state).toBe(1043618065n);
    const next = chance(0);
    let last = NaN;
    for (let step = 0; step < 10_000; step++) last = next();
    expect(last).toBe(1043618065 / 2147483647);
  });

  it('triangular gives back what its distribution function takes', () => {
    const [low, likely, high] = [2, 5, 11];
    for (const share of [0, 0.01, 0.2, 1 / 3, 0.5, 0.9, 1]) {
      const x = triangular(share, low, likely, high);
      const below =
        x <= likely
          ? (x - low) ** 2 / ((high - low) * (likely - low))
          : 1 - (high - x) ** 2 / ((high - low) * (high - likely));
      expect(below).toBeCloseTo(share, 12);
    }
    expect(triangular(0.4, 3, 3, 3)).toBe(3);
  });
});

describe('reading ranges', () => {
  it.each([
    [[['rate.aply', 1, 2, 3]], 'rate.apply'],
    [[['rate.rinse', 1, 2, 3]], 'in its place rinse.perArea'],
    [[['rate.apply', 3, 2, 4]], 'rising order'],
    [[['rate.apply', 0, 2, 4]], 'above 0'],
    [[['rate.apply', 1, 2]], 'four columns'],
    [[['', '', '', '']], 'name no factor'],
    [
      [
        ['rate.apply', 1, 2, 3],
        ['Rate.Apply', 1, 2, 3],
      ],
      'a second time',
    ],
  ])('%j is refused', (ranges, said) => {
    expect(() => readRanges(ranges, 'US')).toThrow(said);
  });

  it('a header row is left alone', () => {
    expect(
      readRanges(
        [
          ['Factor', 'Low', 'Likely', 'High'],
          ['team.size', 1, 2, 3],
        ],
        'US',
      ),
    ).toEqual([{ id: 'team.size', low: 1, likely: 2, high: 3 }]);
  });
});
