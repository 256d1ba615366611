import { describe, expect, it } from 'vitest';
import type { Quantities } from '../../src/estimate/quantities';
import { estimateOf, type Lines, type MadeRow } from '../core/made';

const FT2 = 0.09290304;
const FT = 0.3048;
const factors: Lines = [
  ['mask.lap', 6],
  ['fixture.film', 4],
  ['tape.waste', 10],
];
const field: MadeRow = { area: 900, height: 15, residue: 'moderate', level: 1 };
// 60 ft long and 2 ft high: an edge of 124 ft.
const plinth: MadeRow = { area: 120, height: 2, residue: 'light', material: 'Limestone', level: 2 };

describe('a limestone plinth below red brick', () => {
  it('governs while it is washed with the brick', () => {
    const [zone] = estimateOf([field, plinth], factors).zones;
    expect(zone?.governing?.governors.map(({ name }) => name)).toEqual(['Limestone']);
    expect(zone?.classToUse).toBe(1);
    expect(zone?.totals.maskingArea).toBe(0);
  });

  it('masked, leaves the brick to its own class and is washed afterwards at the class that suits it', () => {
    const [zone] = estimateOf([field, { ...plinth, mask: 'yes' }], factors).zones;
    expect(zone?.classToUse).toBe(2);
    expect(zone?.laterClasses).toEqual([1]);
    expect(zone?.totals.washedArea).toBeCloseTo(1020 * FT2, 9);
    expect(zone?.totals.maskingArea).toBeCloseTo((120 + 124 * 0.5) * FT2, 9);
    expect(zone?.totals.tape).toBeCloseTo(124 * 1.1 * FT, 9);
  });

  it('covered and left unwashed is no washed area', () => {
    const [zone] = estimateOf([field, { ...plinth, mask: 'only' }], factors).zones;
    expect(zone?.laterClasses).toEqual([]);
    expect(zone?.totals.washedArea).toBeCloseTo(900 * FT2, 9);
  });

  it('has its openings and fixtures covered for its own wash, the area of the openings once', () => {
    const opened: MadeRow = { ...plinth, openings: 30, openingPerimeter: 40, fixtures: 5 };
    const covered = (mask: 'yes' | 'only') => estimateOf([field, { ...opened, mask }], factors).totals;
    expect(covered('yes').maskingArea).toBeCloseTo((120 + (124 + 40) * 0.5 + 5 * 4) * FT2, 9);
    expect(covered('yes').tape).toBeCloseTo((124 + 40) * 1.1 * FT, 9);
    // What stays unwashed hides them.
    expect(covered('only').maskingArea).toBeCloseTo((120 + 124 * 0.5) * FT2, 9);
  });

  it('without a height has the edge of a square', () => {
    const square = estimateOf([field, { ...plinth, area: 121, height: 0, mask: 'yes' }], factors).totals;
    expect(square.maskingArea).toBeCloseTo((121 + 44 * 0.5) * FT2, 9);
  });
});

describe('what belongs to a zone', () => {
  const shares = (rows: readonly MadeRow[]): number[] => {
    const ofRows: Quantities[] = [];
    const { totals } = estimateOf(rows, [...factors, ['setup.zone', 3]], (_, of) => ofRows.push({ ...of }));
    return ofRows.map((of) => of.zonesetupHours / totals.zonesetupHours);
  };

  it('is shared out by washed area, whatever is masked', () => {
    const [first, second] = shares([
      { area: 100, fixtures: 200 },
      { area: 400, openings: 100 },
    ]);
    expect(first).toBeCloseTo(0.25, 12);
    expect(second).toBeCloseTo(0.75, 12);
  });

  it('and by masked area where nothing is washed', () => {
    const job = estimateOf(
      [
        { area: 100, height: 10, mask: 'only' },
        { area: 300, height: 10, mask: 'only' },
      ],
      factors,
      (row, of) => {
        // Edges of 2 x (10 + 10) and 2 x (30 + 10) ft: 120 and 340 ft2.
        expect(of.setupHours / job0).toBeCloseTo((row.row === 2 ? 120 : 340) / 460, 9);
      },
    );
    expect(job.totals.washedArea).toBe(0);
  });
  const job0 = estimateOf(
    [
      { area: 100, height: 10, mask: 'only' },
      { area: 300, height: 10, mask: 'only' },
    ],
    factors,
  ).totals.setupHours;
});

describe('days', () => {
  it.each([
    ['a team of two', 2, 1, 8, 0.75],
    ['two teams of three with long days', 3, 2, 10, 1.25],
    ['one person without set-up', 1, 1, 7, 0],
  ])('fill whole shifts with %s: days x persons x shift = labor-hours', (_, size, teams, shift, perDay) => {
    const own: Lines = [
      ['team.size', size],
      ['teams', teams],
      ['shift', shift],
      ['setup.perDay', perDay],
    ];
    const job = estimateOf([field, { ...plinth, zone: 'South' }], own);
    for (const { totals } of job.zones) {
      expect((totals.days * size * teams * shift) / totals.laborHours).toBeCloseTo(1, 12);
      expect(totals.setupHours).toBeCloseTo(totals.days * perDay * size * teams, 9);
    }
    // Equipment is hired for whole days, by each team.
    expect(job.totals.hireDays).toBeCloseTo(Math.ceil(job.jobDays) * teams, 9);
  });
});

describe('clear water', () => {
  const marble: MadeRow = { area: 800, material: 'Marble', residue: 'light' };

  it('has no dwell: no pre-wet, no cleaner, no patches, one rinse', () => {
    const [zone] = estimateOf(
      [marble],
      [
        ['rinse.perArea', 0.6],
        ['reclean.share', 0],
      ],
    ).zones;
    expect(zone?.classToUse).toBe(0);
    for (const id of [
      'preWetWater',
      'mixWater',
      'mix',
      'prewetHours',
      'applyHours',
      'changeHours',
      'neutralizer',
    ] as const)
      expect(zone?.totals[id], id).toBe(0);
    expect(zone?.totals.water).toBeCloseTo(800 * 0.6 * 3.785411784, 6);
    expect(zone?.washed[0]?.how.cycle).toBeUndefined();
  });

  it('takes the brush and the rinse one after the other', () => {
    const own: Lines = [
      ['team.size', 2],
      ['working.share', 1],
      ['scrub.full', 18],
      ['load.light', 0.2],
      ['rinse.perArea', 0.6],
      ['nozzle.number', 16],
      ['nozzle.pressure', 200],
    ];
    const { totals } = estimateOf([marble], own);
    expect(totals.scrubHours).toBeCloseTo((0.2 * 800) / 18, 9);
    // 16 x sqrt(200 / 4000) gal/min.
    expect(totals.rinseHours).toBeCloseTo((800 * 0.6) / (16 * Math.sqrt(0.05)) / 60, 9);
    // The second person stands by.
    expect(totals.tendHours).toBeCloseTo(totals.rinseHours, 9);
  });
});

describe('a wall that cannot be washed so', () => {
  const brick: MadeRow = { area: 100, residue: 'heavy', wall: 'South' };
  const finding = (own: Lines): string => estimateOf([brick], [['cleaner.class', 1], ...own]).finding ?? '';

  it('is named with the factors that stand against it', () => {
    expect(finding([['rate.apply', 1]])).toMatch(
      /^Wall South has no contact window: .*patch\.least.*dwell\.most.* Accepted: /u,
    );
    expect(
      finding([
        ['dwell.most', 3],
        ['scrub.full', 3],
      ]),
    ).toMatch(/^Wall South would take .* passes of cleaner, more than cleaner\.mostApplications, 6/u);
    expect(finding([])).toBe('');
  });

  it('takes its class out of the choice, where another will do', () => {
    expect(estimateOf([brick], [['rate.apply', 1]]).zones[0]?.classToUse).toBe(0);
  });

  it('dwells of no least, and of one length, are allowed', () => {
    expect(finding([['dwell.least', 0]])).toBe('');
    expect(
      finding([
        ['dwell.least', 5],
        ['dwell.most', 5],
      ]),
    ).toBe('');
  });
});
