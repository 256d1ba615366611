import { CEILING, MAX, MIN, POWER, ROUND, SQRT, SUM, SUMIF, SUMPRODUCT } from '@formulajs/formulajs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, expectSame, lines, number, numberIn, numbersIn, type Line } from '../properties/call';
import { RELATIVE, scheduleOf, wallRowsOf } from '../properties/compare';
import { openingsOf, ownFactors, rangeOf, RUNS, walls, type MadeWall } from '../properties/walls';
import { jobs, mixedUs } from '../trace/jobs';

/** A column of a table. */
function column(all: Iterable<Line>, heading: string): (number | string)[] {
  return [...all].map((line) => {
    const cell = line[heading];
    return typeof cell === 'number' || typeof cell === 'string' ? cell : '';
  });
}

const NOT_ADDED = [
  'Ceiling',
  'Class',
  'Most pre-wet passes',
  'Most passes of cleaner',
  'Smallest patch',
  'Longest wait',
  'Calendar days',
  'Area per labor-hour',
  'Price per area',
];
const addedIn = (line: Line): string[] =>
  [...numbersIn(line).keys()].filter((heading) => !NOT_ADDED.includes(heading));

const made = fc.tuple(
  walls,
  ownFactors.map((own) => [['price.labor', 44], ...own.filter(([id]) => id !== 'price.labor')]),
);

describe('sums as a spreadsheet makes them', () => {
  it.each(Object.entries(jobs))(
    'SUMIF of WALLROWS by zone is SCHEDULE: %s',
    (_, { walls: range, factors }) => {
      const rows = wallRowsOf(range, factors);
      const zones = column(rows.values(), 'Zone');
      for (const [zone, line] of scheduleOf(range, factors)) {
        for (const heading of addedIn(line)) {
          const sum = SUMIF(zones, zone, column(rows.values(), heading)) as number;
          expectSame(sum, numberIn(line, heading), RELATIVE, `${zone}: ${heading}`);
        }
      }
    },
  );

  it('SUM of SCHEDULE is the function of the whole job', () => {
    const { walls: range, factors } = mixedUs;
    const zones = scheduleOf(range, factors);
    for (const [name, heading, part] of [
      ['WATER', 'Water', undefined],
      ['WATER', 'Pre-wet water', 'prewet'],
      ['MASKING', 'Masking', undefined],
      ['TAPE', 'Tape', undefined],
      ['CREWHOURS', 'Crew-hours', undefined],
      ['LABORHOURS', 'Labor-hours', undefined],
      ['LABORHOURS', 'Set-up hours', 'setup'],
      ['CLEANER', 'Concentrate', undefined],
      ['RUNOFF', 'Runoff', undefined],
      ['NEUTRALIZER', 'Soda ash', 'soda ash'],
    ] as const) {
      const sum = SUM(column(zones.values(), heading));
      expectSame(number(name, range, null, factors, part), sum, RELATIVE, name);
    }
  });
});

const ONLY_PROTECTED = [
  'Coated glass',
  'Plain glass',
  'Painted or anodized aluminum',
  'Galvanized steel',
  'Copper',
  'Timber',
];
const isMasonry = ({ material }: MadeWall): boolean => !ONLY_PROTECTED.includes(material);
/** Masked masonry is washed after the rest; what is only protected is rinsed where it is bare. */
const isRinsed = (row: MadeWall): number => (isMasonry(row) || row.masked !== 'yes' ? 1 : 0);
const netOf = (row: MadeWall): number => row.area - openingsOf(row);

/** Openings without a perimeter have that of their square. */
const edgeOf = (row: MadeWall): number =>
  row.openingPerimeter > 0 ? row.openingPerimeter : 4 * Number(SQRT(openingsOf(row)));

describe('what a user would type beside the walls', () => {
  it('washed area is SUMPRODUCT of what is masonry and area less openings, masked or not', () => {
    fc.assert(
      fc.property(made, ([rows, own]) => {
        const range = rangeOf(rows);
        const sum = SUMPRODUCT(
          rows.map((row) => (isMasonry(row) ? 1 : 0)),
          rows.map(netOf),
        );
        const areas = column(scheduleOf(range, own).values(), 'Washed area');
        expectSame(SUM(areas), Number(sum), RELATIVE, 'washed area');
      }),
      { numRuns: RUNS },
    );
  });

  it('rinse water of one pass is SUMPRODUCT of the areas rinsed and the water that an area needs', () => {
    fc.assert(
      fc.property(
        walls,
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 100, max: 3000 }),
        (rows, hundredths, psi) => {
          const sum = SUMPRODUCT(
            rows.map((row) => isRinsed(row) * netOf(row)),
            rows.map(() => hundredths / 100),
          );
          // Less pressure is slower, and takes no more water.
          const factors = [
            ['cleaner.class', 0],
            ['rinse.perArea', hundredths / 100],
            ['nozzle.pressure', psi],
          ];
          expectSame(number('WATER', rangeOf(rows), null, factors, 'rinse'), Number(sum), RELATIVE, 'rinse');
        },
      ),
      { numRuns: RUNS },
    );
  });

  it('tape is SUMPRODUCT of the perimeters, a tenth added, where nothing is masked whole', () => {
    const open = walls.map((rows) => rows.map((row) => ({ ...row, masked: 'no' })));
    fc.assert(
      fc.property(open, (rows) => {
        const sum = SUMPRODUCT(
          rows.map(edgeOf),
          rows.map(() => 1.1),
        );
        expectSame(number('TAPE', rangeOf(rows), null, [['tape.waste', 10]]), Number(sum), RELATIVE, 'tape');
      }),
      { numRuns: RUNS },
    );
  });

  it('masking is SUM of openings, laps of half a foot and 4 ft2 for each fixture', () => {
    const open = walls.map((rows) => rows.map((row) => ({ ...row, masked: 'no' })));
    fc.assert(
      fc.property(open, (rows) => {
        const sum = SUM([
          SUM(rows.map(openingsOf)),
          SUMPRODUCT(
            rows.map(edgeOf),
            rows.map(() => 0.5),
          ),
          SUMPRODUCT(
            rows.map(({ fixtures }) => fixtures),
            rows.map(() => 4),
          ),
        ]);
        const factors = [
          ['mask.lap', 6],
          ['fixture.film', 4],
        ];
        expectSame(number('MASKING', rangeOf(rows), null, factors), sum, RELATIVE, 'masking');
      }),
      { numRuns: RUNS },
    );
  });
});

describe('rounding as a spreadsheet does it', () => {
  it('BIDPRICE is ROUND to cents of SUM, done once', () => {
    fc.assert(
      fc.property(made, ([rows, own]) => {
        const range = rangeOf(rows);
        const zones = scheduleOf(range, own);
        const prices = column(zones.values(), 'Price');
        const sum = SUM(prices);
        const bid = call('BIDPRICE', range, null, own);
        if (prices.includes('')) expect(bid).toHaveProperty('error');
        else expect(Math.abs((bid as number) - Number(ROUND(sum, 2)))).toBeLessThanOrEqual(1e-9 * sum);
        for (const [zone, line] of zones) {
          const price = line['Price'];
          if (typeof price !== 'number') continue;
          expect(number('BIDPRICE', range, zone, own)).toBeCloseTo(Number(ROUND(price, 2)), 9);
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('calendar days are CEILING of days, the week before a sample is inspected, and days lost to weather', () => {
    fc.assert(
      fc.property(walls, fc.nat(9), (rows, lost) => {
        for (const line of scheduleOf(rangeOf(rows), [['weather.days', lost]]).values()) {
          const waits = numberIn(line, 'Washed area') > 0 ? 7 + lost : 0;
          const days = Number(CEILING(Number(ROUND(numberIn(line, 'Days'), 6)), 1));
          expect(numberIn(line, 'Calendar days')).toBe(days + waits);
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('whole days of work are as many calendar days and a week', () => {
    // Marble takes clear water. Light residue, Type N: scrubbed in 0.2/18 h; rinsed at 160 psi with
    // 16 sqrt(160/4000) = 3.2 gal/min in 0.6/3.2 min by one of two: together 0.04/60 * 1000 / 60 + 0.375/60 person-hours,
    // a twentieth of it once more; scraped in 1/600 h. An hour holds 50 min. No moves, no sample.
    const washing = 0.2 / 18 + (2 * 0.6) / 3.2 / 60;
    const each = (washing * 1.05 + 1 / 600) * (60 / 50);
    const factors = [
      ['nozzle.pressure', 160],
      ['access.move', 0],
      ['access.groundMove', 0],
      ['sample.hours', 0],
    ];
    for (let days = 1; days <= 30; days++) {
      // A crew of 2 works 2 * (8 - 0.75) = 14.5 h a day beside set-up.
      const range = [
        ['Wall', 'Material', 'Area', 'Residue'],
        ['A', 'Marble', (days * 14.5) / each, 'light'],
      ];
      const [line] = scheduleOf(range, factors).values();
      expect(numberIn(line, 'Days')).toBeCloseTo(days, 9);
      expect(numberIn(line, 'Calendar days')).toBe(days + 7);
    }
  });
});

/** Masonry that takes a detergent, bare, in one zone, with a measured suction. */
const cleaned = fc.array(
  fc.record({
    material: fc.constantFrom('Red clay brick', 'Limestone', 'Sand-faced brick', 'CMU', 'Glazed brick'),
    area: fc.integer({ min: 1, max: 5000 }),
    residue: fc.constantFrom('light', 'moderate', 'heavy'),
    mortar: fc.constantFrom('M', 'S', 'N', 'O'),
    suction: fc.integer({ min: 1, max: 60 }),
  }),
  { minLength: 1, maxLength: 8 },
);
type Cleaned = typeof cleaned extends fc.Arbitrary<(infer Row)[]> ? Row : never;
const cleanedRange = (rows: readonly Cleaned[]): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Residue', 'Mortar', 'Suction'],
  ...rows.map((row, place) => [place + 1, row.material, row.area, row.residue, row.mortar, row.suction]),
];
const LIMITS: Readonly<Record<string, number>> = {
  'Red clay brick': 800,
  Limestone: 400,
  'Sand-faced brick': 200,
  CMU: 600,
  'Glazed brick': 200,
};
const LOADS = { light: 0.2, moderate: 0.5, heavy: 1 };
const STRENGTHS = { M: 2500, S: 1800, N: 750, O: 350 };

describe('the hardest wall of a zone', () => {
  it('has the MAX of the pre-wet passes that each wall takes', () => {
    // A gallon on a square foot is 40.74583 L/m2; 1 g on 30 in2 is 0.0516668 kg/m2; half of it in the field.
    const spare = 40.74583 / 70 - 0.1;
    const passesOf = ({ suction }: Cleaned): number => {
      const S = suction * 0.0516668 * 0.5;
      const left = Number(MAX(0, 3 - Number(POWER(spare / S, 2))));
      const needed = Number(POWER(left / (2 * (spare / S)), 2));
      return Number(MAX(2, Number(CEILING(Number(MIN(needed, Number(POWER(14 / S, 2)))) / 1.5, 1))));
    };
    fc.assert(
      fc.property(cleaned, (rows) => {
        const factors = [
          ['cleaner.class', 1],
          ['prewet.passContact', 1.5],
          ['prewet.mostPasses', 50],
        ];
        const [line] = lines('SCHEDULE', cleanedRange(rows), null, factors);
        expect(numberIn(line, 'Most pre-wet passes')).toBe(MAX(...rows.map(passesOf)));
      }),
      { numRuns: RUNS },
    );
  });

  it('has the MAX of the passes of cleaner and the MIN of the patches', () => {
    // min/ft2 of a team of two; the dwell is 3 to 5 min, patches are 8 to 60 ft2.
    const timesOf = ({ material, residue, mortar }: Cleaned) => {
      const flow = 16 * Number(SQRT(Number(MIN(400, LIMITS[material] ?? NaN)) / 4000));
      const slower = Number(MAX(1 / 10, 0.6 / flow));
      const left = 0.4 * LOADS[residue] * Number(SQRT(STRENGTHS[mortar] / 750));
      const scrub = ((Number(MAX(0.085, left)) / 18) * 60) / 2;
      const passes = Number(MAX(1, scrub / (5 / 8 - slower)));
      return { passes, patch: Number(MIN(60, 5 / (slower + scrub / passes))) };
    };
    fc.assert(
      fc.property(cleaned, (rows) => {
        const [line] = lines('SCHEDULE', cleanedRange(rows), null, [['cleaner.class', 1]]);
        const times = rows.map(timesOf);
        const passes = Number(MAX(...times.map((each) => each.passes)));
        const patch = Number(MIN(...times.map((each) => each.patch)));
        expectSame(numberIn(line, 'Most passes of cleaner'), passes, RELATIVE, 'passes');
        expectSame(numberIn(line, 'Smallest patch'), patch, RELATIVE, 'patch');
      }),
      { numRuns: RUNS },
    );
  });
});

describe('the class to use', () => {
  it('is the one up to the ceiling whose hours of washing are the MIN of all, the gentlest of two', () => {
    const parts = ['prewet', 'apply', 'scrub', 'rinse', 'tend', 'change', 'below'];
    fc.assert(
      fc.property(walls, (rows) => {
        const bare = rows.map((row) => ({ ...row, zone: 'North', receives: '', masked: 'no' }));
        const range = rangeOf(bare);
        const line = scheduleOf(range).get('North');
        if (SUM(bare.map(netOf)) === 0) {
          expect(line?.['Class']).toHaveProperty('error');
          return;
        }
        const hours = Array.from({ length: numberIn(line, 'Ceiling') + 1 }, (_, of) =>
          SUM(parts.map((part) => number('LABORHOURS', range, null, [['cleaner.class', of]], part))),
        );
        const least = Number(MIN(...hours));
        expect(line?.['Class']).toBe(hours.findIndex((each) => each <= least * (1 + 1e-9)));
      }),
      { numRuns: RUNS },
    );
  });
});
