import { describe, expect, it } from 'vitest';
import { readsOf } from '../../workbench/engine/formula-reads';
import { FormulaGraph, type Node } from '../../workbench/engine/needed';
import { withSingleCells } from '../../workbench/engine/single-cells';
import { namesByKey, withoutNames } from '../../workbench/engine/without-names';
import { areaAddress, parseArea } from '../../workbench/xlsx/address';

/** Formulas by address, all on one sheet, with what they fill where that is more than a cell. */
function graph(formulas: Readonly<Record<string, string>>, fills: Readonly<Record<string, string>> = {}) {
  const nodes = Object.entries(formulas).map(([address, formula]): Node => {
    const { top, left } = parseArea(address);
    return {
      key: address,
      sheet: 's',
      row: top,
      column: left,
      area: parseArea(fills[address] ?? address),
      reads: readsOf(formula, 'S').reads,
    };
  });
  const at = (addresses: readonly string[]) => addresses.map((each) => Object.keys(formulas).indexOf(each));
  const named = (places: Iterable<number>) => [...places].map((place) => nodes[place]?.key ?? '').sort();
  const made = new FormulaGraph(nodes);
  return {
    precedents: (...from: string[]) => named(made.precedents(at(from))),
    dependents: (...from: string[]) => named(made.dependents(at(from))),
    circles: () => made.circles(new Set(nodes.keys())).map(named),
  };
}

describe('what a formula reads', () => {
  const areas = (formula: string): string[] =>
    readsOf(formula, 'Bid').reads.map(({ sheet, area }) => `${sheet}!${areaAddress(area)}`);

  it('is every address, column and row, on whatever sheet', () => {
    expect(areas('A1+$B$2:C9*Walls!D4&"E5"')).toEqual(['bid!A1', 'bid!B2:C9', 'walls!D4']);
    expect(areas("SUM('It''s'!A:B,3:4)")).toEqual(["it's!A1:B1048576", 'bid!A3:XFD4']);
  });

  it('says where it may read anything', () => {
    expect(readsOf('INDIRECT("A1")', 'Bid').anywhere).toBe(true);
    expect(readsOf('SUM(A1:INDEX(B:B,2))', 'Bid').anywhere).toBe(true);
    expect(readsOf('SUM(A1:B2)', 'Bid').anywhere).toBe(false);
  });
});

describe('what names stand for', () => {
  const names = namesByKey([
    { name: 'Rate', formula: "'Other sheet'!$B$2" },
    { name: 'Rate', formula: 'Local!$C$3', sheet: 'Local' },
    { name: 'Twice', formula: 'Rate*2' },
    { name: 'Here', formula: 'There+1' },
    { name: 'There', formula: 'Here+1' },
    { name: 'G0', formula: 'A1+A1' },
    ...Array.from({ length: 30 }, (_, index) => ({
      name: `Grow${index + 1}x`,
      formula: `Grow${index}x+Grow${index}x`,
    })),
    { name: 'Grow0x', formula: '1' },
    { name: '_xlnm.Print_Area', formula: 'A1' },
  ]);
  const plain = (formula: string, sheet = 'Bid'): string =>
    withoutNames(formula, sheet, names, (text) => text);

  it('takes their place, the own names of a sheet first', () => {
    expect(plain('rate+1')).toBe("'Other sheet'!$B$2+1");
    expect(plain('Rate+1', 'local')).toBe('Local!$C$3+1');
    expect(plain('Local!Rate+"Rate"')).toBe('Local!$C$3+"Rate"');
    expect(plain('Twice^2')).toBe("('Other sheet'!$B$2*2)^2");
    expect(plain('Unknown(Rates)')).toBe('Unknown(Rates)');
  });

  it('is refused where it has no end', () => {
    expect(() => plain('1+Here')).toThrow('The name Here refers to itself.');
    expect(() => plain('Grow30x')).toThrow(/too long/);
  });
});

describe('a formula that is not marked as an array', () => {
  // In the fifth row, third column.
  const single = (formula: string): string => withSingleCells(formula, 4, 2);

  it.each([
    ['L:L*1', 'L5*1'],
    ['-$L$2:$L$9', '-L5'],
    ['\'My sheet\'!L1:L9&"x"', '\'My sheet\'!L5&"x"'],
    ['A1:Z1', 'C1'],
    ['L7:L9+1', '#VALUE!+1'],
    ['A1:D9', '#VALUE!'],
    ['ABS(L:L)', 'ABS(L5)'],
    ['IF((L1:L9>2),A1:A9,0)', 'IF((L5>2),A5,0)'],
    ['SUM(L1:L9*2)', 'SUM(L5*2)'],
    ['SUM(L:L)', 'SUM(L:L)'],
    ['SUMPRODUCT((L1:L9>2)*M1:M9)', 'SUMPRODUCT((L1:L9>2)*M1:M9)'],
    ['WASH.WATER(A:C,"x")', 'WASH.WATER(A:C,"x")'],
    ['VLOOKUP(A1,B1:D9,2)', 'VLOOKUP(A1,B1:D9,2)'],
    ['A1+"L1:L9"', 'A1+"L1:L9"'],
  ])('%s computes with single cells', (formula, expected) => {
    expect(single(formula)).toBe(expected);
  });
});

describe('formulas that read one another', () => {
  it('are found forth and back', () => {
    const { precedents, dependents } = graph({
      A1: '1',
      A2: 'A1',
      B1: 'SUM(A:A)',
      C1: 'B1',
      D1: '5',
      E9: 'D1',
    });
    expect(precedents('B1')).toEqual(['A1', 'A2', 'B1']);
    expect(precedents('C1', 'E9')).toEqual(['A1', 'A2', 'B1', 'C1', 'D1', 'E9']);
    expect(dependents('A2')).toEqual(['A2', 'B1', 'C1']);
    expect(dependents('D1')).toEqual(['D1', 'E9']);
  });

  it('are found over the cells that they fill', () => {
    const { precedents, dependents } = graph({ A1: 'X9', D1: 'C3', E1: 'SUM(B2:Z2)' }, { A1: 'A1:C3' });
    expect(precedents('D1')).toEqual(['A1', 'D1']);
    expect(dependents('A1')).toEqual(['A1', 'D1', 'E1']);
  });

  it('are named where they go in a circle', () => {
    expect(graph({ A1: 'B1', B1: 'C1+1', C1: 'A1', D1: 'C1', E1: '1' }).circles()).toEqual([
      ['A1', 'B1', 'C1'],
    ]);
    expect(graph({ A1: 'SUM(A1:A3)' }).circles()).toEqual([['A1']]);
    expect(graph({ A1: 'A2', A2: 'A1', B1: 'B2', B2: 'B1+A1' }).circles()).toEqual([
      ['A1', 'A2'],
      ['B1', 'B2'],
    ]);
    expect(graph({ A1: 'A2', A2: 'A3', A3: '1' }).circles()).toEqual([]);
  });

  it('are found soon in a long chain of sums over all that is above', () => {
    const rows = Array.from({ length: 3000 }, (_, row) => row + 2);
    const { precedents, dependents, circles } = graph(
      Object.fromEntries(rows.map((row) => [`A${row}`, `SUM(A$1:A${row - 1})`])),
    );
    expect(precedents('A3001')).toHaveLength(3000);
    expect(dependents('A2')).toHaveLength(3000);
    expect(circles()).toEqual([]);
  });
});
