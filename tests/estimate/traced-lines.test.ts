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
      message: 'There is no time to dry here: nothing is washed, clear water is used, or nothing evaporates.',
    });
  });
});

describe('tape of a masked row', () => {
  it('rests on the edge that its area and height give, and on its openings, covered for its own wash', () => {
    const lines = traced('tape', [
      ['A', 1, 'Red clay brick', 100, 10],
      ['B', 1, 'Granite', 60, 5, 'yes'],
      ['C', 1, 'Granite', 49, 0, 'yes'],
    ]);
    // 2 * (60 / 5 + 5) = 34 ft; 4 * sqrt(49) = 28 ft.
    expect(lines.get('edge_r3')).toEqual(['2 * (Area_r3 / Height_r3 + Height_r3)', 34]);
    expect(lines.get('edge_r4')?.[0]).toBe('4 * sqrt(Area_r4)');
    expect(lines.get('edge_r4')?.[1]).toBeCloseTo(28, 12);
    expect(lines.get('perimeter_r3')).toEqual(['edge_r3 + openingsEdge_r3', 34]);
    expect(lines.get('perimeter_r2')).toEqual(['openingsEdge_r2', 0]);
  });
});
