import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { bareLoop, labelsDiffer } from '../../workbench/bench/bare-loop';
import { figureTable, isMissed } from '../../workbench/bench/figures';
import { changeWalls, madeFactors, madeWalls, scatterLabels } from '../../workbench/bench/made-walls';
import { nativeFormulas } from '../../workbench/bench/native-formulas';
import { expectSameTotals } from '../../workbench/bench/same-totals';
import { inTurn, median } from '../../workbench/bench/timing';
import { number, spill } from '../functions/call';

const factors = readFactors(madeFactors);
const walls = madeWalls(60);
const schedule = spill('SCHEDULE', walls, null, madeFactors);

describe('what SCHEDULE is compared with', () => {
  it('comes to the same in a bare loop', () => {
    expectSameTotals(schedule, bareLoop(walls, factors), 'the bare loop');
  });

  it('comes to the same as ordinary formulas in a spreadsheet', async () => {
    const { totals, milliseconds } = await nativeFormulas(walls, factors);
    expectSameTotals(schedule, totals, 'the ordinary formulas');
    expect(milliseconds).toBeGreaterThan(0);
  });

  it('proves nothing where a quantity differs, or is missing', () => {
    const totals = bareLoop(walls, factors);
    const zone = totals.get('Zone 2') ?? {};
    const price = zone['Price'] ?? NaN;
    const compare = (changed: Record<string, number>) => () => {
      expectSameTotals(schedule, new Map([...totals, ['Zone 2', changed]]), 'it');
    };
    expect(compare({ ...zone, Price: price * (1 + 1e-8) })).toThrow(/^it, Zone 2, Price: /);
    expect(compare({ ...zone, Price: NaN })).toThrow('it, Zone 2, Price: NaN');
    const others = Object.fromEntries(Object.entries(zone).filter(([heading]) => heading !== 'Tape'));
    expect(compare(others)).toThrow('it, Zone 2, Tape: undefined');
    totals.delete('Zone 7');
    expect(() => {
      expectSameTotals(schedule, totals, 'it');
    }).toThrow('it: 7 zones, not 8');
  });

  it('looks for a label that stands twice, as reading does', () => {
    const scattered = scatterLabels(madeWalls(60));
    expect(labelsDiffer(scattered)).toBe(true);
    const [, first = [], ...others] = scattered;
    expect(labelsDiffer([[], first, ...others, [...first]])).toBe(false);
  });

  it('is about other walls after each change', () => {
    const changed = madeWalls(60);
    const masking = [0, 1, 2].map((turn) => {
      changeWalls(changed, turn);
      return number('MASKING', changed, 'Zone 0');
    });
    expect(new Set(masking).size).toBe(3);
  });
});

describe('figures', () => {
  it('miss a limit that they lie beyond, and no other', () => {
    expect(isMissed({ name: '', value: 3, most: 3 })).toBe(false);
    expect(isMissed({ name: '', value: 3.001, most: 3 })).toBe(true);
    expect(isMissed({ name: '', value: 20, least: 20 })).toBe(false);
    expect(isMissed({ name: '', value: 19.9, least: 20 })).toBe(true);
    expect(isMissed({ name: '', value: NaN, most: 3 })).toBe(true);
    expect(isMissed({ name: '', value: 1e9 })).toBe(false);
  });

  it('stand with their limits beside them', () => {
    const figures = [
      { name: 'by the bare loop', value: 2.71828, most: 3 },
      { name: 'by formulas', value: 12, least: 20 },
      { name: 'ns', value: 123456 },
    ];
    expect(figureTable(figures).split('\n')).toEqual([
      'by the bare loop   2.718  at most 3    kept',
      'by formulas           12  at least 20  MISSED',
      'ns                123500',
    ]);
  });

  it('are medians of things done in turn, the first half of the turns left out', () => {
    expect(median([5, 1, 9])).toBe(5);
    expect(median([100, 2, 1])).toBe(2);
    const done: string[] = [];
    const times = inTurn(
      { a: (turn) => done.push(`a${String(turn)}`), b: (turn) => done.push(`b${String(turn)}`) },
      2,
    );
    expect(done).toEqual(['a0', 'b0', 'b1', 'a1', 'a2', 'b2', 'b3', 'a3']);
    expect(Object.keys(times)).toEqual(['a', 'b']);
  });
});
