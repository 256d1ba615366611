import fc from 'fast-check';
import Qty from 'js-quantities';
import { all, create } from 'mathjs';
import { expect, it } from 'vitest';
import { conversionFactor, fromBase, toBase, units, type Unit } from '../../src/quantity/conversions';
import { kinds } from '../../src/quantity/systems';
import { expectSame } from '../properties/call';

const math = create(all ?? {});

/** What a label means, in the words of both libraries, and the base unit that it converts to. */
interface Meaning {
  readonly mathjs: readonly [label: string, base: string];
  /** Left out where the library has no such unit. */
  readonly qty?: readonly [label: string, base: string];
  /** The label stands for so many of the library's unit. */
  readonly times?: number;
}

const same = (label: string, base: string): Meaning => ({ mathjs: [label, base], qty: [label, base] });
const pounds = (label: string, base: string): Meaning => ({
  mathjs: [label.replace('lb', 'lbm'), base],
  qty: [label.replace('lb', 'lbs'), base],
});

const meanings: Partial<Record<Unit, Meaning>> = {
  m: same('m', 'm'),
  ft: same('ft', 'm'),
  in: same('in', 'm'),
  mm: same('mm', 'm'),
  'mm water': { mathjs: ['mm', 'liter/m^2'] },
  m2: same('m^2', 'm^2'),
  ft2: same('ft^2', 'm^2'),
  L: same('liter', 'liter'),
  gal: same('gallon', 'liter'),
  'fl oz': { mathjs: ['floz', 'liter'], qty: ['floz', 'liter'] },
  mL: same('mL', 'liter'),
  kg: same('kg', 'kg'),
  lb: pounds('lb', 'kg'),
  min: same('minute', 'minute'),
  h: same('hour', 'hour'),
  'm2/min': same('m^2/minute', 'm^2/minute'),
  'ft2/min': same('ft^2/minute', 'm^2/minute'),
  'm2/labor-h': same('m^2/hour', 'm^2/hour'),
  'ft2/labor-h': same('ft^2/hour', 'm^2/hour'),
  'min/m2': same('minute/m^2', 'minute/m^2'),
  'min/ft2': same('minute/ft^2', 'minute/m^2'),
  'labor-min/m2': same('minute/m^2', 'minute/m^2'),
  'labor-min/ft2': same('minute/ft^2', 'minute/m^2'),
  'm2/L': same('m^2/liter', 'm^2/liter'),
  'ft2/gal': same('ft^2/gallon', 'm^2/liter'),
  'L/m2': same('liter/m^2', 'liter/m^2'),
  'gal/ft2': same('gallon/ft^2', 'liter/m^2'),
  'kg/m2': same('kg/m^2', 'kg/m^2'),
  'lb/ft2': pounds('lb/ft^2', 'kg/m^2'),
  'g/30in2': { ...same('g/in^2', 'kg/m^2'), times: 1 / 30 },
  'L/(m2 min^0.5)': { mathjs: ['liter/(m^2 minute^0.5)', 'liter/(m^2 minute^0.5)'] },
  'gal/(ft2 min^0.5)': { mathjs: ['gallon/(ft^2 minute^0.5)', 'liter/(m^2 minute^0.5)'] },
  'min^0.5': { mathjs: ['minute^0.5', 'minute^0.5'] },
  'L/min': same('liter/minute', 'liter/minute'),
  'gal/min': same('gallon/minute', 'liter/minute'),
  kPa: same('kPa', 'kPa'),
  psi: same('psi', 'kPa'),
  N: same('N', 'N'),
  lbf: same('lbf', 'N'),
  'N/(L/min kPa^0.5)': { mathjs: ['N/(liter/minute kPa^0.5)', 'N/(liter/minute kPa^0.5)'] },
  'lbf/(gal/min psi^0.5)': { mathjs: ['lbf/(gallon/minute psi^0.5)', 'N/(liter/minute kPa^0.5)'] },
  'money/L': same('liter^-1', 'liter^-1'),
  'money/gal': { mathjs: ['gallon^-1', 'liter^-1'] },
  'money/m2': { mathjs: ['m^-2', 'm^-2'] },
  'money/ft2': { mathjs: ['ft^-2', 'm^-2'] },
  'money/m': { mathjs: ['m^-1', 'm^-1'] },
  'money/ft': { mathjs: ['ft^-1', 'm^-1'] },
  'money/kg': { mathjs: ['kg^-1', 'kg^-1'] },
  'money/lb': { mathjs: ['lbm^-1', 'kg^-1'] },
  mol: same('mol', 'mol'),
  'kg/mol': same('kg/mol', 'kg/mol'),
  'lb/mol': pounds('lb/mol', 'kg/mol'),
  'g/mol': same('g/mol', 'kg/mol'),
  'kg/L': same('kg/liter', 'kg/liter'),
  'lb/gal': pounds('lb/gallon', 'kg/liter'),
  'kg/(m2 h)': { mathjs: ['kg/(m^2 hour)', 'kg/(m^2 hour)'] },
  'lb/(ft2 h)': { mathjs: ['lbm/(ft^2 hour)', 'kg/(m^2 hour)'] },
  'km/h': { mathjs: ['km/hour', 'km/hour'], qty: ['kph', 'kph'] },
  mph: { mathjs: ['mi/hour', 'km/hour'], qty: ['mph', 'kph'] },
  degree: { mathjs: ['deg', 'deg'], qty: ['deg', 'deg'] },
};

// Counts of persons, days, money and shares have no dimension in either library, and convert to nothing else.
const COUNTS: readonly Unit[] = [
  '1',
  '%',
  'd',
  'h/d',
  'min/h',
  'person',
  'crew-h',
  'labor-h',
  'money',
  'money/crew-h',
  'money/labor-h',
  'money/d',
];
const TEMPERATURES: readonly Unit[] = ['degC', 'degF'];

const MATHJS = 1e-9;
// It keeps the gallon to 8 digits, the mile an hour to 9 and the pound by square inch to 7.
const QTY = 1e-6;

it('every unit is compared, or counts something', () => {
  const known = new Set<string>([...Object.keys(meanings), ...COUNTS, ...TEMPERATURES]);
  expect(Object.keys(units).filter((label) => !known.has(label))).toEqual([]);
});

const compared = Object.entries(meanings);

it.each(compared)('%s is what mathjs makes of it', (label, { mathjs, times = 1 }) => {
  expectSame(toBase(1, label as Unit), math.unit(1, mathjs[0]).toNumber(mathjs[1]) * times, MATHJS, label);
});

it.each(compared.flatMap(([label, { qty, times = 1 }]) => (qty ? [{ label, qty, times }] : [])))(
  '$label is what js-quantities makes of it',
  ({ label, qty: [from, into], times }) => {
    expectSame(toBase(1, label as Unit), Qty(1, from).to(into).scalar * times, QTY, label);
  },
);

it('what counts something is its own base, but for the per cent', () => {
  for (const label of COUNTS) expect(toBase(1, label), label).toBe(label === '%' ? 0.01 : 1);
});

it('degrees Fahrenheit are what both libraries make of them', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -400, max: 2000 }).map((tenths) => tenths / 10),
      (value) => {
        const ours = toBase(value, 'degF');
        expect(ours).toBeCloseTo(math.unit(value, 'degF').toNumber('degC'), 9);
        expect(ours).toBeCloseTo(Qty(value, 'tempF').to('tempC').scalar, 9);
      },
    ),
  );
});

it('there and back again is the value', () => {
  const labels = Object.keys(units) as Unit[];
  fc.assert(
    fc.property(
      fc.constantFrom(...labels),
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      (label, value) => {
        // A temperature near 0 loses digits to its offset.
        expect(Math.abs(fromBase(toBase(value, label), label) - value)).toBeLessThanOrEqual(
          1e-12 * Math.max(100, Math.abs(value)),
        );
      },
    ),
    { numRuns: 2000 },
  );
});

it('the two units of a kind measure the same thing', () => {
  for (const [kind, { US, SI }] of Object.entries(kinds)) {
    const [us, si] = [meanings[US], meanings[SI]];
    if (us === undefined || si === undefined) {
      expect(us === si || TEMPERATURES.includes(US), kind).toBe(true);
      continue;
    }
    const quotient = math.divide(math.unit(1, us.mathjs[0]), math.unit(1, si.mathjs[0]));
    const number = typeof quotient === 'number' ? quotient : NaN;
    const expected = (number * (us.times ?? 1)) / (si.times ?? 1);
    expectSame(conversionFactor(US, SI), expected, MATHJS, kind);
  }
});
