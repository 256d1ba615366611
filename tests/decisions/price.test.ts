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

/** The mark-ups on a direct price: contingency on it, overhead on both, profit on all three. */
function marked(
  direct: Readonly<Record<string, number>>,
  area: number,
  [contingency, overhead, profit]: readonly [number, number, number],
): Worked {
  const sum = Object.values(direct).reduce((total, part) => total + part, 0);
  const withContingency = sum * (1 + contingency);
  const withOverhead = withContingency * (1 + overhead);
  return {
    parts: {
      ...direct,
      contingency: sum * contingency,
      overhead: withContingency * overhead,
      profit: withOverhead * profit,
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
  ['price.contingency', 5],
  ['price.overhead', 10],
  ['price.profit', 8],
];

function workedUs(): Worked {
  // Scraping 400 / 200; film on (60 + 40 x 0.5) / 150 and 2 fixtures of 6 min, off (60 + 20 + 2 x 4) / 400. Patches of
  // 40 ft2: 10, each 6 min of pre-wet (3 passes), 4 min of applying, 5 min of rinsing for 2 persons. 460 / 20 = 23 ft
  // are 2 positions of 20 min.
  const other = 2 + (80 / 150 + 0.2) + 88 / 400 + (10 * (6 + 4 + 5) * 2) / 60 + (2 * 20 * 2) / 60; // 9.2867
  const days = other / (2 * (8 - 0.75)); // 0.64046
  const hours = other + days * 0.75 * 2; // 10.2474
  const concentrate = 4 / 9; // 400 / 100 gal of mix, 1 part in 1 + 8
  const absorbed = (400 * 20 * KG_M2_IN_GRAM * Math.sqrt(6)) / LITRES_M2_IN_GAL_FT2;
  const water = absorbed + (400 * 3) / LITRES_M2_IN_GAL_FT2 + (4 - 4 / 9) + 400 * ((10 * Math.sqrt(0.1)) / 8);
  // 5 % of 1.02 kg/L, reckoned as HCl of 36.461 g/mol; 84.007 g of bicarbonate or half of 105.988 g of soda ash a mole.
  const acid = (concentrate * GALLON_L * 1.02 * 0.05) / 0.036461;
  const bicarbonate = (acid * 0.7 * 0.084007) / POUND_KG;
  const sodaAsh = (acid * 0.3 * 0.105988) / 2 / POUND_KG;
  const direct = {
    labour: hours * 58,
    cleaner: concentrate * 24,
    masking: 88 * 1.15 * 0.2 + 40 * 1.1 * 0.12,
    water: water * 0.03,
    equipment: days * 165,
    access: days * 220,
    neutralizer: bicarbonate * 0.75 + sodaAsh * 0.6,
    disposal: (water + concentrate - absorbed) * 0.8 * 0.25,
  };
  return marked(direct, 400, [0.05, 0.1, 0.08]);
}

// SI, with round numbers of its own. 50 m2 of limestone, 5 m high, with 10 m2 of openings; class 1; 40 m2 washed.
const siWalls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter', 'Residue', 'Suction'],
  ['W1', 'Hall', 'Limestone', 50, 5, 10, 20, 'light', 0.25],
];
const siFactors: Factors = [
  ['units', 'SI'],
  ['rate.apply', 1],
  ['rate.rinse', 0.8],
  ['rate.maskOn', 15],
  ['rate.maskOff', 40],
  ['rate.scrape.light', 40],
  ['mask.lap', 150],
  ['access.dropWidth', 6],
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
  // The measured 0.25 kg/m2 leaves less than 1 kg/m2 for the dwell, so the least 2 passes hold, 4 min. Patches of
  // 5 min x 0.8 m2/min = 4 m2: 10, each 4 min of pre-wet, 4 of applying, 5 of rinsing. 50 / 5 = 10 m are 2 positions.
  const other = 40 / 40 + 13 / 15 + 13 / 40 + (10 * (4 + 4 + 5) * 2) / 60 + (2 * 20 * 2) / 60;
  const days = other / (2 * (8 - 0.75));
  const hours = other + days * 0.75 * 2;
  const concentrate = 16 / 20; // 40 / 2.5 L of mix, 1 part in 1 + 19
  const absorbed = 40 * 0.25 * 2;
  const water = absorbed + 40 * 2 + 15.2 + 40 * ((10 * GALLON_L * Math.sqrt(0.1)) / 0.8);
  const direct = {
    labour: hours * 46,
    cleaner: concentrate * 6.5,
    // 10 m2 of openings and 20 m x 0.15 m of laps.
    masking: 13 * 1.15 * 2.1 + 20 * 1.1 * 0.32,
    water: water * 0.008,
    equipment: days * 90,
    access: days * 85,
    // A neutral detergent holds no acid.
    neutralizer: 0,
    disposal: (water + concentrate - absorbed) * 0.05,
  };
  return marked(direct, 40, [0.04, 0.12, 0.06]);
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
      'Labour price': worked.parts['labour'],
      'Cleaner price': worked.parts['cleaner'],
      'Masking price': worked.parts['masking'],
      'Water price': worked.parts['water'],
      'Equipment price': worked.parts['equipment'],
      'Access price': worked.parts['access'],
      'Neutralizer price': worked.parts['neutralizer'],
      'Disposal price': worked.parts['disposal'],
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

// Marble is washed with clear water, 80 ft2: rinsed at 8 ft2/min by 2, scraped at 400 and scrubbed at 60 ft2/h (light
// residue needs class 1). Set-up takes 0.75 h of each shift of 8.
const MARBLE_HOURS = ((80 / 8) * (2 / 60) + 80 / 400 + 80 / 60) / (1 - 0.75 / 8);
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
  const labour: Factors = [['price.labor', 10.004 / MARBLE_HOURS]];

  it('is done once, at the end: three zones of 10.004 are 30.01, not 30.00', () => {
    const walls = marbleZones(3);
    for (const zone of ['Zone 0', 'Zone 1', 'Zone 2']) {
      expect(number('BIDPRICE', walls, zone, labour)).toBe(10);
      expectSame(number('BIDPRICE', walls, zone, labour, 'labour'), 10.004, 1e-9, 'labour');
    }
    expect(number('BIDPRICE', walls, null, labour)).toBe(30.01);
  });

  it('shows in the trace, with the price that is not rounded above it', () => {
    const traced = lines('TRACE', 'bid price', marbleZones(1), null, labour);
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
    // North: class 3, 4 gal, 1 part in 6, at 2000. Court: class 1, 2.5 gal, 1 part in 21, at 1000.
    expectSame(number('BIDPRICE', walls, 'North', usFactors, 'cleaner'), (4 / 6) * 2000, 1e-9, 'North');
    expectSame(number('BIDPRICE', walls, 'Court', usFactors, 'cleaner'), (2.5 / 21) * 1000, 1e-9, 'Court');
  });

  it('prices the masking of a zone where nothing is washed, and has no rate there', () => {
    expect(number('BIDPRICE', walls, 'Glass hall', usFactors, 'masking')).toBeGreaterThan(0);
    expect(number('BIDPRICE', walls, 'Glass hall', usFactors, 'cleaner')).toBe(0);
    expect(refusal(() => call('BIDPRICE', walls, 'Glass hall', usFactors, 'rate'))).toEqual({
      type: 'nothing',
      message: 'Nothing is washed here, so there is no price an area.',
    });
  });

  it('has the rate of the job over its whole washed area', () => {
    const parts = Object.keys(workedUs().parts);
    const sum = parts.reduce((total, part) => total + number('BIDPRICE', walls, null, usFactors, part), 0);
    expectSame(number('BIDPRICE', walls, null, usFactors, 'rate'), sum / (400 + 250), 1e-9, 'rate');
  });
});

describe('without the price of labour', () => {
  it.each([
    ['left out', [['price.water', 0.05]]],
    ['0', [['price.labor', 0]]],
    ['no factors at all', null],
  ])('%s: no price, in words that name the factor', (_, factors) => {
    for (const part of [null, 'water', 'rate']) {
      const { type, message } = refusal(() => call('BIDPRICE', usWalls, null, factors, part));
      expect(type).toBe('input');
      expect(message).toContain('price.labor');
    }
  });

  it('SCHEDULE and WALLROWS have no column of money', () => {
    const money = [
      'Price',
      'Labour price',
      'Cleaner price',
      'Masking price',
      'Water price',
      'Equipment price',
      'Access price',
      'Neutralizer price',
      'Disposal price',
      'Contingency',
      'Overhead',
      'Profit',
    ];
    for (const spilled of ['SCHEDULE', 'WALLROWS']) {
      const priced = Object.keys(lines(spilled, usWalls, null, usFactors)[0] ?? {});
      const bare = Object.keys(lines(spilled, usWalls, null, [['price.water', 0.05]])[0] ?? {});
      expect(bare).toEqual(priced.filter((heading) => !money.includes(heading)));
      expect(priced.filter((heading) => money.includes(heading))).toEqual(money);
    }
  });

  it('refuses a part that it does not know, and offers the nearest', () => {
    const { type, message } = refusal(() => call('BIDPRICE', usWalls, null, usFactors, 'labor'));
    expect(type).toBe('input');
    expect(message).toContain('"labor"');
    expect(message).toContain('labour');
  });
});
