import { describe, expect, it } from 'vitest';
import { isCellError, type CellValue } from '../../functions/worksheet-function';
import { WashdownError } from '../../src/quantity/problem';
import { readFactors } from '../../src/rules/read-factors';
import { factors as factorTable } from '../../src/rules/factors';
import { materials } from '../../src/rules/materials';
import { columnIds, columns } from '../../src/walls/columns';
import { readWalls } from '../../src/walls/read-walls';
import { call } from './call';
import { Random } from './random';

const SEED = Number(process.env['FUZZ_SEED'] ?? 20);
const RANGES = Number(process.env['FUZZ_RANGES'] ?? 100_000);

/** Cells by sort, so that a test can tell that each has come up. */
const sorts: Readonly<Record<string, (random: Random) => unknown>> = {
  number: (random) => Math.round(random.next() * 1e6) / 100,
  small: (random) => random.below(7),
  huge: (random) => random.of([1e300, -1e300, 1e9, 1e21, Number.MAX_VALUE, Number.MAX_SAFE_INTEGER]),
  tiny: (random) => random.of([5e-324, 1e-300, 1e-12, -0, Number.EPSILON]),
  negative: (random) => -random.below(1000) - 0.5,
  notANumber: (random) => random.of([NaN, Infinity, -Infinity]),
  blank: (random) => random.of(['', null, undefined, 0, '   ']),
  text: (random) =>
    random.of(['yes', 'no', 'never', 'N', 'type S', 'heavy', 'light', 'abc', '-', 'TRUE', 'limestone']),
  material: (random) => random.of(materials)[random.percent(50) ? 'name' : 'code'],
  textNumber: (random) =>
    random.of(['12', '1,5', '1.234,56', '(3)', '$ 4', '5 %', '1e5', '٣', '１２', "1'000", '.', '+']),
  date: (random) =>
    random.of([
      '2024-02-30',
      '31/12/2024',
      '1.2.24',
      new Date(0),
      new Date(NaN),
      { basicType: 'Double', basicValue: 45000, numberFormat: 'dd.mm.yyyy' },
    ]),
  error: (random) =>
    random.of([
      '#N/A',
      '#REF!',
      '#DIV/0!',
      '#GETTING_DATA',
      { type: 'Error', basicType: 'Error', basicValue: '#VALUE!' },
      { basicType: 'Error', errorType: 5 },
      new Error('of the host'),
    ]),
  boolean: (random) => random.percent(50),
  unicode: (random) =>
    random.of([
      'Fläche',
      '面積',
      '\u202eabc',
      'a\u0301',
      '🧱',
      '\ud800',
      '\0',
      '\n\t',
      'ﬁ',
      'İ',
      'ß'.repeat(50),
    ]),
  entity: (random) =>
    random.of([
      { type: 'Entity', text: 'x', properties: {} },
      { type: 'FormattedNumber', basicType: 'Double', basicValue: 12.5, numberFormat: '0.00 "days"' },
      { type: 'String', basicType: 'String', basicValue: 'Limestone' },
      { basicValue: { basicValue: 1 } },
      { basicValue: null },
      { basicValue: NaN },
      {},
      Object.create(null),
      { type: 'Boolean', basicValue: true },
    ]),
  odd: (random) =>
    random.of([
      Symbol('s'),
      10n,
      () => 1,
      [1, 2],
      [],
      [[]],
      /x/,
      new Map(),
      Object.freeze({ toString: null }),
      '__proto__',
      'constructor',
    ]),
  formula: (random) => random.of(['=1+1', '_xldudf_WASH_WATER(A1)', '@', '#', '$&', '\\']),
};
const sortNames = Object.keys(sorts);

const HEADINGS = columnIds.map((id) => columns[id].name as string);

/** A cell that its column takes, in most cases. */
const fitting: Readonly<Record<string, (random: Random, row: number) => unknown>> = {
  Wall: (random, row) => (random.percent(97) ? `W${String(row)}` : 'W1'),
  Zone: (random) => random.of(['', 'North', 'South', 'north ', 7]),
  Level: (random) => random.below(5),
  Material: (random) => random.of(materials).name,
  Area: (random) => random.below(10000) / 4,
  Height: (random) => random.below(200) / 4,
  Openings: (random) => (random.percent(80) ? '' : random.below(50)),
  'Opening perimeter': (random) => random.below(400) / 4,
  Fixtures: (random) => random.below(5),
  Mortar: (random) => random.of(['M', 'S', 'n', 'Type O', '']),
  Residue: (random) => random.of(['light', 'Moderate', 'heavy', '']),
  Brushed: (random) => random.of(['yes', 'no', true, false, '']),
  Age: (random) => random.below(60),
  Masked: (random) => random.of(['yes', 'no', 'never', '', true]),
  Suction: (random) => (random.percent(70) ? '' : random.below(40)),
  Receives: (random) => (random.percent(97) ? '' : random.of(['North', 'South'])),
};

class Maker {
  readonly seen = new Set<string>();

  constructor(readonly random: Random) {}

  cell(): unknown {
    const name = this.random.of(sortNames);
    this.seen.add(name);
    return sorts[name]?.(this.random);
  }

  /** Anything at all, ragged, empty or no range. */
  garbage(): unknown {
    const { random } = this;
    switch (random.below(12)) {
      case 0:
        this.seen.add('no array');
        return this.cell();
      case 1:
        this.seen.add('no rows');
        return random.of([[], [[]], [[], []], [1, 2, 3], [null], ['Wall']]);
      case 2: {
        this.seen.add('one column');
        return Array.from({ length: 1 + random.below(5) }, () => [random.percent(30) ? 'Wall' : this.cell()]);
      }
      default: {
        this.seen.add('ragged');
        const width = random.below(20);
        return Array.from({ length: random.below(8) }, () =>
          Array.from({ length: random.percent(80) ? width : random.below(30) }, () => this.cell()),
        );
      }
    }
  }

  /** A table of walls with some cells that do not belong there. */
  table(poison: number): unknown[][] {
    const { random } = this;
    const headings = HEADINGS.filter(
      (name) => ['Wall', 'Material', 'Area'].includes(name) || random.percent(70),
    );
    if (random.percent(30)) headings.reverse();
    const head: unknown[] = headings.map((name) => (random.percent(poison / 4) ? this.cell() : name));
    const body = Array.from({ length: random.below(6) }, (_, row) =>
      headings.map((name) => (random.percent(poison) ? this.cell() : fitting[name]?.(random, row + 1))),
    );
    if (random.percent(5)) body.push(headings.map(() => ''));
    return [head, ...body];
  }

  /** Factor lines with some values that do not belong there. */
  factors(): unknown {
    const { random } = this;
    if (random.percent(40)) return null;
    if (random.percent(5)) return this.garbage();
    const ids = ['units', 'cleaner.class', 'material.limestone.suction', ...factorTable.map(({ id }) => id)];
    return Array.from({ length: random.below(4) }, () => {
      const id = random.percent(96) ? random.of(ids) : this.cell();
      const row = factorTable.find((factor) => factor.id === id);
      if (id === 'units') return [id, random.of(['US', 'SI', 'si', 'EU'])];
      if (row === undefined || random.percent(10)) return [id, this.cell()];
      return [
        id,
        random.of([
          row.value,
          row.least,
          row.most,
          row.least + random.next() * (row.most - row.least),
          1e-300,
          1e-9,
        ]),
      ];
    });
  }
}

/** Gives what the work gives, or undefined where it is refused as it should be. */
function orRefused<T>(work: () => T, refused: (error: WashdownError) => void): T | undefined {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    if (error.message === '' || error.problems.length === 0) throw new Error('refused without a reason');
    if (/undefined|\[object|NaN,/.test(error.message)) throw new Error(`unreadable: ${error.message}`);
    refused(error);
    return undefined;
  }
}

function expectNumbers(spilled: CellValue | CellValue[][]): void {
  for (const line of Array.isArray(spilled) ? spilled : [[spilled]]) {
    for (const cell of line) {
      if (typeof cell === 'number' && !(Number.isFinite(cell) && cell >= 0)) {
        throw new Error(`${String(cell)} in ${JSON.stringify(line)}`);
      }
      if (isCellError(cell) && cell.message === '') throw new Error('an error cell without a message');
    }
  }
}

describe(`${String(RANGES)} random ranges, seed ${String(SEED)}`, () => {
  it('are read, or refused with a reason', () => {
    const maker = new Maker(new Random(SEED));
    const inForce = [readFactors(null), readFactors([['units', 'SI']])] as const;
    let [read, refused] = [0, 0];
    for (let count = 0; count < RANGES; count++) {
      const range = count % 3 === 0 ? maker.garbage() : maker.table(count % 3 === 1 ? 2 : 12);
      const headings = maker.random.percent(3) ? maker.garbage() : null;
      const rows = orRefused(
        () => readWalls(range, maker.random.of(inForce), headings),
        () => refused++,
      );
      if (rows === undefined) continue;
      read++;
      for (const row of rows) {
        const numbers = [
          row.area,
          row.height,
          row.openings,
          row.openingPerimeter,
          row.fixtures,
          row.age,
          row.suction,
        ];
        if (!numbers.every((value) => Number.isFinite(value) && value >= 0) || row.openings > row.area) {
          throw new Error(`read ${JSON.stringify(row)}`);
        }
      }
    }
    expect(read + refused).toBe(RANGES);
    expect(read).toBeGreaterThan(RANGES / 5);
    expect(refused).toBeGreaterThan(RANGES / 5);
    for (const name of [...sortNames, 'no array', 'no rows', 'one column', 'ragged']) {
      expect(maker.seen, name).toContain(name);
    }
  });

  it('give, half of them, a SCHEDULE of numbers, or are refused with a reason', () => {
    const maker = new Maker(new Random(SEED + 1));
    const half = RANGES / 2;
    let [worked, refused] = [0, 0];
    for (let count = 0; count < half; count++) {
      const range = count % 10 === 0 ? maker.garbage() : maker.table(1);
      const factors = maker.factors();
      const zone = maker.random.percent(10) ? maker.cell() : null;
      const spilled = orRefused(
        () => call('SCHEDULE', range, zone, factors),
        () => refused++,
      );
      if (spilled === undefined) continue;
      worked++;
      try {
        expectNumbers(spilled);
      } catch (error) {
        throw new Error(
          `${(error as Error).message} of ${JSON.stringify(range)} with ${JSON.stringify(factors)}`,
        );
      }
    }
    expect(worked + refused).toBe(half);
    expect(worked).toBeGreaterThan(half / 5);
    expect(refused).toBeGreaterThan(half / 5);
  });
});
