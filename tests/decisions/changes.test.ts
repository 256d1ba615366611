import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorsIn, expectSame, lines, number, numberIn, type Line } from '../properties/call';

type Row = Readonly<Record<string, string | number>>;

const HEADINGS = [
  'Wall',
  'Zone',
  'Level',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Opening perimeter',
  'Fixtures',
  'Mortar',
  'Residue',
  'Masked',
  'Receives',
];
const MEASURED = ['Water', 'Masking', 'Concentrate', 'Crew-hours', 'Price'];
const PRICE_PARTS = [
  'labour',
  'cleaner',
  'masking',
  'water',
  'equipment',
  'access',
  'neutralizer',
  'disposal',
  'contingency',
  'overhead',
  'profit',
];
const PRICES: readonly (readonly [string, number])[] = [
  ['price.labor', 50],
  ['price.cleaner.1', 10],
  ['price.cleaner.2', 20],
  ['price.cleaner.3', 32],
  ['price.film', 0.3],
  ['price.tape', 0.15],
  ['price.water', 0.05],
  ['price.equipment', 120],
  ['price.access', 90],
  ['price.bicarbonate', 0.9],
  ['price.disposal', 0.2],
  ['price.contingency', 5],
  ['price.overhead', 10],
  ['price.profit', 8],
];
const HOT = [
  ['weather.air', 100],
  ['weather.surface', 130],
  ['weather.humidity', 10],
  ['weather.wind', 25],
];

function rangeOf(rows: readonly Row[]): unknown[][] {
  return [HEADINGS, ...rows.map((row) => HEADINGS.map((heading) => row[heading] ?? ''))];
}

/** The measured quantities of a state, each from the function that gives it; no walls have none. */
function totals(rows: readonly Row[], factors: readonly unknown[] = PRICES): Record<string, number> {
  if (rows.length === 0) return Object.fromEntries(MEASURED.map((heading) => [heading, 0]));
  const walls = rangeOf(rows);
  return {
    Water: number('WATER', walls, null, factors),
    Masking: number('MASKING', walls, null, factors),
    Concentrate: number('CLEANER', walls, null, factors),
    'Crew-hours': number('CREWHOURS', walls, null, factors),
    // The parts are not rounded.
    Price: PRICE_PARTS.reduce((sum, part) => sum + number('BIDPRICE', walls, null, factors, part), 0),
  };
}

function changes(
  before: readonly Row[],
  after: readonly Row[],
  factors: readonly unknown[] = PRICES,
): Line[] {
  return lines('CHANGES', rangeOf(before), rangeOf(after), factors);
}

function expectDifference(
  line: Line | undefined,
  from: Readonly<Record<string, number>>,
  to: Readonly<Record<string, number>>,
): void {
  for (const heading of MEASURED) {
    const [was = NaN, is = NaN] = [from[heading], to[heading]];
    const far = Math.abs(numberIn(line, heading) - (is - was));
    expect(far, heading).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(was), Math.abs(is)));
  }
}

/**
 * Makes the changes one at a time by editing the table: rows of the former state that are gone, then rows of the
 * latter that differ, then rows of the latter that are new.
 */
function steps(before: readonly Row[], after: readonly Row[]): { wall: string; type: string; rows: Row[] }[] {
  const made: { wall: string; type: string; rows: Row[] }[] = [];
  let rows = [...before];
  const has = (list: readonly Row[], wall: unknown) => list.find((row) => row['Wall'] === wall);
  for (const gone of before.filter((row) => !has(after, row['Wall']))) {
    rows = rows.filter((row) => row !== gone);
    made.push({ wall: String(gone['Wall']), type: 'removed', rows });
  }
  for (const latter of after) {
    const former = has(before, latter['Wall']);
    if (former === undefined || JSON.stringify(former) === JSON.stringify(latter)) continue;
    rows = rows.map((row) => (row === former ? latter : row));
    made.push({ wall: String(latter['Wall']), type: 'changed', rows });
  }
  for (const fresh of after.filter((row) => !has(before, row['Wall']))) {
    rows = [...rows, fresh];
    made.push({ wall: String(fresh['Wall']), type: 'added', rows });
  }
  return made;
}

function expectSteps(before: readonly Row[], after: readonly Row[]): void {
  const spilled = changes(before, after);
  const made = steps(before, after);
  expect(spilled.map((line) => [line['Wall'], line['Change']])).toEqual([
    ...made.map(({ wall, type }) => [wall, type]),
    ['Whole difference', ''],
  ]);
  let last = totals(before);
  made.forEach(({ rows }, index) => {
    const now = totals(rows);
    expectDifference(spilled[index], last, now);
    last = now;
  });
  expectDifference(spilled.at(-1), totals(before), totals(after));
  for (const heading of MEASURED) {
    const parts = spilled.slice(0, -1).reduce((sum, line) => sum + numberIn(line, heading), 0);
    const scale = Math.max(totals(before)[heading] ?? NaN, totals(after)[heading] ?? NaN);
    const whole = numberIn(spilled.at(-1), heading);
    expect(Math.abs(parts - whole), heading).toBeLessThanOrEqual(1e-9 * scale);
  }
}

const north: readonly Row[] = [
  { Wall: 'N1', Zone: 'North', Material: 'Red clay brick', Area: 600, Mortar: 'N', Residue: 'moderate' },
  { Wall: 'N2', Zone: 'North', Material: 'Red clay brick', Area: 400, Mortar: 'N', Residue: 'moderate' },
];

describe('one band swapped in the middle of the job', () => {
  // Class 2 for the whole zone, by moderate residue; brick in coloured mortar allows class 1 and takes up as much.
  const swapped = north.map((row) =>
    row['Wall'] === 'N2' ? { ...row, Material: 'Clay brick in coloured mortar' } : row,
  );
  const [line, whole] = changes(north, swapped, [
    ['price.labor', 50],
    ['price.cleaner.1', 10],
    ['price.cleaner.2', 20],
    ['price.water', 0.05],
    ['price.equipment', 120],
    ['price.overhead', 10],
  ]);
  // 1000 ft2 at 100 ft2/gal are 10 gal of mix, of which 1 part in 1 + 8 was concentrate and 1 in 1 + 20 is.
  const concentrate = 10 / 21 - 10 / 9;
  // All 1000 ft2 are a class short now: 1000 / 60 h of scrubbing. Set-up takes 0.75 of 8 h.
  const scrub = 1000 / 60;
  const hours = scrub / (1 - 0.75 / 8);
  const days = scrub / (2 * (8 - 0.75));

  it('says what changed and which class it made of which', () => {
    expect([line?.['Wall'], line?.['Change'], line?.['What'], line?.['Class']]).toEqual([
      'N2',
      'changed',
      'Material: Red clay brick -> Clay brick in coloured mortar',
      'North 2 -> 1',
    ]);
    expect(whole?.['Wall']).toBe('Whole difference');
  });

  it('has the differences that are worked out by hand, in its line and in the whole', () => {
    const price = (50 * hours + (10 * 10) / 21 - (20 * 10) / 9 + 0.05 * -concentrate + 120 * days) * 1.1;
    for (const seen of [line, whole]) {
      expectSame(numberIn(seen, 'Concentrate'), concentrate, 1e-9, 'concentrate');
      // What the mix lacks in concentrate is water.
      expectSame(numberIn(seen, 'Water'), -concentrate, 1e-9, 'water');
      expectSame(numberIn(seen, 'Crew-hours'), hours, 1e-9, 'crew-hours');
      expectSame(numberIn(seen, 'Price'), price, 1e-9, 'price');
      expect(numberIn(seen, 'Masking')).toBe(0);
    }
  });
});

const job: readonly Row[] = [
  ...north,
  {
    Wall: 'N3',
    Zone: 'North',
    Level: 2,
    Material: 'Cast stone',
    Area: 60,
    Height: 2,
    Mortar: 'N',
    Residue: 'light',
  },
  {
    Wall: 'C1',
    Zone: 'Court',
    Material: 'Ground-face block',
    Area: 150,
    Height: 8,
    Openings: 20,
    'Opening perimeter': 26,
    Fixtures: 2,
    Residue: 'heavy',
  },
  { Wall: 'C2', Zone: 'Court', Material: 'Split-face block', Area: 310, Height: 9, Residue: 'moderate' },
];

describe('changes made one after another', () => {
  it('removed, changed and added rows come in that order, each with the difference of its turn', () => {
    const after: readonly Row[] = [
      { Wall: 'X1', Zone: 'Court', Material: 'Marble', Area: 30, Height: 3, Residue: 'light' },
      { Wall: 'C2', Zone: 'North', Material: 'Split-face block', Area: 310, Height: 9, Residue: 'moderate' },
      { Wall: 'X2', Zone: 'Tower', Material: 'Stucco', Area: 90, Height: 9, Residue: 'moderate' },
      ...job
        .filter((row) => row['Wall'] === 'N1' || row['Wall'] === 'N2' || row['Wall'] === 'C1')
        .map((row) => (row['Wall'] === 'N2' ? { ...row, Material: 'Limestone', Area: 380 } : row)),
    ];
    expectSteps(job, after);
    const spilled = changes(job, after);
    expect(spilled.map((line) => line['What'])).toEqual([
      'removed from North',
      'Zone: Court -> North',
      'Material: Red clay brick -> Limestone; Area: 400 ft² -> 380 ft²',
      'Marble added to Court',
      'Stucco added to Tower',
      '',
    ]);
    // North: cast stone goes, class 2 by need; split-face block joins, 2; limestone, 1. Court: ground-face block, 1;
    // marble, 0. A zone that comes or goes had or has no class.
    expect(spilled.map((line) => line['Class'])).toEqual([
      'North 2 -> 2',
      'North 2 -> 2, Court 1 -> 1',
      'North 2 -> 1',
      'Court 1 -> 0',
      'Tower none -> 1',
      '',
    ]);
  });

  it('any two states', () => {
    const row = fc.record({
      Zone: fc.constantFrom('North', 'Court', ''),
      Level: fc.nat(2),
      Material: fc.constantFrom('Red clay brick', 'Light clay brick', 'Limestone', 'Marble', 'Coated glass'),
      Area: fc.integer({ min: 20, max: 900 }),
      Height: fc.integer({ min: 0, max: 20 }),
      Openings: fc.integer({ min: 0, max: 20 }),
      'Opening perimeter': fc.integer({ min: 0, max: 40 }),
      Fixtures: fc.nat(3),
      Mortar: fc.constantFrom('', 'S', 'N'),
      Residue: fc.constantFrom('', 'light', 'heavy'),
      Masked: fc.constantFrom('', '', 'yes', 'never'),
    });
    const state = fc
      .uniqueArray(fc.tuple(fc.nat(6), fc.nat(2)), {
        selector: ([label]) => label,
        minLength: 1,
        maxLength: 6,
      })
      .chain((labels) =>
        fc
          .tuple(...labels.map(() => row))
          .map((rows) => rows.map((cells, index) => ({ Wall: `W${String(labels[index]?.[0])}`, ...cells }))),
      );
    fc.assert(
      fc.property(state, state, fc.nat(63), (before, after, kept) => {
        // Some walls are the same in both states, as most are in a real job.
        const mixed = after.map((latter, index) => {
          const former = before.find(({ Wall }) => Wall === latter.Wall);
          return former !== undefined && Math.floor(kept / 2 ** index) % 2 === 1 ? former : latter;
        });
        expectSteps(before, mixed);
      }),
      { seed: 22, numRuns: 60 },
    );
  });

  it('a rounded price differs by a cent at most from what the unrounded parts add up to', () => {
    const after = job.slice(1);
    const bid = (rows: readonly Row[]) => number('BIDPRICE', rangeOf(rows), null, PRICES);
    const whole = numberIn(changes(job, after).at(-1), 'Price');
    expect(Math.abs(whole - (bid(after) - bid(job)))).toBeLessThanOrEqual(0.01 + 1e-9);
  });

  it('the whole job new, and the whole job gone', () => {
    expectSteps([], job);
    expectSteps(job, []);
  });
});

describe('what a change is called', () => {
  it.each([
    [{ Masked: '' }, { Masked: 'yes' }, 'Masked: no -> yes'],
    [{ Masked: 'no' }, { Masked: 'never' }, 'Masked: no -> never'],
    [{ Residue: '' }, { Residue: 'heavy' }, 'Residue: not stated -> heavy'],
    [{ Mortar: 'N' }, { Mortar: 'S' }, 'Mortar: N -> S'],
    [{ Height: 12.5 }, { Height: 14 }, 'Height: 12.5 ft -> 14 ft'],
    [{ Fixtures: 1 }, { Fixtures: 3 }, 'Fixtures: 1 -> 3'],
  ])('%j to %j', (was, is, what) => {
    const [base] = north;
    expect(changes([{ ...base, ...was }], [{ ...base, ...is }])[0]?.['What']).toBe(what);
  });

  it('has the units of the job', () => {
    const [base] = north;
    const [line] = changes([{ ...base }], [{ ...base, Area: 55.5 }], [['units', 'SI']]);
    expect(line?.['What']).toBe('Area: 600 m² -> 55.5 m²');
  });
});

describe('nothing changed', () => {
  const zeros = { Water: 0, Masking: 0, Concentrate: 0, 'Crew-hours': 0, Price: 0 };

  it('spills the line of the whole alone, with zeros', () => {
    expect(changes(job, job)).toEqual([
      { Wall: 'Whole difference', Change: '', What: '', Class: '', ...zeros },
    ]);
  });

  it('neither does another order, another spelling of a zone, or a name in place of a code', () => {
    const alike = [...job].reverse().map((row) => ({
      ...row,
      Zone: String(row['Zone']).toUpperCase(),
      Material: row['Material'] === 'Cast stone' ? 'cast-stone' : (row['Material'] ?? ''),
    }));
    expect(changes(job, alike).map((line) => line['Wall'])).toEqual(['Whole difference']);
    const fed = (zone: string, from: string): Row[] => [
      { Wall: 'U1', Zone: zone, Material: 'Red clay brick', Area: 10 },
      { Wall: 'L1', Zone: 'Court', Material: 'Limestone', Area: 10, Receives: from },
    ];
    expect(changes(fed('Upper wall', 'Upper wall'), fed('upper wall', 'UPPER  WALL')).length).toBe(1);
  });

  it('has no price without the price of labour', () => {
    expect(Object.keys(changes(job, job, [])[0] ?? {})).not.toContain('Price');
  });
});

describe('a zone without a contact window', () => {
  const marble: Row = { Wall: 'M1', Zone: 'Hall', Material: 'Marble', Area: 80, Residue: 'light' };
  const before = [...job, marble];
  const factors = [...PRICES, ...HOT];

  it('has error cells with the reason, and keeps the numbers that it has', () => {
    const after = before.map((row) => (row['Wall'] === 'N1' ? { ...row, Area: 700 } : row));
    const [line, whole] = changes(before, after, factors);
    for (const seen of [line, whole]) {
      const errors = errorsIn(seen ?? {});
      expect([...errors.keys()]).toEqual(['Crew-hours', 'Price']);
      expect(errors.get('Price')).toContain('contact window');
      // 100 ft2 more at 100 ft2/gal: 1 gal of mix, 1 part in 9.
      expectSame(numberIn(seen, 'Concentrate'), 1 / 9, 1e-9, 'concentrate');
    }
  });

  it('takes no number away from a change elsewhere', () => {
    const after = before.map((row) => (row['Wall'] === 'M1' ? { ...row, Area: 160 } : row));
    const [line, whole] = changes(before, after, factors);
    // Clear water only: 80 ft2 more at 8 ft2/min with two persons, 80 / 400 h of scraping and 80 / 60 h of scrubbing
    // (light residue needs class 1), and set-up with it.
    const hours = ((80 / 8) * (2 / 60) + 80 / 400 + 80 / 60) / (1 - 0.75 / 8);
    expectSame(numberIn(line, 'Crew-hours'), hours, 1e-9, 'crew-hours');
    expect(errorsIn(line ?? {}).size).toBe(0);
    expect([...errorsIn(whole ?? {}).keys()]).toEqual(['Crew-hours', 'Price']);
  });
});

describe('rinse that runs from zone to zone', () => {
  const upper: Row = {
    Wall: 'U1',
    Zone: 'Upper',
    Material: 'Red clay brick',
    Area: 500,
    Residue: 'moderate',
  };
  const lower = (material: string, receives = 'Upper'): Row => ({
    Wall: 'L1',
    Zone: 'Lower',
    Material: material,
    Area: 200,
    Residue: 'light',
    Receives: receives,
  });

  it('names the upper zone whose class a row below changes, and counts what that does', () => {
    const [line, whole] = changes([upper, lower('Red clay brick')], [upper, lower('Limestone')]);
    expect(line?.['Class']).toBe('Upper 2 -> 1, Lower 1 -> 1');
    expectDifference(line, totals([upper, lower('Red clay brick')]), totals([upper, lower('Limestone')]));
    // The upper wall's 500 ft2 alone: 5 gal of mix, 1 part in 21 in place of 1 in 9.
    expectSame(numberIn(whole, 'Concentrate'), 5 / 21 - 5 / 9, 1e-9, 'concentrate');
  });

  it.each([
    ['comes', [upper], [upper, lower('Limestone')]],
    ['goes', [upper, lower('Limestone')], [upper]],
    ['is found to receive', [upper, lower('Limestone', '')], [upper, lower('Limestone')]],
    ['receives no longer', [upper, lower('Limestone')], [upper, lower('Limestone', '')]],
  ])('a row below that %s changes the class above', (_, before, after) => {
    expectSteps(before, after);
    expect(changes(before, after)[0]?.['Class']).toMatch(/Upper (2 -> 1|1 -> 2)/);
  });

  it.each([
    ['an upper zone goes', [upper, lower('Limestone')], [lower('Limestone', '')]],
    ['an upper zone comes', [lower('Limestone', '')], [upper, lower('Limestone')]],
    [
      'rinse turns round',
      [upper, lower('Limestone')],
      [{ ...upper, Receives: 'Lower' }, lower('Limestone', '')],
    ],
  ])('%s: no state between the two is refused, and the parts add up', (_, before, after) => {
    const spilled = changes(before, after);
    expectDifference(spilled.at(-1), totals(before), totals(after));
    for (const heading of MEASURED) {
      const parts = spilled.slice(0, -1).reduce((sum, line) => sum + numberIn(line, heading), 0);
      expect(parts).toBeCloseTo(numberIn(spilled.at(-1), heading), 8);
    }
  });

  it('refuses a state whose rinse leads nowhere or in a circle, before or after', () => {
    const bad = [
      [lower('Limestone', 'Uper'), upper],
      [{ ...upper, Receives: 'Lower' }, lower('Limestone')],
    ];
    for (const state of bad) {
      expect(() => changes(state, [upper])).toThrow(/Receives|circle/);
      expect(() => changes([upper], state)).toThrow(/Receives|circle/);
    }
  });
});
