import { describe, expect, it } from 'vitest';
import { call, column, number, spill } from '../functions/call';

interface Row {
  readonly material?: string;
  readonly mortar?: string;
  readonly residue?: string;
  readonly brushed?: string;
}

const walls = (...rows: Row[]): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Mortar', 'Residue', 'Brushed'],
  ...rows.map(({ material = 'Red clay brick', mortar = '', residue = '', brushed = '' }, index) => [
    `W${String(index)}`,
    material,
    60,
    mortar,
    residue,
    brushed,
  ]),
];
const classOf = (...rows: Row[]): unknown => call('CLASS', walls(...rows));
// A row of 60 ft2 at 60 ft2/h has as many scrub hours as it is classes short.
const short = (rows: Row[], factors: unknown[][] = []): number =>
  number('CREWHOURS', walls(...rows), null, factors, 'scrub');

describe('class that a row needs', () => {
  // Light 1, moderate 2, heavy 3; Type S and M add 1; at most 3.
  it.each([
    ['light', 'N', 1],
    ['light', 'O', 1],
    ['light', 'S', 2],
    ['light', 'M', 2],
    ['light', '', 1],
    ['moderate', 'N', 2],
    ['moderate', 'S', 3],
    ['heavy', 'N', 3],
    ['heavy', 'S', 3],
    ['heavy', 'M', 3],
  ])('%s residue, mortar %s: class %i', (residue, mortar, need) => {
    expect(classOf({ residue, mortar })).toBe(need);
  });

  it.each([
    ['', 'yes', 1, 'foretold light'],
    ['', 'no', 2, 'foretold moderate'],
    ['', '', 2, 'foretold moderate'],
    ['heavy', 'yes', 3, 'was seen: brushing counts no second time'],
    ['light', 'no', 1, 'was seen'],
  ])('residue "%s", brushed "%s": class %i, %s', (residue, brushed, need) => {
    expect(classOf({ residue, brushed })).toBe(need);
  });

  it('follows the needs of the user', () => {
    const factors = [
      ['need.light', 0],
      ['need.strongMortar', 2],
    ];
    expect(call('CLASS', walls({ residue: 'light' }), null, factors)).toBe(0);
    expect(call('CLASS', walls({ residue: 'light', mortar: 'S' }), null, factors)).toBe(2);
  });
});

describe('class to use in a zone', () => {
  it('is the greatest need of its rows where the ceiling allows', () => {
    expect(classOf({ residue: 'light' }, { residue: 'moderate' })).toBe(2);
    expect(classOf({ residue: 'light' }, { residue: 'light' })).toBe(1);
  });

  it('is capped by the ceiling, and scrubbing makes up for what is short', () => {
    const rows = [{ residue: 'heavy' }, { material: 'Limestone', residue: 'light' }];
    expect(classOf(...rows)).toBe(1);
    expect(short(rows)).toBeCloseTo(2, 9);
  });

  it('leaves out the need of a masked row', () => {
    const table = [
      ['Wall', 'Material', 'Area', 'Residue', 'Masked'],
      ['A', 'Red clay brick', 60, 'light', ''],
      ['B', 'Red clay brick', 60, 'heavy', 'yes'],
    ];
    expect(call('CLASS', table)).toBe(1);
  });

  it.each([
    [0, 0, 3],
    [1, 1, 2],
    [2, 2, 1],
    [3, 2, 1],
  ])('chosen %i on granite (ceiling 2): class %i, %i short of heavy residue', (chosen, used, missing) => {
    const rows = [{ material: 'Granite', residue: 'heavy' }];
    expect(call('CLASS', walls(...rows), null, [['cleaner.class', chosen]])).toBe(used);
    expect(short(rows, [['cleaner.class', chosen]])).toBeCloseTo(missing, 9);
  });

  it('by need is what holds where nothing is chosen', () => {
    expect(call('CLASS', walls({ residue: 'moderate' }), null, [['cleaner.class', 'By need']])).toBe(2);
  });

  it('is clear water where no row needs more, and the trace says 0', () => {
    const factors = [['need.light', 0]];
    const told = spill('TRACE', 'class', walls({ residue: 'light' }), null, factors);
    const symbols = column(told, 'Symbol');
    const at = (symbol: string) => told[symbols.indexOf(symbol) + 1]?.slice(1, 3);
    expect(at('mostNeed_z1')).toEqual(['0', 0]);
    expect(at('class_z1')).toEqual(['min(ceiling_z1, mostNeed_z1)', 0]);
  });

  it('can be chosen above the need', () => {
    expect(call('CLASS', walls({ residue: 'light' }), null, [['cleaner.class', 3]])).toBe(3);
  });
});
