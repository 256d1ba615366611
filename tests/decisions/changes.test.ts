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
  'Brushed',
  'Masked',
  'Receives',
];
const MEASURED = ['Water', 'Masking', 'Concentrate', 'Labor-hours', 'Price'];
const PRICE_PARTS = [
  'labor',
  'cleaner',
  'masking',
  'water',
  'equipment',
  'access',
  'neutralizer',
  'disposal',
  'mobilization',
  'protection',
  'fixed',
  'supervision',
  'contingency',
  'overhead',
  'profit',
  'minimum',
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
    'Labor-hours': number('LABORHOURS', walls, null, factors),
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

/** The columns that change together, in the order of the list of changes. */
const GROUPS = [
  ['Zone', 'Level', 'Receives'],
  ['Material'],
  ['Area', 'Height', 'Openings', 'Opening perimeter', 'Fixtures'],
  ['Mortar'],
  ['Residue'],
  ['Brushed'],
  ['Masked'],
];

interface Edit {
  readonly wall: string;
  readonly type: string;
  readonly make: (rows: readonly Row[]) => Row[];
}

/** The changes by wall and column, each as an edit of the table. */
function edits(before: readonly Row[], after: readonly Row[]): Edit[] {
  const walls = [...new Set([...before, ...after].map((row) => String(row['Wall'])))].sort();
  return walls.flatMap((wall): Edit[] => {
    const [was, is] = [before, after].map((rows) => rows.find((row) => row['Wall'] === wall));
    if (was === undefined) return [{ wall, type: 'added', make: (rows) => (is ? [...rows, is] : [...rows]) }];
    if (is === undefined)
      return [{ wall, type: 'removed', make: (rows) => rows.filter((row) => row['Wall'] !== wall) }];
    const differs = (column: string) => (was[column] ?? '') !== (is[column] ?? '');
    return GROUPS.filter((group) => group.some(differs)).map((group) => ({
      wall,
      type: 'changed',
      make: (rows) =>
        rows.map((row) =>
          row['Wall'] === wall
            ? { ...row, ...Object.fromEntries(group.map((column) => [column, is[column] ?? ''])) }
            : row,
        ),
    }));
  });
}

function orders(count: number): number[][] {
  if (count === 0) return [[]];
  return orders(count - 1).flatMap((order) =>
    Array.from({ length: count }, (_, place) => order.toSpliced(place, 0, count - 1)),
  );
}

/** What each edit adds, averaged over every order in which the table can be edited. */
function averages(
  before: readonly Row[],
  made: readonly Edit[],
  factors: readonly unknown[],
): Record<string, number>[] {
  const known = new Map<string, Record<string, number>>();
  const at = (done: readonly number[]): Record<string, number> => {
    const set = [...done].sort((a, b) => a - b);
    const found =
      known.get(set.join()) ??
      totals(
        set.reduce<readonly Row[]>((rows, index) => made[index]?.make(rows) ?? rows, before),
        factors,
      );
    known.set(set.join(), found);
    return found;
  };
  const all = orders(made.length);
  const parts = made.map(() => Object.fromEntries(MEASURED.map((heading) => [heading, 0])));
  for (const order of all) {
    order.forEach((edit, place) => {
      const [was, is] = [at(order.slice(0, place)), at(order.slice(0, place + 1))];
      const part = parts[edit];
      for (const heading of MEASURED)
        if (part)
          part[heading] =
            (part[heading] ?? NaN) + ((is[heading] ?? NaN) - (was[heading] ?? NaN)) / all.length;
    });
  }
  return parts;
}

function expectAverages(
  before: readonly Row[],
  after: readonly Row[],
  factors: readonly unknown[] = PRICES,
): void {
  const made = edits(before, after);
  const spilled = changes(before, after, factors);
  expect(spilled.map((line) => [line['Wall'], line['Change']])).toEqual([
    ...made.map(({ wall, type }) => [wall, type]),
    ['Total change', ''],
  ]);
  const [from, to] = [totals(before, factors), totals(after, factors)];
  const parts = averages(before, made, factors);
  for (const heading of MEASURED) {
    const near = 1e-9 * Math.max(1, from[heading] ?? NaN, to[heading] ?? NaN);
    parts.forEach((part, index) => {
      expect(Math.abs(numberIn(spilled[index], heading) - (part[heading] ?? NaN)), heading).toBeLessThan(
        near,
      );
    });
  }
  expectAddUp(spilled, from, to);
}

function expectAddUp(
  spilled: readonly Line[],
  from: Readonly<Record<string, number>>,
  to: Readonly<Record<string, number>>,
): void {
  expectDifference(spilled.at(-1), from, to);
  for (const heading of MEASURED) {
    const parts = spilled.slice(0, -1).reduce((sum, line) => sum + numberIn(line, heading), 0);
    const scale = Math.max(1, from[heading] ?? NaN, to[heading] ?? NaN);
    const whole = numberIn(spilled.at(-1), heading);
    expect(Math.abs(parts - whole), heading).toBeLessThanOrEqual(1e-9 * scale);
  }
}

const north: readonly Row[] = [
  { Wall: 'N1', Zone: 'North', Material: 'Red clay brick', Area: 600, Mortar: 'N', Residue: 'moderate' },
  { Wall: 'N2', Zone: 'North', Material: 'Red clay brick', Area: 400, Mortar: 'N', Residue: 'moderate' },
];

describe('one band swapped in the middle of the job', () => {
  // Class 2 for the whole zone, by moderate residue; brick in colored mortar allows class 1 and takes up as much.
  const swapped = north.map((row) =>
    row['Wall'] === 'N2' ? { ...row, Material: 'Clay brick in colored mortar' } : row,
  );
  // 1000 ft2 at 70 ft2/gal, and 5% once more, are 15 gal of mix, of which 1 part in 1 + 8 was concentrate and 1 in
  // 1 + 64 is: the brush does the rest in either class, in one pass.
  const concentrate = 15 / 65 - 15 / 9;
  const [line, whole] = changes(north, swapped);

  it('says what changed and which class it made of which', () => {
    expect([line?.['Wall'], line?.['Change'], line?.['What'], line?.['Class']]).toEqual([
      'N2',
      'changed',
      'Material: Red clay brick -> Clay brick in colored mortar',
      'North 2 -> 1',
    ]);
    expect(whole?.['Wall']).toBe('Total change');
  });

  it('alone has the whole difference, which is that of two estimates', () => {
    expectAverages(north, swapped);
    for (const seen of [line, whole]) {
      expectSame(numberIn(seen, 'Concentrate'), concentrate, 1e-9, 'concentrate');
      // What the mix lacks in concentrate is water.
      expectSame(numberIn(seen, 'Water'), -concentrate, 1e-9, 'water');
      expect(numberIn(seen, 'Masking')).toBe(0);
    }
  });
});

describe('two changes of one zone', () => {
  it('have the mean of what each does before and after the other', () => {
    // Either limestone alone takes the whole zone down; whichever comes second changes its own wall only.
    const after = north.map((row) => ({ ...row, Material: 'Limestone' }));
    const price = (rows: readonly (Row | undefined)[]) =>
      totals(rows.filter((row) => row !== undefined))['Price'] ?? NaN;
    const [n1, n2] = north;
    const [l1, l2] = after;
    const [none, first, second, both] = [
      [n1, n2],
      [l1, n2],
      [n1, l2],
      [l1, l2],
    ].map(price);
    const [a = NaN, b = NaN, c = NaN, d = NaN] = [none, first, second, both];
    const [one, two] = changes(north, after);
    expectSame(numberIn(one, 'Price'), (b - a + (d - c)) / 2, 1e-9, 'the first');
    expectSame(numberIn(two, 'Price'), (c - a + (d - b)) / 2, 1e-9, 'the second');
    // Each is told as it would be alone.
    expect([one, two].map((line) => line?.['Class'])).toEqual(['North 2 -> 1', 'North 2 -> 1']);
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
  Brushed: fc.constantFrom('', 'yes', 'priced'),
  Masked: fc.constantFrom('', '', 'yes', 'only', 'never'),
});

function stateOf(most: number): fc.Arbitrary<Row[]> {
  return fc
    .uniqueArray(fc.nat(most), { minLength: 1, maxLength: most })
    .chain((labels) =>
      fc
        .tuple(...labels.map(() => row))
        .map((rows) => rows.map((cells, index) => ({ Wall: `W${String(labels[index])}`, ...cells }))),
    );
}

/** The latter state with some of its rows, and some columns of the others, as they were. */
function mixed(before: readonly Row[], after: readonly Row[], kept: number): Row[] {
  return after.map((latter, index) => {
    const former = before.find(({ Wall }) => Wall === latter['Wall']);
    if (former === undefined || Math.floor(kept / 2 ** index) % 2 === 1) return former ?? latter;
    const alike = GROUPS.filter((_, group) => Math.floor(kept / 2 ** (group + index)) % 3 > 0).flat();
    return { ...latter, ...Object.fromEntries(alike.map((column) => [column, former[column] ?? ''])) };
  });
}

describe('the part of a change', () => {
  it('rows removed, changed and added stand by wall and column', () => {
    const after: readonly Row[] = [
      { Wall: 'X1', Zone: 'Court', Material: 'Marble', Area: 30, Height: 3, Residue: 'light' },
      { Wall: 'C2', Zone: 'North', Material: 'Split-face block', Area: 310, Height: 9, Residue: 'moderate' },
      { Wall: 'X2', Zone: 'Tower', Material: 'Stucco', Area: 90, Height: 9, Residue: 'moderate' },
      ...job
        .filter((each) => each['Wall'] === 'N1' || each['Wall'] === 'N2' || each['Wall'] === 'C1')
        .map((each) => (each['Wall'] === 'N2' ? { ...each, Material: 'Limestone', Area: 380 } : each)),
    ];
    expectAverages(job, after);
    expect(changes(job, after).map((line) => [line['Wall'], line['What'], line['Class']])).toEqual([
      // Moderate residue needs class 2. Split-face block leaves Court, where ground-face block allows class 1.
      ['C2', 'Zone: Court -> North', 'Court 1 -> 1, North 2 -> 2'],
      ['N2', 'Material: Red clay brick -> Limestone', 'North 2 -> 1'],
      ['N2', 'Area: 400 ft² -> 380 ft²', 'North 2 -> 2'],
      ['N3', 'removed from North', 'North 2 -> 2'],
      ['X1', 'Marble added to Court', 'Court 1 -> 0'],
      ['X2', 'Stucco added to Tower', 'Tower none -> 1'],
      ['Total change', '', ''],
    ]);
  });

  it('is the mean over every order, for up to six changes of any two states', () => {
    let counted = 0;
    fc.assert(
      fc.property(stateOf(4), stateOf(4), fc.nat(4095), (before, drafted, kept) => {
        const after = mixed(before, drafted, kept);
        const count = edits(before, after).length;
        fc.pre(count <= 6);
        counted += count;
        expectAverages(before, after);
      }),
      { seed: 22, numRuns: 25 },
    );
    expect(counted).toBeGreaterThan(60);
  });

  it('does not know the order of the rows, be it exact or drawn', () => {
    let drawn = 0;
    const shuffled = (rows: readonly Row[], seed: number): Row[] =>
      rows
        .map((each, place) => ({ each, by: ((place + 1) * seed) % 31 }))
        .sort((a, b) => a.by - b.by)
        .map(({ each }) => each);
    fc.assert(
      fc.property(
        stateOf(6),
        stateOf(6),
        fc.nat(4095),
        fc.integer({ min: 1, max: 30 }),
        (before, drafted, kept, seed) => {
          const after = kept % 2 === 0 ? drafted : mixed(before, drafted, kept);
          if (edits(before, after).length > 10) drawn += 1;
          const straight = changes(before, after);
          expect(changes(shuffled(before, seed), shuffled(after, 31 - seed))).toEqual(straight);
          expectAddUp(straight, totals(before), totals(after));
        },
      ),
      { seed: 24, numRuns: 30 },
    );
    expect(drawn).toBeGreaterThan(5);
  });

  it('that was drawn stands with its standard error', () => {
    const many = (material: string): Row[] =>
      Array.from({ length: 12 }, (_, index) => ({
        Wall: `M${String(index)}`,
        Zone: `Z${String(index % 3)}`,
        Material: material,
        Area: 100 + 10 * index,
        Residue: 'moderate',
      }));
    const spilled = changes(many('Red clay brick'), many('Limestone'));
    expect(spilled).toHaveLength(13);
    const errors = spilled.map((line) => numberIn(line, 'Standard error of price'));
    expect(errors.at(-1)).toBe(0);
    expect(Math.max(...errors)).toBeGreaterThan(0);
    // The walls of a zone differ in their area alone, so that none is far from a quarter of what its zone does.
    spilled.slice(0, -1).forEach((line, index) => {
      const zone = spilled.slice(0, -1).filter((_, other) => other % 3 === index % 3);
      const mean = zone.reduce((sum, each) => sum + numberIn(each, 'Price'), 0) / zone.length;
      expect(numberIn(line, 'Price') / mean).toBeGreaterThan(0.5);
      expect(numberIn(line, 'Price') / mean).toBeLessThan(2);
    });
  });

  it('a rounded price differs by a cent at most from what the unrounded parts add up to', () => {
    const after = job.slice(1);
    const bid = (rows: readonly Row[]) => number('BIDPRICE', rangeOf(rows), null, PRICES);
    const whole = numberIn(changes(job, after).at(-1), 'Price');
    expect(Math.abs(whole - (bid(after) - bid(job)))).toBeLessThanOrEqual(0.01 + 1e-9);
  });

  it('the whole job new, and the whole job gone', () => {
    expectAverages([], job);
    expectAverages(job, []);
  });
});

describe('what a change is called', () => {
  it.each([
    [{ Masked: '' }, { Masked: 'yes' }, 'Masked: no -> yes'],
    [{ Masked: 'no' }, { Masked: 'never' }, 'Masked: no -> never'],
    [{ Residue: '' }, { Residue: 'heavy' }, 'Residue: not stated -> heavy'],
    [{ Brushed: 'yes' }, { Brushed: 'priced' }, 'Brushed: yes -> priced'],
    [{ Mortar: 'N' }, { Mortar: 'S' }, 'Mortar: N -> S'],
    [{ Height: 12.5 }, { Height: 14, Fixtures: 2 }, 'Height: 12.5 ft -> 14 ft; Fixtures: 0 -> 2'],
  ])('%j to %j', (was, is, what) => {
    const [base] = north;
    expect(changes([{ ...base, ...was }], [{ ...base, ...is }])[0]?.['What']).toBe(what);
  });

  it('tells mortar, brushing, material and area of one row apart', () => {
    const [base] = north;
    const latter = { ...base, Mortar: 'S', Brushed: 'priced', Material: 'Limestone', Area: 650 };
    expectAverages([{ ...base }], [latter]);
    expect(changes([{ ...base }], [latter]).map((line) => line['What'])).toEqual([
      'Material: Red clay brick -> Limestone',
      'Area: 600 ft² -> 650 ft²',
      'Mortar: N -> S',
      'Brushed: no -> priced',
      '',
    ]);
  });

  it('has the units of the job', () => {
    const [base] = north;
    const [line] = changes([{ ...base }], [{ ...base, Area: 55.5 }], [['units', 'SI']]);
    expect(line?.['What']).toBe('Area: 600 m² -> 55.5 m²');
  });
});

describe('nothing changed', () => {
  const zeros = { Water: 0, Masking: 0, Concentrate: 0, 'Labor-hours': 0, Price: 0 };

  it('spills the line of the whole alone, with zeros', () => {
    expect(changes(job, job)).toEqual([{ Wall: 'Total change', Change: '', What: '', Class: '', ...zeros }]);
  });

  it('neither does another order, another spelling of a zone, or a name in place of a code', () => {
    const alike = [...job].reverse().map((row) => ({
      ...row,
      Zone: String(row['Zone']).toUpperCase(),
      Material: row['Material'] === 'Cast stone' ? 'cast-stone' : (row['Material'] ?? ''),
    }));
    expect(changes(job, alike).map((line) => line['Wall'])).toEqual(['Total change']);
    const fed = (zone: string, from: string): Row[] => [
      { Wall: 'U1', Zone: zone, Material: 'Red clay brick', Area: 10 },
      { Wall: 'L1', Zone: 'Court', Material: 'Limestone', Area: 10, Receives: from },
    ];
    expect(changes(fed('Upper wall', 'Upper wall'), fed('upper wall', 'UPPER  WALL')).length).toBe(1);
  });

  it('has no price without the price of labor', () => {
    expect(Object.keys(changes(job, job, [])[0] ?? {})).not.toContain('Price');
  });
});

describe('a zone without a number', () => {
  const marble: Row = { Wall: 'M1', Zone: 'Hall', Material: 'Marble', Area: 80, Residue: 'light' };
  const before = [...job, marble];
  // Neither applying nor rinsing the smallest patch fits the dwell: 5 min at 10 ft2/min are 50 ft2.
  const factors = [...PRICES, ['patch.least', 60], ['patch.most', 60], ['cleaner.class', 1]];

  it('has error cells with the reason, and keeps the numbers that it has', () => {
    const after = before.map((each) => (each['Wall'] === 'N1' ? { ...each, Area: 700 } : each));
    const [line, whole] = changes(before, after, factors);
    for (const seen of [line, whole]) {
      const errors = errorsIn(seen ?? {});
      expect([...errors.keys()]).toContain('Labor-hours');
      expect(errors.get('Price')).toContain('no such number');
      expect(numberIn(seen, 'Masking')).toBe(0);
    }
  });

  it('takes no number away from a change elsewhere', () => {
    const after = before.map((each) => (each['Wall'] === 'M1' ? { ...each, Area: 160 } : each));
    const [line, whole] = changes(before, after, factors);
    const hall = (rows: readonly Row[]) => number('LABORHOURS', rangeOf(rows), 'Hall', factors);
    for (const seen of [line, whole]) {
      expect(errorsIn(seen ?? {}).size).toBe(0);
      expectSame(numberIn(seen, 'Labor-hours'), hall(after) - hall(before), 1e-9, 'labor-hours');
    }
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
    expect(line?.['Class']).toBe('Lower 1 -> 1, Upper 2 -> 1');
    expectDifference(line, totals([upper, lower('Red clay brick')]), totals([upper, lower('Limestone')]));
    // The upper wall's 500 ft2 alone: 7.5 gal of mix, 5% of it done once more, 1 part in 65 in place of 1 in 9.
    expectSame(numberIn(whole, 'Concentrate'), 7.5 / 65 - 7.5 / 9, 1e-9, 'concentrate');
  });

  it.each([
    ['comes', [upper], [upper, lower('Limestone')]],
    ['goes', [upper, lower('Limestone')], [upper]],
    ['is found to receive', [upper, lower('Limestone', '')], [upper, lower('Limestone')]],
    ['receives no longer', [upper, lower('Limestone')], [upper, lower('Limestone', '')]],
  ])('a row below that %s changes the class above', (_, before, after) => {
    expectAverages(before, after);
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
