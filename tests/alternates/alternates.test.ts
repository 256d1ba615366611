import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alternatesOf, type AlternateLine } from '../../src/alternates/alternates';
import type { QuantityId } from '../../src/estimate/quantities';
import { lines, number, numberIn, text, type Line } from '../properties/call';
import { call, refusal } from '../functions/call';

type Cells = readonly (readonly unknown[])[];

const HEAD = ['Alternate', 'Wall', 'Column', 'Value'];
const WALL_HEAD = [
  'Wall',
  'Zone',
  'Level',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Mortar',
  'Residue',
  'Brushed',
  'Masked',
  'Suction',
  'Receives',
];
const PRICES: Cells = [
  ['price.labor', 50],
  ['price.cleaner.1', 10],
  ['price.cleaner.2', 20],
  ['price.cleaner.3', 32],
  ['price.film', 0.3],
  ['price.tape', 0.15],
  ['price.water', 0.05],
  ['price.equipment', 120],
  ['price.disposal', 0.2],
  ['price.overhead', 10],
  ['price.profit', 8],
];
const CENT = 0.01;

const walls: Cells = [
  WALL_HEAD,
  ['S1', 'South', 1, 'Red clay brick', 900, 20, 60, 'S', '', '', '', '', ''],
  ['S2', 'South', 2, 'Limestone', 120, 4, 0, 'N', '', 'yes', '', '', ''],
  ['S3', 'South', 2, 'Coated glass', 80, 8, 0, '', '', '', 'yes', '', ''],
  ['N1', 'North', 1, 'Red clay brick', 700, 18, 0, 'N', 'heavy', '', '', '', ''],
  ['N2', 'North', 1, 'Cast stone', 90, 3, 0, 'N', 'light', '', '', 3, ''],
];

/** A table with one cell of some rows changed, as one who edits it would. */
function edited(
  table: Cells,
  which: (row: readonly unknown[]) => boolean,
  heading: string,
  value: unknown,
): unknown[][] {
  const place = WALL_HEAD.indexOf(heading);
  return table.map((row, index) => (index > 0 && which(row) ? row.with(place, value) : [...row]));
}
const wall =
  (label: string) =>
  (row: readonly unknown[]): boolean =>
    row[0] === label;

function alternates(table: Cells, zone: unknown = null, of: Cells = walls, factors: Cells = PRICES): Line[] {
  return lines('ALTERNATES', of, [HEAD, ...table], zone, factors);
}
function bid(of: Cells, zone: unknown = null, factors: Cells = PRICES): number {
  return number('BIDPRICE', of, zone, factors);
}
function added(line: Line | undefined): number {
  return numberIn(line, 'Add or deduct');
}
function lineOf(result: readonly AlternateLine[], name: string): AlternateLine {
  const found = result.find(({ alternate }) => alternate.name === name);
  if (found === undefined) throw new Error(`There is no alternate ${name}.`);
  return found;
}

describe('an alternate', () => {
  it('is the difference of two estimates, one on edited walls', () => {
    const table = [
      ['Weak mortar', 'S1', 'Mortar', 'O'],
      ['Weak mortar', 'S2', 'Mortar', 'O'],
      ['No limestone', 'S2', 'Area', 0],
      ['Cast stone base', 'S2', 'Material', 'Cast stone'],
      ['Smaller', '', 'Area', 100],
    ];
    const weak = edited(edited(walls, wall('S1'), 'Mortar', 'O'), wall('S2'), 'Mortar', 'O');
    const without = walls.filter((row) => row[0] !== 'S2');
    const cast = edited(walls, wall('S2'), 'Material', 'Cast stone');
    const small = edited(walls, () => true, 'Area', 100);
    for (const zone of [null, 'South', 'North']) {
      const [base, ...rest] = alternates(table, zone);
      expect(base?.['Alternate']).toBe('Base bid');
      expect(numberIn(base, 'Price')).toBeCloseTo(bid(walls, zone), 9);
      [weak, without, cast, small].forEach((after, place) => {
        expect(added(rest[place])).toBeCloseTo(bid(after, zone) - bid(walls, zone), 6);
        expect(numberIn(rest[place], 'Price')).toBeCloseTo(bid(after, zone), 9);
        for (const [heading, name] of [
          ['Labor-hours', 'LABORHOURS'],
          ['Water', 'WATER'],
        ] as const) {
          const [was, is] = [walls, after].map((of) => number(name, of, zone, PRICES));
          expect(numberIn(rest[place], heading)).toBeCloseTo(is ?? NaN, 9);
          expect(numberIn(rest[place], `${heading} added`)).toBeCloseTo((is ?? NaN) - (was ?? NaN), 9);
        }
      });
    }
  });

  it('of a factor works the job out with it, in the spelling of the user and in their units', () => {
    const si: Cells = [...PRICES, ['units', 'SI'], ['Price.Labour ', 50] as const].filter(
      ([id]) => id !== 'price.labor',
    );
    const [, line] = alternates(
      [
        ['Dear', '', 'PRICE.LABOR', 61],
        ['Dear', '', 'cleaner.coverage', 3],
      ],
      null,
      walls,
      si,
    );
    const dear = [
      ...si.filter(([id]) => id !== 'Price.Labour '),
      ['price.labor', 61],
      ['cleaner.coverage', 3],
    ];
    expect(added(line)).toBeCloseTo(bid(walls, null, dear) - bid(walls, null, si), 6);
    // A ceiling of one's own for a material is a factor too.
    const [, milder] = alternates([['Milder', '', 'material.cast-stone.ceiling', 1]]);
    const own = [...PRICES, ['material.cast-stone.ceiling', 1]];
    expect(added(milder)).toBeCloseTo(bid(walls, null, own) - bid(walls), 6);
  });

  it('that changes nothing adds nothing', () => {
    const [, same] = alternates([
      ['Same', 'S1', 'Mortar', 'S'],
      ['Same', 'N1', 'Residue', 'heavy'],
    ]);
    for (const heading of ['Add or deduct', 'Labor-hours added', 'Water added'])
      expect(numberIn(same, heading)).toBe(0);
    expect(same?.['Class and governor after']).toBe('no change');
    const [, factor] = alternates([['Same', '', 'price.labor', 50]]);
    expect(added(factor)).toBe(0);
  });

  it('says class and governor before and after in words', () => {
    const [base, line] = alternates([['Granite base', 'S2', 'Material', 'Granite']]);
    // Ceilings from the table of materials: limestone 1, cast stone and granite 2.
    expect(line?.['Class and governor before']).toBe('South: class 1 (neutral detergent), set by Limestone');
    expect(line?.['Class and governor after']).toBe('South: class 2 (buffered mild acid), set by Granite');
    expect(base?.['Class and governor before']).toContain(
      'North: class 2 (buffered mild acid), set by Cast stone',
    );
    expect(line?.['What']).toBe('Material Granite: S2');
  });

  it('compares by labor-hours where labor has no price', () => {
    const [base, line] = alternates([['Weak', 'S1', 'Mortar', 'N']], null, walls, [['price.water', 1]]);
    expect(base).not.toHaveProperty('Price');
    expect(line).not.toHaveProperty('Add or deduct');
    expect(numberIn(line, 'Labor-hours added')).toBeLessThan(0);
  });

  it('of random cells is the difference of two estimates, whatever the walls', () => {
    const row = fc.record({
      zone: fc.constantFrom('A', 'B', 'C'),
      level: fc.nat(2),
      material: fc.constantFrom('Red clay brick', 'Limestone', 'Cast stone', 'Marble', 'Coated glass'),
      area: fc.integer({ min: 20, max: 900 }),
      height: fc.integer({ min: 1, max: 30 }),
      openings: fc.integer({ min: 0, max: 15 }),
      mortar: fc.constantFrom('', 'S', 'N'),
      residue: fc.constantFrom('', '', 'light', 'heavy'),
      brushed: fc.constantFrom('', 'yes'),
      masked: fc.constantFrom('', '', 'yes', 'only', 'never'),
    });
    const value: Readonly<Record<string, readonly [string | number, ...(string | number)[]]>> = {
      Zone: ['A', 'B', 'New'],
      Material: ['Red clay brick', 'Granite', 'Limestone'],
      Area: [0, 55, 400],
      Height: [0, 12],
      Mortar: ['M', 'O', ''],
      Residue: ['heavy', ''],
      Brushed: ['priced', 'yes', ''],
      Masked: ['yes', 'no', 'only'],
      Suction: [0, 25],
    };
    const cell = fc.record({
      wall: fc.nat(5),
      column: fc.constantFrom(...Object.keys(value)),
      pick: fc.nat(2),
    });
    let moved = 0;
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 2, maxLength: 6 }),
        fc.uniqueArray(cell, {
          minLength: 1,
          maxLength: 4,
          selector: ({ wall: at, column }) => `${at % 6} ${column}`,
        }),
        (rows, cells) => {
          const table = rows.map((each, index) => [
            `W${String(index)}`,
            each.zone,
            each.level,
            each.material,
            each.area,
            each.height,
            each.openings,
            each.mortar,
            each.residue,
            each.brushed,
            each.masked,
            '',
            '',
          ]);
          const base: Cells = [WALL_HEAD, ...table];
          const set = cells
            .filter(({ wall: at }) => at < rows.length)
            .map(({ wall: at, column, pick }) => [
              `W${String(at)}`,
              column,
              value[column]?.[pick] ?? value[column]?.[0],
            ]);
          fc.pre(set.length > 0);
          const left = new Set(
            set.filter((each) => each[1] === 'Area' && each[2] === 0).map(([label]) => String(label)),
          );
          fc.pre(left.size < rows.length);
          let after: Cells = base;
          for (const [label, column, of] of set)
            after = edited(after, wall(String(label)), String(column), of);
          after = after.filter(([label]) => !left.has(String(label)));
          const [, line] = alternates(
            set.map((each) => ['X', ...each]),
            null,
            base,
          );
          const difference = bid(after) - bid(base);
          if (Math.abs(difference) > 1) moved += 1;
          expect(Math.abs(added(line) - difference)).toBeLessThan(CENT + 1e-6);
        },
      ),
      { seed: 31, numRuns: 60 },
    );
    expect(moved).toBeGreaterThan(30);
  });
});

describe('alternates on different zones', () => {
  const parts: readonly QuantityId[] = ['priceLabor', 'priceCleaner', 'priceMasking', 'priceWater'];
  const work = (table: Cells, factors: Cells) =>
    alternatesOf({ walls, alternates: [HEAD, ...table], zone: '', factors });
  const partsOf = (result: ReturnType<typeof work>, line: AlternateLine | undefined): number[] =>
    parts.map((id) => (line?.estimate.totals[id] ?? NaN) - result.base.totals[id]);

  it('add up to the cent in labor, cleaner, masking and water', () => {
    const table = [
      ['South', 'S1', 'Mortar', 'O'],
      ['North', 'N2', 'Masked', 'yes'],
      ['Both', 'S1', 'Mortar', 'O'],
      ['Both', 'N2', 'Masked', 'yes'],
    ];
    const result = work(table, PRICES);
    const [south, north, both] = ['South', 'North', 'Both'].map((name) =>
      partsOf(result, lineOf(result.lines, name)),
    );
    parts.forEach((id, place) => {
      const sum = (south?.[place] ?? NaN) + (north?.[place] ?? NaN);
      expect(Math.abs(sum - (both?.[place] ?? NaN)), id).toBeLessThan(CENT / 2);
    });
    // In price too, where nothing is hired by the day and no minimum charge is set.
    const noHire = PRICES.filter(([id]) => id !== 'price.equipment');
    const [, one, two, together] = alternates(table, null, walls, noHire);
    expect(Math.abs(added(one) + added(two) - added(together))).toBeLessThan(3 * CENT);
    expect(Math.abs(added(one))).toBeGreaterThan(1);
    expect(Math.abs(added(two))).toBeGreaterThan(1);
  });

  it('do not on one zone, and the last line shows it', () => {
    const table = [
      ['Weak mortar', 'S1', 'Mortar', 'O'],
      ['Brushed', 'S1', 'Brushed', 'yes'],
    ];
    const [, mortar, brushed, together] = alternates(table);
    const both = edited(edited(walls, wall('S1'), 'Mortar', 'O'), wall('S1'), 'Brushed', 'yes');
    expect(added(together)).toBeCloseTo(bid(both) - bid(walls), 6);
    expect(Math.abs(added(mortar) + added(brushed) - added(together))).toBeGreaterThan(1);
  });
});

describe('the last line', () => {
  it('takes all that save, the largest first, and lists those that touch a cell that is taken', () => {
    const table = [
      ['Some less', 'S1', 'Area', 850],
      ['Much less', 'S1', 'Area', 500],
      ['Dear', 'S1', 'Mortar', 'M'],
      ['Less in the north', 'N1', 'Area', 650],
    ];
    const spilled = alternates(table);
    const last = spilled.at(-1);
    expect(last?.['Alternate']).toBe('All that save together');
    const after = edited(edited(walls, wall('S1'), 'Area', 500), wall('N1'), 'Area', 650);
    expect(numberIn(last, 'Price')).toBeCloseTo(bid(after), 9);
    expect(text(last?.['Note'])).toBe(
      'Includes Much less, Less in the north, the largest first. Worked out as one bid, not summed; not always the best combination. Leaves out Some less (it sets a cell that Much less has set). Washes 450 ft² less than the base bid.',
    );
  });

  it('of two that save the same takes the first of the table', () => {
    const [, , , last] = alternates([
      ['One', 'S1', 'Area', 500],
      ['Two', 'S1', 'Area', 500],
    ]);
    expect(text(last?.['Note'])).toContain('Includes One, the largest first');
    expect(text(last?.['Note'])).toContain('Two (it sets a cell that One has set)');
  });

  it('is the base bid where none saves', () => {
    const last = alternates([['Dear', 'S1', 'Mortar', 'M']]).at(-1);
    expect(last?.['Note']).toBe('No alternate saves.');
    expect(added(last)).toBe(0);
    expect(numberIn(last, 'Price')).toBeCloseTo(bid(walls), 9);
  });

  it('says why where those that save cannot stand together', () => {
    // 60 ft2 of openings: with 800 ft2 they fit neither into 100 ft2, which the other makes of the wall.
    const open = edited(walls, wall('S1'), 'Openings', 60);
    const spilled = alternates(
      [
        ['More glass', 'S1', 'Openings', 800],
        ['Small', 'S1', 'Area', 100],
      ],
      null,
      open,
    );
    const note = text(spilled.at(-1)?.['Note']);
    expect(note).toMatch(/Openings 800 ft² .*cannot be used|800 cannot be used/);
  });
});

describe('the table of alternates', () => {
  const headings = [
    ['Wall', 'Mark'],
    ['Area', 'Gross SF'],
  ];
  const other: Cells = [
    ['Mark', 'Zone', 'Material', 'Gross SF'],
    ['S1', 'South', 'Red clay brick', 500],
    ['South', 'North', 'Limestone', 80],
  ];

  it('has its columns in any order, and knows a column by our name or by the heading that stands for it', () => {
    const spilled = (column: string) =>
      lines(
        'ALTERNATES',
        other,
        [
          ['Value', 'Note', 'COLUMN', 'wall', 'Alternate'],
          [400, 'x', column, 'S1', 'Less'],
        ],
        null,
        PRICES,
        headings,
      );
    expect(spilled('gross sf')).toEqual(spilled('Area'));
    expect(added(spilled('Area')[1])).toBeLessThan(0);
  });

  it('takes a label before a zone of that name, and says so', () => {
    const [, line] = lines('ALTERNATES', other, [HEAD, ['X', 'South', 'Area', 40]], null, PRICES, headings);
    expect(line?.['What']).toBe('Area 40: South');
    expect(line?.['Note']).toBe(
      '"South" is a wall and a zone: the wall is taken. Washes 40 ft² less than the base bid.',
    );
    const [, zone] = lines('ALTERNATES', other, [HEAD, ['X', 'north', 'Area', 40]], null, PRICES, headings);
    expect(zone?.['What']).toBe('Area 40: South');
    expect(zone?.['Note']).toBe('Washes 40 ft² less than the base bid.');
  });

  it('skips blank rows', () => {
    expect(
      alternates([
        ['', '', '', ''],
        ['X', 'S1', 'Mortar', 'S'],
        [0, null, '', 0],
      ]),
    ).toHaveLength(3);
  });

  it.each([
    [
      'a value that the cell refuses',
      [['X', 'S1', 'Mortar', 'K']],
      /^Row 2 \(X\), column Value: "K" cannot be used. Accepted: for Mortar M, S, N, O, or blank/,
    ],
    [
      'a number beyond the bounds',
      [['X', 'S1', 'Area', -1]],
      /^Row 2 \(X\), column Value: -1 cannot be used. Accepted: for Area a number of ft/,
    ],
    [
      'a factor beyond its bounds',
      [['X', '', 'team.size', -1]],
      /^Row 2 \(X\), column Value: -1 cannot be used. Accepted: for team.size /,
    ],
    ['factors that go against each other', [['X', '', 'dwell.least', 9]], /^X: The minimum dwell is longer/],
    [
      'openings that no longer fit',
      [['X', 'S1', 'Area', 50]],
      /^Row 2 \(X\), column Value: .*for Area at most the Area of the row/,
    ],
    [
      'a wall that is not there',
      [['X', 'S9', 'Area', 50]],
      /^Row 2 \(X\), column Wall: "S9" cannot be used. .* Did you mean S/,
    ],
    [
      'a column that is not there',
      [['X', 'S1', 'Mortr', 'S']],
      /^Row 2 \(X\), column Column: "Mortr" .* Did you mean Mortar/,
    ],
    ['a label', [['X', 'S1', 'Wall', 'S4']], /^Row 2 \(X\), column Column: "Wall"/],
    [
      'a factor of one wall',
      [['X', 'S1', 'price.labor', 60]],
      /^Row 2 \(X\), column Wall: "S1" beside the factor price.labor .*whole job/,
    ],
    ['the units', [['X', '', 'units', 'SI']], /^Row 2 \(X\), column Column: "units"/],
    ['no name', [['', 'S1', 'Mortar', 'S']], /^Row 2, column Alternate: a blank cell/],
    [
      'a cell twice',
      [
        ['X', 'S1', 'Mortar', 'S'],
        ['x', 'South', 'MORTAR', 'N'],
      ],
      /^Row 3 \(x\), column Column: Mortar of S1 a second time in this alternate/,
    ],
    [
      'a factor twice',
      [
        ['X', '', 'price.labor', 1],
        ['X', '', 'price.labour', 2],
      ],
      /^Row 3 \(X\), column Column: price.labor a second time/,
    ],
    ['rinse from nowhere', [['X', 'S1', 'Receives', 'East']], /"East" cannot be used/],
    ['rinse in a circle', [['X', 'S1', 'Receives', 'South']], /circle/],
  ] as const)('refuses %s, and says where', (_, table, message) => {
    const refused = refusal(() => call('ALTERNATES', walls, [HEAD, ...table], null, PRICES));
    expect(refused.type).toBe('input');
    expect(refused.message).toMatch(message);
  });

  it('refuses a heading that is missing', () => {
    const { message } = refusal(() =>
      call('ALTERNATES', walls, [['Alternate', 'Wall', 'Column']], null, PRICES),
    );
    expect(message).toMatch(/^Row 1: no column is headed "Value"/);
  });

  it('tells everything that is refused at once', () => {
    const { message } = refusal(() =>
      call(
        'ALTERNATES',
        walls,
        [HEAD, ['X', 'S1', 'Mortar', 'K'], ['Y', 'S2', 'Residue', 'much']],
        null,
        PRICES,
      ),
    );
    expect(message).toContain('One more problem was found.');
  });

  it('leaves a wall out with its openings, and the rinse of a zone that is gone', () => {
    const below = [...walls, ['L1', 'Low', 1, 'Red clay brick', 60, 3, 0, '', 'light', '', '', '', 'North']];
    const [, line] = alternates([['No north', 'North', 'Area', 0]], null, below);
    const without = edited(below, wall('L1'), 'Receives', '').filter(([, zone]) => zone !== 'North');
    expect(added(line)).toBeCloseTo(bid(without) - bid(below), 6);
  });
});
