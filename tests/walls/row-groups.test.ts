import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantityIds } from '../../src/estimate/quantities';
import { materials } from '../../src/rules/materials';
import { readFactors } from '../../src/rules/read-factors';
import { readGroups, readWalls } from '../../src/walls/read-walls';
import { readZones } from '../../src/walls/read-zones';
import { zonesOf, type Zone } from '../../src/walls/zones';
import { estimateZone } from '../core/made';
import { madeWalls } from '../../workbench/bench/made-walls';
import { refusal } from '../functions/call';

const factors = readFactors([['price.labour', 40]]);
const header = ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter'];
const more = ['Fixtures', 'Mortar', 'Residue', 'Brushed', 'Age', 'Masked', 'Suction'];

/** By groups and row by row a zone comes to the same, but for the last digits. */
function expectSameEstimates(byGroups: readonly Zone[], byRows: readonly Zone[]): void {
  expect(byGroups.map(({ name }) => name)).toEqual(byRows.map(({ name }) => name));
  byGroups.forEach((zone, index) => {
    const rows = byRows[index]?.rows ?? [];
    expect(zone.rows).toEqual(rows);
    const seen = estimateZone(zone, factors);
    const worked = estimateZone({ name: zone.name, rows, below: [] }, factors);
    expect(seen.governing).toEqual(worked.governing);
    expect(seen.laterClasses).toEqual(worked.laterClasses);
    for (const id of quantityIds) {
      const off = Math.abs(seen.totals[id] - worked.totals[id]);
      expect(off, `${zone.name}, ${id}`).toBeLessThanOrEqual(1e-12 * Math.abs(worked.totals[id]));
    }
  });
}

describe('rows put together by groups', () => {
  it('are few, whatever their number, and have the sums of the rows', () => {
    const walls = madeWalls(2000);
    const zones = readZones(walls, factors);
    const alike = readWalls(walls, factors).map((row) => [
      [row.zone, row.level, row.material.code, row.height, row.suction, row.access, row.mask],
      [row.mortar, row.residue, row.brushed, row.brushPriced],
    ]);
    const different = new Set(alike.map((words) => JSON.stringify(words))).size;
    expect(different).toBeLessThan(2000 / 2);
    expect(zones.reduce((count, { groups }) => count + (groups?.length ?? NaN), 0)).toBe(different);
    expectSameEstimates(zones, zonesOf(readWalls(walls, factors)));
  });

  it('are apart where they differ in a word, a level, a height or a suction', () => {
    const rows = [
      ['A', 'N', 1, 'Limestone', 10, 6, 0, 0, 0, 'N', 'light', 'yes', 3, 'no', ''],
      ['B', 'N', 1, 'Limestone', 20, 6, 1, 4, 2, 'N', 'light', 'yes', 9, 'no', ''],
      ['C', 'N', 2, 'Limestone', 20, 6, 1, 4, 2, 'N', 'light', 'yes', 9, 'no', ''],
      ['D', 'N', 1, 'Granite', 20, 6, 1, 4, 2, 'N', 'light', 'yes', 9, 'no', ''],
      ['E', 'N', 1, 'Limestone', 20, 6, 1, 4, 2, 'S', 'light', 'yes', 9, 'no', ''],
      ['F', 'N', 1, 'Limestone', 20, 6, 1, 4, 2, 'N', 'heavy', 'yes', 9, 'no', ''],
      ['G', 'N', 1, 'Limestone', 20, 6, 1, 4, 2, 'N', 'light', 'no', 9, 'no', ''],
      ['H', 'N', 1, 'Limestone', 20, 6, 1, 4, 2, 'N', 'light', 'yes', 9, 'yes', ''],
      ['I', 'N', 1, 'Limestone', 20, 6, 1, 4, 2, 'N', 'light', 'yes', 9, 'never', ''],
      ['J', 'N', 1, 'Limestone', 20, 6, 1, 4, 2, 'N', 'light', 'yes', 9, 'no', 4],
      ['K', 'S', 1, 'Limestone', 20, 6, 1, 4, 2, 'N', 'light', 'yes', 9, 'no', ''],
      ['L', 'N', 1, 'Limestone', 30, 6, 0, 0, 1, 'N', 'light', 'yes', 1, 'no', ''],
      ['M', 'N', 1, 'Limestone', 30, 5, 0, 0, 1, 'N', 'light', 'yes', 1, 'no', ''],
      ['N', 'N', 1, 'Limestone', 30, 6, 0, 0, 1, 'N', 'light', 'yes', 1, 'only', ''],
      ['O', 'N', 1, 'Limestone', 30, 6, 0, 0, 1, 'N', 'light', 'yes', 1, 'no', '', 'lift'],
      ['P', 'N', 1, 'Limestone', 30, 6, 0, 0, 1, 'N', 'light', 'yes', 1, 'no', '', 'ladder'],
    ];
    const groups = readGroups([[...header, ...more, 'Access'], ...rows], readFactors([['units', 'SI']]));
    expect(groups.map(({ wall }) => wall).join('')).toBe('ACDEFGHIJKMNOP');
    const [first] = groups;
    // A, B and L: 10 + 20 + 30 m2.
    expect(first).toMatchObject({ area: 60, height: 6, openings: 1, openingPerimeter: 4, fixtures: 3 });
  });

  it('keep area, edge and length of masked rows, with a height and without', () => {
    const masked = [
      ['A', 'N', 1, 'Limestone', 400, 10, '', '', '', '', '', '', '', 'yes', ''],
      ['B', 'N', 1, 'Limestone', 90, '', '', '', '', '', '', '', '', 'yes', ''],
      ['C', 'N', 1, 'Limestone', 400, 40, 50, 60, 7, '', '', '', '', 'yes', ''],
      ['D', 'N', 1, 'Limestone', 0, 8, '', '', '', '', '', '', '', 'yes', ''],
      ['E', 'N', 1, 'Limestone', 0, '', '', '', '', '', '', '', '', 'yes', ''],
    ];
    const walls = [[...header, ...more], ...masked];
    for (let count = 1; count <= masked.length; count++) {
      const some = walls.slice(0, count + 1);
      const zones = readZones(some, factors);
      // Two of the five are without a height.
      expect(zones[0]?.groups).toHaveLength(Math.min(count, 4));
      expectSameEstimates(zones, zonesOf(readWalls(some, factors)));
    }
    // Tape is the edges and a tenth: 2 (40 + 10), 4 sqrt(90), 2 (10 + 40), 2 * 8, in feet; and 60 about the openings of C,
    // which are covered while it is washed afterwards.
    const [zone] = readZones(walls, factors);
    const tape = zone === undefined ? NaN : estimateZone(zone, factors).totals.tape;
    expect(tape / 0.3048).toBeCloseTo(1.1 * (100 + 4 * Math.sqrt(90) + 100 + 16 + 60), 9);
  });

  it('have the edge of a square where rounding leaves its root a hair short', () => {
    // The square of the root of 3 is 2.9999999999999996 in binary.
    const si = readFactors([['units', 'SI']]);
    const [zone] = readZones(
      [
        ['Wall', 'Material', 'Area', 'Masked'],
        ['A', 'Limestone', 3, 'yes'],
      ],
      si,
    );
    const tape = zone === undefined ? NaN : estimateZone(zone, si).totals.tape;
    expect(tape).toBeCloseTo(1.1 * 4 * Math.sqrt(3), 9);
  });

  it('have a number as their edge at the least height there is', () => {
    const si = readFactors([['units', 'SI']]);
    const walls = [
      ['Wall', 'Material', 'Area', 'Height', 'Masked'],
      ['A', 'Limestone', 90, 1e-3, 'yes'],
    ];
    const [zone] = readZones(walls, si);
    const tape = zone === undefined ? NaN : estimateZone(zone, si).totals.tape;
    // 2 (90 / 0.001 + 0.001) m and a tenth.
    expect(tape / 198000.0022).toBeCloseTo(1, 12);
  });

  it('come to the sums of any rows', () => {
    const cell = (...values: unknown[]) => fc.constantFrom(...values);
    const row = fc.tuple(
      cell('North', 'South', ' north ', '', 7),
      cell(1, 2, 0, ''),
      cell(...materials.map(({ name }) => name)),
      fc.integer({ min: 0, max: 5000 }),
      cell(0, 8, 12.5, ''),
      cell(0, '', null),
      fc.integer({ min: 0, max: 90 }),
      fc.integer({ min: 0, max: 4 }),
      cell('', 'S', 'Type M', 'n', 'O'),
      cell('', 'Light', 'moderate', 'heavy'),
      cell('yes', 'no', true, ''),
      cell(3, ''),
      cell('yes', 'no', '', 'never', true),
      cell('', '', 12, 0.5),
    );
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 40 }), (rows) => {
        const walls = [[...header, ...more], ...rows.map((cells, index) => [`W${String(index)}`, ...cells])];
        expectSameEstimates(readZones(walls, factors), zonesOf(readWalls(walls, factors)));
      }),
      { numRuns: 150 },
    );
  });

  it('are none where another zone receives the rinse, which is found row by row', () => {
    const walls = [
      ['Wall', 'Zone', 'Material', 'Area', 'Receives'],
      ['A', 'High', 'Red clay brick', 100, ''],
      ['B', 'Low', 'Marble', 50, 'High'],
    ];
    const [high] = readZones(walls, factors);
    expect(high?.below.map(({ wall }) => wall)).toEqual(['B']);
    expect(high?.groups).toBeUndefined();
  });

  it('are not taken along by a copy of their zone with other rows', () => {
    const [zone] = readZones(madeWalls(40), factors);
    if (zone === undefined) throw new Error('no zone');
    const copy = { ...zone, rows: zone.rows.slice(0, 1) };
    const [only] = zone.rows;
    expect(estimateZone(copy, factors).totals.maskingArea).not.toBe(
      estimateZone(zone, factors).totals.maskingArea,
    );
    expect(copy.rows).toEqual([only]);
    expect('groups' in copy).toBe(false);
  });
});

it('a word that cannot be read is told in every row that has it', () => {
  const rows = ['#REF!', 'North', '#REF!'].map((zone, row) => [`W${String(row)}`, zone, 'Limestone', 5]);
  expect(refusal(() => readWalls([['Wall', 'Zone', 'Material', 'Area'], ...rows], factors)).message).toBe(
    'Row 2 (W0), column Zone: the error #REF! cannot be used. Accepted: a text or a number as a label. One more problem was found.',
  );
});

describe('labels in any order', () => {
  const walls = (...labels: unknown[]): unknown[][] => [
    ['Wall', 'Material', 'Area'],
    ...labels.map((label) => [label, label === '' ? '' : 'Limestone', label === '' ? '' : 5]),
  ];
  const repeated = (...labels: unknown[]): string =>
    refusal(() => readWalls(walls(...labels), factors)).message;

  it.each([
    [['W1', 'W2', 'W9', 'W10', 'W11', 'W100']],
    [['W100', 'W11', 'W10', 'W9', 'W2', 'W1']],
    [['b', 'a', 'B', 'A', 'ab', 'ba']],
    [[3, 1, 2, 10, 11]],
    [['North 9', 'North 10', 'South 1', '', 'South 2', 'East']],
  ])('are no repeat where each stands once: %j', (labels) => {
    expect(readWalls(walls(...labels), factors).map(({ wall }) => wall)).toEqual(
      labels.filter((label) => label !== '').map(String),
    );
  });

  it.each<[unknown[], number, number]>([
    [['W1', 'W1'], 3, 2],
    [['W1', 'W2', 'W3', 'W1'], 5, 2],
    [['W1', '', 'W2', 'W10', 'W2', 'W11'], 6, 4],
    [['W9', 'W8', 'W10', 'W11', 'W10'], 6, 4],
    [['b', 'a', '', 'c', 'b'], 6, 2],
    [[12, 'x', '12'], 4, 2],
  ])('of %j row %i repeats row %i', (labels, row, first) => {
    const label = String(labels[row - 2]);
    expect(repeated(...labels)).toBe(
      `Row ${String(row)} (${label}), column Wall: "${label}", which row ${String(first)} has already, cannot be used. Accepted: a label that no other row has.`,
    );
  });

  it('that repeat are told in the order of the rows, among other problems', () => {
    const rows = [
      ['Wall', 'Material', 'Area'],
      ['B', 'Limestone', -1],
      ['A', 'Limestone', 5],
      ['B', 'Limestone', 'x'],
      ['C', 'Slate', 5],
      ['A', 'Limestone', 5],
    ];
    let seen: string[] = [];
    try {
      readWalls(rows, factors);
    } catch (error) {
      seen = (error as { problems: { row: number; column: string }[] }).problems.map(
        ({ row, column }) => `${String(row)} ${column}`,
      );
    }
    expect(seen).toEqual(['2 Area', '4 Wall', '4 Area', '5 Material', '6 Wall']);
  });
});
