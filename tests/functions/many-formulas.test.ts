import { beforeEach, describe, expect, it, vi } from 'vitest';
import { addedQuantities, type QuantityId } from '../../src/estimate/quantities';
import { estimateJob } from '../../src/estimate/schedule';
import { show } from '../../src/quantity/systems';
import { materials } from '../../src/rules/materials';
import { readFactors } from '../../src/rules/read-factors';
import { readWalls } from '../../src/walls/read-walls';
import * as reading from '../../src/walls/read-zones';
import { zonesOf } from '../../src/walls/zones';
import { madeWalls } from '../../workbench/bench/made-walls';
import { call, number, refusal, spill } from './call';

vi.mock('../../src/walls/read-zones', { spy: true });
const readings = vi.mocked(reading.readZones);
beforeEach(() => {
  readings.mockClear();
});

const ROWS = 1_000;
const FORMULAS = 2_000;
const walls = madeWalls(ROWS);
const factors = [
  ['price.labor', 50],
  ['team.size', 3],
];
/** As a host hands a range over: in arrays that no call had before. */
const fresh = (cells: readonly (readonly unknown[])[]): unknown[][] => cells.map((row) => [...row]);
const asked = [
  ['WATER', 'water'],
  ['MASKING', 'maskingArea'],
  ['TAPE', 'tape'],
  ['CLEANER', 'concentrate'],
  ['CREWHOURS', 'crewHours'],
  ['RUNOFF', 'runoff'],
] as const satisfies [string, QuantityId][];

/** The quantity of each zone, row by row and with nothing remembered. */
function rowByRow(
  cells: readonly (readonly unknown[])[],
  quantity: QuantityId,
  given: unknown,
): Map<string, number> {
  const inForce = readFactors(given);
  const { zones } = estimateJob(zonesOf(readWalls(cells, inForce)), inForce);
  return new Map(
    zones.map(({ zone, totals }) => [
      zone.name,
      show(totals[quantity], addedQuantities[quantity].kind, inForce.system),
    ]),
  );
}

/** The materials of a zone's bare rows that have the least ceiling, read off the made walls. */
function toleratesLeast(zone: string): string {
  const [header = [], ...rows] = walls;
  const at = (heading: string): number => header.indexOf(heading);
  const bare = rows.filter(
    (row) =>
      row[at('Zone')] === zone &&
      !['yes', 'only'].includes(String(row[at('Masked')])) &&
      Number(row[at('Area')]) > Number(row[at('Openings')]),
  );
  const names = [...new Set(bare.map((row) => String(row[at('Material')])))];
  const ceilingOf = (name: string): number =>
    materials.find((material) => material.name === name)?.ceiling ?? NaN;
  const least = Math.min(...names.map(ceilingOf));
  return names.filter((name) => ceilingOf(name) === least).join(', ');
}

function expectSame(seen: number, worked: number | undefined): void {
  expect(worked).toBeDefined();
  expect(Math.abs(seen - (worked ?? NaN))).toBeLessThanOrEqual(1e-12 * Math.abs(worked ?? NaN));
}

describe(`${String(FORMULAS)} formulas over the same ${String(ROWS)} rows`, () => {
  it('give what each gives by itself, and the rows are read once', () => {
    const worked = new Map(
      asked.map(([name, quantity]) => [name as string, rowByRow(walls, quantity, factors)]),
    );
    for (let formula = 0; formula < FORMULAS; formula++) {
      const [name] = asked[formula % asked.length] ?? asked[0];
      const zone = `Zone ${String(formula % 8)}`;
      expectSame(number(name, fresh(walls), zone, fresh(factors)), worked.get(name)?.get(zone));
    }
    expect(readings).toHaveBeenCalledTimes(1);
  });

  it('differ in zone, quantity and part from one to the next', () => {
    // A host hands null over for what a formula leaves out.
    const water = (zone: string | null, part: string | null = null): number =>
      number('WATER', fresh(walls), zone, null, part, null);
    const whole = [water('Zone 1'), water('Zone 2'), water(null)];
    expect(new Set(whole).size).toBe(3);
    expect(water('zone 1')).toBe(whole[0]);
    const parts = ['prewet', 'below', 'mist', 'mix', 'rinse', 'reclean'].map((part) => water('Zone 2', part));
    expectSame(
      parts.reduce((sum, part) => sum + part, 0),
      whole[1],
    );
    expect(spill('SCHEDULE', fresh(walls), null, null, null)).toHaveLength(9);
    expect(call('GOVERNOR', fresh(walls), 'Zone 1', null, null)).toBe(toleratesLeast('Zone 1'));
    expect(readings).toHaveBeenCalledTimes(1);
  });
});

describe('what is remembered gives way', () => {
  const small = [
    ['Wall', 'Zone', 'Material', 'Area'],
    ['A', 'North', 'Limestone', 100],
    ['B', 'South', 'Red clay brick', 300],
  ];
  // Moderate residue of Type N mortar is scraped off at 300 ft2 an hour of work; an hour holds 50 minutes of it.
  const scraped = (cells: unknown, given?: unknown, headings?: unknown): number =>
    (number('LABORHOURS', cells, '', given, 'scrape', headings) * 50) / 60;

  it('to a changed cell', () => {
    expect(scraped(fresh(small))).toBeCloseTo(400 / 300, 9);
    expect(scraped(fresh(small.with(2, ['B', 'South', 'Red clay brick', 500])))).toBeCloseTo(600 / 300, 9);
    expect(scraped(fresh(small))).toBeCloseTo(400 / 300, 9);
  });

  it('to a cell changed in the array that was handed over before', () => {
    const mine = fresh(small);
    const [, first = []] = mine;
    expect(scraped(mine)).toBeCloseTo(400 / 300, 9);
    first[3] = 700;
    expect(scraped(mine)).toBeCloseTo(1000 / 300, 9);
  });

  it('to a changed factor, or another system of units', () => {
    const rate = (value: number): unknown[][] => [['rate.scrape.moderate', value]];
    expect(scraped(fresh(small), rate(100))).toBeCloseTo(400 / 100, 9);
    expect(scraped(fresh(small), rate(50))).toBeCloseTo(400 / 50, 9);
    expect(scraped(fresh(small), null)).toBeCloseTo(400 / 300, 9);
    const squareMetre = 0.3048 ** 2;
    expect(scraped(fresh(small), [['units', 'SI']])).toBeCloseTo(400 / (300 * squareMetre), 9);
  });

  it('to changed headings', () => {
    const both = small.map((row, index) => [...row, index === 0 ? 'Net' : 10]);
    expect(scraped(fresh(both))).toBeCloseTo(400 / 300, 9);
    expect(scraped(fresh(both), null, [['Area', 'Net']])).toBeCloseTo(20 / 300, 9);
    expect(scraped(fresh(both), null, [['Area', 'Area']])).toBeCloseTo(400 / 300, 9);
  });

  it('to another table and comes back', () => {
    const other = small.map((row) => row.with(3, row[3] === 'Area' ? 'Area' : 1));
    for (let turn = 0; turn < 5; turn++) {
      expect(scraped(fresh(small))).toBeCloseTo(400 / 300, 9);
      expect(scraped(fresh(other))).toBeCloseTo(2 / 300, 9);
    }
    expect(readings.mock.calls.length).toBeLessThanOrEqual(2);
  });

  it('to an error, which is told each time', () => {
    const broken = small.with(2, ['B', 'South', 'Red clay brick', '#REF!']);
    for (let turn = 0; turn < 3; turn++) {
      expect(refusal(() => call('WATER', fresh(broken), 'North')).message).toMatch(
        /^Row 3 \(B\), column Area: the error #REF! cannot be used\./,
      );
      expect(refusal(() => call('WATER', fresh(small), 'West')).type).toBe('nothing');
      expect(scraped(fresh(small))).toBeCloseTo(400 / 300, 9);
    }
  });

  it('to nothing where rows are asked for one by one', () => {
    const spilled = (): unknown[] => spill('WALLROWS', fresh(small)).map(([wall]) => wall);
    scraped(fresh(small));
    expect(spilled()).toEqual(['Wall', 'A', 'B']);
    expect(spilled()).toEqual(['Wall', 'A', 'B']);
    const trace = spill('TRACE', 'washed area', fresh(small), 'North');
    expect(trace.at(-1)?.slice(0, 3)).toEqual(['washedArea_z1', 'washedArea_r2', 100]);
  });
});
