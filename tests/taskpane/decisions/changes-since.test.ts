import { describe, expect, it } from 'vitest';
import { changesFormula, changesSince } from '../../../taskpane/decisions/changes-since';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';
import type { CellContent } from '../../../taskpane/workbook/port';
import { lines, numberIn } from '../../properties/call';

// NIST SP 811 (2008), appendix B.8.
const LITRES_IN_GALLON = 3.785411784;

const before = [
  ['Mark', 'Zone', 'Material', 'Area', 'Residue'],
  ['A', 'Front', 'Red clay brick', 500, 'moderate'],
  ['B', 'Front', 'Red clay brick', 200, 'moderate'],
];
const factors = [
  ['Factor', 'Value'],
  ['price.labor', 50],
];
const headings = [['Wall', 'Mark']];
const source = {
  walls: { table: 'Walls' },
  factors: { table: 'Factors' },
  headings: { sheet: 'Map', address: 'A1:B1' },
};

function book(after: readonly (readonly CellContent[])[]): MemoryWorkbook {
  return new MemoryWorkbook({
    sheets: { Walls: after, Baseline: before, Factors: factors, Map: headings },
    tables: [
      { name: 'Walls', sheet: 'Walls', address: `A1:E${String(after.length)}` },
      { name: 'Baseline', sheet: 'Baseline', address: 'A1:E3' },
      { name: 'Factors', sheet: 'Factors', address: 'A1:B2' },
    ],
  });
}

/** A clock that is stopped: all is done in one slice. */
const turns = { now: () => 0, pause: () => Promise.resolve() };
const since = (workbook: MemoryWorkbook, baseline: string, signal = new AbortController().signal) =>
  changesSince(workbook, source, baseline, turns, signal);

describe('changes since a baseline', () => {
  const after = before.map((row) => (row[0] === 'B' ? ['B', 'Front', 'Limestone', 200, 'moderate'] : row));

  it('are what the worksheet function spills, under the headings of this workbook', async () => {
    const found = await since(book(after), 'Baseline');
    if (!found) throw new Error('The work was ended.');
    const { changes, whole } = found;
    expect(changes.map(({ wall, classes }) => [wall, classes])).toEqual([['B', 'Front 2 -> 1']]);
    const spilled = lines('CHANGES', before, after, factors, headings).at(-1);
    expect(whole.price).toBeCloseTo(numberIn(spilled, 'Price'), 9);
    // 700 ft2 at 70 ft2/gal, 5% of it once more: 10.5 gal of mix, 1 part in 65 in place of 1 in 9.
    expect(whole.concentrate / LITRES_IN_GALLON).toBeCloseTo(10.5 / 65 - 10.5 / 9, 9);
  });

  it('are given up when they are no longer wanted', async () => {
    let time = 0;
    const wanted = new AbortController();
    const pause = () => {
      wanted.abort();
      return Promise.resolve();
    };
    const slow = { now: () => (time += 1000), pause };
    expect(await changesSince(book(after), source, 'Baseline', slow, wanted.signal)).toBeUndefined();
  });

  it('say which of the two cannot be read', async () => {
    const bad = after.map((row) => (row[0] === 'B' ? ['B', 'Front', 'Limestoan', 200, 'moderate'] : row));
    await expect(since(book(bad), 'Baseline')).rejects.toThrow(/^The walls: .*Limestoan/);
    await expect(since(book(after), 'Factors')).rejects.toThrow(/^The baseline Factors: /);
  });

  it('are a formula too, without empty arguments at its end', () => {
    expect(changesFormula(source, 'Baseline').formula).toBe(
      '=WASH.CHANGES(Baseline[#All],Walls[#All],Factors[#All],Map!$A$1:$B$1)',
    );
    const { walls, headings: map } = source;
    expect(changesFormula({ walls, headings: map }, 'Baseline').formula).toBe(
      '=WASH.CHANGES(Baseline[#All],Walls[#All],,Map!$A$1:$B$1)',
    );
    expect(changesFormula({ walls }, 'Baseline').formula).toBe('=WASH.CHANGES(Baseline[#All],Walls[#All])');
  });
});
