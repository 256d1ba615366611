import fc from 'fast-check';
import Qty from 'js-quantities';
import { all, create } from 'mathjs';
import { expect, it } from 'vitest';
import { isCellError } from '../../functions/worksheet-function';
import { unitOf } from '../../src/quantity/systems';
import { factors as factorTable } from '../../src/rules/factors';
import { columns, type ColumnId } from '../../src/walls/columns';
import { call, expectSame } from './call';
import { RELATIVE } from './compare';
import { cellsOf, headed, heeded, ownFactors, RUNS, walls, type FactorLines } from './walls';

const math = create(all ?? {});

/** A library that converts, how near its factors come, and our labels in its words. */
interface Library {
  readonly name: string;
  readonly relative: number;
  readonly convert: (value: number, from: string, into: string) => number;
  readonly named: Readonly<Record<string, string>>;
}

const common = {
  ft: 'ft',
  m: 'm',
  in: 'in',
  mm: 'mm',
  ft2: 'ft^2',
  m2: 'm^2',
  kg: 'kg',
  psi: 'psi',
  kPa: 'kPa',
  'ft2/min': 'ft^2/minute',
  'm2/min': 'm^2/minute',
  'ft2/crew-h': 'ft^2/hour',
  'm2/crew-h': 'm^2/hour',
  'ft2/gal': 'ft^2/gallon',
  'm2/L': 'm^2/liter',
  'g/30in2': 'g/in^2',
  'kg/m2': 'kg/m^2',
  gal: 'gallon',
  L: 'liter',
} as const;

const libraries: readonly Library[] = [
  {
    name: 'js-quantities',
    // Its pound by square inch is known to 4e-7, and a strength goes into the hours by up to its third power.
    relative: 3e-6,
    convert: (value, from, into) => Qty(value, from).to(into).scalar,
    named: { ...common, lb: 'lbs', degF: 'tempF', degC: 'tempC', mph: 'mph', 'km/h': 'kph' },
  },
  {
    name: 'mathjs',
    relative: RELATIVE,
    convert: (value, from, into) => math.unit(value, from).toNumber(into),
    named: { ...common, lb: 'lbm', degF: 'degF', degC: 'degC', mph: 'mi/hour', 'km/h': 'km/hour' },
  },
];

const MONEY = 'money/';
const GRAMS = 'g/30in2';
const THIRTY = 30;

/** A value in another unit, by a library. */
function converted(value: number, from: string, into: string, library: Library): number {
  if (from === into) return value;
  if (from.startsWith(MONEY)) {
    return value / converted(1, from.slice(MONEY.length), into.slice(MONEY.length), library);
  }
  const [start, end] = [library.named[from], library.named[into]];
  if (start === undefined || end === undefined) throw new Error(`${from} and ${into} have no counterpart.`);
  const times = from === GRAMS ? 1 / THIRTY : into === GRAMS ? THIRTY : 1;
  return library.convert(value, start, end) * times;
}

function wallsInSi(cells: Record<ColumnId, unknown>, library: Library): Record<ColumnId, unknown> {
  const ids = Object.keys(cells) as ColumnId[];
  return Object.fromEntries(
    ids.map((id) => {
      const { reading } = columns[id];
      const value = cells[id];
      return [
        id,
        reading.as === 'number' && typeof value === 'number'
          ? converted(value, unitOf(reading.kind, 'US'), unitOf(reading.kind, 'SI'), library)
          : value,
      ];
    }),
  ) as Record<ColumnId, unknown>;
}

/** The same values in SI units; those at the end of their range are left out, where rounding may step over it. */
function inBoth(lines: FactorLines, library: Library): { us: unknown[][]; si: unknown[][] } {
  const inside = lines.flatMap(([id, value]) => {
    const row = factorTable.find((factor) => factor.id === id);
    return row && typeof value === 'number' && value > row.least && value < row.most * (1 - 1e-9)
      ? [{ id, value, kind: row.kind }]
      : [];
  });
  return {
    us: [
      ['units', 'US'],
      ['price.labor', 40],
      ...inside.filter(({ id }) => id !== 'price.labor').map(({ id, value }) => [id, value]),
    ],
    si: [
      ['units', 'SI'],
      ['price.labor', 40],
      ...inside
        .filter(({ id }) => id !== 'price.labor')
        .map(({ id, value, kind }) => [
          id,
          converted(value, unitOf(kind, 'US'), unitOf(kind, 'SI'), library),
        ]),
    ],
  };
}

const UNIT = / \(([^)]*)\)$/;

it.each(libraries)('US in and out is SI in and out, converted by $name', (library) => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(walls, ownFactors, (rows, own) => {
      const cells = heeded(rows).map(cellsOf);
      const { us, si } = inBoth(own, library);
      for (const name of ['SCHEDULE', 'WALLROWS']) {
        const [headUs = [], ...bodyUs] = call(name, headed(cells), null, us) as unknown[][];
        const [headSi = [], ...bodySi] = call(
          name,
          headed(cells.map((row) => wallsInSi(row, library))),
          null,
          si,
        ) as unknown[][];
        expect(bodySi).toHaveLength(bodyUs.length);
        headUs.forEach((heading, place) => {
          const title = String(heading);
          const fromUnit = UNIT.exec(title)?.[1] ?? '1';
          const toUnit = UNIT.exec(String(headSi[place]))?.[1] ?? '1';
          expect(String(headSi[place]).replace(UNIT, '')).toBe(title.replace(UNIT, ''));
          bodyUs.forEach((line, index) => {
            const [ours, theirs] = [line[place], bodySi[index]?.[place]];
            if (typeof ours === 'number' && typeof theirs === 'number') {
              seen.add(`${fromUnit} ${toUnit}`);
              expectSame(
                converted(ours, fromUnit, toUnit, library),
                theirs,
                library.relative,
                `${name}, ${title}`,
              );
            } else if (typeof ours === 'string') expect(theirs).toBe(ours);
            else expect(isCellError(theirs as never) && isCellError(ours as never), title).toBe(true);
          });
        });
      }
    }),
    { numRuns: RUNS },
  );
  for (const pair of ['ft2 m2', 'gal L', 'ft m', 'lb kg']) expect([...seen]).toContain(pair);
});
