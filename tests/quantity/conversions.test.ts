import { unit as measure } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { conversionFactor, fromBase, toBase, units, type Unit } from '../../src/quantity/conversions';

// How a general library writes the same units. `degF` and `degC` are left to a test of their own.
const inLibrary: Partial<Record<Unit, [unit: string, base: string]>> = {
  ft: ['ft', 'm'],
  in: ['in', 'm'],
  mm: ['mm', 'm'],
  ft2: ['sqft', 'm^2'],
  gal: ['gallon', 'L'],
  lb: ['lb', 'kg'],
  'ft2/min': ['sqft/minute', 'm^2/minute'],
  'ft2/gal': ['sqft/gallon', 'm^2/L'],
  'gal/ft2': ['gallon/sqft', 'L/m^2'],
  'lb/ft2': ['lb/sqft', 'kg/m^2'],
  'gal/min': ['gallon/minute', 'L/minute'],
  psi: ['psi', 'kPa'],
  lbf: ['lbf', 'N'],
  'lb/gal': ['lb/gallon', 'kg/L'],
  'lb/(ft2 h)': ['lb/(sqft hour)', 'kg/(m^2 hour)'],
  'lb/mol': ['lb/mol', 'kg/mol'],
  'g/mol': ['g/mol', 'kg/mol'],
  mph: ['mile/hour', 'km/hour'],
};

describe('factors of conversion', () => {
  it.each(Object.entries(inLibrary))('%s is that of a general library', (label, [unit, base]) => {
    const theirs = measure(1, unit).toNumber(base);
    expect(toBase(1, label as Unit) / theirs).toBeCloseTo(1, 9);
  });

  // NIST SP 811 (2008), appendix B.8.
  it.each<[Unit, number, number]>([
    ['ft', 0.3048, 9],
    ['ft2', 0.09290304, 9],
    ['gal', 3.785412, 6],
    ['lb', 0.45359237, 9],
    ['psi', 6.894757, 6],
    ['lbf', 4.448222, 6],
    ['mph', 1.609344, 9],
    ['gal/ft2', 40.74583, 5],
  ])('%s is %d of its base unit', (label, factor, digits) => {
    expect(toBase(1, label)).toBeCloseTo(factor, digits);
  });

  it('30 g on 30 in2 in a minute are 1.550 kg/m2', () => {
    // The definition of the initial rate of absorption, ASTM C67; 30 in2 = 30 x 0.00064516 m2 = 0.0193548 m2.
    expect(toBase(30, 'g/30in2')).toBeCloseTo(0.03 / 0.0193548, 9);
    expect(toBase(30, 'g/30in2')).toBeCloseTo(1.55, 3);
  });

  it.each([
    [32, 0],
    [212, 100],
    [-40, -40],
    [68, 20],
  ])('%i degF are %i degC', (fahrenheit, celsius) => {
    expect(toBase(fahrenheit, 'degF')).toBeCloseTo(celsius, 10);
    expect(fromBase(celsius, 'degF')).toBeCloseTo(fahrenheit, 10);
  });

  it('the coefficient of the reaction force turns US into SI as a computation by hand does', () => {
    // 1 gal/min at 1 psi: 0.0526 lbf; 3.785411784 L/min at 6.894757 kPa: k x 3.785412 x sqrt(6.894757) = 0.0526 x 4.448222 N.
    const k = (0.0526 * 4.4482216) / (3.785411784 * Math.sqrt(6.8947573));
    expect(toBase(0.0526, 'lbf/(gal/min psi^0.5)') / k).toBeCloseTo(1, 7);
  });

  it.each(Object.keys(units) as Unit[])('%s comes back as it went', (label) => {
    for (const value of [0, 1, 0.1, 1234.5, -17])
      expect(fromBase(toBase(value, label), label)).toBeCloseTo(value, 9);
  });

  it('says how many of one unit make one of another', () => {
    // A square foot is 144 square inches, a gallon 231 cubic inches: 1 gal on 1 ft2 stands 231 / 144 in. high.
    expect(conversionFactor('gal/ft2', 'mm water')).toBeCloseTo((231 / 144) * 25.4, 9);
    expect(conversionFactor('ft', 'in')).toBeCloseTo(12, 12);
  });
});
