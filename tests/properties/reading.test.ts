import fc from 'fast-check';
import Qty from 'js-quantities';
import { all, create } from 'mathjs';
import { expect, it } from 'vitest';
import { quantityIds, type Quantities } from '../../src/estimate/quantities';
import { estimateJob } from '../../src/estimate/schedule';
import { unitOf } from '../../src/quantity/systems';
import { factors as factorTable } from '../../src/rules/factors';
import { readFactors, shownStart } from '../../src/rules/read-factors';
import { columnIds, columns, type ColumnId } from '../../src/walls/columns';
import { readZones } from '../../src/walls/read-zones';
import { expectSame, ownFactors, RUNS } from './jobs';
import { cellsOf, headed, heeded, rangeOf, walls } from './walls';

const math = create(all ?? {});
const keys = fc.array(fc.nat(), { minLength: 20, maxLength: 20 });

/** Every number of a job by zone and by wall, as read from ranges. */
function numbersOf(range: unknown[][], own: unknown): Map<string, Quantities> {
  const factors = readFactors(own);
  const found = new Map<string, Quantities>();
  const { zones } = estimateJob(readZones(range, factors), factors, {
    takeRow: (row, of) => found.set(`wall ${row.wall}`, { ...of }),
  });
  for (const { zone, totals } of zones) found.set(`zone ${zone.name}`, { ...totals });
  return found;
}

function expectSameNumbers(
  ours: ReadonlyMap<string, Quantities>,
  theirs: ReadonlyMap<string, Quantities>,
  relative?: number,
): void {
  expect([...theirs.keys()].sort()).toEqual([...ours.keys()].sort());
  for (const [name, of] of ours)
    for (const id of quantityIds)
      expectSame(theirs.get(name)?.[id] ?? NaN, of[id], `${name}: ${id}`, relative);
}

/** A list in another order, told by keys to sort by. */
function shuffled<T>(list: readonly T[], by: readonly number[]): T[] {
  return list
    .map((item, index) => ({ item, key: by[index % by.length] ?? 0 }))
    .sort((a, b) => a.key - b.key)
    .map(({ item }) => item);
}

it('the order of rows and of columns changes nothing', () => {
  fc.assert(
    fc.property(walls, keys, ownFactors, (rows, order, own) => {
      const [head = [], ...body] = rangeOf(rows);
      const before = numbersOf([head, ...body], own);
      expectSameNumbers(before, numbersOf([head, ...shuffled(body, order)], own));
      expectSameNumbers(before, numbersOf(rangeOf(rows, shuffled(columnIds, order)), own));
    }),
    { numRuns: RUNS },
  );
});

it('blank rows change nothing, whatever the host hands a blank over as', () => {
  const blank = fc.constantFrom('', 0, null, undefined, '  ');
  const at = fc.array(fc.tuple(fc.nat(), blank), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(walls, at, ownFactors, (rows, blanks, own) => {
      const range = rangeOf(rows);
      const other = [...range];
      for (const [place, cell] of blanks)
        other.splice(
          1 + (place % other.length),
          0,
          Array.from({ length: columnIds.length }, () => cell),
        );
      expectSameNumbers(numbersOf(range, own), numbersOf(other, own));
    }),
    { numRuns: RUNS },
  );
});

it('factors given at their starting values change nothing', () => {
  const given = factorTable.filter((row) => !('unset' in row));
  const some = fc.subarray(given, { minLength: 1 });
  fc.assert(
    fc.property(walls, some, fc.constantFrom('US' as const, 'SI' as const), (rows, stated, units) => {
      const range = rangeOf(rows);
      const lines = stated.map((row) => [
        row.id,
        'choices' in row ? (row.choices[row.value] ?? '') : shownStart(row, units),
      ]);
      const priced = [
        ['units', units],
        ['price.labor', 40],
      ];
      expectSameNumbers(numbersOf(range, priced), numbersOf(range, [...priced, ...lines]));
    }),
    { numRuns: RUNS },
  );
});

interface Library {
  readonly name: string;
  /** How near its factors come. */
  readonly relative: number;
  readonly convert: (value: number, from: string, into: string) => number;
}

const libraries: readonly Library[] = [
  // Its gallon and its foot are known to 1e-7 or so, and areas go by the square.
  { name: 'js-quantities', relative: 3e-6, convert: (value, from, into) => Qty(value, from).to(into).scalar },
  { name: 'mathjs', relative: 1e-9, convert: (value, from, into) => math.unit(value, from).toNumber(into) },
];

/** Our labels in the words of both libraries. */
const named: Readonly<Record<string, string>> = { ft2: 'ft^2', m2: 'm^2', ft: 'ft', m: 'm' };

function converted(value: number, from: string, into: string, library: Library): number {
  const [start, end] = [named[from], named[into]];
  if (start !== undefined && end !== undefined) return library.convert(value, start, end);
  // Initial rate of absorption: grams on 30 in2 are kg on m2.
  if (from === 'g/30in2') return (value / 30) * library.convert(1, 'g/in^2', 'kg/m^2');
  if (from === into) return value;
  throw new Error(`${from} and ${into} have no counterpart.`);
}

it.each(libraries)(
  'the same walls in US units and, converted by $name, in SI give the same job',
  (library) => {
    fc.assert(
      fc.property(walls, (rows) => {
        const cells = heeded(rows).map(cellsOf);
        const inSi = cells.map(
          (row) =>
            Object.fromEntries(
              (Object.keys(row) as ColumnId[]).map((id) => {
                const { reading } = columns[id];
                const value = row[id];
                const isNumber = reading.as === 'number' && typeof value === 'number';
                return [
                  id,
                  isNumber
                    ? converted(value, unitOf(reading.kind, 'US'), unitOf(reading.kind, 'SI'), library)
                    : value,
                ];
              }),
            ) as Record<ColumnId, unknown>,
        );
        const us = numbersOf(headed(cells), [['price.labor', 40]]);
        const si = numbersOf(headed(inSi), [
          ['units', 'SI'],
          ['price.labor', 40],
        ]);
        expectSameNumbers(us, si, library.relative);
      }),
      { numRuns: RUNS },
    );
  },
);
