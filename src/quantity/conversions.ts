/** The exact definitions from which NIST SP 811 (2008), appendix B.8, derives its factors. */
const INCH_M = 0.0254;
const POUND_KG = 0.45359237;
const GALLON_L = 3.785411784;
const FLUID_OUNCES_A_GALLON = 128;
const STANDARD_GRAVITY = 9.80665;
const MILE_KM = 1.609344;

const FOOT_M = 12 * INCH_M;
const FOOT2_M2 = FOOT_M * FOOT_M;
const POUND_FORCE_N = POUND_KG * STANDARD_GRAVITY;
const PSI_KPA = POUND_FORCE_N / (INCH_M * INCH_M) / 1000;

/**
 * Every unit that the program shows or accepts, by its label: base value = shown value * factor.
 * Base units: m, m2, L, kg, min for a working step, h for working time, person, kPa, N, degC, km/h.
 * Source: NIST SP 811 (2008), appendix B.8; definition of the initial rate of absorption, ASTM C67.
 */
export const units = {
  '1': 1,
  '%': 0.01,
  m: 1,
  ft: FOOT_M,
  in: INCH_M,
  mm: 0.001,
  // A millimetre of water on a square metre is a litre.
  'mm water': 1,
  m2: 1,
  ft2: FOOT2_M2,
  L: 1,
  gal: GALLON_L,
  'fl oz': GALLON_L / FLUID_OUNCES_A_GALLON,
  mL: 0.001,
  kg: 1,
  lb: POUND_KG,
  min: 1,
  h: 1,
  d: 1,
  'h/d': 1,
  'min/h': 1,
  person: 1,
  'crew-h': 1,
  'labor-h': 1,
  'm2/min': 1,
  'ft2/min': FOOT2_M2,
  'm2/labor-h': 1,
  'ft2/labor-h': FOOT2_M2,
  'min/m2': 1,
  'min/ft2': 1 / FOOT2_M2,
  'labor-min/m2': 1,
  'labor-min/ft2': 1 / FOOT2_M2,
  'm2/L': 1,
  'ft2/gal': FOOT2_M2 / GALLON_L,
  'L/m2': 1,
  'gal/ft2': GALLON_L / FOOT2_M2,
  'kg/m2': 1,
  'lb/ft2': POUND_KG / FOOT2_M2,
  'g/30in2': 0.001 / (30 * INCH_M * INCH_M),
  'L/(m2 min^0.5)': 1,
  'gal/(ft2 min^0.5)': GALLON_L / FOOT2_M2,
  'min^0.5': 1,
  'L/min': 1,
  'gal/min': GALLON_L,
  kPa: 1,
  psi: PSI_KPA,
  N: 1,
  lbf: POUND_FORCE_N,
  'N/(L/min kPa^0.5)': 1,
  'lbf/(gal/min psi^0.5)': POUND_FORCE_N / (GALLON_L * Math.sqrt(PSI_KPA)),
  money: 1,
  'money/crew-h': 1,
  'money/labor-h': 1,
  'money/d': 1,
  'money/L': 1,
  'money/gal': 1 / GALLON_L,
  'money/m2': 1,
  'money/ft2': 1 / FOOT2_M2,
  'money/m': 1,
  'money/ft': 1 / FOOT_M,
  'money/kg': 1,
  'money/lb': 1 / POUND_KG,
  mol: 1,
  'kg/mol': 1,
  'lb/mol': POUND_KG,
  'g/mol': 0.001,
  'kg/L': 1,
  'lb/gal': POUND_KG / GALLON_L,
  'kg/(m2 h)': 1,
  'lb/(ft2 h)': POUND_KG / FOOT2_M2,
  degC: 1,
  degF: 1 / 1.8,
  'km/h': 1,
  mph: MILE_KM,
  degree: 1,
} as const satisfies Record<string, number>;

/** Base value of a shown 0, where it is not 0: freezing water is at 32 degF. */
const zeros: Partial<Record<Unit, number>> = { degF: -32 / 1.8 };

/** The label of a unit. */
export type Unit = keyof typeof units;

/**
 * A value of a unit in the base unit of its dimension.
 * @param value the value as shown
 * @param from the unit that it is shown in
 * @returns the value in the base unit
 */
export function toBase(value: number, from: Unit): number {
  return value * units[from] + (zeros[from] ?? 0);
}

/**
 * A base value as shown in a unit.
 * @param value the value in the base unit
 * @param to the unit to show it in
 * @returns the value as shown
 */
export function fromBase(value: number, to: Unit): number {
  return (value - (zeros[to] ?? 0)) / units[to];
}

/**
 * How many of one unit make one of another of the same dimension and zero.
 * @param from the unit to come from
 * @param to the unit to go to
 * @returns the factor that a value in `from` is multiplied by
 */
export function conversionFactor(from: Unit, to: Unit): number {
  return units[from] / units[to];
}
