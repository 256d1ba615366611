import { all, create, type Unit } from 'mathjs';
import type { PublishedCheck } from './check';

const math = create(all ?? {});

/** Our labels in the words of the library. */
const named: Readonly<Record<string, string>> = {
  gal: 'gallon',
  L: 'liter',
  ft2: 'ft^2',
  m2: 'm^2',
  lb: 'lbm',
  'gal/ft2': 'gallon / ft^2',
  'L/m2': 'liter / m^2',
  'lb/ft2': 'lbm / ft^2',
  'kg/m2': 'kg / m^2',
  'lb/gal': 'lbm / gallon',
  'kg/m3': 'kg / m^3',
  'gal/min': 'gallon / minute',
  'L/s': 'liter / s',
  mph: 'mi / hour',
  'km/h': 'km / hour',
  'g/30in2': 'g / in^2',
};

/** One of a unit in another, by mathjs. */
export function one(from: string, into: string): number {
  const unit: Unit = math.unit(1, named[from] ?? from);
  return unit.toNumber(named[into] ?? into);
}

/** The second way of a conversion. */
export function bySecondLibrary(from: string, into: string): NonNullable<PublishedCheck['second']> {
  return { by: 'mathjs', value: () => one(from, into) };
}

/** A formula worked out by mathjs. */
export function byFormula(
  formula: string,
  by = 'mathjs, from the published formula',
): NonNullable<PublishedCheck['second']> {
  return { by, value: () => Number(math.evaluate(formula)) };
}
