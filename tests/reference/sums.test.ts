import { CEILING, MAX, MIN, ROUND, SQRT, SUM, SUMIF, SUMPRODUCT } from '@formulajs/formulajs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, expectSame, number, numberIn, numbersIn, text, type Line } from '../properties/call';
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

const NOT_ADDED = ['Ceiling', 'Class', 'Pre-wet', 'Passes', 'Patch', 'Wait', 'Patches', 'Calendar days'];
const addedIn = (line: Line): string[] =>
  [...numbersIn(line).keys()].filter((heading) => !NOT_ADDED.includes(heading));

const made = fc.tuple(
  walls,
  ownFactors.map((own) => [['price.labour', 44], ...own.filter(([id]) => id !== 'price.labour')]),
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
      ['CREWHOURS', 'Set-up hours', 'setup'],
      ['CLEANER', 'Concentrate', undefined],
      ['RUNOFF', 'Runoff', undefined],
      ['NEUTRALIZER', 'Soda ash', 'soda ash'],
    ] as const) {
      const sum = SUM(column(zones.values(), heading));
      expectSame(number(name, range, null, factors, part), sum, RELATIVE, name);
    }
  });
});

const isWashed = ({ masked }: MadeWall): number => (masked === 'yes' ? 0 : 1);

describe('what a user would type beside the walls', () => {
  it('washed area is SUMPRODUCT of what is not masked and area less openings', () => {
    fc.assert(
      fc.property(made, ([rows, own]) => {
        const range = rangeOf(rows);
        const sum = SUMPRODUCT(
          rows.map(isWashed),
          rows.map((row) => row.area - openingsOf(row)),
        );
        const areas = column(scheduleOf(range, own).values(), 'Washed area');
        expectSame(SUM(areas), Number(sum), RELATIVE, 'washed area');
      }),
      { numRuns: RUNS },
    );
  });

  it('rinse water is SUMPRODUCT of the washed areas and the flow by the rinse rate', () => {
    fc.assert(
      fc.property(
        walls,
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 100, max: 3000 }),
        (rows, nozzle, psi) => {
          // Nozzle numbering: number * sqrt(pressure / 4000) gal/min. 8 ft2 are rinsed in a minute.
          const each = (nozzle * Number(SQRT(psi / 4000))) / 8;
          const sum = SUMPRODUCT(
            rows.map((row) => isWashed(row) * (row.area - openingsOf(row))),
            rows.map(() => each),
          );
          const factors = [
            ['nozzle.number', nozzle],
            ['nozzle.pressure', psi],
            ['rate.rinse', 8],
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
          rows.map(({ openingPerimeter }) => openingPerimeter),
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
            rows.map(({ openingPerimeter }) => openingPerimeter),
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

  it('calendar days are CEILING of days, passes and patches CEILING of what they cover', () => {
    fc.assert(
      fc.property(walls, fc.integer({ min: 5, max: 60 }), (rows, apply) => {
        const factors = [
          ['rate.apply', apply],
          ['prewet.passContact', 1.5],
          ['prewet.leastPasses', 2],
        ];
        for (const line of scheduleOf(rangeOf(rows), factors).values()) {
          const of = (heading: string): number => numberIn(line, heading);
          expect(of('Calendar days')).toBe(CEILING(Number(ROUND(of('Days'), 6)), 1));
          const cleaned = typeof line['Class'] === 'number' && line['Class'] > 0;
          const passes = Number(MAX(2, Number(CEILING(of('Pre-wet') / 1.5, 1))));
          expect(of('Passes'), text(line['Zone'])).toBe(cleaned ? passes : 0);
          // The conversion of units may leave a hair above a whole count, which is no patch more.
          const filled = cleaned ? Number(ROUND(of('Washed area') / of('Patch'), 6)) : 0;
          const patches = Number(CEILING(filled, 1));
          expect(of('Patches'), text(line['Zone'])).toBe(patches);
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('whole days of work are as many calendar days', () => {
    // Marble, clear water, light residue of class 1: a square foot is scraped in 1/400 h, rinsed in 2/(8 * 60) h and
    // scrubbed in 1/60 h, together 7/300 h. A crew of 2 works 2 * (8 - 0.75) = 14.5 h a day beside set-up.
    for (let days = 1; days <= 30; days++) {
      const area = (days * 14.5 * 300) / 7;
      const range = [
        ['Wall', 'Material', 'Area', 'Residue'],
        ['A', 'Marble', area, 'light'],
      ];
      const [line] = scheduleOf(range).values();
      expect(numberIn(line, 'Days')).toBeCloseTo(days, 9);
      expect(numberIn(line, 'Calendar days')).toBe(days);
    }
  });

  it('the class is MIN of the ceiling and the greatest need', () => {
    // Residue and what strong mortar adds; a residue that is not stated is foretold from brushing.
    const needOf = ({ residue, brushed, mortar }: MadeWall): number => {
      const seen = residue === '' ? (brushed === 'yes' ? 'light' : 'moderate') : residue;
      const base = { light: 1, moderate: 2, heavy: 3 }[seen] ?? NaN;
      return Number(MIN(3, base + (mortar === 'S' || mortar === 'M' ? 1 : 0)));
    };
    fc.assert(
      fc.property(walls, (rows) => {
        const named = rows.map((row) => ({ ...row, zone: 'North', receives: '' }));
        const washed = named.filter((row) => isWashed(row) === 1);
        const line = scheduleOf(rangeOf(named)).get('North');
        if (washed.length === 0) expect(line?.['Class']).toHaveProperty('error');
        else {
          const most = Number(MAX(...washed.map(needOf)));
          expect(line?.['Class']).toBe(MIN(numberIn(line, 'Ceiling'), most));
        }
      }),
      { numRuns: RUNS },
    );
  });
});
