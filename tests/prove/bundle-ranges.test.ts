import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { callFunction, type Argument } from '../../workbench/engine/call';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { errorCode } from '../../src/spreadsheet/cell-error';
import { isCellError, type CellValue } from '../../workbench/xlsx/cell-value';
import { Random } from '../properties/random';

// Ranges by chance through the functions as they are built. All of them: RANGES=100000 npx vitest run
// tests/prove/bundle-ranges.test.ts

const RANGES = Number(process.env['RANGES'] ?? 5_000);
const SEED = Number(process.env['SEED'] ?? 7);

const HEADINGS = [
  'Wall',
  'Zone',
  'Level',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Mortar',
  'Residue',
  'Age',
  'Masked',
];
const WORDS = [
  ...[
    'Limestone',
    'Red clay brick',
    'Cast stone',
    'N',
    'heavy',
    'yes',
    'no',
    'South',
    'north ',
    'W1',
    'units',
    'SI',
    'rinse',
  ],
  ...[
    '__proto__',
    'constructor',
    'toString',
    'İstanbul',
    'ıI',
    'a\u200bb',
    '\u202eabc',
    '=1+1',
    '+1',
    '-1',
    '@A1',
  ],
  ...[
    '1,5',
    '1.234,56',
    '12\u00a0000',
    '1 000',
    '３',
    '＝1',
    'Jan 5',
    'CHF 5',
    '',
    ' ',
    '\u00a0',
    '🧱',
    '#N/A',
  ],
];

function cell(random: Random): CellValue {
  switch (random.below(8)) {
    case 0:
      return random.of([0, -1, 0.1, 1e9, 1e300, -1e300, 5e-324, Number.MAX_SAFE_INTEGER]);
    case 1:
    case 2:
      return Math.round(random.next() * 1e5) / 100;
    case 3:
      return random.percent(50);
    case 4:
      return null;
    case 5:
      return { error: random.of(['#N/A', '#REF!', '#VALUE!', '#DIV/0!']) };
    default:
      return random.of(WORDS);
  }
}

function walls(random: Random): CellValue[][] {
  const headings = HEADINGS.filter(
    (name) => ['Wall', 'Material', 'Area'].includes(name) || random.percent(60),
  );
  const poison = random.of([0, 0, 2, 30]);
  const fitting = (name: string, row: number): CellValue =>
    name === 'Wall'
      ? `W${String(row)}`
      : name === 'Material'
        ? random.of(['Limestone', 'Red clay brick', 'Cast stone', 'Marble'])
        : name === 'Area'
          ? 100 + random.below(900)
          : name === 'Zone'
            ? random.of(['South', 'North'])
            : null;
  const rows = Array.from({ length: random.below(6) }, (_, row) =>
    headings.map((name) => (random.percent(poison) ? cell(random) : fitting(name, row))),
  );
  return [headings.map((name) => (random.percent(poison / 5) ? cell(random) : name)), ...rows];
}

function argument(random: Random, matrix: boolean): Argument {
  if (random.percent(20)) return undefined;
  if (!matrix) return random.percent(20) ? 'South' : cell(random);
  if (random.percent(60)) return walls(random);
  const width = 1 + random.below(5);
  return Array.from({ length: 1 + random.below(5) }, () => Array.from({ length: width }, () => cell(random)));
}

it(
  `${String(RANGES)} ranges, seed ${String(SEED)}, each give a value or our error`,
  { timeout: Math.max(60_000, RANGES * 20) },
  () => {
    const random = new Random(SEED);
    const functions = [...loadBundle(join(import.meta.dirname, '..', '..', 'dist')).values()];
    let [values, errors] = [0, 0];
    for (let count = 0; count < RANGES; count += 1) {
      const called = random.of(functions);
      const given = called.metadata.parameters.map(({ name, dimensionality }) =>
        name === 'walls' && random.percent(80)
          ? walls(random)
          : argument(random, dimensionality === 'matrix'),
      );
      const { result } = callFunction(called, given);
      const cells = Array.isArray(result) ? result.flat() : [result];
      for (const each of cells) {
        const said = `${called.metadata.id} of ${JSON.stringify(given)} gave ${JSON.stringify(each)}`;
        if (isCellError(each)) {
          if (errorCode(each.error) === undefined) throw new Error(said);
          // An error of an argument is handed on as it is; ours says why, and never in the words of the language.
          if (/undefined|is not a function|Cannot read|\[object/.test(each.message ?? ''))
            throw new Error(said);
        } else if (typeof each === 'number' && !Number.isFinite(each)) throw new Error(said);
      }
      if (!Array.isArray(result) && isCellError(result)) errors += 1;
      else values += 1;
    }
    expect(values + errors).toBe(RANGES);
    expect(values).toBeGreaterThan(RANGES / 20);
    expect(errors).toBeGreaterThan(RANGES / 20);
  },
);

describe('names and numbers of other places', () => {
  const bundle = loadBundle(join(import.meta.dirname, '..', '..', 'dist'));
  const governor = bundle.get('GOVERNOR');
  const zone = (name: string): CellValue | CellValue[][] | undefined =>
    governor &&
    callFunction(governor, [
      [
        ['Wall', 'Zone', 'Material', 'Area'],
        ['W1', name, 'Limestone', 100],
      ],
      name,
    ]).result;

  it.each(['__proto__', 'constructor', 'toString', 'İstanbul', 'ısı', '=1+1', '@zone', '\u202eabc'])(
    'the zone %s is a zone like others',
    (name) => {
      expect(zone(name)).toBe('Limestone');
    },
  );
});
