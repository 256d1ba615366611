import { describe, expect, it } from 'vitest';
import { refusal } from '../functions/call';
import { call, expectSame, lines, number, numberIn } from '../properties/call';

// NIST SP 811 (2008), appendix B.8; ASTM C67 (grams in a minute on 30 in2).
const GALLON_L = 3.785411784;
const FOOT2_M2 = 0.09290304;
const POUND_KG = 0.45359237;
const KG_M2_IN_GRAM = 0.001 / (30 * 0.00064516);
const LITRES_M2_IN_GAL_FT2 = GALLON_L / FOOT2_M2;

type Factors = readonly (readonly [string, number | string])[];

interface Worked {
  readonly parts: Readonly<Record<string, number>>;
  readonly total: number;
  readonly area: number;
}

/** The mark-ups: supervision on labor, contingency on the direct price and it, overhead on all, profit on all again. */
function marked(
  direct: Readonly<Record<string, number>> & { readonly labor: number },
  area: number,
  [supervision, contingency, overhead, profit]: readonly [number, number, number, number],
): Worked {
  const supervised = direct.labor * supervision;
  const sum = Object.values(direct).reduce((total, part) => total + part, 0) + supervised;
  const withContingency = sum * (1 + contingency);
  const withOverhead = withContingency * (1 + overhead);
  return {
    parts: {
      ...direct,
      supervision: supervised,
      contingency: sum * contingency,
      overhead: withContingency * overhead,
      profit: withOverhead * profit,
      minimum: 0,
    },
    total: withOverhead * (1 + profit),
    area,
  };
}

// US. 460 ft2 of red brick, 20 ft high, with 60 ft2 of openings; class 2 by moderate residue; 400 ft2 washed.
const usWalls = [
  [
    'Wall',
    'Zone',
    'Material',
    'Area',
    'Height',
    'Openings',
    'Opening perimeter',
    'Fixtures',
    'Mortar',
    'Residue',
  ],
  ['W1', 'Front', 'Red clay brick', 460, 20, 60, 40, 2, 'N', 'moderate'],
];
const usFactors: Factors = [
  // In air that is wet nothing dries, and nothing is misted.
  ['weather.humidity', 100],
  ['runoff.captured', 80],
  ['neutralizer.sodaAsh', 30],
  ['price.labor', 58],
  ['price.cleaner.1', 1000],
  ['price.cleaner.2', 24],
  ['price.cleaner.3', 2000],
  ['price.film', 0.2],
  ['price.tape', 0.12],
  ['price.water', 0.03],
  ['price.equipment', 165],
  ['price.access', 220],
  ['price.bicarbonate', 0.75],
  ['price.sodaAsh', 0.6],
  ['price.disposal', 0.25],
  ['price.mobilization', 75],
  ['price.protection', 20],
  ['price.fixed', 110],
  ['price.supervision', 12],
  ['price.contingency', 5],
  ['price.overhead', 10],
  ['price.profit', 8],
];

function workedUs(): Worked {
  // Red brick, moderate, Type N at class 2: 0.16 x 0.5 is left, less than the least of 0.085, at 18 ft2 an hour of one
  // person: for a team of 2 half of it a ft2. Rinse of 0.6 gal/ft2 by 16 x sqrt(400 / 4000) gal/min.
  const scrub = (60 * 0.085) / 18 / 2; // 0.141 67 min/ft2
  const rinse = 0.6 / (16 * Math.sqrt(0.1)); // 0.118 59 min/ft2
  // 5 min of dwell make patches of 19.2 ft2. Applying takes 0.1 min/ft2, which nothing asks to be slower; half a minute
  // a patch. The helper pre-wets beside it: 2 passes at 25 ft2/min are 0.08 of the 0.218 59 min/ft2 that are free.
  const team = rinse + 0.1 + (0.5 * (rinse + scrub)) / 5 + scrub; // 0.386 29 min/ft2
  // A 50-minute hour: 60 / 50 labor-hours of an hour net. 5% is washed once more.
  const wash = ((2 * 400 * team) / 50) * 1.05;
  // Scraping 400 / 300; film on (60 + 40 x 0.5) / 108 and 2 fixtures of 6 min, off (80 + 2 x 4) / 152; glass 60 / 125.
  const net = 400 / 300 + 80 / 108 + 0.2 + 88 / 152 + 60 / 125;
  // 400 / (20 x 20) is 1 position: 3 min, and 17 more for the share above 8 of 20 ft; 2 persons.
  const moves = ((3 + 17 * 0.6) * 2) / 50;
  const other = wash + net * (60 / 50) + moves + 2; // a sample panel of 2 h: 13.0
  const days = other / (2 * (8 - 0.75)); // 0.90, so that a whole day is hired
  const hours = other + days * 0.75 * 2;
  const mix = (400 / 70) * 1.05; // 6 gal
  const concentrate = mix / 9; // 1 part in 1 + 8
  // Half of 20 g taken up at 1 min, twice that at 4 min; 1 L/m2 runs off each pass.
  const absorbed = ((400 * 10 * KG_M2_IN_GRAM * Math.sqrt(4)) / LITRES_M2_IN_GAL_FT2) * 1.05;
  const water = absorbed + ((400 * 2) / LITRES_M2_IN_GAL_FT2) * 1.05 + (mix - concentrate) + 400 * 0.6 * 1.05;
  // 5% of 1.02 kg/L, reckoned as HCl of 36.461 g/mol; 84.007 g of bicarbonate or half of 105.988 g of soda ash a mole;
  // 80% of it is captured.
  const acid = ((concentrate * GALLON_L * 1.02 * 0.05) / 0.036461) * 0.8;
  const bicarbonate = (acid * 0.7 * 0.084007) / POUND_KG;
  const sodaAsh = (acid * 0.3 * 0.105988) / 2 / POUND_KG;
  const direct = {
    labor: hours * 58,
    cleaner: concentrate * 24,
    masking: 88 * 1.1 * 0.2 + 40 * 1.1 * 0.12,
    water: water * 0.03,
    equipment: 165,
    access: 220,
    neutralizer: bicarbonate * 0.75 + sodaAsh * 0.6,
    disposal: (water + concentrate - absorbed) * 0.8 * 0.25,
    mobilization: 75,
    protection: 20,
    fixed: 110,
  };
  return marked(direct, 400, [0.12, 0.05, 0.1, 0.08]);
}

// SI, with round numbers of its own. 50 m2 of limestone, 5 m high, with 10 m2 of openings; class 1; 40 m2 washed.
const siWalls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter', 'Residue', 'Suction'],
  ['W1', 'Hall', 'Limestone', 50, 5, 10, 20, 'light', 0.25],
];
const siFactors: Factors = [
  ['units', 'SI'],
  ['weather.humidity', 100],
  ['rate.apply', 1],
  ['rinse.perArea', 24],
  ['scrub.full', 2],
  ['rate.glass', 10],
  ['rate.maskOn', 15],
  ['rate.maskOff', 40],
  ['rate.scrape.light', 40],
  ['mask.lap', 150],
  ['access.dropWidth', 6],
  ['access.lift', 6],
  ['access.ground', 2.5],
  ['cleaner.coverage', 2.5],
  ['cleaner.dilution.1', 19],
  ['price.labor', 46],
  ['price.cleaner.1', 6.5],
  ['price.film', 2.1],
  ['price.tape', 0.32],
  ['price.water', 0.008],
  ['price.equipment', 90],
  ['price.access', 85],
  ['price.bicarbonate', 1.6],
  ['price.sodaAsh', 1.2],
  ['price.disposal', 0.05],
  ['price.contingency', 4],
  ['price.overhead', 12],
  ['price.profit', 6],
];

function workedSi(): Worked {
  // Limestone, light, Type N at class 1: 0.4 x 0.2 is left, less than the least of 0.085, at 2 m2 an hour of a person.
  const scrub = (60 * 0.085) / 2 / 2;
  const rinse = 24 / (16 * GALLON_L * Math.sqrt(0.1));
  // Patches of 5 min; applying takes 1 min/m2. The helper pre-wets beside it.
  const team = rinse + 1 + (0.5 * (rinse + scrub)) / 5 + scrub;
  const wash = ((2 * 40 * team) / 50) * 1.05;
  // Scraping 40 / 40; 10 m2 of openings and 20 m x 0.15 m of laps on and off; glass 10 / 10.
  const net = 40 / 40 + 13 / 15 + 13 / 40 + 10 / 10;
  // A drop of 6 m and a lift of 6 m; 5 m high, 2.5 m of it reached from the ground.
  const moves = ((40 / 36) * (3 + 17 * 0.5) * 2) / 50;
  const other = wash + net * (60 / 50) + moves + 2;
  const days = other / (2 * (8 - 0.75));
  const hours = other + days * 0.75 * 2;
  const mix = (40 / 2.5) * 1.05;
  const concentrate = mix / 20; // 1 part in 1 + 19
  // Half of the measured 0.25 kg/m2 leaves mix enough on the face for the dwell, so the least 2 passes hold, 4 min.
  const absorbed = 40 * 0.125 * 2 * 1.05;
  const water = absorbed + 40 * 2 * 1.05 + (mix - concentrate) + 40 * 24 * 1.05;
  const direct = {
    labor: hours * 46,
    cleaner: concentrate * 6.5,
    masking: 13 * 1.1 * 2.1 + 20 * 1.1 * 0.32,
    water: water * 0.008,
    equipment: 90,
    access: 85,
    // A neutral detergent holds no acid.
    neutralizer: 0,
    disposal: (water + concentrate - absorbed) * 0.05,
    mobilization: 0,
    protection: 0,
    fixed: 0,
  };
  return marked(direct, 40, [0, 0.04, 0.12, 0.06]);
}

describe.each([
  ['US', usWalls, usFactors, workedUs()],
  ['SI', siWalls, siFactors, workedSi()],
])('the price of one wall in %s units, by hand', (_, walls, factors, worked) => {
  const zone = String(walls[1]?.[1]);

  it.each(Object.keys(worked.parts))('%s', (part) => {
    const seen = number('BIDPRICE', walls, zone, factors, part);
    const by = worked.parts[part] ?? NaN;
    if (by === 0) expect(seen).toBe(0);
    else expectSame(seen, by, 1e-9, part);
  });

  it('is the sum, rounded to cents', () => {
    const cents = number('BIDPRICE', walls, zone, factors) * 100;
    expect(Math.abs(cents - Math.round(cents))).toBeLessThan(1e-6);
    expect(Math.abs(cents / 100 - worked.total)).toBeLessThanOrEqual(0.005 + 1e-9);
  });

  it('has parts that add up to it before it is rounded', () => {
    const sum = Object.keys(worked.parts).reduce(
      (total, part) => total + number('BIDPRICE', walls, zone, factors, part),
      0,
    );
    expectSame(sum, worked.total, 1e-9, 'sum of the parts');
  });

  it('has a rate a unit of washed area, not rounded', () => {
    expectSame(number('BIDPRICE', walls, zone, factors, 'rate'), worked.total / worked.area, 1e-9, 'rate');
  });

  it('stands in the columns of SCHEDULE and WALLROWS, not rounded', () => {
    const headings: Readonly<Record<string, number | undefined>> = {
      Price: worked.total,
      'Labor price': worked.parts['labor'],
      'Cleaner price': worked.parts['cleaner'],
      'Masking price': worked.parts['masking'],
      'Water price': worked.parts['water'],
      'Equipment price': worked.parts['equipment'],
      'Access price': worked.parts['access'],
      'Neutralizer price': worked.parts['neutralizer'],
      'Disposal price': worked.parts['disposal'],
      'Mobilization price': worked.parts['mobilization'],
      'Protection price': worked.parts['protection'],
      'Fixed sums': worked.parts['fixed'],
      Supervision: worked.parts['supervision'],
      Contingency: worked.parts['contingency'],
      Overhead: worked.parts['overhead'],
      Profit: worked.parts['profit'],
    };
    for (const spilled of ['SCHEDULE', 'WALLROWS']) {
      const [line] = lines(spilled, walls, null, factors);
      for (const [heading, by = NaN] of Object.entries(headings)) {
        expectSame(numberIn(line, heading), by, 1e-9, `${spilled} ${heading}`);
      }
    }
  });
});

// Marble is washed with clear water: 80 ft2 at 200 psi, 0.6 gal/ft2 by 16 x sqrt(200 / 4000) gal/min, and light residue
// is all left to the brush, 0.2 at 18 ft2 an hour; scraped at 600 ft2 an hour; 80 / 400 of a position of 20 ft. Set-up
// takes 0.75 h of each shift of 8, a working hour 50 min.
const MARBLE_HOURS =
  ((80 * (2 * (0.6 / (16 * Math.sqrt(0.05))) + (60 * 0.2) / 18)) / 50 +
    (80 / 600) * (60 / 50) +
    ((80 / 400) * (3 + 17 * 0.6) * 2) / 50) /
  (1 - 0.75 / 8);
const marbleZones = (count: number): unknown[][] => [
  ['Wall', 'Zone', 'Material', 'Area', 'Residue'],
  ...Array.from({ length: count }, (_, index) => [
    `M${String(index)}`,
    `Zone ${String(index)}`,
    'Marble',
    80,
    'light',
  ]),
];

describe('rounding', () => {
  const labor: Factors = [
    ['price.labor', 10.004 / MARBLE_HOURS],
    ['sample.hours', 0],
    ['reclean.share', 0],
  ];

  it('is done once, at the end: three zones of 10.004 are 30.01, not 30.00', () => {
    const walls = marbleZones(3);
    for (const zone of ['Zone 0', 'Zone 1', 'Zone 2']) {
      expect(number('BIDPRICE', walls, zone, labor)).toBe(10);
      expectSame(number('BIDPRICE', walls, zone, labor, 'labor'), 10.004, 1e-9, 'labor');
    }
    expect(number('BIDPRICE', walls, null, labor)).toBe(30.01);
  });

  it('shows in the trace, with the price that is not rounded above it', () => {
    const traced = lines('TRACE', 'bid price', marbleZones(1), null, labor);
    const last = traced.at(-1);
    expect(last?.['Value']).toBe(10);
    expect(last?.['Expression']).toBe('round(price_z1, 2)');
    const above = traced.find((line) => line['Symbol'] === 'price_z1');
    expectSame(numberIn(above, 'Value'), 10.004, 1e-9, 'price');
  });
});

describe('the price of several zones', () => {
  const walls = [
    ['Wall', 'Zone', 'Material', 'Area', 'Residue', 'Masked'],
    ['A', 'North', 'Red clay brick', 400, 'heavy', ''],
    ['B', 'Court', 'Ground-face block', 250, 'moderate', ''],
    ['C', 'Court', 'Coated glass', 60, '', 'yes'],
    ['D', 'Glass hall', 'Coated glass', 90, '', 'yes'],
  ];
  const zones = ['North', 'Court', 'Glass hall'];

  it.each([...Object.keys(workedUs().parts), 'the whole'])('%s: zones add up to the job', (part) => {
    const asked = part === 'the whole' ? [] : [part];
    const sum = zones.reduce(
      (total, zone) => total + number('BIDPRICE', walls, zone, usFactors, ...asked),
      0,
    );
    const job = number('BIDPRICE', walls, null, usFactors, ...asked);
    // Each whole price is rounded to half a cent at most.
    if (part === 'the whole') expect(Math.abs(job - sum)).toBeLessThanOrEqual(0.02 + 1e-9);
    else expectSame(job, sum, 1e-9, part);
  });

  it('takes the concentrate of each zone at the price of its class', () => {
    // North: class 3, 400 / 70 gal and 5% more are 6, 1 part in 6, at 2000. Court: class 1, 3.75 gal, 1 part in 65.
    expectSame(number('BIDPRICE', walls, 'North', usFactors, 'cleaner'), 2000, 1e-9, 'North');
    expectSame(number('BIDPRICE', walls, 'Court', usFactors, 'cleaner'), (3.75 / 65) * 1000, 1e-9, 'Court');
  });

  it('prices the masking of a zone where nothing is washed, and has no rate there', () => {
    expect(number('BIDPRICE', walls, 'Glass hall', usFactors, 'masking')).toBeGreaterThan(0);
    expect(number('BIDPRICE', walls, 'Glass hall', usFactors, 'cleaner')).toBe(0);
    expect(refusal(() => call('BIDPRICE', walls, 'Glass hall', usFactors, 'rate'))).toEqual({
      type: 'nothing',
      message: 'Nothing is washed here, so there is no price per area.',
    });
  });

  it('has the rate of the job over its whole washed area', () => {
    const parts = Object.keys(workedUs().parts);
    const sum = parts.reduce((total, part) => total + number('BIDPRICE', walls, null, usFactors, part), 0);
    expectSame(number('BIDPRICE', walls, null, usFactors, 'rate'), sum / (400 + 250), 1e-9, 'rate');
  });
});

describe('without the price of labor', () => {
  it.each([
    ['left out', [['price.water', 0.05]]],
    ['no factors at all', null],
  ])('%s: no price, in words that name the factor', (_, factors) => {
    for (const part of [null, 'water', 'rate']) {
      const { type, message } = refusal(() => call('BIDPRICE', usWalls, null, factors, part));
      expect(type).toBe('input');
      expect(message).toContain('price.labor');
    }
  });

  it('0 is a price: labor then costs nothing, and the rest is priced', () => {
    // 1 a gallon: the price is the water.
    const factors = [
      ['price.labor', 0],
      ['price.water', 1],
    ];
    expect(number('BIDPRICE', usWalls, null, factors)).toBeCloseTo(
      number('WATER', usWalls, null, factors),
      2,
    );
  });

  it('SCHEDULE and WALLROWS have no column of money', () => {
    const money = [
      'Price',
      'Labor price',
      'Cleaner price',
      'Masking price',
      'Water price',
      'Equipment price',
      'Access price',
      'Neutralizer price',
      'Disposal price',
      'Mobilization price',
      'Protection price',
      'Fixed sums',
      'Supervision',
      'Contingency',
      'Overhead',
      'Profit',
      'Added to reach the minimum',
    ];
    for (const [spilled, more] of [
      ['SCHEDULE', ['Price per area']],
      ['WALLROWS', []],
    ] as const) {
      const priced = Object.keys(lines(spilled, usWalls, null, usFactors)[0] ?? {});
      const bare = Object.keys(lines(spilled, usWalls, null, [['price.water', 0.05]])[0] ?? {});
      const all = [...money, ...more];
      expect(bare).toEqual(priced.filter((heading) => !all.includes(heading)));
      expect(priced.filter((heading) => all.includes(heading))).toEqual(all);
    }
  });

  it('refuses a part that it does not know, and offers the nearest', () => {
    const { type, message } = refusal(() => call('BIDPRICE', usWalls, null, usFactors, 'labour'));
    expect(type).toBe('input');
    expect(message).toContain('"labour"');
    expect(message).toMatch(/Accepted: .*\blabor\b/);
  });
});
