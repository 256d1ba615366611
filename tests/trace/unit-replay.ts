import { all, create, type EvalFunction, type Unit } from 'mathjs';
import { expect } from 'vitest';
import { units } from '../../src/quantity/conversions';
import { shownUnit } from '../../src/quantity/shown-unit';
import type { TraceLine } from '../../src/trace/recorder';
import { expectSame } from '../properties/call';
import { RELATIVE } from './replay';

const math = create(all ?? {});
for (const base of ['person', 'workday', 'money', 'percent']) math.createUnit(base);
math.import(
  // The library rounds a unit only with a unit to round to; a price is rounded in its own.
  { round: (value: number | Unit, digits: number) => rounded(value, digits) },
  { override: true },
);

function rounded(value: number | Unit, digits: number): number | Unit {
  if (typeof value === 'number') return Number(value.toFixed(digits));
  return math.unit(Number(value.toNumber('money').toFixed(digits)), 'money');
}

/**
 * The labels as units of the library; `1` for what has no dimension. Temperatures and the wind have none here,
 * because the evaporation equation is an empirical one between their numbers in degC and km/h.
 */
const unitOfLabel: Readonly<Record<string, string>> = {
  '1': '1',
  '%': 'percent',
  m: 'm',
  ft: 'ft',
  in: 'in',
  mm: 'mm',
  'mm water': 'mm',
  m2: 'm^2',
  ft2: 'ft^2',
  L: 'L',
  gal: 'gal',
  kg: 'kg',
  lb: 'lbm',
  min: 'minute',
  h: 'hour',
  d: 'workday',
  'h/d': 'hour / workday',
  'min/h': 'minute / hour',
  person: 'person',
  'crew-h': 'hour',
  'labor-h': 'person hour',
  'm2/min': 'm^2 / minute',
  'ft2/min': 'ft^2 / minute',
  'm2/labor-h': 'm^2 / (person hour)',
  'ft2/labor-h': 'ft^2 / (person hour)',
  'min/m2': 'minute / m^2',
  'min/ft2': 'minute / ft^2',
  'labor-min/m2': 'person minute / m^2',
  'labor-min/ft2': 'person minute / ft^2',
  'm2/L': 'm^2 / L',
  'ft2/gal': 'ft^2 / gal',
  'L/m2': 'L / m^2',
  'gal/ft2': 'gal / ft^2',
  'kg/m2': 'kg / m^2',
  'lb/ft2': 'lbm / ft^2',
  'L/(m2 min^0.5)': 'L / (m^2 minute^0.5)',
  'gal/(ft2 min^0.5)': 'gal / (ft^2 minute^0.5)',
  'min^0.5': 'minute^0.5',
  'L/min': 'L / minute',
  'gal/min': 'gal / minute',
  kPa: 'kPa',
  psi: 'psi',
  N: 'N',
  lbf: 'lbf',
  'N/(L/min kPa^0.5)': 'N minute / (L kPa^0.5)',
  'lbf/(gal/min psi^0.5)': 'lbf minute / (gal psi^0.5)',
  degree: 'deg',
  money: 'money',
  'money/crew-h': 'money / hour',
  'money/labor-h': 'money / (person hour)',
  'money/d': 'money / workday',
  'money/L': 'money / L',
  'money/gal': 'money / gal',
  'money/m2': 'money / m^2',
  'money/ft2': 'money / ft^2',
  'money/m': 'money / m',
  'money/ft': 'money / ft',
  'money/kg': 'money / kg',
  'money/lb': 'money / lbm',
  mol: 'mol',
  'kg/mol': 'kg / mol',
  'lb/mol': 'lbm / mol',
  'kg/L': 'kg / L',
  'lb/gal': 'lbm / gal',
  'kg/(m2 h)': 'kg / (m^2 hour)',
  'lb/(ft2 h)': 'lbm / (ft^2 hour)',
  degC: '1',
  degF: '1',
  'km/h': '1',
  mph: '1',
};

// The library's units carry no number in front: thirty square inches are made of their factor.
const GRAMS = 'g/30in2';
// A trace shows a unit by the name that users read.
const labelOf = new Map(Object.keys(units).map((label) => [shownUnit(label), label]));
const ones = new Map<string, Unit | number>();

/** One of what a label names; a number where it has no dimension. */
function oneOf(shown: string): Unit | number {
  const label = labelOf.get(shown) ?? shown;
  const known = ones.get(label);
  if (known !== undefined) return known;
  const made = madeOf(label);
  ones.set(label, made);
  return made;
}

function madeOf(label: string): Unit | number {
  const [over, under] = label.split(' per ');
  if (over !== undefined && under !== undefined)
    return math.divide(oneOf(over), oneOf(under)) as Unit | number;
  if (label === GRAMS) return math.divide(math.unit('1 g/in^2'), 30);
  const name = unitOfLabel[label];
  if (name === undefined) throw new Error(`The unit ${label} has no counterpart.`);
  return name === '1' ? 1 : math.unit(1, name);
}

const evaluations = new Map<string, EvalFunction>();

function evaluate(expression: string, scope: Map<string, unknown>): Unit | number {
  const known = evaluations.get(expression) ?? math.compile(expression);
  evaluations.set(expression, known);
  return known.evaluate(scope) as Unit | number;
}

function isUnit(value: Unit | number): value is Unit {
  return typeof value !== 'number';
}

/** How many of what a label names a value is; fails where it is of another dimension. */
function inUnit(value: Unit | number, label: string, what: string): number {
  const quotient = math.divide(value, oneOf(label)) as Unit | number;
  if (isUnit(quotient)) return expect.fail(`${what} comes out as ${value.toString()}, not in ${label}`);
  return quotient;
}

/** Replays lines with their units: each must come out in the unit and with the value that it shows. */
export function replayUnits(lines: readonly TraceLine[]): void {
  const scope = new Map<string, unknown>();
  for (const { symbol, expression, value, unit } of lines) {
    const what = `${symbol} = ${expression}`;
    const shown = math.multiply(value, oneOf(unit)) as Unit | number;
    // Nothing of a quantity is nothing in any unit.
    if (expression !== '' && expression !== '0') {
      let came: Unit | number;
      try {
        came = evaluate(expression, scope);
      } catch (error) {
        expect.fail(`${what}: ${(error as Error).message}`);
      }
      expectSame(value, inUnit(came, unit, what), RELATIVE, what);
    } else if (expression === '0') expectSame(value, 0, 0, what);
    scope.set(symbol, shown);
  }
}

/** The conversion factors among lines, each as the pure number that it is once its units cancel. */
export function conversionsAmong(lines: readonly TraceLine[]): Map<string, number> {
  const found = new Map<string, number>();
  for (const { unit, value } of lines) {
    if (!unit.includes(' per ')) continue;
    const product = math.multiply(value, oneOf(unit)) as Unit | number;
    if (!isUnit(product)) found.set(unit, product);
  }
  return found;
}
