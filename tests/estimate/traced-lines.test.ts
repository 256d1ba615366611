import { describe, expect, it } from 'vitest';
import { call, column, refusal, spill } from '../functions/call';

const HEADINGS = ['Wall', 'Level', 'Material', 'Area', 'Height', 'Masked', 'Residue'];
type Row = readonly [
  wall: string,
  level: number,
  material: string,
  area: number,
  height: number,
  masked?: string,
  residue?: string,
];

function rangeOf(rows: readonly Row[]): unknown[][] {
  return [HEADINGS, ...rows.map((row) => HEADINGS.map((_, place) => row[place] ?? ''))];
}

/** Expression and value of each line of a trace, by its symbol. */
function traced(quantity: string, rows: readonly Row[], factors: unknown[][] = []) {
  const spilled = spill('TRACE', quantity, rangeOf(rows), null, factors);
  const [symbols, expressions, values] = ['Symbol', 'Expression', 'Value'].map((name) =>
    column(spilled, name),
  );
  return new Map(symbols?.map((symbol, at) => [symbol, [expressions?.[at], values?.[at]]]));
}

describe('time to dry', () => {
  it('is not there in saturated air, where nothing evaporates', () => {
    const walls = rangeOf([['A', 1, 'Red clay brick', 100, 10]]);
    const factors = [['weather.humidity', 100]];
    expect(refusal(() => call('TRACE', 'time to dry', walls, null, factors))).toEqual({
      type: 'nothing',
      message:
        'There is no time to dry here: every row is masked, clear water is used, or nothing evaporates.',
    });
  });
});

describe('tape of a masked row', () => {
  it('rests on the edge that its area and height give, not on openings', () => {
    const lines = traced('tape', [
      ['A', 1, 'Red clay brick', 100, 10],
      ['B', 1, 'Granite', 60, 5, 'yes'],
      ['C', 1, 'Granite', 49, 0, 'yes'],
    ]);
    // 2 * (60 / 5 + 5) = 34 ft; 4 * sqrt(49) = 28 ft.
    expect(lines.get('perimeter_r3')).toEqual(['2 * (Area_r3 / Height_r3 + Height_r3)', 34]);
    expect(lines.get('perimeter_r4')?.[0]).toBe('4 * sqrt(Area_r4)');
    expect(lines.get('perimeter_r4')?.[1]).toBeCloseTo(28, 12);
    expect(lines.get('perimeter_r2')).toEqual(['', 0]);
  });
});

describe('pre-wet of a zone', () => {
  it('rests on the first of two rows that are as thirsty', () => {
    const lines = traced('pre-wet minutes', [
      ['A', 1, 'Granite', 100, 10],
      ['B', 1, 'Red clay brick', 100, 10],
      ['C', 1, 'Red clay brick', 100, 10],
    ]);
    expect(lines.get('S_z1')?.[0]).toBe('S_r3');
  });

  it('takes no time where no face has suction', () => {
    const glass: Row[] = [['A', 1, 'Plain glass', 100, 10, '', 'light']];
    expect(traced('pre-wet minutes', glass).get('prewetTime_z1')).toEqual(['0', 0]);
    const absorbed = traced('water taken up', glass, [['prewet.leastPasses', 0]]);
    expect(absorbed.get('absorbed_r2')).toEqual(['0', 0]);
  });
});

describe('patch', () => {
  const brick: Row[] = [['A', 1, 'Red clay brick', 100, 10]];
  const patch = (apply: number) =>
    traced('patch', brick, [
      ['rate.apply', apply],
      ['rate.rinse', 8],
      ['dwell.most', 5],
      ['dwell.least', 3],
      ['weather.film', 5],
    ]).get('patch');

  it('has the window of contact in its line where the rates differ, and there alone', () => {
    expect(patch(8)?.[0]).toBe('longestContact * min(rate_apply, rate_rinse)');
    // 5 min at 8 ft2/min.
    expect(patch(8)?.[1]).toBeCloseTo(40, 9);
    expect(patch(16)?.[0]).toContain('(longestContact - dwell_least) / (1 / min(rate_apply, rate_rinse) - ');
    // 2 / (1 / 8 - 1 / 16) = 32 ft2.
    expect(patch(16)?.[1]).toBeCloseTo(32, 9);
  });
});

describe('moves along a zone', () => {
  it('rest on the first of two levels that are as long', () => {
    const lines = traced('move hours', [
      ['A', 1, 'Red clay brick', 300, 10],
      ['B', 2, 'Red clay brick', 600, 20],
    ]);
    expect(lines.get('length_z1')).toEqual(['length_r2', 30]);
    // 30 ft at 20 ft from one position.
    expect(lines.get('positions_z1')).toEqual(['ceil(length_z1 / access_dropWidth - guard)', 2]);
  });

  it('come to none without a height', () => {
    const lines = traced('move hours', [['A', 1, 'Red clay brick', 300, 0]]);
    expect(lines.get('length_z1')).toEqual(['0', 0]);
    expect(lines.get('positions_z1')?.[1]).toBe(0);
    expect(lines.get('moveHours_z1')?.[1]).toBe(0);
  });
});
